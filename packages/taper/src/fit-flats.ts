import {
  checkInput,
  DomainError,
  type Finding,
  hardLimits,
  type Limits,
  type Measurand,
} from '@spindlewright/quantity';
import { find } from './find.ts';
import { type FlatLine, fitLines, linesAtAngle } from './flat-lines.ts';
import { flatsMessages as messages } from './messages/flats.ts';
import { FACE_ANGLE_DEG, faceAngleSpec } from './shapes.ts';

/** One caliper reading of a pair of opposite flats. */
export interface FlatReading {
  /** Distance across the flats, above 0 to 60 mm. */
  acrossFlatsMm: Measurand;
  /** Plane where the jaws bear: from the spindle end inward, or from the mouth of the bore outward; 0 to 100 mm. */
  atMm: Measurand;
  /** Name of the pair of flats, such as `a`; a square has two. */
  pair: string;
}

/** What readings of flats come to. */
export interface FlatFit {
  /** Across flats of the deciding pair at the reference plane (spindle end or mouth of the bore), in mm. */
  acrossFlatsMm: Limits;
  /** Face angle, from the readings or as given, in deg. */
  faceAngleDeg: Limits;
  /** The tighter pair at nominal values, which touches first. */
  decidingPair: string;
  /** Each pair by itself, in the order read. */
  pairs: {
    /** Name of the pair. */
    pair: string;
    /** Its across flats at the reference plane, in mm. */
    acrossFlatsMm: Limits;
  }[];
  /** What the readings do not settle. */
  findings: Finding[];
}

// Judgement: what a caliper and a flat in good order leave unexplained.
const SCATTER_MM = 0.02;

/**
 * Brings caliper readings of flats to the reference plane, finds the face angle where they allow it, and the tighter pair.
 *
 * @remarks
 * Formula: across flats w = w0 + 2 z tan a on a spindle, w0 - 2 z tan a in a bore; one angle for both pairs and a w0 for
 * each, by least squares, or w0 alone with the angle given. The larger w0 of a spindle decides, the smaller of a bore.
 *
 * Validity: without `faceAngleDeg` some pair needs readings in two planes. The limits hold if the flats are plane; scatter
 * beyond 0.02 mm (judgement) is a finding.
 *
 * Accuracy: limits are hard: each reading and each plane counts with its own bounds (3 u for an uncertainty), a plane error
 * with the slope of the flats.
 *
 * @param input - `part`: `spindle` or `arm`; `readings`, at least one, of at most two pairs; `faceAngleDeg` 0.2 to 10 deg.
 * @returns Across flats in mm and face angle in deg as limits, ready for {@link predictSeat} unless the finding
 * `angle-outside-domain` says that they leave its domain.
 * @throws {@link DomainError} for unknown keys, values outside the domain, more than two pairs, or no way to the angle.
 * @example
 * ```ts
 * import { fitFlats } from '@spindlewright/taper';
 * const fit = fitFlats({
 *   part: 'spindle',
 *   faceAngleDeg: 2,
 *   readings: [
 *     { acrossFlatsMm: 12.77, atMm: 2, pair: 'a' },
 *     { acrossFlatsMm: 12.8, atMm: 2, pair: 'b' },
 *   ],
 * });
 * [fit.acrossFlatsMm.nominal.toFixed(2), fit.decidingPair]; // => ['12.66', 'b']
 * ```
 * @see Least squares with hard bounds of the readings; the geometry is that of {@link predictSeat}.
 */
export function fitFlats(input: {
  part: 'spindle' | 'arm';
  readings: readonly FlatReading[];
  faceAngleDeg?: Measurand;
}): FlatFit {
  checkInput({
    where: 'fitFlats',
    value: input,
    fields: {
      part: { type: 'choice', values: ['spindle', 'arm'] },
      readings: {
        type: 'list',
        minLength: 1,
        item: {
          type: 'object',
          fields: {
            acrossFlatsMm: { type: 'measurand', unit: 'mm', above: 0, max: 60 },
            atMm: { type: 'measurand', unit: 'mm', min: 0, max: 100 },
            pair: { type: 'text' },
          },
        },
      },
      faceAngleDeg: { ...faceAngleSpec('measurand'), optional: true },
    },
  });
  const names = [...new Set(input.readings.map((reading) => reading.pair))];
  const refuse = (path: string, received: string, allowed: string): DomainError =>
    new DomainError('fitFlats', [{ path, received, allowed }]);
  if (names.length > 2)
    throw refuse('readings', `pairs ${names.join(', ')}`, 'at most two pairs: a square has no more');
  const widens = input.part === 'spindle' ? 1 : -1;
  const groups = names.map((pair) =>
    input.readings
      .filter((reading) => reading.pair === pair)
      .map((reading) => ({ acrossFlatsMm: hardLimits(reading.acrossFlatsMm), atMm: hardLimits(reading.atMm) })),
  );
  const fitted = fitLines(groups, widens);
  const given = input.faceAngleDeg === undefined ? undefined : hardLimits(input.faceAngleDeg);
  const line: FlatLine | undefined = given === undefined ? fitted : linesAtAngle(groups, widens, given);
  if (line === undefined)
    throw refuse('faceAngleDeg', 'nothing', 'the face angle, or readings of one pair in two planes');

  const pick = input.part === 'spindle' ? Math.max : Math.min;
  const widths = line.acrossFlatsMm;
  const of = (key: keyof Limits): number => pick(...widths.map((limits) => limits[key]));
  const acrossFlatsMm = { lower: of('lower'), nominal: of('nominal'), upper: of('upper') };
  const deciding = widths.findIndex((limits) => limits.nominal === acrossFlatsMm.nominal);
  const findings: Finding[] = [];
  const [first, second] = widths;
  if (first === undefined || second === undefined) findings.push(find(messages, 'one-pair-measured', 'caution'));
  else if (first.lower > second.upper || second.lower > first.upper) {
    const differenceMm = Math.abs(first.nominal - second.nominal);
    findings.push(find(messages, 'pairs-differ', 'caution', { differenceMm }));
  }
  if (line.residualMm.worst > SCATTER_MM) {
    const values = { pair: names[line.residualMm.group] ?? '', residualMm: line.residualMm.worst };
    findings.push(find(messages, 'readings-scatter', 'caution', values));
  }
  const angle = line.faceAngleDeg;
  const { min: leastDeg, max: mostDeg } = FACE_ANGLE_DEG;
  if (given === undefined && angle.upper - angle.lower > 0.5) {
    const values = { lowerDeg: angle.lower, upperDeg: angle.upper };
    findings.push(find(messages, 'angle-not-resolved', 'caution', values, { path: 'faceAngleDeg' }));
  }
  if (angle.lower < leastDeg || angle.upper > mostDeg) {
    const values = { lowerDeg: angle.lower, upperDeg: angle.upper, leastDeg, mostDeg };
    findings.push(find(messages, 'angle-outside-domain', 'caution', values, { path: 'faceAngleDeg' }));
  }
  if (given && fitted && (fitted.faceAngleDeg.lower > given.upper || fitted.faceAngleDeg.upper < given.lower)) {
    const values = { fittedDeg: fitted.faceAngleDeg.nominal, givenDeg: given.nominal };
    findings.push(find(messages, 'angle-disagrees', 'caution', values, { path: 'faceAngleDeg' }));
  }
  const perMm = 2 * Math.tan((angle.nominal * Math.PI) / 180);
  findings.push(find(messages, 'plane-counts', 'note', { acrossFlatsMm: perMm }));
  return {
    acrossFlatsMm,
    faceAngleDeg: angle,
    decidingPair: names[deciding] ?? '',
    pairs: names.map((pair, index) => ({ pair, acrossFlatsMm: widths[index] ?? acrossFlatsMm })),
    findings,
  };
}

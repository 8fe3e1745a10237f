import { type Limits, type LimitsInput, limits, limitsOf } from '@spindlewright/quantity';
import type { ArmGeometry, SquareTaperArm } from './published-geometry.ts';
import { publishedSpindle } from './published-spindle.ts';
import type { InterfaceRecord, SquareTaperGeometry } from './record.ts';
import { requireRecord } from './require-record.ts';

/**
 * Gives the arm bores of a square-taper record, one for each published set, derived from the spindle of that set.
 *
 * @remarks
 * Formula: no gauge dimension of an arm bore is published, so the arm is the one that, pushed by hand onto the spindle of
 * its own set, stands g = `handFitShoulderGapMm` from the inner end of the flats and leaves e = `handFitEndGapMm` between
 * its bolt seat and the spindle end. Mouth from end m = flatLength - g; across flats at the mouth = across flats at the
 * end + 2 m tan(angle), with the limits of m; bolt seat from mouth = m + e. The bounds of the seat depth are those that,
 * together with the bounds of the mouth, give exactly the bounds of e on that spindle: adding both spreads would count
 * the spread of m twice.
 *
 * Validity: records of the family `square-taper`; another family gives an empty list. g and e are judgement: a trial fit
 * of the arm at hand stands above this.
 *
 * Accuracy: no better than g and e (2 mm within 1 to 3, 2.5 mm within 1.5 to 3.5).
 *
 * @param record - Interface record.
 * @returns One entry a set, standing `derived`: `geometry` in mm and degrees, all sizes positive.
 * @throws {@link DomainError} for a value that is no record.
 * @example
 * ```ts
 * import { armGeometries } from '@spindlewright/interfaces';
 * import { squareTaperJis } from '@spindlewright/interfaces/records';
 * const [first] = armGeometries(squareTaperJis);
 * first?.geometry.boreLengthMm; // => 15.5
 * first?.standing; // => 'derived'
 * ```
 * @see The judgement stands in the record, `geometry.handFitShoulderGapMm` and `geometry.handFitEndGapMm`.
 */
export function armGeometries(record: InterfaceRecord): ArmGeometry[] {
  requireRecord('armGeometries', 'record', record);
  if (record.family !== 'square-taper') return [];
  const { geometry } = record;
  return geometry.sets.map((set) => {
    const spindle = publishedSpindle(set, geometry.fallback);
    const derived = ['acrossFlatsAtMouthMm', 'boreLengthMm', 'boltSeatFromMouthMm'];
    return {
      ...spindle,
      geometry: derivedArm(spindle.geometry, geometry),
      standing: 'derived',
      assumed: [...spindle.assumed, ...derived],
      note: [
        'Arm derived from the spindle of its set by the judgements handFitShoulderGapMm and handFitEndGapMm of the record.',
        ...(spindle.note === undefined ? [] : [spindle.note]),
      ].join(' '),
    };
  });
}

function derivedArm(
  spindle: { acrossFlatsAtEndMm: LimitsInput; faceAngleDeg: LimitsInput; flatLengthMm: LimitsInput },
  judged: SquareTaperGeometry,
): SquareTaperArm {
  const shoulderGap = limitsOf(judged.handFitShoulderGapMm);
  const endGap = limitsOf(judged.handFitEndGapMm);
  const atEnd = limits(spindle.acrossFlatsAtEndMm);
  const flats = limits(spindle.flatLengthMm);
  const growth = limits(spindle.faceAngleDeg);
  const mouth: Limits = {
    lower: flats.lower - shoulderGap.upper,
    nominal: flats.nominal - shoulderGap.nominal,
    upper: flats.upper - shoulderGap.lower,
  };
  const atMouth = (key: keyof Limits): number => atEnd[key] + 2 * Math.tan((growth[key] * Math.PI) / 180) * mouth[key];
  const seat = mouth.nominal + endGap.nominal;
  const boltSeatFromMouthMm: Limits = {
    lower: Math.min(seat, endGap.lower + mouth.upper),
    nominal: seat,
    upper: Math.max(seat, endGap.upper + mouth.lower),
  };
  return {
    acrossFlatsAtMouthMm: { lower: atMouth('lower'), nominal: atMouth('nominal'), upper: atMouth('upper') },
    faceAngleDeg: spindle.faceAngleDeg,
    boreLengthMm: plain(boltSeatFromMouthMm),
    boltSeatFromMouthMm: plain(boltSeatFromMouthMm),
  };
}

const plain = (value: Limits): LimitsInput => (value.lower === value.upper ? value.nominal : value);

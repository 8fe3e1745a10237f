import type { Finding } from '@spindlewright/quantity';
import { boreHypotheses } from './bore-hypotheses.ts';
import { boreReadings, type IdentifyBoreInput, type RoundReadings } from './bore-readings.ts';
import { dataEdition } from './data-edition.ts';
import { identificationData } from './identification.generated.ts';
import { makeFinding } from './make-finding.ts';
import { nextSquareReadings } from './next-square-reading.ts';
import { interfaceRecords } from './records/registry.generated.ts';
import { squareTaperIso } from './records/square-taper-iso.generated.ts';
import { squareTaperJis } from './records/square-taper-jis.generated.ts';
import { afterLookAtTeeth, roundCandidates, roundHypotheses, roundJoints } from './round-bore.ts';
import { blunderShare, type SpindleCandidate, squareCandidates } from './square-candidates.ts';
import { type SquareReadings, UNLISTED } from './square-hypotheses.ts';

/** What the bore of an arm may be, by its readings. */
export interface BoreIdentification {
  /** The form that the readings speak of. */
  shape: 'square' | 'round';
  /** Every candidate, likeliest first; `unlisted` is always among them. */
  candidates: readonly SpindleCandidate[];
  /** The one reading to take next. */
  next: {
    /** What to read. */
    reading: 'across-flats' | 'bore-length' | 'diameter' | 'teeth' | 'trial-fit';
    /** Chance of naming the right bore after it, 0 to 1; absent where it cannot be reckoned. */
    expectedProbability?: number;
    /** How, in a sentence. */
    message: string;
  };
  /** Everything worth saying. */
  findings: readonly Finding[];
  /** What holds whatever the answer. */
  cautions: readonly Finding[];
  /** Ids in the register of sources. */
  sources: readonly string[];
  /** Edition of the data. */
  dataEdition: string;
}

/**
 * Ranks the interfaces that the bore of an arm may belong to, by readings across its flats or of its diameter.
 *
 * @remarks
 * Formula: Bayes, as for a spindle. A square bore: no size of one is published, so each published set of each record
 * stands for the arm that, pushed on by hand, sits on the spindle of that set as `armGeometries` derives it; size at the
 * mouth = size at the end + 2 m tan(angle), shrinking outward by 2 tan(angle) per mm, m uncertain by the length of the
 * flats and the judged gap. m stands behind both the size and the bore length, so they vary together. A round bore: the
 * diameter of the spindle with a judged clearance where it is plain, the minor diameter or the spindle less a judged
 * depth of teeth where it is toothed.
 *
 * Validity: square bores of 8 to 20 mm across flats, round ones of 10 to 40 mm. The two common squares have nearly the
 * same size at the mouth, one wider and the other longer: across flats alone the answer stays wide. `unlisted` never has
 * probability 0.
 *
 * Accuracy: that of the judgements in the data (`identificationData.bore`); no gauge dimension of an arm is published.
 *
 * @param input - Square: `acrossFlatsMm` with `atMm` (mm from the inner mouth outward), `readings` of such,
 * `boreLengthMm`. Round: `diameterMm`, `toothed`. Each a number, limits or a value with standard uncertainty.
 * @returns `shape`, `candidates` (probabilities 0 to 1, summing to 1), `next`, `findings`, `cautions`, `sources`,
 * `dataEdition`.
 * @throws {@link DomainError} without any reading, for square and round readings together, a size without its plane, an
 * unknown key or a number out of range.
 * @example
 * ```ts
 * import { identifyBore } from '@spindlewright/interfaces';
 * const wide = identifyBore({ acrossFlatsMm: 13.58, atMm: 0 });
 * (wide.candidates[0]?.probability ?? 1) < 0.7; // => true
 * wide.next.reading; // => 'bore-length'
 * ```
 * @see Sizes: those of the spindles, and the judgements `handFitShoulderGapMm` and `handFitEndGapMm` of the records.
 */
export function identifyBore(input: IdentifyBoreInput): BoreIdentification {
  const { square, round, assumed } = boreReadings(input);
  const answer = square === undefined ? roundAnswer(round ?? {}) : squareAnswer(square);
  const [best] = answer.candidates;
  const probability = best?.probability ?? 0;
  return {
    ...answer,
    findings: [
      ...answer.findings,
      ...(best?.id === UNLISTED ? [makeFinding('probably-unlisted-bore', 'caution')] : []),
      ...(probability < identificationData.convincingProbability.value
        ? [makeFinding('cannot-tell-bores-apart', 'caution', { probability })]
        : []),
      ...(assumed ? [makeFinding('bore-uncertainty-assumed', 'note', assumedValues())] : []),
    ],
    cautions: [makeFinding('name-is-no-seat', 'caution'), makeFinding('follow-maker', 'caution')],
    dataEdition,
  };
}

type Answer = Pick<BoreIdentification, 'shape' | 'candidates' | 'next' | 'findings' | 'sources'>;

function squareAnswer(readings: SquareReadings): Answer {
  const hypotheses = boreHypotheses([squareTaperIso, squareTaperJis]);
  const candidates = squareCandidates(hypotheses, readings);
  const now = candidates[0]?.probability ?? 0;
  const { nextReading } = identificationData.bore;
  const { acrossFlatsAtMm: at, acrossFlatsMm: size, planeMm: plane, boreLengthMm: length } = nextReading;
  const [option] = nextSquareReadings(hypotheses, readings, {
    at: { value: -at.value, uncertainty: plane.value },
    acrossFlatsMm: size.value,
    lengthMm: length.value,
  });
  return {
    shape: 'square',
    candidates,
    next: nextOf(option, now),
    findings: [
      makeFinding('bore-sizes-derived', 'note'),
      ...(blunderShare(hypotheses, readings) > 0.5 ? [makeFinding('readings-contradict', 'caution')] : []),
    ],
    sources: sourcesOf(hypotheses),
  };
}

function nextOf(option: ReturnType<typeof nextSquareReadings>[number] | undefined, now: number): Answer['next'] {
  const { nextReading } = identificationData.bore;
  if (option === undefined || option.expectedProbability - now < worthwhile()) {
    return { reading: 'trial-fit', message: makeFinding('next-trial-fit-arm', 'note').message };
  }
  const { expectedProbability } = option;
  const gain = { now, afterwards: expectedProbability };
  if (option.reading === 'flat-length') {
    const { message } = makeFinding('next-bore-length', 'note', { ...gain, sizeMm: nextReading.boreLengthMm.value });
    return { reading: 'bore-length', expectedProbability, message };
  }
  const { message } = makeFinding('next-across-bore-flats', 'note', {
    ...gain,
    atMm: nextReading.acrossFlatsAtMm.value,
    planeMm: nextReading.planeMm.value,
    sizeMm: nextReading.acrossFlatsMm.value,
  });
  return { reading: 'across-flats', expectedProbability, message };
}

function roundAnswer(readings: RoundReadings): Answer {
  const hypotheses = roundHypotheses(interfaceRecords);
  const candidates = roundCandidates(hypotheses, roundJoints(hypotheses, readings));
  const now = candidates[0]?.probability ?? 0;
  const afterwards = readings.toothed === undefined ? afterLookAtTeeth(hypotheses, readings) : now;
  return {
    shape: 'round',
    candidates,
    next:
      readings.diameter === undefined
        ? { reading: 'diameter', message: makeFinding('next-bore-diameter', 'note').message }
        : afterwards - now < worthwhile()
          ? { reading: 'trial-fit', message: makeFinding('next-trial-fit-round', 'note').message }
          : {
              reading: 'teeth',
              expectedProbability: afterwards,
              message: makeFinding('next-teeth', 'note', { now, afterwards }).message,
            },
    findings: [makeFinding('bore-diameters-derived', 'note')],
    sources: sourcesOf(hypotheses),
  };
}

const worthwhile = (): number => identificationData.nextReading.worthwhileGain.value;

const sourcesOf = (hypotheses: readonly { sources: readonly string[] }[]): string[] =>
  [...new Set(hypotheses.flatMap(({ sources }) => sources))].sort();

function assumedValues(): Record<string, number> {
  const { acrossFlatsMm, planeMm, boreLengthMm, diameterMm } = identificationData.bore.assumedUncertainty;
  return {
    acrossFlatsMm: acrossFlatsMm.value,
    planeMm: planeMm.value,
    boreLengthMm: boreLengthMm.value,
    diameterMm: diameterMm.value,
  };
}

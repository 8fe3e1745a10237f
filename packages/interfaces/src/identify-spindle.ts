import type { Finding } from '@spindlewright/quantity';
import { dataEdition } from './data-edition.ts';
import { identificationData } from './identification.generated.ts';
import { makeFinding } from './make-finding.ts';
import { nextSquareReadings } from './next-square-reading.ts';
import { squareTaperIso } from './records/square-taper-iso.generated.ts';
import { squareTaperJis } from './records/square-taper-jis.generated.ts';
import { blunderShare, type SpindleCandidate, squareCandidates } from './square-candidates.ts';
import { type SquareHypothesis, type SquareReadings, squareHypotheses, UNLISTED } from './square-hypotheses.ts';
import { type IdentifySpindleInput, squareReadings } from './square-readings.ts';

/** What a spindle may be, by its readings. */
export interface SpindleIdentification {
  /** Every candidate, likeliest first; `unlisted` is always among them. */
  candidates: readonly SpindleCandidate[];
  /** The one reading to take next. */
  next: {
    /** What to read. */
    reading: 'across-flats' | 'flat-length' | 'trial-fit';
    /** Chance of naming the right square after it, 0 to 1; absent for a trial fit, which settles the seat, not the name. */
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
 * Ranks the squares that a spindle end may be, by readings across its flats and of their length.
 *
 * @remarks
 * Formula: Bayes over every published set of every record, and over an unlisted square. A reading across flats at plane
 * z is normal about (size at end + 2 z tan(angle)); its variance is that of the reading, that of the plane times the
 * growth squared, and those of the part in size and angle, which all readings of one part share, as they share half the
 * variance of reading and plane: a caliper off its zero is off in each of them. The length of the flats is normal about
 * the published length. All readings together may be a blunder, with a stated probability. Within a record each distinct
 * size weighs the same, however many pages repeat it. Limits count as rectangular (width/sqrt 12), plain numbers get a
 * stated uncertainty. `next` is the careful reading with the largest expected probability of naming the right square.
 *
 * Validity: square ends of 8 to 20 mm across flats. Few or wide readings give a wide answer; `unlisted` never has
 * probability 0, so no answer is certain.
 *
 * Accuracy: that of the judgements in the data (`identificationData`): priors, spread of parts, assumed uncertainties. How
 * far its probabilities can be believed stands on the validation page "identification": it is tried on readings from a
 * generator that shares nothing with this formula.
 *
 * @param input - `acrossFlatsMm` with `atMm` (mm), `readings` of such, `flatLengthMm`; each a number, limits or a value with
 * standard uncertainty.
 * @returns `candidates` (probabilities 0 to 1, summing to 1), `next`, `findings`, `cautions`, `sources`, `dataEdition`.
 * @throws {@link DomainError} without any reading, for a size without its plane, an unknown key or a number out of range.
 * @example
 * ```ts
 * import { identifySpindle } from '@spindlewright/interfaces';
 * const wide = identifySpindle({ acrossFlatsMm: 12.65, atMm: 0 });
 * wide.candidates[0]?.id; // => 'square-taper-jis'
 * (wide.candidates[0]?.probability ?? 0) < 0.9; // => true
 * ```
 * @see Sizes: sources `taper-jp-ham-2013`, `taper-de-wiki`, `taper-nl-workshop`, `taper-hobby-metrology-2022`.
 */
export function identifySpindle(input: IdentifySpindleInput): SpindleIdentification {
  const { readings, assumed } = squareReadings(input);
  const hypotheses = squareHypotheses([squareTaperIso, squareTaperJis]);
  const candidates = squareCandidates(hypotheses, readings);
  const [best] = candidates;
  const probability = best?.probability ?? 0;
  return {
    candidates,
    next: nextOf(hypotheses, readings, probability),
    findings: [
      ...(blunderShare(hypotheses, readings) > 0.5 ? [makeFinding('readings-contradict', 'caution')] : []),
      ...(best?.id === UNLISTED ? [makeFinding('probably-unlisted', 'caution')] : []),
      ...(probability < identificationData.convincingProbability.value
        ? [makeFinding('cannot-tell-apart', 'caution', { probability })]
        : []),
      ...(assumed ? [makeFinding('uncertainty-assumed', 'note', assumedValues())] : []),
    ],
    cautions: [makeFinding('name-is-no-seat', 'caution'), makeFinding('follow-maker', 'caution')],
    sources: [...new Set(hypotheses.flatMap(({ sources }) => sources))].sort(),
    dataEdition,
  };
}

function nextOf(
  hypotheses: readonly SquareHypothesis[],
  readings: SquareReadings,
  now: number,
): SpindleIdentification['next'] {
  const { nextReading } = identificationData;
  const [option] = nextSquareReadings(hypotheses, readings);
  if (option === undefined || option.expectedProbability - now < nextReading.worthwhileGain.value) {
    return { reading: 'trial-fit', message: makeFinding('next-trial-fit', 'note').message };
  }
  const { reading, expectedProbability } = option;
  const gain = { now, afterwards: expectedProbability };
  const asked =
    reading === 'flat-length'
      ? makeFinding('next-flat-length', 'note', { ...gain, sizeMm: nextReading.flatLengthMm.value })
      : makeFinding('next-across-flats', 'note', {
          ...gain,
          atMm: nextReading.acrossFlatsAtMm.value,
          planeMm: nextReading.planeMm.value,
          sizeMm: nextReading.acrossFlatsMm.value,
        });
  return { reading, expectedProbability, message: asked.message };
}

function assumedValues(): Record<string, number> {
  const { acrossFlatsMm, planeMm, flatLengthMm } = identificationData.assumedUncertainty;
  return { acrossFlatsMm: acrossFlatsMm.value, planeMm: planeMm.value, flatLengthMm: flatLengthMm.value };
}

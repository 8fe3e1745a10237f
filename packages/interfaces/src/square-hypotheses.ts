import { identificationData } from './identification.generated.ts';
import { logDensity } from './log-density.ts';
import { publishedSpindle } from './published-spindle.ts';
import type { SquareTaperRecord } from './record.ts';

/** One reading as a value with its standard uncertainty, in mm. @internal */
export interface Reading {
  value: number;
  uncertainty: number;
}

/** What was read on a spindle. @internal */
export interface SquareReadings {
  flats: readonly { acrossFlats: Reading; at: Reading }[];
  flatLength?: Reading;
}

/** One way in which the spindle could be made: a record and one of its published sets, or none of them. @internal */
export interface SquareHypothesis {
  id: string;
  set: string;
  prior: number;
  acrossFlatsMm: Spread;
  faceAngleDeg: Spread;
  flatLengthMm: Spread;
  sources: readonly string[];
}

interface Spread {
  mean: number;
  deviation: number;
}

/** Sizes across flats that are accepted, in mm. @internal */
export const ACROSS_FLATS_RANGE = { min: 8, max: 20 } as const;

/** Lengths of flats that are accepted, in mm. @internal */
export const FLAT_LENGTH_RANGE = { min: 3, max: 40 } as const;

/** Name of the candidate that stands for every square without a record. @internal */
export const UNLISTED = 'unlisted';

/** All hypotheses over the given records, priors summing to 1 when the priors name exactly those records. @internal */
export function squareHypotheses(records: readonly SquareTaperRecord[]): SquareHypothesis[] {
  const { unlisted } = identificationData;
  return [
    ...records.flatMap(recordHypotheses),
    {
      id: UNLISTED,
      set: UNLISTED,
      prior: priorOf(UNLISTED),
      acrossFlatsMm: { mean: unlisted.acrossFlatsAtEndMm.value, deviation: unlisted.acrossFlatsSpreadMm.value },
      faceAngleDeg: { mean: unlisted.faceAngleDeg.value, deviation: unlisted.faceAngleSpreadDeg.value },
      flatLengthMm: { mean: unlisted.flatLengthMm.value, deviation: unlisted.flatLengthSpreadMm.value },
      sources: [],
    },
  ];
}

function recordHypotheses(record: SquareTaperRecord): SquareHypothesis[] {
  const { sets, fallback } = record.geometry;
  const { spread } = identificationData;
  const sizes = sets.map((set) => set.acrossFlatsAtEndMm.value);
  // Each distinct figure weighs the same: how many pages repeat one is no evidence that it is right.
  const distinct = new Set(sizes).size;
  return sets.map((set) => {
    const size = set.acrossFlatsAtEndMm.value;
    const repeats = sizes.filter((other) => other === size).length;
    return {
      id: record.id,
      set: set.id,
      prior: priorOf(record.id) / (distinct * repeats),
      acrossFlatsMm: { mean: size, deviation: spread.acrossFlatsMm.value },
      faceAngleDeg: { mean: (set.faceAngleDeg ?? fallback.faceAngleDeg).value, deviation: spread.faceAngleDeg.value },
      flatLengthMm: { mean: (set.flatLengthMm ?? fallback.flatLengthMm).value, deviation: spread.flatLengthMm.value },
      sources: publishedSpindle(set, fallback).sources,
    };
  });
}

const priorOf = (id: string): number =>
  identificationData.priors.find((prior) => prior.id === id)?.probability.value ?? 0;

/**
 * Logarithm of prior times likelihood of the readings under each hypothesis. Readings may be blunders, which say the same
 * of every hypothesis: so contradictory ones lead back to the priors, not to whichever square denies them least. @internal
 */
export function logJoints(hypotheses: readonly SquareHypothesis[], readings: SquareReadings): number[] {
  const blunder = logBlunder(readings);
  const sound = Math.log(1 - identificationData.blunderProbability.value);
  return hypotheses.map((hypothesis) => {
    const likelihood = sound + logLikelihood(hypothesis, readings);
    const peak = Math.max(likelihood, blunder);
    return Math.log(hypothesis.prior) + peak + Math.log(Math.exp(likelihood - peak) + Math.exp(blunder - peak));
  });
}

/** Logarithm of the probability of readings that are blunders: anything in the domain alike. @internal */
export function logBlunder({ flats, flatLength }: SquareReadings): number {
  const width = (range: { min: number; max: number }): number => Math.log(range.max - range.min);
  return (
    Math.log(identificationData.blunderProbability.value) -
    flats.length * width(ACROSS_FLATS_RANGE) -
    (flatLength === undefined ? 0 : width(FLAT_LENGTH_RANGE))
  );
}

function logLikelihood(hypothesis: SquareHypothesis, readings: SquareReadings): number {
  const { acrossFlatsMm, faceAngleDeg, flatLengthMm } = hypothesis;
  const angle = (faceAngleDeg.mean * Math.PI) / 180;
  const growth = 2 * Math.tan(angle);
  const growthDeviation = (2 / Math.cos(angle) ** 2) * ((faceAngleDeg.deviation * Math.PI) / 180);
  const residual = readings.flats.map(
    ({ acrossFlats, at }) => acrossFlats.value - (acrossFlatsMm.mean + growth * at.value),
  );
  // The deviations of the part in size and angle are common to all readings; errors of reading and of plane are not.
  const covariance = readings.flats.map((one, i) =>
    readings.flats.map(
      (other, j) =>
        acrossFlatsMm.deviation ** 2 +
        growthDeviation ** 2 * one.at.value * other.at.value +
        (i === j ? one.acrossFlats.uncertainty ** 2 + (growth * one.at.uncertainty) ** 2 : 0),
    ),
  );
  const { flatLength } = readings;
  const ofLength =
    flatLength === undefined
      ? 0
      : logDensity(
          [flatLength.value - flatLengthMm.mean],
          [[flatLengthMm.deviation ** 2 + flatLength.uncertainty ** 2]],
        );
  return logDensity(residual, covariance) + ofLength;
}

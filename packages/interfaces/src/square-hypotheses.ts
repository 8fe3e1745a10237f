import { identificationData } from './identification.generated.ts';
import { logDensity } from './log-density.ts';
import { publishedSpindle } from './published-spindle.ts';
import type { SquareTaperRecord } from './record.ts';

/** One reading as a value with its standard uncertainty, in mm. @internal */
export interface Reading {
  value: number;
  uncertainty: number;
}

/** What was read on a square; planes count in the direction in which the square grows. @internal */
export interface SquareReadings {
  flats: readonly { acrossFlats: Reading; at: Reading; slipped?: boolean }[];
  flatLength?: Reading;
}

/** One way in which the part could be made: a record and one of its published sets, or none of them. @internal */
export interface SquareHypothesis {
  id: string;
  set: string;
  prior: number;
  acrossFlatsMm: Spread;
  faceAngleDeg: Spread;
  flatLengthMm: Spread;
  /** Covariance of size and length in mm2, where one judgement stands behind both. */
  sizeWithLength: number;
  sources: readonly string[];
}

/** A normal distribution. @internal */
export interface Spread {
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
      sizeWithLength: 0,
      sources: [],
    },
  ];
}

function recordHypotheses(record: SquareTaperRecord): SquareHypothesis[] {
  const { sets, fallback } = record.geometry;
  const { spread } = identificationData;
  return sets.map((set) => {
    const size = set.acrossFlatsAtEndMm.value;
    return {
      id: record.id,
      set: set.id,
      prior: priorOf(record.id) * setShare(record, size),
      acrossFlatsMm: { mean: size, deviation: spread.acrossFlatsMm.value },
      faceAngleDeg: { mean: (set.faceAngleDeg ?? fallback.faceAngleDeg).value, deviation: spread.faceAngleDeg.value },
      flatLengthMm: { mean: (set.flatLengthMm ?? fallback.flatLengthMm).value, deviation: spread.flatLengthMm.value },
      sizeWithLength: 0,
      sources: publishedSpindle(set, fallback).sources,
    };
  });
}

/**
 * Share of one set in the prior of its record. Each distinct size weighs the same: how many pages repeat one is no
 * evidence that it is right. @internal
 */
export function setShare(record: SquareTaperRecord, acrossFlatsAtEndMm: number): number {
  const sizes = record.geometry.sets.map((set) => set.acrossFlatsAtEndMm.value);
  return 1 / (new Set(sizes).size * sizes.filter((other) => other === acrossFlatsAtEndMm).length);
}

/** Probability of a record, or of none, before any reading. @internal */
export const priorOf = (id: string): number =>
  identificationData.priors.find((prior) => prior.id === id)?.probability.value ?? 0;

/**
 * Logarithm of prior times likelihood of the readings under each hypothesis. One reading may have slipped, and all of them
 * may be a blunder, which says the same of every hypothesis: so contradictory ones lead back to the priors, not to
 * whichever square denies them least. @internal
 */
export function logJoints(hypotheses: readonly SquareHypothesis[], readings: SquareReadings): number[] {
  const blunder = logBlunder(readings);
  const ways = soundWays(readings);
  return hypotheses.map((hypothesis) => {
    const sound = ways.map((way) => way.logWeight + logLikelihood(hypothesis, way.readings));
    return Math.log(hypothesis.prior) + logSum([...sound, blunder]);
  });
}

/** Logarithm of a sum, from the logarithms of its terms. @internal */
export function logSum(logs: readonly number[]): number {
  const peak = Math.max(...logs);
  return peak + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - peak), 0));
}

/**
 * The ways in which readings that are no blunder may have come about: each as it says, or one across flats slipped by a
 * millimetre or so, with the logarithm of the weight of each way. Two slips at one sitting are left to the blunder. @internal
 */
export function soundWays(readings: SquareReadings): { logWeight: number; readings: SquareReadings }[] {
  const { flats } = readings;
  const slip = identificationData.slip.probability.value;
  const spread = identificationData.slip.spreadMm.value;
  const all = Math.log(1 - identificationData.blunderProbability.value) + flats.length * Math.log(1 - slip);
  const slipped = flats.map((one) => ({
    ...one,
    acrossFlats: { ...one.acrossFlats, uncertainty: Math.hypot(one.acrossFlats.uncertainty, spread) },
    slipped: true,
  }));
  return [
    { logWeight: all, readings },
    ...flats.map((_, index) => ({
      logWeight: all + Math.log(slip / (1 - slip)),
      readings: { ...readings, flats: flats.map((one, i) => (i === index ? (slipped[i] ?? one) : one)) },
    })),
  ];
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

/** Logarithm of the density of readings that came about in one way. @internal */
export function logLikelihood(hypothesis: SquareHypothesis, readings: SquareReadings): number {
  const { acrossFlatsMm, faceAngleDeg, flatLengthMm, sizeWithLength } = hypothesis;
  const { flats, flatLength } = readings;
  const angle = (faceAngleDeg.mean * Math.PI) / 180;
  const growth = 2 * Math.tan(angle);
  const growthDeviation = (2 / Math.cos(angle) ** 2) * ((faceAngleDeg.deviation * Math.PI) / 180);
  const common = identificationData.commonErrorShare.value;
  // The part has one size and one angle, and the hand one habit: what is off there is off in every reading alike.
  const covariance = flats.map((one, i) =>
    flats.map((other, j) => {
      // A slip is its own reading's alone.
      const share = i === j ? 1 : one.slipped || other.slipped ? 0 : common;
      return (
        acrossFlatsMm.deviation ** 2 +
        growthDeviation ** 2 * one.at.value * other.at.value +
        share * one.acrossFlats.uncertainty * other.acrossFlats.uncertainty +
        share * growth ** 2 * one.at.uncertainty * other.at.uncertainty
      );
    }),
  );
  const residual = flats.map(({ acrossFlats, at }) => acrossFlats.value - (acrossFlatsMm.mean + growth * at.value));
  if (flatLength !== undefined) {
    for (const row of covariance) row.push(sizeWithLength);
    covariance.push([...flats.map(() => sizeWithLength), flatLengthMm.deviation ** 2 + flatLength.uncertainty ** 2]);
    residual.push(flatLength.value - flatLengthMm.mean);
  }
  return logDensity(residual, covariance);
}

import type { Limits } from '@spindlewright/quantity';
import type { Seat } from './seat.ts';

/** A length and the share of the distribution below it. */
export interface LengthShare {
  /** Probability to lie below, 0 to 1. */
  probability: number;
  /** Length in mm. */
  lengthMm: number;
}

/** A length as a distribution. */
export interface LengthSpread {
  /** Mean in mm. */
  meanMm: number;
  /** Standard deviation in mm, at least 0. */
  standardDeviationMm: number;
  /** Lengths in mm below which 2.5, 5, 50, 95 and 97.5 % of the samples lie. */
  quantiles: LengthShare[];
}

/** A seat as distributions; null what cannot be known from the input. */
export type SeatSpread = { [K in keyof Seat]: LengthSpread | null };

const QUANTILES = [0.025, 0.05, 0.5, 0.95, 0.975];

/** Lengths of a seat, one for each sample. */
type SeatColumns = { [K in keyof Seat]: Float64Array };

/** Room for the seats of so many samples. @internal */
export const emptySeat = (samples: number): SeatColumns => ({
  mouthFromEndMm: new Float64Array(samples),
  endGapMm: new Float64Array(samples),
  shoulderGapMm: new Float64Array(samples),
  engagedLengthMm: new Float64Array(samples),
});

/** The lengths of a seat as distributions, where the worst case knows them; sorts the columns. @internal */
export const seatSpread = (columns: SeatColumns, known: Seat<Limits | null>): SeatSpread => ({
  mouthFromEndMm: known.mouthFromEndMm && spreadOf(columns.mouthFromEndMm),
  endGapMm: known.endGapMm && spreadOf(columns.endGapMm),
  shoulderGapMm: known.shoulderGapMm && spreadOf(columns.shoulderGapMm),
  engagedLengthMm: known.engagedLengthMm && spreadOf(columns.engagedLengthMm),
});

/** Lengths as a distribution; sorts them. @internal */
export function spreadOf(values: Float64Array): LengthSpread {
  values.sort();
  let sum = 0;
  for (let k = 0; k < values.length; k++) sum += values[k] ?? 0;
  const meanMm = sum / values.length;
  let squares = 0;
  for (let k = 0; k < values.length; k++) squares += ((values[k] ?? 0) - meanMm) ** 2;
  return {
    meanMm: meanMm + 0,
    standardDeviationMm: Math.sqrt(squares / (values.length - 1)),
    quantiles: QUANTILES.map((probability) => {
      const place = probability * (values.length - 1);
      const below = values[Math.floor(place)] ?? 0;
      const above = values[Math.ceil(place)] ?? below;
      return { probability, lengthMm: below + (place - Math.floor(place)) * (above - below) + 0 };
    }),
  };
}

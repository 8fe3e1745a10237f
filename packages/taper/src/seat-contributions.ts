import type { Limits } from '@spindlewright/quantity';
import { exactly } from './interval.ts';
import type { SeatPrediction } from './seat.ts';
import { worstCase } from './seat-places.ts';
import { deviationOf, type varyingInputs } from './seat-samples.ts';
import type { SeatMix } from './seat-ways.ts';
import { solveSeat } from './solve-seat.ts';

/** What one input adds to the uncertainty of the pressed seat, to first order. */
export interface SeatContribution {
  /** Path of the input, or `model` for the error of the travel. */
  path: string;
  /** Standard deviation of the pressed mouth that this input alone makes, in mm; at least 0. */
  standardDeviationMm: number;
  /** What would remain of the whole standard deviation if this input were known exactly, in mm; at least 0. */
  remainingMm: number;
}

/** Standard deviation of the pressed mouth to first order, and what each input and the model add to it. @internal */
export function firstOrder(
  { sensitivity }: SeatPrediction<Limits | null>,
  {
    sample,
    mix,
    varying,
    matrix,
  }: ReturnType<typeof varyingInputs> & { mix: SeatMix | undefined; matrix: readonly (readonly number[])[] },
): { firstOrderDeviationMm: number; contributions: SeatContribution[] } {
  const effects = varying.map((input) => {
    const slope = sensitivity.find(({ path }) => path === input.path)?.mmPerUnit ?? 0;
    return slope * deviationOf(input);
  });
  for (const { limits, slot } of varying) Object.assign(slot, exactly(limits.nominal));
  const model = solveSeat(sample, worstCase, mix);
  const modelMm = (model.travelMm.upper - model.travelMm.lower) / Math.sqrt(12);
  // A witness mark tells the pressed place itself; what the shapes add to it has travelled.
  const marked = sample.trialFit === undefined && sample.witnessMark !== undefined;
  const pressedModelMm = marked ? modelMm * (mix?.mouth.shares[1] ?? 0) : modelMm;
  const without = (left: number): number => {
    let variance = left === varying.length ? 0 : pressedModelMm ** 2;
    for (const [i, first] of effects.entries()) {
      for (const [j, second] of effects.entries()) {
        if (i !== left && j !== left) variance += first * second * (matrix[i]?.[j] ?? 0);
      }
    }
    return Math.sqrt(Math.max(0, variance));
  };
  const paths = [...varying.map(({ path }) => path), 'model'];
  return {
    firstOrderDeviationMm: without(-1),
    contributions: [...effects.map(Math.abs), pressedModelMm]
      .map((standardDeviationMm, index) => ({
        path: paths[index] ?? '',
        standardDeviationMm,
        remainingMm: without(index),
      }))
      .sort((one, other) => other.standardDeviationMm - one.standardDeviationMm),
  };
}

import { CAUSES, CONDITIONS, KINDS } from './ids.ts';
import type { Item } from './items.ts';
import { conditionOf, type Model } from './model.ts';

/** What a decision needs of a distribution over states. */
export interface Marginals {
  /** Probability by index into KINDS. */
  kind: Float64Array;
  /** Probability that the bearing is worn. */
  bearing: number;
  /** Probability of noise from elsewhere. */
  noise: number;
}

/** Weights of the states, unnormalised: prior times every factor, one item left out when asked. */
export function weightsOf(model: Model, items: readonly Item[], without?: Item): Float64Array {
  const weights = Float64Array.from(model.prior);
  for (const item of items) {
    if (item === without) continue;
    for (let state = 0; state < weights.length; state++) {
      weights[state] = (weights[state] ?? 0) * (item.factor[state] ?? 0);
    }
  }
  return weights;
}

/** Sums weights, each times its factor if there are factors, over everything but what is asked; also gives their sum. */
export function marginalsOf(model: Model, weights: Float64Array, factor?: Float64Array): Marginals & { sum: number } {
  const kind = new Float64Array(KINDS.length);
  let bearing = 0;
  let noise = 0;
  let sum = 0;
  for (let state = 0; state < weights.length; state++) {
    const w = (weights[state] ?? 0) * (factor?.[state] ?? 1);
    const index = model.kind[state] ?? 0;
    kind[index] = (kind[index] ?? 0) + w;
    bearing += w * (model.bearing[state] ?? 0);
    noise += w * (model.noise[state] ?? 0);
    sum += w;
  }
  for (let index = 0; index < kind.length; index++) kind[index] = (kind[index] ?? 0) / sum;
  return { kind, bearing: bearing / sum, noise: noise / sum, sum };
}

/** Probability by index into CONDITIONS. */
export const conditionsOf = (at: Marginals): number[] =>
  CONDITIONS.map((id) =>
    KINDS.reduce((sum, kind, index) => sum + (conditionOf(kind) === id ? (at.kind[index] ?? 0) : 0), 0),
  );

/** Probability by index into CAUSES. */
export function causesOf(model: Model, weights: Float64Array): Float64Array {
  const cause = new Float64Array(CAUSES.length);
  let sum = 0;
  for (let state = 0; state < weights.length; state++) {
    const index = model.cause[state] ?? 0;
    cause[index] = (cause[index] ?? 0) + (weights[state] ?? 0);
    sum += weights[state] ?? 0;
  }
  return cause.map((weight) => weight / sum);
}

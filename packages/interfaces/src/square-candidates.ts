import { logBlunder, logJoints, type SquareHypothesis, type SquareReadings } from './square-hypotheses.ts';

/** One interface that the readings may belong to. */
export interface SpindleCandidate {
  /** Record id, or `unlisted` for any part without a record. */
  id: string;
  /** Probability, 0 to 1; over all candidates they sum to 1. */
  probability: number;
  /** How that probability is shared among the published sets of the record. */
  sets: readonly SetProbability[];
}

/** The share of one published set in the probability of its record. */
export interface SetProbability {
  /** Name of the set. */
  set: string;
  /** Probability, 0 to 1. */
  probability: number;
}

/** The candidates with their probabilities, likeliest first. @internal */
export function squareCandidates(
  hypotheses: readonly SquareHypothesis[],
  readings: SquareReadings,
): SpindleCandidate[] {
  const logs = logJoints(hypotheses, readings);
  const peak = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - peak));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const ids = [...new Set(hypotheses.map(({ id }) => id))];
  return ids
    .map((id) => {
      const sets = hypotheses.flatMap((hypothesis, index) =>
        hypothesis.id === id ? [{ set: hypothesis.set, probability: (weights[index] ?? 0) / total }] : [],
      );
      const probability = sets.reduce((sum, set) => sum + set.probability, 0);
      return { id, probability, sets: sets.sort((a, b) => b.probability - a.probability) };
    })
    .sort((a, b) => b.probability - a.probability);
}

/** How far the readings are better explained by a slip than by any square. @internal */
export function blunderShare(hypotheses: readonly SquareHypothesis[], readings: SquareReadings): number {
  const blunder = logBlunder(readings);
  return 1 / logJoints(hypotheses, readings).reduce((sum, log) => sum + Math.exp(log - blunder), 0);
}

import type { Item } from './items.ts';
import type { Model } from './model.ts';
import { weightsOf } from './posterior.ts';
import type { Evidence, EvidenceWeight } from './types.ts';

// Factors on the odds at which the words change: above 10 strong, above 2 noticeable (judgement).
const STRONG = Math.log(10);
const NOTICEABLE = Math.log(2);

/** What each item says about one condition: by how much the odds fall when it is left out. */
export function evidenceOf(model: Model, items: readonly Item[], conditionIndex: number): Evidence[] {
  const withAll = logOdds(model, weightsOf(model, items), conditionIndex);
  return items
    .map((item): Evidence => {
      const logOddsRatio = withAll - logOdds(model, weightsOf(model, items, item), conditionIndex);
      return {
        check: item.check,
        outcomes: item.outcomes,
        ...(item.measurement === undefined ? {} : { measurement: item.measurement }),
        logOddsRatio,
        weight: inWords(logOddsRatio),
      };
    })
    .sort((a, b) => Math.abs(b.logOddsRatio) - Math.abs(a.logOddsRatio));
}

function logOdds(model: Model, weights: Float64Array, conditionIndex: number): number {
  let own = 0;
  let rest = 0;
  for (let state = 0; state < weights.length; state++) {
    if (model.condition[state] === conditionIndex) own += weights[state] ?? 0;
    else rest += weights[state] ?? 0;
  }
  return Math.log(own / rest);
}

function inWords(logOddsRatio: number): EvidenceWeight {
  const size = Math.abs(logOddsRatio);
  if (size < NOTICEABLE) return 'hardly';
  if (logOddsRatio > 0) return size < STRONG ? 'for' : 'strongly-for';
  return size < STRONG ? 'against' : 'strongly-against';
}

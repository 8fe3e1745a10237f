import type { Finding } from '@spindlewright/quantity';
import { CONDITIONS } from './ids.ts';
import type { Item } from './items.ts';
import type { Model } from './model.ts';
import { answersIn } from './model-data.ts';
import { weightsOf } from './posterior.ts';
import { say } from './say.ts';
import type { OutcomeId } from './types.ts';

// Judgement: a condition with a tenth of the probability still counts as plausible; an outcome below six in a hundred
// under each of those is one that nothing plausible explains, if some other condition shows it in three cases of ten (else
// it is merely rare everywhere, as a lost bolt is); a word to which the reading gives less than six in a hundred is refuted.
const PLAUSIBLE = 0.1;
const UNLIKELY = 0.06;
const EXPLAINED = 0.3;

/** What does not fit together, by name: word against reading, two answers that exclude each other, unexplained answers. */
export function contradictionsOf(
  model: Model,
  items: readonly Item[],
  said: (check: Item['check']) => readonly OutcomeId[] | undefined,
  conditions: readonly number[],
): Finding[] {
  const found: Finding[] = [];
  const add = (code: string, values: Record<string, string>): void => {
    found.push(say(code, 'caution', values));
  };
  for (const { check, measurement, agreement, outcomes } of items) {
    const outcome = said(check)?.[0];
    const [nearest] = outcomes;
    if (measurement === undefined || outcome === undefined || nearest === undefined) continue;
    if ((agreement ?? 1) < UNLIKELY) {
      add('contradiction-reading-against-word', { check, outcome, measurement, nearest });
    }
  }
  const outcomesOf = (check: string | undefined): readonly (string | undefined)[] =>
    items.find((item) => item.check === check)?.outcomes ?? [];
  for (const [both] of model.code.pairs.matchAll(/..../g)) {
    const [one = [], other = []] = answersIn(both).map((answer) => answer.split('/'));
    if (![one, other].every(([check, outcome]) => outcomesOf(check).includes(outcome))) continue;
    const [check = '', outcome = ''] = one;
    const [otherCheck = '', otherOutcome = ''] = other;
    add('contradiction-incompatible', { check, outcome, otherCheck, otherOutcome });
  }
  const plausible = CONDITIONS.map((_, index) => index).filter((index) => (conditions[index] ?? 0) >= PLAUSIBLE);
  for (const item of items) {
    const [outcome] = item.outcomes;
    if (item.check === 'history' || outcome === undefined) continue;
    const others = weightsOf(model, items, item);
    const column = model.likelihood[item.check]?.[outcome];
    const chances = CONDITIONS.map((_, index) => chance(model, others, column, index));
    const unlikely = plausible.every((index) => (chances[index] ?? 0) < UNLIKELY);
    if (unlikely && chances.some((p) => p >= EXPLAINED)) {
      add('contradiction-unexplained', { check: item.check, outcome });
    }
  }
  return found;
}

/** Chance of an outcome under one condition, given everything else. */
function chance(model: Model, weights: Float64Array, column: Float64Array | undefined, conditionIndex: number): number {
  let hit = 0;
  let sum = 0;
  for (let state = 0; state < weights.length; state++) {
    if (model.condition[state] !== conditionIndex) continue;
    hit += (weights[state] ?? 0) * (column?.[state] ?? 1);
    sum += weights[state] ?? 0;
  }
  return hit / sum;
}

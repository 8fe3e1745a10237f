import type { Case } from './check-case.ts';
import { SCALE } from './model.generated.ts';
import type { Model } from './model.ts';
import { type ReadingLikelihood, type ReadingRule, readingLikelihood } from './reading.ts';
import type { CheckId, MeasurementId, OutcomeId } from './types.ts';

/** One piece of evidence with its likelihood in each state. */
export interface Item {
  check: CheckId;
  outcomes: readonly OutcomeId[];
  /** Likelihood by state, above 0, up to a factor common to all states. */
  factor: Float64Array;
  measurement?: MeasurementId;
  reading?: ReadingLikelihood;
  /** Where word and reading stand side by side: the share that the reading gives to the word, 0 to 1. */
  agreement?: number;
}

/** The evidence of a case in the order of the checks. Answers to checks that do not apply to the family are left out. */
export function itemsOf(model: Model, subject: Case): Item[] {
  return model.checks.flatMap((check): Item[] => {
    const said = subject.answers[check];
    const rule = subject.rules.find(
      (entry) => entry.check === check && subject.readings[entry.measurement] !== undefined,
    );
    const value = rule && subject.readings[rule.measurement];
    if (rule !== undefined && value !== undefined) {
      return [readingItem(model, rule, readingLikelihood(rule, value), said?.[0])];
    }
    if (said === undefined) return [];
    return [{ check, outcomes: said, factor: factorOf(model, check, said) }];
  });
}

/** Likelihood of an answer by state, up to a factor common to all states. */
export const factorOf = (model: Model, check: CheckId, said: readonly OutcomeId[]): Float64Array =>
  said.length === 1 ? column(model, check, said[0]) : told(model, said);

const column = (model: Model, check: CheckId, outcome: string | undefined): Float64Array =>
  model.likelihood[check]?.[outcome ?? ''] ?? new Float64Array(model.prior.length).fill(1);

// The row says how often each outcome is the true one. A word alone is taken as true; a word beside a reading is taken as
// true almost always, so that the two cannot count twice and a good reading outweighs the eye.
function readingItem(model: Model, rule: ReadingRule, reading: ReadingLikelihood, said: OutcomeId | undefined): Item {
  const outcomes = Object.keys(reading.byOutcome) as OutcomeId[];
  const right = SCALE.at(-1) ?? 1;
  const factor = new Float64Array(model.prior.length);
  let nearest: OutcomeId | undefined;
  let most = 0;
  for (const outcome of outcomes) {
    const word = said === undefined ? 1 : outcome === said ? right : (1 - right) / (outcomes.length - 1);
    const weight = word * (reading.byOutcome[outcome] ?? 0);
    const p = column(model, rule.check, outcome);
    for (let state = 0; state < factor.length; state++) {
      factor[state] = (factor[state] ?? 0) + weight * (p[state] ?? 0);
    }
    // Which outcome it stands for: by the reading and by how often each is met at all.
    const met = (reading.byOutcome[outcome] ?? 0) * p.reduce((sum, q, state) => sum + q * (model.prior[state] ?? 0), 0);
    if (met > most) {
      most = met;
      nearest = outcome;
    }
  }
  const sum = outcomes.reduce((total, outcome) => total + (reading.byOutcome[outcome] ?? 0), 0);
  return {
    check: rule.check,
    outcomes: nearest === undefined ? [] : [nearest],
    factor,
    measurement: rule.measurement,
    reading,
    ...(said === undefined ? {} : { agreement: (reading.byOutcome[said] ?? 0) / sum }),
  };
}

// Several words of the history: each is told independently with its odds, and how many are told says nothing. Given k of
// them, the chance of these k is the product of their odds over the sum of the products of all sets of k; a factor common
// to all odds cancels, so the probabilities of single words serve as odds.
function told(model: Model, said: readonly string[]): Float64Array {
  const factor = new Float64Array(model.prior.length);
  const columns = Object.values(model.likelihood.history ?? {});
  const own = said.map((word) => column(model, 'history', word));
  for (let state = 0; state < factor.length; state++) {
    const product = own.reduce((total, odds) => total * (odds[state] ?? 0), 1);
    const sums = [1];
    for (const odds of columns) {
      for (let k = Math.min(sums.length, said.length); k > 0; k--) {
        sums[k] = (sums[k] ?? 0) + (odds[state] ?? 0) * (sums[k - 1] ?? 0);
      }
    }
    factor[state] = product / (sums[said.length] ?? 1);
  }
  return factor;
}

// The same probabilities by another road: the published records summed state by state, as the definition says, with
// every set of words of the history written out. Slow, plain, and without a line of the core.
import {
  type CheckId,
  type Diagnosis,
  diagnose,
  listChecks,
  type Observations,
  type OutcomeId,
} from '@spindlewright/diagnosis';
import { listBesideSigns, listCauses, listLikelihoods } from '@spindlewright/diagnosis/data';
import fc from 'fast-check';
import { expect, it, vi } from 'vitest';
import { outcomesByCheck } from './generators.ts';

// A hundred cases a property, on a machine that may be busy.
vi.setConfig({ testTimeout: 60_000 });

const likelihoods = new Map(listLikelihoods().map((record) => [record.id, record.probability]));
const signs = listBesideSigns();
const prior = (beside: string): number => signs.find((sign) => sign.beside === beside)?.priorProbability ?? 0;

function chance(check: CheckId, outcome: string, kind: string, cause: string, present: readonly string[]): number {
  const plain = (wanted: string): number =>
    likelihoods.get(`${check}/${wanted}/${kind}/${cause}`) ?? likelihoods.get(`${check}/${wanted}/${kind}/any`) ?? 0;
  let chances = new Map((outcomesByCheck.get(check) ?? []).map((id): [string, number] => [id, plain(id)]));
  for (const sign of signs) {
    if (sign.check !== check || !present.includes(sign.beside)) continue;
    const moved = (chances.get(sign.from) ?? 0) * sign.probability;
    chances = new Map(
      [...chances].map(([id, p]) => [id, p - (id === sign.from ? moved : 0) + (id === sign.to ? moved : 0)]),
    );
  }
  return chances.get(outcome) ?? 0;
}

/** Chance that exactly these words are told, given that so many are: every set of that size written out. */
function chanceOfHistory(told: readonly string[], kind: string, cause: string): number {
  const words = outcomesByCheck.get('history') ?? [];
  const p = (word: string): number =>
    Math.max(likelihoods.get(`history/${word}/any/${cause}`) ?? 0, likelihoods.get(`history/${word}/${kind}/any`) ?? 0);
  let own = 0;
  let all = 0;
  for (let mask = 0; mask < 2 ** words.length; mask++) {
    const set = words.filter((_, index) => mask & (1 << index));
    if (set.length !== told.length) continue;
    const product = words.reduce((total, word) => total * (set.includes(word) ? p(word) : 1 - p(word)), 1);
    all += product;
    if (set.every((word) => told.includes(word))) own += product;
  }
  return own / all;
}

function bruteForce(observations: Observations): { probabilities: Map<string, number>; total: number } {
  const weights = new Map<string, number>();
  let total = 0;
  for (const { condition, spindleToo, cause, probability } of listCauses()) {
    const kind = spindleToo ? `${condition}/spindle-too` : condition;
    for (const present of [[], ['bearing-worn'], ['noise-elsewhere'], ['bearing-worn', 'noise-elsewhere']]) {
      let weight = probability;
      for (const beside of ['bearing-worn', 'noise-elsewhere']) {
        weight *= present.includes(beside) ? prior(beside) : 1 - prior(beside);
      }
      for (const [check, said] of Object.entries(observations) as [CheckId, OutcomeId | OutcomeId[]][]) {
        weight *= Array.isArray(said) ? chanceOfHistory(said, kind, cause) : chance(check, said, kind, cause, present);
      }
      total += weight;
      for (const id of [condition, `cause ${cause}`, ...present]) weights.set(id, (weights.get(id) ?? 0) + weight);
    }
  }
  return { probabilities: new Map([...weights].map(([id, weight]) => [id, weight / total])), total };
}

const observed = fc.record(
  Object.fromEntries(
    [...outcomesByCheck].map(([check, outcomes]) => [
      check,
      check === 'history'
        ? fc.uniqueArray(fc.constantFrom(...outcomes), { minLength: 1 })
        : fc.constantFrom(...outcomes),
    ]),
  ),
  { requiredKeys: [] },
) as fc.Arbitrary<Observations>;

/** A few answers only, so that something is left to ask. */
const few = fc
  .tuple(observed, fc.shuffledSubarray([...outcomesByCheck.keys()], { maxLength: 4 }))
  .map(
    ([observations, kept]): Observations =>
      Object.fromEntries(Object.entries(observations).filter(([check]) => kept.includes(check as CheckId))),
  );

it('the probabilities are those of the definition', () => {
  fc.assert(
    fc.property(observed, (observations) => {
      const { probabilities: expected } = bruteForce(observations);
      const { conditions, besides, causes } = diagnose({ joint: 'square-taper', observations });
      const found = [
        ...conditions.map(({ id, probability }) => [id, probability] as const),
        ...besides.map(({ id, probability }) => [id, probability] as const),
        ...causes.map(({ id, probability }) => [`cause ${id}`, probability] as const),
      ];
      // Sums and products of a few hundred doubles in another order.
      for (const [id, probability] of found) {
        expect(Math.abs(probability - (expected.get(id) ?? 0)), id).toBeLessThan(1e-11);
      }
    }),
    { numRuns: 60 },
  );
});

it('the gain of a check is the loss of the decision now minus its mean over the outcomes', () => {
  /** Least loss of an admissible action other than to take the arm off and look, which ends no search. */
  const lossOf = ({ actions }: Diagnosis): number =>
    Math.min(
      ...actions.flatMap((action) =>
        action.admissible && action.id !== 'remove-and-inspect' ? [action.expectedLossMinutes] : [],
      ),
    );
  const reachable = listChecks('square-taper').filter(({ access }) => access === 'any' || access === 'assembled');
  let compared = 0;
  fc.assert(
    fc.property(few, (observations) => {
      const now = diagnose({ joint: 'square-taper', observations });
      const { total } = bruteForce(observations);
      for (const { check, gain } of now.nextChecks) {
        // A check that has to come before another carries that other one's gain; the bolt, the play and the powder may.
        const handed = ['bolt-on-arrival', 'play-at-arm', 'fretting-debris'].includes(check);
        if (handed || !reachable.some(({ id }) => id === check)) continue;
        let after = 0;
        let contradicted = false;
        for (const outcome of outcomesByCheck.get(check) ?? []) {
          const told = { ...observations, [check]: check === 'history' ? [outcome] : outcome } as Observations;
          const then = diagnose({ joint: 'square-taper', observations: told });
          // A contradiction to come rules out riding too, which the gain leaves aside.
          if (then.contradictions.length > now.contradictions.length) contradicted = true;
          after += (bruteForce(told).total / total) * lossOf(then);
        }
        if (contradicted) continue;
        compared++;
        expect(gain, check).toBeCloseTo(lossOf(now) - after, 8);
      }
    }),
    { numRuns: 60 },
  );
  expect(compared).toBeGreaterThan(30);
});

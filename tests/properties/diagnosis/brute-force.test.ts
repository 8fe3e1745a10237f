// The same probabilities by another road: the published records summed state by state, as the definition says, with
// every set of words of the history written out. Slow, plain, and without a line of the core.
import {
  type CheckId,
  type Diagnosis,
  diagnose,
  type JointId,
  listChecks,
  type Observations,
  type OutcomeId,
} from '@spindlewright/diagnosis';
import { listBesideSigns, listCauses, listLikelihoods } from '@spindlewright/diagnosis/data';
import fc from 'fast-check';
import { expect, it, vi } from 'vitest';
import { FAMILY_JOINTS, outcomesByCheck } from './generators.ts';

// A hundred cases a property, on a machine that may be busy.
vi.setConfig({ testTimeout: 60_000 });

/** The published records of a joint. */
interface Records {
  joint: JointId;
  outcomes: ReadonlyMap<CheckId, readonly OutcomeId[]>;
  likelihoods: ReadonlyMap<string, number>;
  signs: ReturnType<typeof listBesideSigns>;
  pairs: ReturnType<typeof listCauses>;
}

const recordsOf = (joint: JointId): Records => ({
  joint,
  outcomes: outcomesByCheck(joint),
  likelihoods: new Map(listLikelihoods(joint).map((record) => [record.id, record.probability])),
  signs: listBesideSigns(joint),
  pairs: listCauses({ joint }),
});

function chance(
  { outcomes, likelihoods, signs }: Records,
  check: CheckId,
  outcome: string,
  kind: string,
  cause: string,
  present: readonly string[],
): number {
  const plain = (wanted: string): number =>
    likelihoods.get(`${check}/${wanted}/${kind}/${cause}`) ?? likelihoods.get(`${check}/${wanted}/${kind}/any`) ?? 0;
  let chances = new Map((outcomes.get(check) ?? []).map((id): [string, number] => [id, plain(id)]));
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
function chanceOfHistory(
  { outcomes, likelihoods }: Records,
  told: readonly string[],
  kind: string,
  cause: string,
): number {
  const words = outcomes.get('history') ?? [];
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

function bruteForce(
  records: Records,
  observations: Observations,
): { probabilities: Map<string, number>; total: number } {
  const weights = new Map<string, number>();
  let total = 0;
  for (const { condition, spindleToo, cause, probability } of records.pairs) {
    const kind = spindleToo ? `${condition}/spindle-too` : condition;
    for (const present of [[], ['bearing-worn'], ['noise-elsewhere'], ['bearing-worn', 'noise-elsewhere']]) {
      let weight = probability;
      for (const beside of ['bearing-worn', 'noise-elsewhere']) {
        const prior = records.signs.find((sign) => sign.beside === beside)?.priorProbability ?? 0;
        weight *= present.includes(beside) ? prior : 1 - prior;
      }
      for (const [check, said] of Object.entries(observations) as [CheckId, OutcomeId | OutcomeId[]][]) {
        weight *= Array.isArray(said)
          ? chanceOfHistory(records, said, kind, cause)
          : chance(records, check, said, kind, cause, present);
      }
      total += weight;
      for (const id of [condition, `cause ${cause}`, ...present]) weights.set(id, (weights.get(id) ?? 0) + weight);
    }
  }
  return { probabilities: new Map([...weights].map(([id, weight]) => [id, weight / total])), total };
}

const observed = (outcomes: Records['outcomes']) =>
  fc.record(
    Object.fromEntries(
      [...outcomes].map(([check, list]) => [
        check,
        check === 'history' ? fc.uniqueArray(fc.constantFrom(...list), { minLength: 1 }) : fc.constantFrom(...list),
      ]),
    ),
    { requiredKeys: [] },
  ) as fc.Arbitrary<Observations>;

/** A few answers only, so that something is left to ask. */
const few = (outcomes: Records['outcomes']) =>
  fc
    .tuple(observed(outcomes), fc.shuffledSubarray([...outcomes.keys()], { maxLength: 4 }))
    .map(
      ([observations, kept]): Observations =>
        Object.fromEntries(Object.entries(observations).filter(([check]) => kept.includes(check as CheckId))),
    );

it.each(FAMILY_JOINTS)('%s: the probabilities are those of the definition', (joint) => {
  const records = recordsOf(joint);
  fc.assert(
    fc.property(observed(records.outcomes), (observations) => {
      const { probabilities: expected } = bruteForce(records, observations);
      const { conditions, besides, causes } = diagnose({ joint, observations });
      const found = [
        ...conditions.map(({ id, probability }) => [id, probability] as const),
        ...besides.map(({ id, probability }) => [id, probability] as const),
        ...causes.map(({ id, probability }) => [`cause ${id}`, probability] as const),
      ];
      // Nothing is left out and nothing else comes in.
      expect(new Set(found.map(([id]) => id))).toEqual(
        new Set([...expected.keys(), 'bearing-worn', 'noise-elsewhere']),
      );
      // Sums and products of a few hundred doubles in another order.
      for (const [id, probability] of found) {
        expect(Math.abs(probability - (expected.get(id) ?? 0)), id).toBeLessThan(1e-11);
      }
    }),
    { numRuns: 30 },
  );
});

it.each(FAMILY_JOINTS)('%s: the gain of a check is the loss now minus its mean over the outcomes', (joint) => {
  const records = recordsOf(joint);
  /** Least loss of an admissible action other than to take the arm off and look, which ends no search. */
  const lossOf = ({ actions }: Diagnosis): number =>
    Math.min(
      ...actions.flatMap((action) =>
        action.admissible && action.id !== 'remove-and-inspect' ? [action.expectedLossMinutes] : [],
      ),
    );
  const ridingOf = ({ actions }: Diagnosis): number =>
    actions.find(({ id }) => id === 'ride')?.expectedLossMinutes ?? Number.NaN;
  const reachable = listChecks(joint).filter(({ access }) => access === 'any' || access === 'assembled');
  let compared = 0;
  fc.assert(
    fc.property(few(records.outcomes), (observations) => {
      const now = diagnose({ joint, observations });
      const { total } = bruteForce(records, observations);
      for (const { check, gain } of now.nextChecks) {
        // A check that has to come before another carries that other one's gain.
        const handed = (reachable.find(({ id }) => id === check)?.before.length ?? 0) > 0;
        if (handed || !reachable.some(({ id }) => id === check)) continue;
        let after = 0;
        let nearer = 0;
        let contradicted = false;
        for (const outcome of records.outcomes.get(check) ?? []) {
          const told = { ...observations, [check]: check === 'history' ? [outcome] : outcome } as Observations;
          const then = diagnose({ joint, observations: told });
          // A contradiction to come rules out riding too, which the gain leaves aside.
          if (then.contradictions.length > now.contradictions.length) contradicted = true;
          const share = bruteForce(records, told).total / total;
          after += share * lossOf(then);
          nearer += share * Math.max(0, ridingOf(now) - ridingOf(then));
        }
        if (contradicted) continue;
        compared++;
        // Where nothing is decided and no check alone decides: what the check takes off the loss of riding if all is well.
        const isNearing = now.action === 'remove-and-inspect' && lossOf(now) - after <= 1e-3;
        expect(gain, check).toBeCloseTo(isNearing ? nearer : lossOf(now) - after, 8);
      }
    }),
    { numRuns: 40 },
  );
  expect(compared).toBeGreaterThan(5);
});

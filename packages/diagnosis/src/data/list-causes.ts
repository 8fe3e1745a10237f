import { checkInput } from '@spindlewright/quantity';
import { checkJoint } from '../check-case.ts';
import { CAUSES } from '../ids.ts';
import type { CauseId, ConditionId, JointId, KindId, Side } from '../types.ts';
import type { SideSource } from './families.ts';
import { conditionOf, familyFor, SCALE } from './rows.ts';

/** How often a cause is at work and leads to one condition, before anything is looked at. */
export interface CauseRecord {
  /** Stable id: cause and condition joined by a slash. */
  id: string;
  /** The cause. */
  cause: CauseId;
  /** What it leads to. */
  condition: ConditionId;
  /** True for the kind of `bore-deformed` in which the spindle is worn too. */
  spindleToo: boolean;
  /** Probability of the pair, 0 to 1; all pairs sum to 1. */
  probability: number;
  /** Always `judgement`. */
  standing: 'judgement';
  /** Why the cause is as frequent as it is. */
  reason: string;
  /** Ids in the register of sources that name the cause. */
  sources: readonly string[];
}

/**
 * Lists the prior probability of every pair of cause and condition.
 *
 * @remarks
 * Formula: P(cause) times the number of the condition's word over the sum of the words of that cause; on a side, times
 * the factors of the side, and all divided by their sum. Pairs that are not listed cannot be: a condition is named under
 * every cause that may lead to it.
 *
 * Validity: cranks that are brought with a complaint or for a check. Priors of a family that leaves causes out are divided by
 * their sum.
 *
 * Accuracy: judgement; no counted cases are known.
 *
 * @param input - `joint`, the square taper when left out; `side` of the bicycle, neither in particular when left out.
 * @returns One record a pair, in the order of the causes.
 * @throws {@link DomainError} for a joint that is unknown or not modelled and an unknown side.
 * @example
 * ```ts
 * import { listCauses } from '@spindlewright/diagnosis/data';
 * const all = listCauses({ joint: 'spline-10' }).reduce((sum, record) => sum + record.probability, 0);
 * all.toFixed(9); // => '1.000000000'
 * ```
 * @see The raw files `families/*.json` of this package.
 */
export function listCauses(input: { joint?: JointId; side?: Side } = {}): CauseRecord[] {
  const where = 'listCauses';
  const { joint = 'square-taper', side } = input;
  checkJoint(where, joint);
  checkInput({ where, value: side === undefined ? {} : { side }, fields: { side: SIDE } });
  const family = familyFor(joint);
  const tilt: Pick<SideSource, 'causes' | 'conditions'> =
    side === undefined ? { causes: {}, conditions: {} } : family.sides[side];
  const records = CAUSES.flatMap((cause) => {
    const entry = family.causes[cause];
    if (entry === undefined) return [];
    const words = Object.entries(entry.conditions) as [KindId, keyof typeof SCALE][];
    const sum = words.reduce((total, [, word]) => total + SCALE[word], 0);
    return words.map(
      ([kind, word]): CauseRecord => ({
        id: `${cause}/${kind}`,
        cause,
        condition: conditionOf(kind),
        spindleToo: conditionOf(kind) !== kind,
        probability: (entry.prior * (tilt.causes[cause] ?? 1) * (tilt.conditions[kind] ?? 1) * SCALE[word]) / sum,
        standing: 'judgement',
        reason: entry.reason,
        sources: entry.sources ?? [],
      }),
    );
  });
  const total = records.reduce((sum, { probability }) => sum + probability, 0);
  return records.map((record) => ({ ...record, probability: record.probability / total }));
}

const SIDE = { type: 'choice', values: ['drive', 'non-drive'], optional: true } as const;

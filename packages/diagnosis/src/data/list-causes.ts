import { CAUSES } from '../ids.ts';
import { causePairs, conditionOf } from '../model.ts';
import { SQUARE_TAPER } from '../model-data.ts';
import type { CauseId, ConditionId, Side } from '../types.ts';
import { REASONS } from './reasons.ts';

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
 * Validity: cranks that are brought with a complaint or for a check, square taper.
 *
 * Accuracy: judgement; no counted cases are known.
 *
 * @param side - Side of the bicycle; neither in particular when left out.
 * @returns One record a pair, in the order of the causes.
 * @throws Nothing.
 * @example
 * ```ts
 * import { listCauses } from '@spindlewright/diagnosis/data';
 * const all = listCauses().reduce((sum, record) => sum + record.probability, 0);
 * all.toFixed(9); // => '1.000000000'
 * ```
 * @see The raw files `square-taper.json` and `square-taper-reasons.json` of this package.
 */
export function listCauses(side?: Side): CauseRecord[] {
  return causePairs(SQUARE_TAPER, side)
    .map(
      ({ causeId, kindId, probability }): CauseRecord => ({
        id: `${causeId}/${kindId}`,
        cause: causeId,
        condition: conditionOf(kindId),
        spindleToo: conditionOf(kindId) !== kindId,
        probability,
        standing: 'judgement',
        reason: REASONS[`cause/${causeId}`]?.reason ?? '',
        sources: REASONS[`cause/${causeId}`]?.sources ?? [],
      }),
    )
    .sort((a, b) => CAUSES.indexOf(a.cause) - CAUSES.indexOf(b.cause));
}

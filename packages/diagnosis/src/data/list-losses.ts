import { ACTIONS, BESIDES, KINDS } from '../ids.ts';
import { conditionOf } from '../model.ts';
import { jointLoss, LOSSES } from '../model-data.ts';
import type { ActionId, BesideId, ConditionId } from '../types.ts';
import { LOSS_REASONS } from './reasons.ts';

/** What an action costs when a condition holds. */
export interface LossRecord {
  /** Stable id: action and condition joined by a slash. */
  id: string;
  /** The action. */
  action: ActionId;
  /** The condition of the joint, or what holds beside it. */
  condition: ConditionId | BesideId;
  /** True for the kind of `bore-deformed` in which the spindle is worn too. */
  spindleToo: boolean;
  /** Loss in minutes of workshop time, at least 0; beside the joint: what is added when it holds. */
  lossMinutes: number;
  /** Beside the joint: what is added when it does not hold, in minutes, at least 0. */
  needlessMinutes: number;
  /** Always `judgement`. */
  standing: 'judgement';
  /** Why. */
  reason: string;
}

/**
 * Lists the loss of every action under every condition: the table by which actions are chosen.
 *
 * @remarks
 * Formula: expected loss = sum of P(condition) loss + for each thing beside the joint P loss + (1 - P) needless loss.
 *
 * Validity: riding is left out of the choice above one chance in a hundred of an unsafe condition, with any sign of
 * danger in sight and while answers contradict each other, whatever the table says.
 *
 * Accuracy: judgement. One unit is a minute of workshop time, parts and risk turned into such minutes; riding an unsafe
 * joint costs 1500, more than ten times any needless work or part.
 *
 * @returns One record for each action and condition.
 * @throws Nothing.
 * @example
 * ```ts
 * import { listLosses } from '@spindlewright/diagnosis/data';
 * listLosses().find(({ id }) => id === 'ride/bore-deformed')?.lossMinutes; // => 1500
 * ```
 * @see The raw files `losses.json` and `losses-reasons.json` of this package.
 */
export function listLosses(): LossRecord[] {
  return ACTIONS.flatMap((action) => [
    ...KINDS.map((kind) => ({
      id: `${action}/${kind}`,
      action,
      condition: conditionOf(kind),
      spindleToo: conditionOf(kind) !== kind,
      lossMinutes: jointLoss(action, kind),
      needlessMinutes: 0,
      standing: 'judgement' as const,
      reason: LOSS_REASONS.actions[action],
    })),
    ...BESIDES.map((beside) => ({
      id: `${action}/${beside}`,
      action,
      condition: beside,
      spindleToo: false,
      lossMinutes: LOSSES.besides[beside].cured.includes(action) ? 0 : LOSSES.besides[beside].left,
      needlessMinutes: LOSSES.besides[beside].needless[action] ?? 0,
      standing: 'judgement' as const,
      reason: LOSS_REASONS.besides[beside],
    })),
  ]);
}

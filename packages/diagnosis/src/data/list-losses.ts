import lossFile from '../../data/losses.json' with { type: 'json' };
import { checkJoint } from '../check-case.ts';
import { ACTIONS, BESIDES } from '../ids.ts';
import type { ActionId, BesideId, ConditionId, JointId } from '../types.ts';
import { LOSS_REASONS } from './reasons.ts';
import { conditionOf, familyFor, kindsOf } from './rows.ts';

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
 * joint costs 800, more than ten times any needless work or part.
 *
 * @param joint - Id of a joint that can be diagnosed; the square taper when left out.
 * @returns One record for each action and condition.
 * @throws {@link DomainError} for a joint that is unknown or not modelled.
 * @example
 * ```ts
 * import { listLosses } from '@spindlewright/diagnosis/data';
 * listLosses().find(({ id }) => id === 'ride/bore-deformed')?.lossMinutes; // => 1500
 * ```
 * @see The raw files `losses.json`, `losses-reasons.json` and `families/*.json` of this package.
 */
export function listLosses(joint: JointId = 'square-taper'): LossRecord[] {
  checkJoint('listLosses', joint);
  const family = familyFor(joint);
  return ACTIONS.filter((action) => !family.noActions.includes(action)).flatMap((action) => {
    const common = lossFile.actions[action].joint;
    const known: Readonly<Record<string, number>> = { ...common, ...family.losses[action] };
    return [
      ...kindsOf(family).map((kind) => ({
        id: `${action}/${kind}`,
        action,
        condition: conditionOf(kind),
        spindleToo: conditionOf(kind) !== kind,
        lossMinutes: known[kind] ?? common.default,
        needlessMinutes: 0,
        standing: 'judgement' as const,
        reason: LOSS_REASONS.actions[action],
      })),
      ...BESIDES.map((beside) => {
        const { left, cured, needless } = lossFile.besides[beside];
        const spared: Readonly<Record<string, number>> = needless;
        return {
          id: `${action}/${beside}`,
          action,
          condition: beside,
          spindleToo: false,
          lossMinutes: cured.includes(action) ? 0 : left,
          needlessMinutes: spared[action] ?? 0,
          standing: 'judgement' as const,
          reason: LOSS_REASONS.besides[beside],
        };
      }),
    ];
  });
}

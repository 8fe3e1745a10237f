import { ACTIONS, BESIDES, CONDITIONS } from './ids.ts';
import { words } from './messages/words.ts';
import { jointLoss, LOSSES } from './model-data.ts';
import type { ActionId, BesideId, ConditionId } from './types.ts';

/** A condition of the joint, or something that may hold beside it. */
export interface ConditionDescription {
  /** Id of the condition. */
  id: ConditionId | BesideId;
  /** True for what can hold beside any condition of the joint. */
  beside: boolean;
  /** The action that puts it right, were it certain. */
  action: ActionId;
  /** Key of its words in a table of messages. */
  code: string;
  /** English words. */
  text: string;
}

/**
 * Lists what can be the matter with a joint and what can hold beside it, each with the action that puts it right.
 *
 * @remarks
 * Formula: the action is the one with the smallest loss in the row of the condition.
 *
 * Validity: every condition of the package.
 *
 * Accuracy: exact; the loss table is judgement.
 *
 * @returns The conditions in the order of the ids, those beside the joint last.
 * @throws Nothing.
 * @example
 * ```ts
 * import { listConditions } from '@spindlewright/diagnosis';
 * listConditions().find((condition) => condition.id === 'bore-deformed')?.action; // => 'replace-arm'
 * ```
 * @see The data file `losses.json` of this package.
 */
export function listConditions(): ConditionDescription[] {
  const joint = CONDITIONS.map((id) => {
    const [first = 'ride', ...others] = ACTIONS;
    const action = others.reduce<ActionId>(
      (best, other) => (jointLoss(other, id) < jointLoss(best, id) ? other : best),
      first,
    );
    const code = `condition-${id}`;
    return { id, beside: false, action, code, text: words[code] ?? id };
  });
  const besides = BESIDES.map((id) => {
    const action: ActionId = LOSSES.besides[id].cured[0] ?? 'remove-and-inspect';
    const code = `beside-${id}`;
    return { id, beside: true, action, code, text: words[code] ?? id };
  });
  return [...joint, ...besides];
}

import lossFile from '../data/losses.json' with { type: 'json' };
import { checkJoint } from './check-case.ts';
import { BESIDES, CONDITIONS } from './ids.ts';
import { words } from './messages/words.ts';
import { modelFor } from './model.ts';
import type { ActionId, BesideId, ConditionId, JointId } from './types.ts';

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
 * Formula: the action is the one with the smallest loss in the row of the condition, of those that make sense at the joint.
 *
 * Validity: every condition of the package, with the actions of the square taper, or those that can be at one joint.
 *
 * Accuracy: exact; the loss table is judgement.
 *
 * @param joint - Id of a joint that can be diagnosed; every condition when left out.
 * @returns The conditions in the order of the ids, those beside the joint last.
 * @throws {@link DomainError} for a joint that is unknown or not modelled.
 * @example
 * ```ts
 * import { listConditions } from '@spindlewright/diagnosis';
 * listConditions().find((condition) => condition.id === 'bore-deformed')?.action; // => 'replace-arm'
 * ```
 * @see The data files `losses.json` and `families/*.json` of this package.
 */
export function listConditions(joint?: JointId): ConditionDescription[] {
  if (joint !== undefined) checkJoint('listConditions', joint);
  const model = modelFor(joint ?? 'square-taper', undefined);
  const list = CONDITIONS.flatMap((id, kind) => {
    if (joint !== undefined && kindAt(model.condition, model.kind, kind) === undefined) return [];
    const place = kindAt(model.condition, model.kind, kind) ?? kind;
    const [first = 'ride', ...others] = model.actions;
    const loss = (action: ActionId): number => model.rules[action].losses[place] ?? 0;
    const action = others.reduce((best, other) => (loss(other) < loss(best) ? other : best), first);
    const code = `condition-${id}`;
    return [{ id, beside: false, action, code, text: words[code] ?? id }];
  });
  const besides = BESIDES.map((id) => {
    const action = (lossFile.besides[id].cured[0] ?? 'remove-and-inspect') as ActionId;
    const code = `beside-${id}`;
    return { id, beside: true, action, code, text: words[code] ?? id };
  });
  return [...list, ...besides];
}

/** Place of the plainest kind of a condition that the joint can have: where both parts wear at once there is only one. */
const kindAt = (conditions: Uint8Array, kinds: Uint8Array, condition: number): number | undefined =>
  kinds
    .filter((_, state) => conditions[state] === condition)
    .sort()
    .at(0);

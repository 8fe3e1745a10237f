import { ACTIONS } from './ids.ts';
import { words } from './messages/words.ts';
import type { ActionId } from './types.ts';
import { WORKSHOP } from './workshop-data.ts';

/** An action and the part that it needs. */
export interface ActionDescription {
  /** Id of the action. */
  id: ActionId;
  /** The part to get, by id: none, seat, arm, spindle, arm-and-spindle, arm-or-spindle, fixing, bearing. */
  part: string;
  /** The part in English words; their key in a table of messages is `part-` and the id. */
  partText: string;
  /** Key of its words in a table of messages. */
  code: string;
  /** English words. */
  text: string;
}

/**
 * Lists what can be done, with the part each action needs.
 *
 * @remarks
 * Formula: none.
 *
 * Validity: every action of the package.
 *
 * Accuracy: exact.
 *
 * @returns The actions in the order of the ids.
 * @throws Nothing.
 * @example
 * ```ts
 * import { listActions } from '@spindlewright/diagnosis';
 * listActions().find((action) => action.id === 'replace-fixing')?.part; // => 'fixing'
 * ```
 * @see The data file `workshop.json` of this package.
 */
export function listActions(): ActionDescription[] {
  return ACTIONS.map((id) => {
    const code = `action-${id}`;
    const part = WORKSHOP.parts[id];
    return { id, part, partText: words[`part-${part}`] ?? part, code, text: words[code] ?? id };
  });
}

import { ACTIONS, CAUSES, NEED_KINDS } from './ids.ts';
import { NEED_ABOVE, NEEDS, NO_REPAIR } from './model.generated.ts';
import type { Model } from './model.ts';
import { letterOf } from './model-data.ts';
import type { ActionId, CauseId, NeedId, Probable, RepairNeed } from './types.ts';

/**
 * What the repair has to see to: a new arm on a foreign spindle fails again, one that is tightened as before too. Needs of
 * the action first, then those of every cause that is probable enough, most probable first; each once.
 */
export function repairNeedsOf(model: Model, action: ActionId, causes: readonly Probable<CauseId>[]): RepairNeed[] {
  const own = letterOf(ACTIONS.indexOf(action));
  if (NO_REPAIR.includes(own)) return [];
  const found: RepairNeed[] = [];
  const add = (letter: string, rest: Omit<RepairNeed, 'id' | 'kind'>): void => {
    for (const [need, code] of Object.entries(NEEDS) as [NeedId, string][]) {
      const id = (model.code.instead[need] as NeedId | undefined) ?? need;
      if (!code.includes(letter) || found.some((entry) => entry.id === id)) continue;
      found.push({ id, kind: NEED_KINDS[Number(code[0])] ?? 'use', ...rest });
    }
  };
  add(own, { probability: 1 });
  for (const { id: cause, probability } of causes) {
    if (probability >= NEED_ABOVE) add(letterOf(CAUSES.indexOf(cause)).toUpperCase(), { cause, probability });
  }
  return found;
}

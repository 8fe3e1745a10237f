import needFile from '../../data/needs.json' with { type: 'json' };
import type { ActionId, CauseId, FamilyId, NeedId, NeedKind } from '../types.ts';

/** What a repair has to see to, with its reason. */
export interface RepairNeedRecord {
  /** Id of the need. */
  id: NeedId;
  /** Whether it is about the new part, its fitting or its use. */
  kind: NeedKind;
  /** Causes that ask for it. */
  causes: readonly CauseId[];
  /** Actions that ask for it whatever the cause. */
  actions: readonly ActionId[];
  /** Families at which it stands for another need. */
  families: readonly FamilyId[];
  /** Always `judgement`. */
  standing: 'judgement';
  /** Why. */
  reason: string;
  /** Ids in the register of sources that point the same way. */
  sources: readonly string[];
}

/**
 * Lists what keeps a repair from failing as the joint did, with causes, actions and reasons.
 *
 * @remarks
 * Formula: a need is given with every cause of at least one chance in five, and with its actions always.
 *
 * Validity: repairs; riding, looking and servicing the bearing have none.
 *
 * Accuracy: judgement.
 *
 * @returns One record a need.
 * @throws Nothing.
 * @example
 * ```ts
 * import { listRepairNeeds } from '@spindlewright/diagnosis/data';
 * listRepairNeeds().find(({ id }) => id === 'measure-first')?.causes; // => ['mixed-interface']
 * ```
 * @see The raw file `needs.json` of this package.
 */
export function listRepairNeeds(): RepairNeedRecord[] {
  const askedBy = (table: Readonly<Record<string, readonly string[]>>, need: string): string[] =>
    Object.entries(table).flatMap(([id, needs]) => (needs.includes(need) ? [id] : []));
  const instead: Readonly<Record<string, Readonly<Record<string, string>>>> = needFile.instead;
  const needs: Readonly<Record<string, { kind: string; reason: string; sources?: readonly string[] }>> = needFile.needs;
  return Object.entries(needs).map(([id, { kind, reason, sources = [] }]) => {
    const families = Object.entries(instead).filter(([, changes]) => Object.values(changes).includes(id));
    const stoodFor = families.flatMap(([, changes]) => Object.keys(changes).filter((key) => changes[key] === id));
    const causes = [id, ...stoodFor].flatMap((need) => askedBy(needFile.byCause, need));
    return {
      id: id as NeedId,
      kind: kind as NeedKind,
      causes: [...new Set(causes)] as CauseId[],
      actions: askedBy(needFile.byAction, id) as ActionId[],
      families: families.map(([family]) => family as FamilyId),
      standing: 'judgement',
      reason,
      sources,
    };
  });
}

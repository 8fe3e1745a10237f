import { checkInput } from '@spindlewright/quantity';
import { neighbourRecords } from './neighbours/registry.generated.ts';
import type { Conflict } from './record.ts';
import { interfaceRecords } from './records/registry.generated.ts';

/** A subject on which sources disagree, with the records that it concerns. */
export interface ConflictEntry {
  /** The conflict, shared with its records. */
  conflict: Conflict;
  /** Ids of the records that hold it, in their order. */
  records: readonly string[];
}

/** What conflicts to list. */
export interface ConflictFilter {
  /** Only conflicts of the record of this id. */
  record?: string;
}

/**
 * Lists every subject on which the sources of the data disagree, each position apart.
 *
 * @remarks
 * Formula: none; a conflict that several records hold in the same words is listed once, with all of them. One that two
 * records hold under one id with positions of their own is listed for each.
 *
 * Validity: the records of this edition of the data.
 *
 * Accuracy: exact; nothing is merged, averaged or decided.
 *
 * @param filter - `record`: id of a joint or neighbour record; without it every conflict is listed.
 * @returns A new list; the conflicts in it are shared and must not be changed.
 * @throws {@link DomainError} for an unknown key or a record id that is no text.
 * @example
 * ```ts
 * import { listConflicts } from '@spindlewright/interfaces';
 * const [chainline] = listConflicts({ record: 'chainline-road-double' });
 * chainline?.conflict.positions.map(({ value }) => value?.value); // => [43.5, 45]
 * ```
 * @see The records themselves, `data/records/*.json` and `data/neighbours/*.json`.
 */
export function listConflicts(filter: ConflictFilter = {}): ConflictEntry[] {
  checkInput({
    where: 'listConflicts',
    value: filter,
    fields: { record: { type: 'text', optional: true } },
  });
  const entries = new Map<string, { conflict: Conflict; records: string[] }>();
  for (const { id, conflicts } of [...interfaceRecords, ...neighbourRecords]) {
    for (const conflict of conflicts) {
      // The records are plain data with keys in one order, so equal text is equal content.
      const key = JSON.stringify(conflict);
      const entry = entries.get(key);
      if (entry === undefined) entries.set(key, { conflict, records: [id] });
      else entry.records.push(id);
    }
  }
  const { record } = filter;
  return [...entries.values()].filter(({ records }) => record === undefined || records.includes(record));
}

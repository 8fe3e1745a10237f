import { checkInput } from '@spindlewright/quantity';
import { neighbourRecords } from './neighbours/registry.generated.ts';
import { interfaceRecords } from './records/registry.generated.ts';
import { type ThreadRow, threadRows } from './thread-rows.ts';

/** What threads to list. */
export interface ThreadFilter {
  /** Only threads that do this. */
  purpose?: ThreadRow['purpose'];
  /** Only threads of this hand. */
  hand?: 'right' | 'left';
  /** Only threads of this designation, such as `M22x1`. */
  designation?: string;
  /** Only threads of the record of this id. */
  record?: string;
}

/**
 * Lists the threads of every joint and of everything beside it, each with the record that holds it.
 *
 * @remarks
 * Formula: none; a thread is listed when it meets every part of the filter. The same thread stands once in each record
 * that uses it.
 *
 * Validity: the records of this edition of the data. Where sources give different diameters, the others stand in the
 * `alternatives` of the datum; where they give no pitch, there is none.
 *
 * Accuracy: exact; derived sizes of the basic profile are rounded to a tenth of a micrometre.
 *
 * @param filter - `purpose`, `hand`, `designation`, `record`; without any, every thread is listed.
 * @returns A new list of rows; the threads in them are shared with their records and must not be changed.
 * @throws {@link DomainError} for an unknown key or value.
 * @example
 * ```ts
 * import { listThreads } from '@spindlewright/interfaces';
 * const left = listThreads({ purpose: 'shell', hand: 'left' });
 * left.map(({ record }) => record); // => ['shell-bsc', 'shell-old-british', 'shell-swiss', 'shell-t47']
 * ```
 * @see Sources `thread-size-list`, `puller-threads-fr-wiki`, `shell-thread-page`.
 */
export function listThreads(filter: ThreadFilter = {}): ThreadRow[] {
  checkInput({
    where: 'listThreads',
    value: filter,
    fields: {
      purpose: { type: 'choice', values: ['fixing', 'puller', 'pedal', 'shell'], optional: true },
      hand: { type: 'choice', values: ['right', 'left'], optional: true },
      designation: { type: 'text', optional: true },
      record: { type: 'text', optional: true },
    },
  });
  const { purpose, hand, designation, record } = filter;
  return [...interfaceRecords, ...neighbourRecords]
    .flatMap(threadRows)
    .filter(
      (row) =>
        (purpose === undefined || row.purpose === purpose) &&
        (hand === undefined || row.thread.hand === hand) &&
        (designation === undefined || row.thread.designation === designation) &&
        (record === undefined || row.record === record),
    );
}

import { checkInput } from '@spindlewright/quantity';
import type { ConventionRecord, NeighbourKind, NeighbourRecord } from './neighbour.ts';
import { neighbourRecords } from './neighbours/registry.generated.ts';

/** What neighbour records to list. */
export interface NeighbourFilter {
  /** Only records of this kind. */
  kind?: NeighbourKind;
  /** Only conventions on this topic. */
  topic?: ConventionRecord['topic'];
}

const KINDS = [
  'shell-thread',
  'shell-bore',
  'fixing',
  'puller-thread',
  'pedal-thread',
  'bolt-circle',
  'convention',
] as const satisfies readonly NeighbourKind[];
const TOPICS = [
  'chainline',
  'spindle-length',
  'arm-length',
  'tread',
  'square-orientation',
] as const satisfies readonly ConventionRecord['topic'][];

/**
 * Lists the records of what stands beside the joint and has to match as well, in the order of their ids.
 *
 * @remarks
 * Formula: none; a record is listed when it meets every part of the filter.
 *
 * Validity: the records of this edition of the data.
 *
 * Accuracy: exact.
 *
 * @param filter - `kind` and `topic`; without either, every record is listed.
 * @returns A new list of the shared records, which must not be changed; empty when none meets the filter.
 * @throws {@link DomainError} for an unknown key or value.
 * @example
 * ```ts
 * import { listNeighbours } from '@spindlewright/interfaces';
 * listNeighbours({ kind: 'pedal-thread' }).map(({ id }) => id); // => ['pedal-1-2', 'pedal-14x1-25', 'pedal-9-16']
 * ```
 * @see The records themselves, `data/neighbours/*.json`.
 */
export function listNeighbours(filter: NeighbourFilter = {}): NeighbourRecord[] {
  checkInput({
    where: 'listNeighbours',
    value: filter,
    fields: {
      kind: { type: 'choice', values: KINDS, optional: true },
      topic: { type: 'choice', values: TOPICS, optional: true },
    },
  });
  const { kind, topic } = filter;
  return neighbourRecords.filter(
    (record) =>
      (kind === undefined || record.kind === kind) &&
      (topic === undefined || (record.kind === 'convention' && record.topic === topic)),
  );
}

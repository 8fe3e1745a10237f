import { DomainError, nearestName } from '@spindlewright/quantity';
import type { NeighbourRecord } from './neighbour.ts';
import { neighbourRecords, neighbourRegistry } from './neighbours/registry.generated.ts';

/**
 * Looks up by its id a record of what stands beside the joint: a shell, a fixing, a thread, a bolt circle, a convention.
 *
 * @remarks
 * Formula: none.
 *
 * Validity: ids that `listNeighbours` gives, and former ids of the same records. It loads every neighbour record; import
 * one by name from `@spindlewright/interfaces/records` where size counts.
 *
 * Accuracy: exact.
 *
 * @param id - Id such as `shell-bsc`.
 * @returns The record, shared: it must not be changed.
 * @throws {@link DomainError} for an unknown id, with the nearest one.
 * @example
 * ```ts
 * import { getNeighbour } from '@spindlewright/interfaces';
 * getNeighbour('bolt-circle-110x5').kind; // => 'bolt-circle'
 * ```
 * @see The records themselves, `data/neighbours/*.json`.
 */
export function getNeighbour(id: string): NeighbourRecord {
  const record = typeof id === 'string' && Object.hasOwn(neighbourRegistry, id) ? neighbourRegistry[id] : undefined;
  if (record !== undefined) return record;
  const known = neighbourRecords.map((candidate) => candidate.id);
  const nearest = typeof id === 'string' ? nearestName({ name: id, known }) : undefined;
  throw new DomainError('getNeighbour', [
    {
      path: 'id',
      received: typeof id === 'string' ? JSON.stringify(id) : typeof id,
      allowed: known.join(', '),
      ...(nearest === undefined ? {} : { nearest }),
    },
  ]);
}

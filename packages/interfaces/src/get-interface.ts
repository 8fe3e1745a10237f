import { DomainError, nearestName } from '@spindlewright/quantity';
import type { InterfaceRecord } from './record.ts';
import { interfaceRecords, registry } from './records/registry.generated.ts';

/**
 * Looks an interface record up by its id.
 *
 * @remarks
 * Formula: none.
 *
 * Validity: ids that `listInterfaces` gives, and former ids of the same records. It loads every record; import one by
 * name from `@spindlewright/interfaces/records` where size counts.
 *
 * Accuracy: exact.
 *
 * @param id - Id such as `square-taper-jis`.
 * @returns The record, shared: it must not be changed.
 * @throws {@link DomainError} for an unknown id, with the nearest one.
 * @example
 * ```ts
 * import { getInterface } from '@spindlewright/interfaces';
 * getInterface('square-taper-jis').family; // => 'square-taper'
 * ```
 * @see The records themselves, `data/records/*.json`.
 */
export function getInterface(id: string): InterfaceRecord {
  const record = typeof id === 'string' && Object.hasOwn(registry, id) ? registry[id] : undefined;
  if (record !== undefined) return record;
  const known = interfaceRecords.map((candidate) => candidate.id);
  const nearest = typeof id === 'string' ? nearestName({ name: id, known }) : undefined;
  throw new DomainError('getInterface', [
    {
      path: 'id',
      received: typeof id === 'string' ? JSON.stringify(id) : typeof id,
      allowed: known.join(', '),
      ...(nearest === undefined ? {} : { nearest }),
    },
  ]);
}

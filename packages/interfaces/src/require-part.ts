import { DomainError } from '@spindlewright/quantity';
import type { NeighbourRecord } from './neighbour.ts';
import type { InterfaceRecord } from './record.ts';
import { requireRecord } from './require-record.ts';

/** A record of a joint, or of a part beside it. @internal */
export type PartRecord = InterfaceRecord | NeighbourRecord;

/** Refuses what is neither the record of a joint nor that of a part beside it. @internal */
export function requirePart(where: string, path: string, value: unknown): asserts value is PartRecord {
  if (!isNeighbour(value)) {
    requireRecord(where, path, value);
    return;
  }
  if (value.kind !== 'convention') return;
  throw new DomainError(where, [
    {
      path,
      received: `the convention ${JSON.stringify(value.id)}`,
      allowed: 'the record of a part: a joint, shell, fixing, puller, pedal or bolt circle',
    },
  ]);
}

function isNeighbour(value: unknown): value is NeighbourRecord {
  if (typeof value !== 'object' || value === null) return false;
  const { id, kind, mating } = value as Record<string, unknown>;
  return typeof id === 'string' && typeof kind === 'string' && Array.isArray(mating);
}

import { DomainError, type DomainIssue } from '@spindlewright/quantity';
import type { InterfaceRecord } from './record.ts';

/** Refuses what is no record, an id given in its place above all. @internal */
export function requireRecord(where: string, path: string, value: unknown): asserts value is InterfaceRecord {
  if (isRecord(value)) return;
  const received =
    typeof value === 'string'
      ? JSON.stringify(value)
      : value === undefined
        ? 'nothing'
        : `a value of type ${typeof value}`;
  const issue: DomainIssue = { path, received, allowed: 'an interface record, such as getInterface(id) gives' };
  throw new DomainError(where, [issue]);
}

function isRecord(value: unknown): value is InterfaceRecord {
  if (typeof value !== 'object' || value === null) return false;
  const { id, family, geometry, mating } = value as Record<string, unknown>;
  return (
    typeof id === 'string' &&
    typeof family === 'string' &&
    typeof geometry === 'object' &&
    geometry !== null &&
    Array.isArray(mating)
  );
}

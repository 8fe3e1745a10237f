import {
  interfaceRecordSchema,
  neighbourRecordSchema,
  observationRecordSchema,
} from '@spindlewright/interfaces/schema';
import { listSources } from '@spindlewright/quantity/sources';
import type { z } from 'zod/v4';
import { jobSheetSchema } from '../../schema.ts';
import type { Fault } from './report.ts';

/** Faults of a record against the schema of its family or kind, and the sources that no register names. @internal */
export function recordFaults(data: unknown): { faults: Fault[]; cautions: string[] } {
  const has = (key: string): boolean => typeof data === 'object' && data !== null && Object.hasOwn(data, key);
  const schema = has('kind')
    ? neighbourRecordSchema
    : has('meanings')
      ? observationRecordSchema
      : interfaceRecordSchema;
  const known = new Set(listSources().map(({ id }) => id));
  const own = [...new Set(sourcesIn(data))].filter((id) => !known.has(id)).sort();
  const cautions =
    own.length === 0
      ? []
      : [`Sources that the register does not name: ${own.join(', ')}. Say in your own notes what they are.`];
  return { faults: schemaFaults(schema, data), cautions };
}

/** Faults of a sheet. @internal */
export const sheetFaults = (data: unknown): Fault[] => schemaFaults(jobSheetSchema, data);

function schemaFaults(schema: z.ZodType, data: unknown): Fault[] {
  const { error } = schema.safeParse(data);
  return (error?.issues ?? []).flatMap((issue) => {
    const path = pathOf(issue.path);
    if (issue.code === 'unrecognized_keys') {
      return issue.keys.map((key) => ({
        path: path === '' ? key : `${path}.${key}`,
        received: 'an unknown field',
        allowed: 'the fields of the form, and no other',
      }));
    }
    return [{ path, received: shown(at(data, issue.path)), allowed: plainWords(issue.message) }];
  });
}

/** What a schema says, in the words of the other faults. */
const plainWords = (message: string): string =>
  message
    .replace(/^Invalid (?:input|option|string): /, '')
    .replace(/^expected (?:one of )?/, '')
    .replace(/"\|"/g, '", "');

const pathOf = (path: readonly PropertyKey[]): string =>
  path.reduce<string>((text, key) => {
    if (typeof key === 'number') return `${text}[${key}]`;
    return text === '' ? String(key) : `${text}.${String(key)}`;
  }, '');

function at(data: unknown, path: readonly PropertyKey[]): unknown {
  let value = data;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return `a list of ${value.length}`;
  return typeof value === 'object' && value !== null ? 'an object' : JSON.stringify(value).slice(0, 60);
}

function sourcesIn(value: unknown, depth = 0): string[] {
  if (typeof value !== 'object' || value === null || depth > 40) return [];
  return Object.entries(value).flatMap(([key, item]) =>
    key === 'sources' && Array.isArray(item)
      ? item.filter((id): id is string => typeof id === 'string')
      : sourcesIn(item, depth + 1),
  );
}

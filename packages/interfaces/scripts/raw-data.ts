// Reads the raw data and refuses what does not have the form of its schema. Node only; no part of what is published.
import { readdirSync, readFileSync } from 'node:fs';
import { z } from 'zod/v4';
import type { IdentificationData } from '../src/identification-data.ts';
import type { MatingData } from '../src/mating-data.ts';
import type { NeighbourRecord } from '../src/neighbour.ts';
import type { ObservationRecord } from '../src/observation.ts';
import type { InterfaceRecord } from '../src/record.ts';
import {
  identificationDataSchema,
  interfaceRecordSchema,
  matingDataSchema,
  neighbourRecordSchema,
  observationRecordSchema,
} from '../src/schema.ts';

export const ROOT = new URL('../', import.meta.url);

/** Everything that is written by hand. */
export interface RawData {
  records: InterfaceRecord[];
  neighbours: NeighbourRecord[];
  observations: ObservationRecord[];
  identification: IdentificationData;
  mating: MatingData;
}

export const readRawData = (): RawData => ({
  records: readFolder('records', interfaceRecordSchema),
  neighbours: readFolder('neighbours', neighbourRecordSchema),
  observations: readFolder('observations', observationRecordSchema),
  identification: parse(identificationDataSchema, 'data/identification.json'),
  mating: parse(matingDataSchema, 'data/mating.json'),
});

function readFolder<T extends { id: string }>(folder: string, schema: z.ZodType<T>): T[] {
  const names = readdirSync(new URL(`data/${folder}/`, ROOT)).filter((name) => name.endsWith('.json'));
  const records = names.map((name) => {
    const record = parse(schema, `data/${folder}/${name}`);
    if (`${record.id}.json` !== name) throw new Error(`${name} holds the record ${record.id}`);
    return record;
  });
  return records.sort((one, other) => (one.id < other.id ? -1 : 1));
}

function parse<T>(schema: z.ZodType<T>, path: string): T {
  const raw: unknown = JSON.parse(readFileSync(new URL(path, ROOT), 'utf8'));
  const result = schema.safeParse(raw);
  if (!result.success) throw new Error(`${path}: ${z.prettifyError(result.error)}`);
  // What was read, not what the schema made of it: the keys keep the order of the file.
  return raw as T;
}

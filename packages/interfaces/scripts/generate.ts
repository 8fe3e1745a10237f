// Makes the typed modules, the registry and the table of numbers from the raw records; a unit test fails when they are
// stale. Node only; no part of what is published.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { z } from 'zod/v4';
import type { IdentificationData } from '../src/identification-data.ts';
import { type NumberRow, numberRows } from '../src/number-rows.ts';
import type { InterfaceFamily, InterfaceRecord } from '../src/record.ts';
import { identificationDataSchema, interfaceRecordSchema } from '../src/schema.ts';

const ROOT = new URL('../', import.meta.url);
const HEAD = '// Generated from the files in data/ by `npm run generate`; edit those.\n';

const TYPES: Record<InterfaceFamily, string> = {
  'square-taper': 'SquareTaperRecord',
  spline: 'SplineRecord',
  'face-spline': 'FaceSplineRecord',
  'through-spindle': 'ThroughSpindleRecord',
  cottered: 'CotteredRecord',
  'one-piece': 'OnePieceRecord',
};

/** The contents of every generated file of the package, by absolute path. */
export function interfaceFiles(): Map<string, string> {
  const records = readRecords();
  const identification = parse(identificationDataSchema, 'data/identification.json');
  const files: [string, string][] = [
    ...records.map((record): [string, string] => [`src/records/${record.id}.generated.ts`, recordModule(record)]),
    ['src/records/index.ts', indexModule(records)],
    ['src/records/registry.generated.ts', registryModule(records)],
    ['src/identification.generated.ts', identificationModule(identification)],
    ['data/numbers.csv', numbersCsv(records, identification)],
  ];
  return new Map(files.map(([path, text]) => [fileURLToPath(new URL(path, ROOT)), text]));
}

function readRecords(): InterfaceRecord[] {
  const names = readdirSync(new URL('data/records/', ROOT)).filter((name) => name.endsWith('.json'));
  return names.sort().map((name) => {
    const record = parse(interfaceRecordSchema, `data/records/${name}`);
    if (`${record.id}.json` !== name) throw new Error(`${name} holds the record ${record.id}`);
    return record;
  });
}

function parse<T>(schema: z.ZodType<T>, path: string): T {
  const raw: unknown = JSON.parse(readFileSync(new URL(path, ROOT), 'utf8'));
  const result = schema.safeParse(raw);
  if (!result.success) throw new Error(`${path}: ${z.prettifyError(result.error)}`);
  // What was read, not what the schema made of it: the keys keep the order of the file.
  return raw as T;
}

const nameOf = (id: string): string => id.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());

const literal = (value: unknown): string => JSON.stringify(value, null, 2);

function recordModule(record: InterfaceRecord): string {
  const type = TYPES[record.family];
  return `${HEAD}import type { ${type} } from '../record.ts';

/** ${record.title}. */
export const ${nameOf(record.id)}: ${type} = ${literal(record)};
`;
}

function indexModule(records: readonly InterfaceRecord[]): string {
  const lines = records.map(({ id }) => `export { ${nameOf(id)} } from './${id}.generated.ts';`);
  return `${HEAD}/**
 * Every interface record by its own name, so that one record costs no more than itself.
 *
 * @packageDocumentation
 */
${lines.join('\n')}
`;
}

function registryModule(records: readonly InterfaceRecord[]): string {
  const imports = records.map(({ id }) => `import { ${nameOf(id)} } from './${id}.generated.ts';`);
  const entries = records.flatMap(({ id, aliases }) =>
    [id, ...aliases].map((name) => `  ${JSON.stringify(name)}: ${nameOf(id)},`),
  );
  return `${HEAD}import type { InterfaceRecord } from '../record.ts';
${imports.join('\n')}

/** Records by id, former ids included. */
export const registry: Readonly<Record<string, InterfaceRecord>> = {
${entries.join('\n')}
};

/** Every record, in the order of the ids. */
export const interfaceRecords: readonly InterfaceRecord[] = [
${records.map(({ id }) => `  ${nameOf(id)},`).join('\n')}
];
`;
}

function identificationModule(data: IdentificationData): string {
  return `${HEAD}import type { IdentificationData } from './identification-data.ts';

/** Judgements behind the identification of a square. */
export const identificationData: IdentificationData = ${literal(data)};
`;
}

const COLUMNS = ['rowId', 'record', 'path', 'value', 'unit', 'lower', 'upper', 'standing', 'sources', 'set'] as const;

function numbersCsv(records: readonly InterfaceRecord[], identification: IdentificationData): string {
  const rows = [
    ...numberRows({ name: 'identification', data: identification }),
    ...records.flatMap((record) => numberRows({ name: record.id, data: record })),
  ];
  const cell = (row: NumberRow, column: (typeof COLUMNS)[number]): string => {
    const value = row[column];
    const text = value === undefined ? '' : Array.isArray(value) ? value.join(';') : String(value);
    return /[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
  };
  const lines = rows.map((row) => COLUMNS.map((column) => cell(row, column)).join(','));
  return `${[COLUMNS.join(','), ...lines].join('\n')}\n`;
}

// Makes the typed modules, the registries, the JSON Schemas and the tables from the raw data; a unit test fails when they
// are stale. Node only; no part of what is published.
import { fileURLToPath } from 'node:url';
import type { NeighbourKind } from '../src/neighbour.ts';
import type { InterfaceFamily } from '../src/record.ts';
import { interfaceRecordJsonSchema, neighbourRecordJsonSchema, observationRecordJsonSchema } from '../src/schema.ts';
import { atlasTables } from './atlas.ts';
import { atlasFiles } from './atlas-files.ts';
import { type RawData, ROOT, readRawData } from './raw-data.ts';

const HEAD = '// Generated from the files in data/ by `npm run generate`; edit those.\n';

const FAMILY_TYPES: Record<InterfaceFamily, string> = {
  'square-taper': 'SquareTaperRecord',
  spline: 'SplineRecord',
  'face-spline': 'FaceSplineRecord',
  'through-spindle': 'ThroughSpindleRecord',
  cottered: 'CotteredRecord',
  'one-piece': 'OnePieceRecord',
};
const KIND_TYPES: Record<NeighbourKind, string> = {
  'shell-thread': 'ShellThreadRecord',
  'shell-bore': 'ShellBoreRecord',
  fixing: 'FixingRecord',
  'puller-thread': 'PullerThreadRecord',
  'pedal-thread': 'PedalThreadRecord',
  'bolt-circle': 'BoltCircleRecord',
  convention: 'ConventionRecord',
};

/** The contents of every generated file of the package, by absolute path. */
export function interfaceFiles(): Map<string, string> {
  const raw = readRawData();
  const { records, neighbours } = raw;
  const files: [string, string][] = [
    ...records.map((record): [string, string] => [
      `src/records/${record.id}.generated.ts`,
      recordModule(record, FAMILY_TYPES[record.family], '../record.ts'),
    ]),
    ...neighbours.map((record): [string, string] => [
      `src/neighbours/${record.id}.generated.ts`,
      recordModule(record, KIND_TYPES[record.kind], '../neighbour.ts'),
    ]),
    ['src/records/index.ts', indexModule(raw)],
    [
      'src/records/registry.generated.ts',
      registryModule(records, 'InterfaceRecord', '../record.ts', ['registry', 'interfaceRecords']),
    ],
    [
      'src/neighbours/registry.generated.ts',
      registryModule(neighbours, 'NeighbourRecord', '../neighbour.ts', ['neighbourRegistry', 'neighbourRecords']),
    ],
    [
      'src/identification.generated.ts',
      dataModule('identificationData', 'IdentificationData', './identification-data.ts', raw.identification, [
        'Judgements behind the identification of a square.',
      ]),
    ],
    [
      'src/mating.generated.ts',
      dataModule('matingData', 'MatingData', './mating-data.ts', raw.mating, [
        'Judgements behind the comparison of parts.',
      ]),
    ],
    ['src/observations.generated.ts', observationsModule(raw)],
    ['data/schemas/interface-record.schema.json', json(interfaceRecordJsonSchema())],
    ['data/schemas/neighbour-record.schema.json', json(neighbourRecordJsonSchema())],
    ['data/schemas/observation-record.schema.json', json(observationRecordJsonSchema())],
    ...atlasFiles(atlasTables(raw)),
  ];
  return new Map(files.map(([path, text]) => [fileURLToPath(new URL(path, ROOT)), text]));
}

/** Name by which a record is imported: its id in camel case. */
const nameOf = (id: string): string => id.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());

const literal = (value: unknown): string => JSON.stringify(value, null, 2);
const json = (value: unknown): string => `${literal(value)}\n`;

interface Named {
  id: string;
  aliases: readonly string[];
  title: string;
}

function recordModule(record: Named, type: string, from: string): string {
  return `${HEAD}import type { ${type} } from '${from}';

/** ${record.title}. */
export const ${nameOf(record.id)}: ${type} = ${literal(record)};
`;
}

/** Numbers in names by their size, as the linter sorts exports. */
const byName = <T extends Named>(records: readonly T[]): T[] =>
  [...records].sort((one, other) => one.id.localeCompare(other.id, 'en', { numeric: true }));

function indexModule({ records, neighbours }: RawData): string {
  const exported = (folder: string) => (record: Named) =>
    `export { ${nameOf(record.id)} } from '${folder}/${record.id}.generated.ts';`;
  return `${HEAD}/**
 * Every interface and neighbour record by its own name, so that one record costs no more than itself.
 *
 * @packageDocumentation
 */
${[...byName(neighbours).map(exported('../neighbours')), ...byName(records).map(exported('.'))].join('\n')}
`;
}

function registryModule(
  records: readonly Named[],
  type: string,
  from: string,
  [byId, all]: readonly [string, string],
): string {
  const imports = records.map(({ id }) => `import { ${nameOf(id)} } from './${id}.generated.ts';`);
  const entries = records.flatMap(({ id, aliases }) =>
    [id, ...aliases].map((name) => `  ${JSON.stringify(name)}: ${nameOf(id)},`),
  );
  return `${HEAD}import type { ${type} } from '${from}';
${imports.join('\n')}

/** Records by id, former ids included. */
export const ${byId}: Readonly<Record<string, ${type}>> = {
${entries.join('\n')}
};

/** Every record, in the order of the ids. */
export const ${all}: readonly ${type}[] = [
${records.map(({ id }) => `  ${nameOf(id)},`).join('\n')}
];
`;
}

function dataModule(name: string, type: string, from: string, data: unknown, [doc]: readonly [string]): string {
  return `${HEAD}import type { ${type} } from '${from}';

/** ${doc} */
export const ${name}: ${type} = ${literal(data)};
`;
}

function observationsModule({ observations }: RawData): string {
  return `${HEAD}import type { ObservationRecord } from './observation.ts';

/** What each observation means, for every joint and by family. */
export const observationRecords: readonly ObservationRecord[] = ${literal(observations)};
`;
}

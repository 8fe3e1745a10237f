// The tables of the data as files: CSV, JSON and a Data Package descriptor. Node only; no part of what is published.
import { dataEdition } from '../src/data-edition.ts';
import { version } from '../src/version.ts';
import type { AtlasCell, AtlasTable } from './atlas.ts';

const csvCell = (value: AtlasCell): string => {
  const text = value === null ? '' : String(value);
  return /[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
};

const csvOf = ({ fields, rows }: AtlasTable): string => {
  const columns = Object.keys(fields);
  const lines = rows.map((row) => columns.map((column) => csvCell(row[column] ?? null)).join(','));
  return `${[columns.join(','), ...lines].join('\n')}\n`;
};

/** One row a line, so that two editions can be compared by eye as well. */
const jsonOf = (tables: readonly AtlasTable[]): string => {
  const parts = tables.map(
    ({ name, rows }) =>
      `  ${JSON.stringify(name)}: [\n${rows.map((row) => `    ${JSON.stringify(row)}`).join(',\n')}\n  ]`,
  );
  return `{\n  "dataEdition": ${JSON.stringify(dataEdition)},\n${parts.join(',\n')}\n}\n`;
};

function descriptorOf(tables: readonly AtlasTable[]): string {
  const descriptor = {
    $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
    name: 'crank-interfaces',
    id: `urn:spindlewright:data:crank-interfaces:${dataEdition}`,
    title: 'Interfaces between crank arms and spindles, and what stands beside them',
    description:
      'How cranks have been joined to spindles and what a replacement has to match: each number with source, standing and conflicts.',
    version,
    dataEdition,
    licenses: [{ name: 'MIT', title: 'MIT License', path: 'https://opensource.org/license/mit' }],
    resources: tables.map(({ name, description, fields, foreignKeys }) => ({
      name,
      path: `${name}.csv`,
      type: 'table',
      description,
      scheme: 'file',
      format: 'csv',
      mediatype: 'text/csv',
      encoding: 'utf-8',
      schema: {
        fields: Object.entries(fields).map(([field, [type, text]]) => ({ name: field, type, description: text })),
        primaryKey: Object.keys(fields).slice(0, 1),
        missingValues: [''],
        ...(Object.keys(foreignKeys).length === 0
          ? {}
          : {
              foreignKeys: Object.entries(foreignKeys).map(([field, resource]) => ({
                fields: [field],
                reference: { resource, fields: ['id'] },
              })),
            }),
      },
    })),
  };
  return `${JSON.stringify(descriptor, null, 2)}\n`;
}

/** The files of the atlas, by path in the package. */
export const atlasFiles = (tables: readonly AtlasTable[]): [string, string][] => [
  ...tables.map((table): [string, string] => [`data/${table.name}.csv`, csvOf(table)]),
  ['data/atlas.json', jsonOf(tables)],
  ['data/datapackage.json', descriptorOf(tables)],
];

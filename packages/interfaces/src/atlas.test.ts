import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const read = (name: string): string => readFileSync(new URL(`../data/${name}`, import.meta.url), 'utf8');

interface Field {
  name: string;
  type: string;
  description: string;
}
interface Resource {
  name: string;
  path: string;
  schema: {
    fields: Field[];
    primaryKey: string[];
    foreignKeys?: { fields: string[]; reference: { resource: string; fields: string[] } }[];
  };
}
const descriptor = JSON.parse(read('datapackage.json')) as { name: string; resources: Resource[]; licenses: object[] };
const atlas = JSON.parse(read('atlas.json')) as Record<string, Record<string, unknown>[]>;

/** Cells of a CSV text after RFC 4180, as a spreadsheet reads them. */
function cellsOf(text: string): string[][] {
  const rows: string[][] = [[]];
  const pattern = /(?:"((?:[^"]|"")*)"|([^",\n]*))(,|\n)/g;
  for (const [, quoted, plain, end] of text.matchAll(pattern)) {
    rows.at(-1)?.push(quoted === undefined ? (plain ?? '') : quoted.replaceAll('""', '"'));
    if (end === '\n') rows.push([]);
  }
  rows.pop();
  return rows;
}

describe('the data package', () => {
  it('names itself, its licence and its tables as the open standard asks', () => {
    expect(descriptor.name).toMatch(/^[a-z0-9._-]+$/);
    expect(descriptor.licenses).toEqual([expect.objectContaining({ name: 'MIT' })]);
    const names = descriptor.resources.map(({ name }) => name);
    expect(names).toEqual(['records', 'numbers', 'threads', 'conflicts', 'claims', 'observations', 'register']);
    expect(Object.keys(atlas)).toEqual(['dataEdition', ...names]);
  });

  describe.each(descriptor.resources)('table $name', ({ name, path, schema }) => {
    const [header = [], ...rows] = cellsOf(read(path));
    const column = (field: string): string[] => rows.map((row) => row[header.indexOf(field)] ?? '');

    it('has the columns that the descriptor names, each with a meaning', () => {
      expect(header).toEqual(schema.fields.map((field) => field.name));
      expect(schema.fields.every(({ description }) => description.length > 3)).toBe(true);
      expect(rows.every((row) => row.length === header.length)).toBe(true);
    });

    it('has a key of its own in every row', () => {
      expect(schema.primaryKey).toEqual([header[0]]);
      const keys = column(header[0] ?? '');
      expect(new Set(keys).size).toBe(keys.length);
      expect(keys.length).toBeGreaterThan(10);
      expect(keys).not.toContain('');
    });

    it('has cells of the stated type', () => {
      for (const { name: field, type } of schema.fields) {
        if (type === 'string') continue;
        const bad = column(field).filter((cell) => cell !== '' && !Number.isFinite(Number(cell)));
        expect(bad, field).toEqual([]);
      }
    });

    it('points at rows that exist', () => {
      for (const { fields, reference } of schema.foreignKeys ?? []) {
        const ids = new Set((atlas[reference.resource] ?? []).map((row) => row[reference.fields[0] ?? '']));
        for (const cell of column(fields[0] ?? '')) expect(ids.has(cell), cell).toBe(true);
      }
      const sources = new Set((atlas.register ?? []).map(({ id }) => id));
      const cited = header.includes('sources')
        ? column('sources').flatMap((cell) => cell.split(';').filter(Boolean))
        : [];
      expect(cited.filter((id) => !sources.has(id))).toEqual([]);
    });

    it('says the same as JSON', () => {
      const json = (atlas[name] ?? []).map((row) => header.map((field) => String(row[field] ?? '')));
      expect(json).toEqual(rows);
    });
  });
});

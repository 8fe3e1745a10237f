import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Datum } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { interfaceFiles } from '../scripts/generate.ts';
import {
  identificationData,
  interfaceRecords,
  matingData,
  neighbourRecords,
  numberRows,
  observationRecords,
} from './data.ts';
import type { Claim } from './record.ts';
import { squareTaperIso } from './records/square-taper-iso.generated.ts';
import { squareTaperJis } from './records/square-taper-jis.generated.ts';
import {
  identificationDataSchema,
  interfaceRecordJsonSchema,
  interfaceRecordSchema,
  matingDataSchema,
  neighbourRecordJsonSchema,
  neighbourRecordSchema,
  observationRecordJsonSchema,
  observationRecordSchema,
} from './schema.ts';

/** Every object of a tree with its path. */
function* objectsOf(node: unknown, path = ''): Generator<[string, Record<string, unknown>]> {
  if (typeof node !== 'object' || node === null) return;
  if (!Array.isArray(node)) yield [path, node as Record<string, unknown>];
  for (const [key, child] of Object.entries(node)) yield* objectsOf(child, `${path}/${key}`);
}

const trees: [string, object][] = [
  ['identification', identificationData],
  ['mating', matingData],
  ...interfaceRecords.map((record): [string, object] => [record.id, record]),
  ...neighbourRecords.map((record): [string, object] => [record.id, record]),
];
const allRows = trees.flatMap(([name, data]) => numberRows({ name, data }));
const text = (name: string): string => readFileSync(new URL(`../data/${name}`, import.meta.url), 'utf8');

describe('generated files', () => {
  const files = interfaceFiles();

  it.each([...files.keys()].map((path) => [path.split('/packages/')[1] ?? path, path]))(
    '%s is up to date',
    (_name, path) => {
      expect(readFileSync(path, 'utf8'), 'run `npm run generate`').toBe(files.get(path));
    },
  );

  it.each(['records', 'neighbours'])('leave no module of %s behind that has lost its raw file', (folder) => {
    const path = fileURLToPath(new URL(`./${folder}/`, import.meta.url));
    const left = readdirSync(path).filter((name) => !files.has(`${path}${name}`));
    expect(left).toEqual([]);
  });

  it('hold the table of numbers with one line a number', () => {
    const csv = text('numbers.csv');
    const [header, ...lines] = csv.trimEnd().split('\n');
    expect(header).toBe('rowId,record,path,value,unit,lower,upper,standing,sources,set');
    // No field of this table needs quotes, so a plain split reads it.
    expect(csv).not.toContain('"');
    const cells = new Map(lines.map((line) => [line.split(',')[0], line.split(',')]));
    expect(cells.size).toBe(allRows.length);
    for (const row of allRows) {
      const [, record, path, value, unit, lower, upper, standing, sources, set] = cells.get(row.rowId) ?? [];
      expect([record, path, Number(value), unit, standing, sources, set]).toEqual([
        row.record,
        row.path,
        row.value,
        row.unit,
        row.standing,
        row.sources.join(';'),
        row.set ?? '',
      ]);
      expect([lower, upper]).toEqual([String(row.lower ?? ''), String(row.upper ?? '')]);
    }
  });
});

describe('the count', () => {
  it('is of at least forty records and four hundred numbers that name a source', () => {
    expect(interfaceRecords.length + neighbourRecords.length).toBeGreaterThanOrEqual(40);
    expect(allRows.filter(({ sources }) => sources.length > 0).length).toBeGreaterThanOrEqual(400);
    // Repeats of one number in several records and numbers derived from others left out.
    const distinct = allRows
      .filter(({ standing, sources }) => standing !== 'derived' && sources.length > 0)
      .map(({ path, value, unit, sources }) => `${path.replace(/.*\./, '')} ${value} ${unit} ${sources.join()}`);
    expect(new Set(distinct).size).toBeGreaterThanOrEqual(200);
  });
});

describe('records', () => {
  it('are listed in the order of their ids', () => {
    for (const records of [interfaceRecords, neighbourRecords]) {
      const ids = records.map(({ id }) => id);
      expect([...ids].sort()).toEqual(ids);
    }
  });

  it('pass the schema, and fail it when a standing loses its source', () => {
    expect(identificationDataSchema.safeParse(identificationData).success).toBe(true);
    expect(matingDataSchema.safeParse(matingData).success).toBe(true);
    for (const record of observationRecords) expect(observationRecordSchema.safeParse(record).success).toBe(true);
    for (const record of neighbourRecords) {
      expect(neighbourRecordSchema.safeParse(record).success).toBe(true);
      expect(neighbourRecordSchema.safeParse({ ...record, colour: 'red' }).success).toBe(false);
      const unsourced = [{ id: 'x', statement: 'X.', standing: 'secondary', sources: [] }];
      expect(neighbourRecordSchema.safeParse({ ...record, claims: unsourced }).success).toBe(false);
    }
    for (const record of interfaceRecords) {
      expect(interfaceRecordSchema.safeParse(record).success).toBe(true);
      expect(interfaceRecordSchema.safeParse({ ...record, colour: 'red' }).success).toBe(false);
      const [first] = record.inspection;
      const unsourced = [{ ...first, standing: 'secondary', sources: [] }];
      expect(interfaceRecordSchema.safeParse({ ...record, inspection: unsourced }).success).toBe(false);
    }
    expect(interfaceRecordSchema.safeParse({ ...squareTaperJis, family: 'spline' }).success).toBe(false);
  });

  it('tie every number of a set to it, and give a set the same sources in both squares', () => {
    const sourcesOf = new Map<string, readonly string[]>();
    for (const record of [squareTaperIso, squareTaperJis]) {
      for (const set of record.geometry.sets) {
        const data = [set.acrossFlatsAtEndMm, set.faceAngleDeg, set.flatLengthMm].filter(
          (datum): datum is Datum => datum !== undefined,
        );
        for (const datum of data) {
          expect(datum.set).toBe(set.id);
          expect(datum.sources).toEqual(sourcesOf.get(set.id) ?? datum.sources);
          sourcesOf.set(set.id, datum.sources);
        }
      }
    }
    expect(sourcesOf.size).toBe(8);
  });

  it('say the same of a conflict that two records share', () => {
    for (const conflict of squareTaperJis.conflicts) {
      const other = squareTaperIso.conflicts.find(({ id }) => id === conflict.id);
      if (other !== undefined && conflict.id !== 'across-flats-at-end') expect(other).toEqual(conflict);
    }
    const ids = squareTaperIso.conflicts.map(({ id }) => id);
    expect(ids).toEqual(
      expect.arrayContaining(['mixed-arm-shift', 'steepness', 'reading-plane', 'lubrication-of-flats']),
    );
  });

  it('mark a belief without support, and no other claim', () => {
    const unsupported = trees.flatMap(([name, tree]) =>
      [...objectsOf(tree)].flatMap(([, node]) =>
        (node as unknown as Claim).support === 'none-found' ? [`${name}:${node.id}`] : [],
      ),
    );
    expect(unsupported).toEqual(['square-taper-iso:tapers-differ', 'square-taper-jis:tapers-differ']);
  });

  it('begin identification from priors that sum to one over the squares and the unlisted one', () => {
    const sum = identificationData.priors.reduce((total, { probability }) => total + probability.value, 0);
    expect(sum).toBeCloseTo(1, 12);
    // Squares without a published size of their own cannot be told by a reading.
    const squares = interfaceRecords.filter((one) => one.family === 'square-taper' && one.geometry.sets.length > 0);
    expect(identificationData.priors.map(({ id }) => id).sort()).toEqual([...squares.map(({ id }) => id), 'unlisted']);
  });

  it.each([
    ['interface-record', interfaceRecordJsonSchema, 6],
    ['neighbour-record', neighbourRecordJsonSchema, 7],
    ['observation-record', observationRecordJsonSchema, undefined],
  ] as const)('have the JSON Schema %s under its name, shipped as a file', (name, derive, kinds) => {
    const schema = derive();
    expect(schema.$id).toBe(`urn:spindlewright:schema:${name}`);
    expect((schema.oneOf as unknown[] | undefined)?.length).toBe(kinds);
    expect(JSON.parse(text(`schemas/${name}.schema.json`))).toEqual(schema);
  });
});

import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Datum } from '@spindlewright/quantity';
import { getSource } from '@spindlewright/quantity/sources';
import { describe, expect, it } from 'vitest';
import { interfaceFiles } from '../scripts/generate.ts';
import { dataEdition, identificationData, interfaceRecords, type NumberRow, numberRows } from './data.ts';
import type { Claim } from './record.ts';
import { squareTaperIso } from './records/square-taper-iso.generated.ts';
import { squareTaperJis } from './records/square-taper-jis.generated.ts';
import { identificationDataSchema, interfaceRecordJsonSchema, interfaceRecordSchema } from './schema.ts';

const trees: [string, object][] = [
  ['identification', identificationData],
  ...interfaceRecords.map((record): [string, object] => [record.id, record]),
];
const allRows = trees.flatMap(([name, data]) => numberRows({ name, data }));

/** Every object of a tree with its path. */
function* objectsOf(node: unknown, path = ''): Generator<[string, Record<string, unknown>]> {
  if (typeof node !== 'object' || node === null) return;
  if (!Array.isArray(node)) yield [path, node as Record<string, unknown>];
  for (const [key, child] of Object.entries(node)) yield* objectsOf(child, `${path}/${key}`);
}

const isDatum = (node: Record<string, unknown>): boolean => 'value' in node && 'unit' in node;

describe('generated files', () => {
  const files = interfaceFiles();

  it.each([...files.keys()].map((path) => [path.split('/packages/')[1] ?? path, path]))(
    '%s is up to date',
    (_name, path) => {
      expect(readFileSync(path, 'utf8'), 'run `npm run generate`').toBe(files.get(path));
    },
  );

  it('leave no record behind that has lost its raw file', () => {
    const folder = fileURLToPath(new URL('./records/', import.meta.url));
    const left = readdirSync(folder).filter((name) => !files.has(`${folder}${name}`));
    expect(left).toEqual([]);
  });

  it('hold the table of numbers with one line a number', () => {
    const text = readFileSync(new URL('../data/numbers.csv', import.meta.url), 'utf8');
    const [header, ...lines] = text.trimEnd().split('\n');
    expect(header).toBe('rowId,record,path,value,unit,lower,upper,standing,sources,set');
    // No field of this table needs quotes, so a plain split reads it.
    expect(text).not.toContain('"');
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

describe.each(trees)('%s', (_name, tree) => {
  it('holds no number outside a datum', () => {
    const bare = [...objectsOf(tree)].flatMap(([path, node]) =>
      isDatum(node)
        ? []
        : Object.entries(node).flatMap(([key, child]) => (typeof child === 'number' ? [`${path}/${key}`] : [])),
    );
    expect(bare).toEqual([]);
  });

  it('names sources of the register only, each once and in order', () => {
    for (const [path, node] of objectsOf(tree)) {
      const { sources } = node as { sources?: readonly string[] };
      if (sources === undefined) continue;
      expect(
        sources.map((id) => getSource(id).id),
        path,
      ).toEqual([...new Set(sources)].sort());
    }
  });

  it('holds nothing invented', () => {
    for (const [path, node] of objectsOf(tree)) expect(node.standing, path).not.toBe('invented');
  });

  it('gives the members of a list ids of their own', () => {
    for (const [path, node] of objectsOf(tree)) {
      for (const [key, list] of Object.entries(node)) {
        if (!Array.isArray(list)) continue;
        const ids = list.flatMap((item) =>
          typeof item === 'object' && item !== null && 'id' in item ? [item.id] : [],
        );
        expect(new Set(ids).size, `${path}/${key}`).toBe(ids.length);
      }
    }
  });

  it('speaks of no proper name but standards, units and countries', () => {
    // A maker or a model would begin with a capital inside a sentence, or stand in capitals.
    const allowed =
      /^(JIS|ISO|IS|D|C|M\d+(x[\d.]+)?|U|Nm|Table|British|Continental|French|Indian|Italian|Japan|Japanese|March|October|No)$/;
    for (const [path, node] of objectsOf(tree)) {
      for (const [key, text] of Object.entries(node)) {
        if (typeof text !== 'string') continue;
        const inside = text.split(/[.:;?!] /).flatMap((sentence) => sentence.split(/[\s,()/-]+/).slice(1));
        const names = inside.map((word) => word.replace(/[.;:]$/, '')).filter((word) => /^\W*\p{Lu}/u.test(word));
        expect(
          names.filter((word) => !allowed.test(word)),
          `${path}/${key}: ${text}`,
        ).toEqual([]);
      }
    }
  });
});

describe('numbers', () => {
  it('have rows of their own', () => {
    expect(allRows.length).toBeGreaterThan(100);
    expect(new Set(allRows.map(({ rowId }) => rowId)).size).toBe(allRows.length);
  });

  // [last part of the path, unit, smallest, largest] that a joint of a bicycle can have.
  const plausible: [RegExp, string, number, number][] = [
    [/identification:.*([pP]robability|Gain)$/, 'probability', 0, 1],
    [/identification:(spread|unlisted|assumedUncertainty|nextReading)\..*(Mm|Deg)$/, '', 0.0005, 20],
    [/sets\[[\w-]+\]\.acrossFlatsAtEndMm$/, 'mm', 12.3, 13],
    [/fixingHeads.*acrossFlatsMm$/, 'mm', 5, 16],
    [/\.faceAngleDeg(\.alternatives.*)?$/, 'deg', 1.5, 2.5],
    [/flatLengthMm$/, 'mm', 12, 20],
    [/handFit\w+GapMm$/, 'mm', 0.5, 4],
    [/nominalDiameterMm(\.alternatives.*)?$/, 'mm', 5, 24],
    [/pitchMm$/, 'mm', 0.75, 1.5],
    [/torqueNm$/, 'Nm', 10, 60],
    [/indexPositions\.count$/, 'positions', 2, 48],
    [/indexPositions\.stepDeg$/, 'deg', 7.5, 180],
    [/(spindle|Side)DiameterMm(\.alternatives.*)?$/, 'mm', 15, 30],
    [/(majorDiameter|minorDiameter|engagement|minimumSplineLength|stopFromEnd)Mm(\.alternatives.*)?$/, 'mm', 5, 25],
    [/cotterDiameterMm(\.alternatives.*)?$/, 'mm', 8, 10],
    [/splineCount$/, 'splines', 8, 48],
    [/taperPerSideDeg$/, 'deg', 0.5, 2],
    [/conflicts\[mixed-arm-shift\].*value$/, 'mm', 1.5, 5],
    [/conflicts\[(steepness|face-angle)\].*value$/, 'deg', 1.9, 4.2],
    [/conflicts\[m15-torque\].*value$/, 'Nm', 40, 60],
    [/conflicts\[reading-plane\].*value$/, 'mm', 12, 13],
  ];
  // Numbers that claims speak of, each of a kind of its own: stated here once, by the page that prints it.
  const single: Record<string, [number, string]> = {
    'square-taper-iso:geometry.claims[outlier-14].value': [14, 'mm'],
    'square-taper-iso:mating[jis-arm-on-iso-spindle].value': [1.8, 'mm'],
    'spline-10:geometry.claims[minor-diameter-change].value': [0.02, 'mm'],
    'through-spindle-24:failures[short-key].value': [8, 'Nm'],
    'cottered-metric:geometry.claims[inch-sibling].value': [15.875, 'mm'],
    'cottered-metric:retightening[field-recipe].value': [16, 'km'],
  };

  const faultOf = (row: NumberRow): string | undefined => {
    const stated = single[row.rowId];
    if (stated !== undefined) return row.value === stated[0] && row.unit === stated[1] ? undefined : `not ${stated}`;
    const rule = plausible.find(([pattern]) => pattern.test(row.rowId));
    if (rule === undefined) return 'is of no known kind';
    const [, unit, min, max] = rule;
    const inside = [row.lower ?? row.value, row.value, row.upper ?? row.value].every(
      (value) => min <= value && value <= max,
    );
    return inside && (unit === '' || unit === row.unit) ? undefined : `is not ${min} to ${max} ${unit}`;
  };

  it('are plausible for what they are', () => {
    const faults = allRows.flatMap((row) => {
      const fault = faultOf(row);
      return fault === undefined ? [] : [`${row.rowId} = ${row.value} ${row.unit} ${fault}`];
    });
    expect(faults).toEqual([]);
  });

  it('are refused by that check when they are not', () => {
    const row = allRows.find(({ path }) => /sets\[.*acrossFlatsAtEndMm$/.test(path));
    if (row === undefined) throw new Error('no size across flats');
    expect(faultOf({ ...row, value: 1.265 })).toBeDefined();
    expect(faultOf({ ...row, unit: 'in' })).toBeDefined();
    expect(faultOf({ ...row, rowId: 'x:geometry.colour' })).toBe('is of no known kind');
  });

  it('keep inner sizes below outer ones', () => {
    for (const record of interfaceRecords) {
      for (const thread of [...record.fixingThreads, ...record.puller.threads]) {
        if (thread.pitchMm !== undefined) expect(thread.pitchMm.value).toBeLessThan(thread.nominalDiameterMm.value / 3);
      }
      if (record.family === 'spline') {
        const { majorDiameterMm, minorDiameterMm, spindleDiameterMm } = record.geometry;
        if (majorDiameterMm !== undefined && minorDiameterMm !== undefined) {
          expect(minorDiameterMm.value).toBeLessThan(majorDiameterMm.value);
        }
        if (spindleDiameterMm !== undefined && majorDiameterMm !== undefined) {
          expect(majorDiameterMm.value).toBeLessThanOrEqual(spindleDiameterMm.value);
        }
      }
      if (record.family === 'cottered') {
        expect(record.geometry.cotterDiameterMm.value).toBeLessThan(record.geometry.spindleDiameterMm.value);
      }
      if (record.family === 'square-taper') {
        const { handFitShoulderGapMm, fallback } = record.geometry;
        expect(handFitShoulderGapMm.upper ?? 0).toBeLessThan(fallback.flatLengthMm.value);
      }
    }
  });

  it('agree with the designation of their thread', () => {
    for (const record of interfaceRecords) {
      for (const { designation, nominalDiameterMm, pitchMm } of [...record.fixingThreads, ...record.puller.threads]) {
        const pitch = pitchMm === undefined ? '' : `x${pitchMm.value}`;
        // A pitch left out of the designation would be a coarse one.
        expect(designation).toBe(`M${nominalDiameterMm.value}${pitch}`);
      }
    }
  });
});

describe('records', () => {
  it('carry the edition of the data', () => {
    for (const record of [...interfaceRecords, identificationData]) expect(record.dataEdition).toBe(dataEdition);
  });

  it('have ids and former ids that nothing else has', () => {
    const ids = interfaceRecords.flatMap(({ id, aliases }) => [id, ...aliases]);
    expect(new Set(ids).size).toBe(ids.length);
    expect([...ids].sort()).toEqual(ids);
  });

  it('pass the schema, and fail it when a standing loses its source', () => {
    expect(identificationDataSchema.safeParse(identificationData).success).toBe(true);
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

  it('give rules of mating about themselves and about records that exist', () => {
    const known = interfaceRecords.map(({ id }) => id);
    for (const record of interfaceRecords) {
      for (const { spindle, arm } of record.mating) {
        expect([spindle, arm]).toContain(record.id);
        expect(known).toEqual(expect.arrayContaining([spindle, arm]));
        expect(spindle).not.toBe(arm);
      }
    }
  });

  it('begin identification from priors that sum to one over the squares and the unlisted one', () => {
    const sum = identificationData.priors.reduce((total, { probability }) => total + probability.value, 0);
    expect(sum).toBeCloseTo(1, 12);
    const squares = interfaceRecords.filter(({ family }) => family === 'square-taper').map(({ id }) => id);
    expect(identificationData.priors.map(({ id }) => id).sort()).toEqual([...squares, 'unlisted'].sort());
  });

  it('have a JSON Schema under their name', () => {
    const schema = interfaceRecordJsonSchema();
    expect(schema.$id).toBe('urn:spindlewright:schema:interface-record');
    expect(schema.oneOf).toHaveLength(6);
    expect(JSON.parse(JSON.stringify(schema))).toEqual(schema);
  });
});

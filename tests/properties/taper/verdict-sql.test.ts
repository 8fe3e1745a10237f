// A million rows judged three ways: by predictSeat (as bareSeat, which bare.test.ts holds equal to the last digit), by columns,
// and by DuckDB running the statement. Thousands of rows lie within 1e-9 mm of a limit, on purpose.
import { DOUBLE, DuckDBDataChunk, DuckDBInstance, INTEGER, VARCHAR } from '@duckdb/node-api';
import { screenSeats, seatVerdictSql } from '@spindlewright/taper';
import { expect, it } from 'vitest';
import { seededRandom, seedOfRun } from '../../seed.ts';
import { type Block, makeBlock, moveToLimit, SIZES, type SizeName, seatOf } from './seat-rows.ts';

const BLOCKS = 20;
const ROWS = 50_000;
const MOVED = 300;
const CHUNK = 2048;

/** The column of each size in the table. */
const columnOf = (size: SizeName): string => size.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

function columnsOf({ columns, plusMinusMm }: Block) {
  return Object.fromEntries(SIZES.map((size) => [size, { nominal: columns[size], plusMinusMm }])) as Record<
    SizeName,
    { nominal: Float64Array; plusMinusMm: number }
  >;
}

it('says the same in DuckDB, by columns and one by one, over a million rows', { timeout: 600_000 }, async () => {
  const random = seededRandom(seedOfRun());
  const database = await DuckDBInstance.create(':memory:', { memory_limit: '1GB' });
  const connection = await database.connect();
  const types = [INTEGER, ...SIZES.map(() => DOUBLE), VARCHAR, VARCHAR, VARCHAR];
  const seen = new Map<string, number>();
  let near = 0;
  for (let kind = 0; kind < BLOCKS; kind++) {
    const block = makeBlock(random, ROWS, kind);
    for (let row = 0; row < MOVED; row++) if (moveToLimit(block, row, random)) near++;
    const told: [string, string, string][] = [];
    for (let row = 0; row < ROWS; row++) {
      if (row >= MOVED && row % 97 === 0) {
        // Not known, or outside its domain, in one of the sizes.
        const size = SIZES[row % SIZES.length] ?? 'boreLengthMm';
        block.columns[size][row] = row % 2 === 0 ? Number.NaN : -1;
        const word = row % 2 === 0 ? 'cannot-tell' : 'refused';
        told.push([word, word, word]);
      } else {
        const { verdict, worstVerdicts } = seatOf(block, row);
        told.push([verdict, worstVerdicts.lower, worstVerdicts.upper]);
      }
      const [verdict] = told.at(-1) as [string, string, string];
      seen.set(verdict, (seen.get(verdict) ?? 0) + 1);
    }
    const { spindle, pressing } = block;
    const screened = screenSeats({ spindle, arms: columnsOf(block), pressing });
    const wrong = told.flatMap((words, row) => {
      const codes = [screened.verdict[row], screened.worstLower[row], screened.worstUpper[row]];
      const names = codes.map((code) => screened.verdictNames[code ?? 255] ?? 'refused');
      return names.join() === words.join() ? [] : [{ kind, row, names, words }];
    });
    expect(wrong.slice(0, 3)).toEqual([]);

    const kept = ['told', 'told_lower', 'told_upper'];
    await connection.run(
      `CREATE OR REPLACE TABLE parts (id INTEGER, ${SIZES.map((size) => `${columnOf(size)} DOUBLE`).join()}, ${kept.map((name) => `${name} VARCHAR`).join()})`,
    );
    const appender = await connection.createAppender('parts');
    for (let start = 0; start < ROWS; start += CHUNK) {
      const rows = Array.from({ length: Math.min(CHUNK, ROWS - start) }, (_, place) => start + place);
      const chunk = DuckDBDataChunk.create(types, rows.length);
      chunk.setColumns([
        rows,
        ...SIZES.map((size) =>
          rows.map((row) => {
            const value = block.columns[size][row] as number;
            return Number.isNaN(value) ? null : value;
          }),
        ),
        ...[0, 1, 2].map((which) => rows.map((row) => told[row]?.[which] ?? '')),
      ]);
      appender.appendDataChunk(chunk);
    }
    appender.closeSync();
    const { statement } = seatVerdictSql({
      spindle,
      pressing,
      arms: Object.fromEntries(
        SIZES.map((size) => [size, { column: columnOf(size), plusMinusMm: block.plusMinusMm }]),
      ) as Record<SizeName, { column: string; plusMinusMm: number }>,
      from: 'parts',
      keep: ['id', ...kept],
    });
    const reader = await connection.runAndReadAll(
      `SELECT * FROM (${statement}) AS judged WHERE verdict <> told OR worst_lower <> told_lower OR worst_upper <> told_upper LIMIT 3`,
    );
    expect(reader.getRowsJson(), `block ${kind}`).toEqual([]);
    const [[judged]] = (
      await connection.runAndReadAll(`SELECT count(verdict) FROM (${statement}) AS judged`)
    ).getRowsJson() as [[string]];
    expect(Number(judged)).toBe(ROWS);
  }
  connection.closeSync();
  const counts = [...seen].sort(([a], [b]) => a.localeCompare(b));
  console.log(
    `${BLOCKS * ROWS} rows, ${near} of them within 1e-9 mm of a limit: ${counts.map(([name, count]) => `${name} ${count}`).join(', ')}`,
  );
  expect(near).toBeGreaterThan(2000);
  expect(counts.map(([name]) => name)).toEqual([
    'bottoms-on-end',
    'cannot-tell',
    'does-not-start',
    'hits-shoulder',
    'marginal',
    'refused',
    'seats',
    'too-little-engagement',
  ]);
});

it('refuses what is no finite number, in DuckDB as by columns', async () => {
  const spindle = { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 20, cornerDiameterMm: 16.5 };
  const database = await (await DuckDBInstance.create(':memory:')).connect();
  await database.run(
    "CREATE TABLE parts AS SELECT * FROM (VALUES (1, 'nan'::DOUBLE), (2, 'infinity'::DOUBLE), (3, NULL), (4, 13.6)) AS t(id, mouth)",
  );
  const { statement } = seatVerdictSql({
    spindle,
    arms: { acrossFlatsAtMouthMm: { column: 'mouth' }, boreLengthMm: 18 },
    from: 'parts',
    keep: ['id'],
  });
  const rows = (await database.runAndReadAll(`${statement} ORDER BY id`)).getRowsJson() as [number, string][];
  database.closeSync();
  expect(rows.map(([, verdict]) => verdict)).toEqual(['refused', 'refused', 'cannot-tell', 'seats']);
  const endless = Number.POSITIVE_INFINITY;
  const acrossFlatsAtMouthMm = { lower: [-endless, 13.6], nominal: [13.6, 13.6], upper: [endless, 13.6] };
  const { verdict } = screenSeats({ spindle, arms: { acrossFlatsAtMouthMm, boreLengthMm: 18 } });
  expect([...verdict]).toEqual([255, 0]);
});

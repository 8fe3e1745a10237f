// Ten million invented parts in DuckDB, judged by one statement with a bound on the engine's memory, against summing up the
// same columns. SQL_ROWS sets the rows. The parts are made by the engine and kept in a file, as a shop's are.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DuckDBInstance } from '@duckdb/node-api';
import { seatVerdictSql } from '@spindlewright/taper';
import { expect, it } from 'vitest';

const ROWS = Number(process.env.SQL_ROWS ?? 10_000_000);
const MEMORY_MB = 1000;

it(`judges ${ROWS} parts in one statement`, { timeout: 1_800_000 }, async ({ task }) => {
  const folder = mkdtempSync(join(tmpdir(), 'spindlewright-sql-'));
  try {
    const instance = await DuckDBInstance.create(join(folder, 'parts.duckdb'), { memory_limit: `${MEMORY_MB}MB` });
    const database = await instance.connect();
    await database.run('SELECT setseed(0.5)');
    await database.run(
      `CREATE TABLE parts AS SELECT i AS sku, 13.2 + 0.7 * random() AS mouth_mm, 14 + 6 * random() AS bore_mm,
       28 + 12 * random() AS boss_mm FROM range(${ROWS}) AS numbers(i)`,
    );
    const { statement } = seatVerdictSql({
      spindle: { acrossFlatsAtEndMm: 12.63, faceAngleDeg: 2, flatLengthMm: 20, cornerDiameterMm: 16.5 },
      arms: {
        acrossFlatsAtMouthMm: { column: 'mouth_mm', plusMinusMm: 0.02 },
        boreLengthMm: { column: 'bore_mm' },
        bossDiameterMm: { column: 'boss_mm' },
      },
      pressing: { axialForceN: 15_000, friction: { lower: 0.1, nominal: 0.13, upper: 0.16 } },
      from: 'parts',
    });
    const timed = async (sql: string): Promise<{ seconds: number; rows: unknown[][] }> => {
      const start = performance.now();
      const reader = await database.runAndReadAll(sql);
      return { seconds: (performance.now() - start) / 1000, rows: reader.getRowsJson() as unknown[][] };
    };
    const before = process.memoryUsage.rss();
    const baseline = await timed('SELECT sum(mouth_mm), sum(bore_mm), sum(boss_mm) FROM parts');
    const judged = await timed(
      `SELECT verdict, count(*) FROM (${statement}) AS judged GROUP BY verdict ORDER BY verdict`,
    );
    const grownMB = (process.memoryUsage.rss() - before) / 1e6;
    task.meta.rows = [
      {
        what: `${ROWS} parts judged by seatVerdictSql, process grown by ${grownMB.toFixed(0)} MB`,
        baseline: 'the same columns summed by the engine',
        unit: 'ms',
        value: judged.seconds * 1000,
        baselineValue: baseline.seconds * 1000,
      },
    ];
    expect(judged.rows.reduce((sum, [, count]) => sum + Number(count), 0)).toBe(ROWS);
    expect(grownMB).toBeLessThan(MEMORY_MB + 200);
    database.closeSync();
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

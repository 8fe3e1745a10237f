// The same batch in the embedded engine DuckDB: the file is the table, the verdict is one statement.
import { fileURLToPath } from 'node:url';
import { DuckDBInstance } from '@duckdb/node-api';
import { seatVerdictSql } from '@spindlewright/taper';
import { PLUS_MINUS_MM, pressing, spindle } from './study.ts';

/** Verdicts of a CSV file of parts, by arm. */
export async function judgeFile(path: string): Promise<Map<string, string[]>> {
  const database = await (await DuckDBInstance.create(':memory:')).connect();
  await database.run(`CREATE VIEW parts AS SELECT * FROM read_csv('${path.replaceAll("'", "''")}')`);
  const { statement } = seatVerdictSql({
    spindle,
    arms: {
      acrossFlatsAtMouthMm: { column: 'mouth_mm', plusMinusMm: PLUS_MINUS_MM },
      boreLengthMm: { column: 'bore_mm' },
      boltSeatFromMouthMm: { column: 'bolt_seat_mm' },
      bossDiameterMm: { column: 'boss_mm' },
    },
    pressing,
    from: 'parts',
    keep: ['arm'],
  });
  const rows = (await database.runAndReadAll(statement)).getRowsJson() as string[][];
  database.closeSync();
  return new Map(rows.map(([arm = '', ...verdicts]) => [arm, verdicts]));
}

if (import.meta.main) {
  const verdicts = await judgeFile(fileURLToPath(new URL('arms.csv', import.meta.url)));
  for (const [arm, words] of verdicts) console.log(arm, ...words);
}

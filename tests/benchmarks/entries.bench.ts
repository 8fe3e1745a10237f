// What each published entry costs who imports it: the time of its import in fresh processes of Node, on built code (run
// `npm run build` first), and its bytes against the budget.
import { spawnSync } from 'node:child_process';
import { expect, it } from 'vitest';
import { gzippedBytes, whole } from '../bundle.ts';
import { entries, readText, root } from '../workspace.ts';
import type { Row } from './table.ts';

const ROUNDS = 15;
const EMPTY = 'data:text/javascript,';
const budgets: { entries: Record<string, number> } = JSON.parse(readText('tests/budgets.json'));

/** Milliseconds of one import, without the start of Node. */
function importMs(specifier: string): number {
  const code = `const start = performance.now(); await import('${specifier}'); console.log(performance.now() - start);`;
  const { status, stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '--eval', code], {
    cwd: root,
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(stderr);
  return Number(stdout);
}

it('imports', { timeout: 600_000 }, ({ task }) => {
  const specifiers = [EMPTY, ...entries.map(({ specifier }) => specifier)];
  const times = new Map(specifiers.map((specifier) => [specifier, [] as number[]]));
  // In turns, so that other work on the machine falls on all alike.
  for (let round = 0; round < ROUNDS; round++) for (const [specifier, list] of times) list.push(importMs(specifier));
  const median = (specifier: string): number =>
    times.get(specifier)?.toSorted((a, b) => a - b)[(ROUNDS - 1) / 2] ?? Number.NaN;
  task.meta.rows = entries.map(
    ({ specifier }): Row => ({
      what: `import of ${specifier}`,
      baseline: `import of an empty module, medians of ${ROUNDS}`,
      unit: 'ms',
      value: median(specifier),
      baselineValue: median(EMPTY),
    }),
  );
  expect(median(EMPTY)).toBeGreaterThan(0);
});

it('sizes', { timeout: 120_000 }, async ({ task }) => {
  const rows: Row[] = [];
  for (const { specifier } of entries)
    rows.push({
      what: `size of ${specifier}`,
      baseline: 'its budget',
      unit: 'bytes gzip',
      value: await gzippedBytes(whole(specifier)),
      baselineValue: budgets.entries[specifier] ?? Number.NaN,
    });
  task.meta.rows = rows;
  expect(rows.every(({ value, baselineValue }) => value <= baselineValue)).toBe(true);
});

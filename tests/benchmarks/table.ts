// The one table at the end of `npm run bench`, which is also written to tests/.out/bench.md: each hot path, import and size
// against its named baseline of the same run. A reporter of vitest.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Reporter, TestCase } from 'vitest/node';
import { root } from '../workspace.ts';

/** One line: what was measured, against what, and both in one unit. */
export interface Row {
  what: string;
  baseline: string;
  unit: 'ms' | 'bytes gzip';
  value: number;
  baselineValue: number;
}

declare module 'vitest' {
  interface TaskMeta {
    /** What a test measured by itself; `bench.compare` is read from its results. */
    rows?: Row[];
  }
}

const BASELINE = 'baseline: ';

function rowsOf(test: TestCase): Row[] {
  const compared = test.benchmarks().flatMap(({ tasks }) => {
    const baseline = tasks.find(({ name }) => name.startsWith(BASELINE));
    if (baseline === undefined) throw new Error(`${test.fullName}: no task is called "${BASELINE}..."`);
    return tasks
      .filter((task) => task !== baseline)
      .map(
        ({ name, latency }): Row => ({
          what: `${test.name}: ${name}`,
          baseline: baseline.name.slice(BASELINE.length),
          unit: 'ms',
          value: latency.p50,
          baselineValue: baseline.latency.p50,
        }),
      );
  });
  return [...compared, ...(test.meta().rows ?? [])];
}

const said = (value: number, unit: Row['unit']): string =>
  unit === 'bytes gzip' ? value.toFixed(0) : value >= 100 ? value.toFixed(0) : value.toPrecision(3);

/** The table, in Markdown that can be read as it is. */
export function tableOf(rows: readonly Row[]): string {
  const cells = [
    ['what', 'against', 'unit', 'value', 'baseline', 'ratio'],
    ...rows.map(({ what, baseline, unit, value, baselineValue }) => [
      what,
      baseline,
      unit,
      said(value, unit),
      said(baselineValue, unit),
      (value / baselineValue).toPrecision(3),
    ]),
  ];
  const widths = (cells[0] ?? []).map((_, column) => Math.max(...cells.map((row) => row[column]?.length ?? 0)));
  const line = (row: readonly string[]): string =>
    `| ${row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join(' | ')} |`;
  const [head = [], ...body] = cells;
  return `${[line(head), line(widths.map((width) => '-'.repeat(width))), ...body.map(line)].join('\n')}\n`;
}

export default class Table implements Reporter {
  readonly #rows: Row[] = [];

  onTestCaseResult(test: TestCase): void {
    this.#rows.push(...rowsOf(test));
  }

  onTestRunEnd(): void {
    const table = tableOf(this.#rows);
    mkdirSync(join(root, 'tests/.out'), { recursive: true });
    writeFileSync(join(root, 'tests/.out/bench.md'), table);
    console.log(`\n${table}`);
  }
}

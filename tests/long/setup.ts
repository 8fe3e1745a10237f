// In a long run each property is drawn a million times, or as often as its time allows; what was done is written down, and
// a property that is written down is not run again, so that a run that was cut short goes on where it was.
import { appendFileSync, existsSync, readFileSync } from 'node:fs';
import { relative } from 'node:path';
import type { Parameters as RunParameters } from 'fast-check';
import { afterEach, beforeEach, expect, vi } from 'vitest';
import { seedOfRun } from '../seed.ts';
import { root } from '../workspace.ts';

const seconds = Number(process.env.LONG_SECONDS);
const notes = process.env.LONG_NOTES ?? '';
const MOST_RUNS = 1_000_000;

const done = new Set<string>(
  (existsSync(notes) ? readFileSync(notes, 'utf8').split('\n') : [])
    .filter((line) => line !== '')
    .map((line) => (JSON.parse(line) as { name: string }).name),
);

const nameNow = (): string => {
  const { testPath = '', currentTestName = '' } = expect.getState();
  return `${relative(root, testPath)}: ${currentTestName}`;
};

/** What the running test has drawn so far. */
let drawn: { name: string; runs: number; seconds: number }[] = [];

beforeEach(({ skip }) => {
  drawn = [];
  if (done.has(nameNow())) skip('done before');
});

// Only a test that came through counts as done: one that was stopped half-way begins anew.
afterEach(({ task }) => {
  if (task.result?.state === 'fail') return;
  for (const row of drawn) appendFileSync(notes, `${JSON.stringify(row)}\n`);
});

vi.mock('fast-check', async (load) => {
  const real = await load<typeof import('fast-check')>();
  /** What `fc.assert` does, but long, and told. */
  const assert = (property: unknown, own: RunParameters<unknown> = {}): unknown => {
    const name = nameNow();
    const start = performance.now();
    const told = (details: import('fast-check').RunDetails<unknown>): void => {
      if (details.failed) throw new Error(real.defaultReportMessage(details) ?? 'failed');
      const took = performance.now() - start;
      drawn.push({ name, runs: details.numRuns, seconds: took / 1000 });
    };
    const checked = real.check(
      property as never,
      {
        ...own,
        // Examples that a test gives are run first, as ever.
        seed: own.seed ?? seedOfRun(),
        numRuns: MOST_RUNS,
        interruptAfterTimeLimit: 1000 * seconds,
        markInterruptAsFailure: false,
      } as never,
    ) as unknown;
    if (checked instanceof Promise) return checked.then(told);
    told(checked as never);
    return undefined;
  };
  return { ...real, assert, default: { ...real.default, assert } };
});

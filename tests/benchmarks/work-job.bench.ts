// Time of a whole job: readings in, sheet with its drawings out. Wanted at most 20 ms, so that a page can work it while
// somebody types. The baseline is what any program does with a sheet besides: writing it as JSON and reading it back.
import { readdirSync, readFileSync } from 'node:fs';
import { readJob, workJob } from 'spindlewright';
import { expect, it } from 'vitest';
import type { Row } from './table.ts';

const folder = new URL('../../examples/jobs/', import.meta.url);
const jobs = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .map((name) => ({
    name: name.replace('.json', ''),
    job: readJob(JSON.parse(readFileSync(new URL(name, folder), 'utf8'))),
  }));
const seats = jobs.filter(({ job }) => workJob(job).seat !== undefined);

const roundTrip = (sheet: unknown): number => JSON.stringify(JSON.parse(JSON.stringify(sheet))).length;

it('the example jobs with a predicted seat', async ({ bench }) => {
  const sheets = seats.map(({ job }) => workJob(job));
  let kept = 0;
  await bench.compare(
    bench('baseline: each sheet to JSON, back, and again', () => {
      for (const sheet of sheets) kept += roundTrip(sheet);
    }),
    bench('workJob', () => {
      for (const { job } of seats) kept += workJob(job).sections.length;
    }),
  );
  expect(kept).toBeGreaterThan(0);
});

it('every example job apart: median, and the baseline in turns with it', ({ task }) => {
  const rounds = 31;
  // Of this process alone, so that other work on the machine counts as little as can be.
  const spent = (work: () => unknown): number => {
    const start = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  };
  const median = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[(rounds - 1) / 2] ?? Number.NaN;
  for (let round = 0; round < 10; round++) for (const { job } of jobs) workJob(job);
  const rows = jobs.map(({ name, job }): Row => {
    const sheet = workJob(job);
    const turns = Array.from(
      { length: rounds },
      () => [spent(() => workJob(job)), spent(() => roundTrip(sheet))] as const,
    );
    return {
      what: `workJob of ${name}`,
      baseline: 'its sheet to JSON, back, and again',
      unit: 'ms',
      value: median(turns.map(([work]) => work)),
      baselineValue: median(turns.map(([, trip]) => trip)),
    };
  });
  task.meta.rows = rows;
  expect(rows.every(({ value }) => value > 0)).toBe(true);
});

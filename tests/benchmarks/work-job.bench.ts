// Time of a whole job: readings in, sheet with its drawings out. Wanted at most 20 ms, so that a page can work it while
// somebody types. The baseline is what no such job can do without: every published set worked once by predictSeat.
import { readFileSync } from 'node:fs';
import { armGeometries, getInterface, spindleGeometries } from '@spindlewright/interfaces';
import { predictSeat } from '@spindlewright/taper';
import { readJob, workJob } from 'spindlewright';
import { expect, it } from 'vitest';

const load = (name: string) =>
  readJob(JSON.parse(readFileSync(new URL(`../../examples/jobs/${name}.json`, import.meta.url), 'utf8')));
// Without the changes that it asks about: each of them is a job of its own.
const { whatIf: _whatIf, ...goodArm } = load('good-arm');
const jobs = [goodArm, ...['bore-gone', 'mixed-standard', 'noise-elsewhere', 'pinched-arm-loose'].map(load)];

const record = getInterface('square-taper-jis');
const arms = armGeometries(record);
const pairs = spindleGeometries(record).flatMap((spindle) => {
  const arm = arms.find(({ set }) => set === spindle.set);
  return arm === undefined ? [] : [{ spindle: spindle.geometry, arm: arm.geometry }];
});
const pressing = {
  axialForceN: { lower: 17_000, nominal: 24_000, upper: 36_000 },
  friction: { lower: 0.1, nominal: 0.17, upper: 0.3 },
};

it('five jobs, three of them with a predicted seat', async ({ bench }) => {
  let kept = 0;
  await bench.compare(
    bench('baseline: predictSeat for every published set, five times', () => {
      for (let index = 0; index < jobs.length; index++) {
        for (const pair of pairs) kept += predictSeat({ ...pair, pressing }).findings.length;
      }
    }),
    bench('workJob, five jobs', () => {
      for (const job of jobs) kept += workJob(job).sections.length;
    }),
  );
  expect(kept).toBeGreaterThan(0);
});

it('five jobs take at most 20 milliseconds of one core each on average; each is printed', () => {
  for (let round = 0; round < 5; round++) for (const job of jobs) workJob(job);
  const rounds = 12;
  const times = jobs.map((job) => {
    // Time of this process alone, so that other work on the machine counts as little as can be.
    const start = process.cpuUsage();
    for (let round = 0; round < rounds; round++) workJob(job);
    const { user, system } = process.cpuUsage(start);
    const each = (user + system) / 1000 / rounds;
    console.log(`${job.title}: ${each.toFixed(1)} ms`);
    return each;
  });
  expect(times.reduce((sum, each) => sum + each, 0) / times.length).toBeLessThan(20);
});

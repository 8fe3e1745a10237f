import { readFileSync } from 'node:fs';
import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import type { Job } from './job.ts';
import { readJob } from './read-job.ts';
import { renderText } from './render-text.ts';
import { workJob } from './work-job.ts';

const load = (name: string): Job =>
  readJob(JSON.parse(readFileSync(new URL(`../../../examples/jobs/${name}.json`, import.meta.url), 'utf8')));
const good = load('good-arm');
const { whatIf: _whatIf, ...plain } = good;
const rowsOf = (job: Job) => workJob(job).whatIf ?? [];
const pathOf = (input: unknown): string | undefined => {
  try {
    readJob(input);
  } catch (error) {
    if (isDomainError(error)) return error.path;
    throw error;
  }
  return undefined;
};

describe('what if', () => {
  it('sets each change beside the job as it is, and each row equals a job of its own', () => {
    const change = { flats: 'greased' } as const;
    const [base, greased] = rowsOf({ ...plain, whatIf: [{ name: 'greased', change }] });
    const alone = workJob({ ...plain, ...change }).seat?.lead.prediction.pressed;
    expect(base?.name).toBe('the parts as they are');
    expect(base?.endGapMm).toEqual(workJob(plain).seat?.lead.prediction.pressed.endGapMm);
    expect(greased).toMatchObject({ changed: ['flats'], endGapMm: alone?.endGapMm });
  });

  // Statics of a wedge: less friction and more force both press the arm farther on, so less of either clearance is left.
  it.each([
    ['greased flats', { flats: 'greased' }],
    ['more torque', { partMakerTorqueNm: 45 }],
  ] as const)('%s leave less end gap', (name, change) => {
    const [base, changed] = rowsOf({ ...plain, flats: 'dry', whatIf: [{ name, change }] });
    expect(changed?.endGapMm?.nominal).toBeLessThan(base?.endGapMm?.nominal ?? 0);
  });

  it('changes the verdict where the arm is another', () => {
    const change = {
      arm: { boreLengthMm: 16.2, boltSeatFromMouthMm: 16.2, bossDiameterMm: 37 },
      trialFit: { endGapMm: 0.4, shoulderGapMm: 1 },
    };
    const [base, other] = rowsOf({ ...plain, whatIf: [{ name: 'other arm', change }] });
    expect([base?.state, other?.state]).toEqual(['fits', 'does-not-fit']);
    expect(other?.doNotRide).toBe(true);
  });

  it('works at a pinched arm too', () => {
    const job = load('pinched-arm-loose');
    const [base, eight] = rowsOf({ ...job, whatIf: [{ name: 'a short key', change: { partMakerTorqueNm: 8 } }] });
    // Preload goes with torque at the same friction, and so does what the tool makes of it: 8 of 12 Nm are two thirds.
    expect((eight?.preloadN?.nominal ?? 0) / (base?.preloadN?.nominal ?? 1)).toBeCloseTo(8 / 12, 6);
  });

  it('stands on the sheet as a table', () => {
    expect(renderText(workJob(good))).toMatch(/What if\n-+\nThe parts alone/);
    expect(workJob(plain).whatIf).toBeUndefined();
  });

  it.each([
    ['whatIf[0].change', { name: 'nothing', change: {} }],
    ['whatIf[0].name', { name: ' ', change: { flats: 'dry' } }],
    ['whatIf[0].change.flat', { name: 'a', change: { flat: 'dry' } }],
    ['whatIf[0].change.flats', { name: 'a', change: { flats: 'wet' } }],
    ['whatIf[0].change.clamp', { name: 'a', change: { clamp: { slotGapMm: 1 } } }],
    ['whatIf[0].change.trialFit', { name: 'a', change: { trialFit: {} } }],
  ])('refuses %s', (path, change) => {
    expect(pathOf({ ...plain, whatIf: [change] })).toBe(path);
  });
});

describe('minutes and costs', () => {
  const job = load('eight-spline-ridden-loose');

  // 20 min at 1.10 EUR are 22 EUR; with an arm of 38 EUR that is 60 EUR, and no check is left to make.
  it('are those of the shop', () => {
    const sheet = workJob(job);
    expect(sheet.diagnosis?.result.nextChecks).toEqual([]);
    expect(sheet.cost?.sides).toMatchObject([{ side: 'non-drive', action: 'replace-arm', minutes: 20 }]);
    expect(sheet.cost).toMatchObject({ checkMinutes: 0, totalMinutes: 20, missing: [] });
    expect(sheet.cost?.total).toEqual({ value: 60, unit: 'EUR' });
    expect(renderText(sheet)).toContain('Together: 60.00 EUR, 20 minutes.');
  });

  it('name what the shop gave no figure for, and guess nothing', () => {
    const bare = workJob({ ...job, rates: { unit: 'EUR', chargePerMinute: 1.1 } });
    expect(bare.cost).toMatchObject({ total: { value: 0, unit: 'EUR' } });
    expect(bare.cost?.missing).toEqual(['minutes of the work, non-drive side', 'price of the arm, non-drive side']);
    expect(workJob({ ...plain }).cost).toBeUndefined();
  });

  it('refuse two currencies', () => {
    const parts = [{ part: 'arm', value: 38, unit: 'GBP' }];
    expect(pathOf({ ...job, rates: { ...job.rates, parts } })).toBe('rates.parts[0].unit');
  });
});

describe('what surrounds the bolt', () => {
  it('is a step of the plan, in its place', () => {
    const extras = ['dust-cap', 'self-extractor-ring'] as const;
    const sheet = workJob({ ...plain, fixing: { thread: 'M8x1', lubrication: 'lubricated', extras } });
    const list = sheet.sections.find(({ id }) => id === 'tighten')?.blocks.find(({ kind }) => kind === 'list');
    const steps = list?.kind === 'list' ? list.items : [];
    expect(steps[0]).toMatch(/^Dust cap out/);
    expect(steps[1]).toMatch(/^Self-extractor ring out/);
    expect(steps.at(-1)).toMatch(/^Dust cap back last/);
    expect(steps.some((step) => /washer in place/.test(step))).toBe(true);
  });
});

import { isDomainError, type Limits } from '@spindlewright/quantity';
import { predictSeat } from '@spindlewright/taper';
import { describe, expect, it } from 'vitest';
import type { Job } from './job.ts';
import { predictJobSeat } from './predict-job-seat.ts';
import { workJob } from './work-job.ts';

const job: Job = {
  format: 'spindlewright-job-1',
  title: 'Demo',
  date: '2026-11-28',
  bike: 'an invented bike',
  side: 'drive',
  interface: { spindle: 'square-taper-jis', arm: 'square-taper-jis' },
};

const cases: [string, Partial<Job>][] = [
  ['names alone', {}],
  ['a trial fit', { trialFit: { endGapMm: 3.5, shoulderGapMm: 3.4 } }],
  ['a trial fit that bottoms', { trialFit: { endGapMm: 0.3, shoulderGapMm: 3 } }],
  [
    'flats of both parts, greased, alloy stated',
    {
      spindle: { flats: [{ acrossFlatsMm: 12.65, atMm: 0, pair: 'a' }] },
      arm: { flats: [{ acrossFlatsMm: 13.5, atMm: 0, pair: 'a' }], yieldStrengthMPa: 400 },
      flats: 'greased',
      partMakerTorqueNm: 38,
    },
  ],
  ['a spindle that nobody named', { interface: { spindle: 'unknown', arm: 'square-taper-iso' } }],
];

describe('predictJobSeat', () => {
  it.each(cases)('says what the sheet says: %s', (_name, more) => {
    const asked = { ...job, ...more };
    const { state, headline, lead, others, mate, press } = predictJobSeat({ job: asked });
    const sheet = workJob(asked);
    expect({ lead, others, mate }).toEqual({
      lead: sheet.seat?.lead,
      others: sheet.seat?.others,
      mate: sheet.seat?.mate,
    });
    expect(press).toEqual(sheet.tightening?.press);
    expect(sheet.headline).toContain(headline.replace(/\.$/, '').slice(0, 40));
    expect(sheet.state).toBe(state);
  });

  it('puts the part maker and a mechanic above itself, whatever is known', () => {
    for (const [, more] of cases) {
      const { findings } = predictJobSeat({ job: { ...job, ...more } });
      expect(findings.filter(({ code }) => code === 'instructions-first')).toHaveLength(1);
    }
  });

  it('leaves an arm that nothing presses where it was pushed, to the tenth that a depth rod may be off', () => {
    const none: Limits = { lower: 0, nominal: 0, upper: 0 };
    const { lead } = predictJobSeat({
      job: { ...job, trialFit: { endGapMm: 3.5, shoulderGapMm: 3.4 } },
      axialForceN: none,
    });
    const { endGapMm, shoulderGapMm } = lead.prediction.pressed;
    for (const [gap, read] of [
      [endGapMm, 3.5],
      [shoulderGapMm, 3.4],
    ] as const) {
      expect(gap?.lower).toBeCloseTo(read - 0.1, 12);
      expect(gap?.nominal).toBeCloseTo(read, 12);
      expect(gap?.upper).toBeCloseTo(read + 0.1, 12);
    }
  });

  it('gives the input that the leading way was predicted from', () => {
    for (const [, more] of cases) {
      const { lead, input } = predictJobSeat({ job: { ...job, ...more } });
      expect(predictSeat(input).pressed).toEqual(lead.prediction.pressed);
    }
  });

  it('presses with a preload that is known instead of the one of the torque', () => {
    const axialForceN: Limits = { lower: 15_000, nominal: 15_000, upper: 15_000 };
    const seat = predictJobSeat({ job, axialForceN });
    expect(seat.press.preloadN).toEqual(axialForceN);
    expect(seat.input.pressing?.axialForceN).toEqual(axialForceN);
    const byTorque = predictJobSeat({ job }).lead.prediction.travelMm;
    const { travelMm } = seat.lead.prediction;
    // A preload that is known leaves less to chance.
    expect((travelMm?.upper ?? 0) - (travelMm?.lower ?? 0)).toBeLessThan(
      (byTorque?.upper ?? 0) - (byTorque?.lower ?? 0),
    );
  });

  it.each([
    ['another joint', { job: { ...job, interface: { spindle: 'spline-10', arm: 'spline-10' } } }, 'job.interface'],
    ['no format', { job: { ...job, format: 'x' } as unknown as Job }, 'format'],
    ['a preload below zero', { job, axialForceN: { lower: -1, nominal: 5, upper: 6 } }, 'pressing.axialForceN'],
  ])('refuses %s by its path', (_name, input, path) => {
    let caught: unknown;
    try {
      predictJobSeat(input);
    } catch (error) {
      caught = error;
    }
    if (!isDomainError(caught)) throw new Error(`no DomainError: ${String(caught)}`);
    expect(caught.issues[0]?.path).toContain(path);
  });
});

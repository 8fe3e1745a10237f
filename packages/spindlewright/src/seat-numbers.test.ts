import { getInterface } from '@spindlewright/interfaces';
import { predictSeat } from '@spindlewright/taper';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../test/demo-job.ts';
import type { Job } from './job.ts';
import { pressPlan } from './press-plan.ts';
import { publishedShapes } from './published-shapes.ts';
import { knowSeat, pressingOf } from './seat.ts';
import { seatNumbers } from './seat-numbers.ts';

const jis = getInterface('square-taper-jis');
const iso = getInterface('square-taper-iso');
const read: Job = {
  ...demoJob,
  spindle: { flats: [{ acrossFlatsMm: 12.7, atMm: 0, pair: 'a' }], endChamferMm: 0.5, shoulderFromEndMm: 20 },
  arm: {
    flats: [{ acrossFlatsMm: { value: 13.5, standardUncertainty: 0.01 }, atMm: 0, pair: 'a' }],
    boreLengthMm: 16,
    yieldStrengthMPa: { value: 300, standardUncertainty: 10 },
  },
};

describe('seatNumbers', () => {
  it.each([
    ['published sizes', demoJob, iso],
    ['readings laid over them', read, jis],
  ] as const)('gives the numbers of predictSeat for %s, to the last digit', (_, job, arm) => {
    const pressing = pressingOf(job, pressPlan(job));
    const sets = publishedShapes(job, jis, arm);
    expect(sets.length).toBeGreaterThan(1);
    for (const { read: shapes } of sets) {
      const {
        basis: _basis,
        ways: _ways,
        sensitivity: _sensitivity,
        findings: _findings,
        ...numbers
      } = predictSeat({ ...shapes, pressing });
      expect(seatNumbers(shapes, pressing)).toEqual(numbers);
    }
  });
});

describe('knowSeat', () => {
  it('tells what the other ways say in numbers and what the leading one says in full', () => {
    for (const job of [demoJob, read, { ...read, trialFit: { endGapMm: 2.5, shoulderGapMm: 3 } }]) {
      const { facts } = knowSeat(job, pressPlan(job), jis, jis, { sensitivities: true });
      expect(facts.lead.prediction.sensitivity.length).toBeGreaterThan(0);
      expect(facts.others.length).toBeGreaterThan(1);
      for (const { prediction } of facts.others) {
        expect(Object.keys(prediction).sort()).toEqual([
          'handFit',
          'pressReached',
          'pressed',
          'travelMm',
          'verdict',
          'worstVerdicts',
        ]);
      }
      const rooms = [facts.lead, ...facts.others]
        .filter(({ basis }) => basis === facts.lead.basis)
        .map(({ prediction: { pressed } }) => Math.min(pressed.endGapMm.lower, pressed.shoulderGapMm.lower));
      expect(rooms[0]).toBe(Math.min(...rooms));
    }
  });
});

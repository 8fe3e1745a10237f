import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../test/demo-job.ts';
import { readJob } from './read-job.ts';

const good = {
  ...demoJob,
  trialFit: { endGapMm: 2, shoulderGapMm: 3 },
};

function refusal(input: unknown): { path: string; received: string; allowed: string; nearest: string | undefined } {
  try {
    readJob(input);
  } catch (error) {
    if (!isDomainError(error)) throw error;
    const { path, received, allowed, nearest } = error;
    return { path, received, allowed, nearest };
  }
  throw new Error('was accepted');
}

describe('readJob', () => {
  it('keeps a good job as it is', () => {
    expect(readJob(good)).toEqual(good);
  });

  it('reads a text with a unit into the unit of the name', () => {
    // 0.1 in is 2.54 mm by the definition of the inch; 25 lbf.ft is 33.8954 Nm (NIST SP 811, appendix B).
    const job = readJob({ ...good, trialFit: { endGapMm: '0.1 in' }, partMakerTorqueNm: '25 ft-lb' });
    expect(job.trialFit?.endGapMm).toBe(2.54);
    expect(job.partMakerTorqueNm).toBeCloseTo(33.8954, 3);
  });

  it('refuses a missing field by its path', () => {
    const { title: _, ...rest } = good;
    expect(refusal(rest)).toMatchObject({ path: 'title', received: 'nothing' });
  });

  it('refuses a negative gap', () => {
    expect(refusal({ ...good, trialFit: { endGapMm: -1 } })).toMatchObject({
      path: 'trialFit.endGapMm',
      received: '-1',
    });
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('refuses %s', (value) => {
    expect(refusal({ ...good, trialFit: { endGapMm: value } }).path).toBe('trialFit.endGapMm');
  });

  it('refuses a unit of another dimension, naming what is allowed', () => {
    const issue = refusal({ ...good, trialFit: { endGapMm: '3 N' } });
    expect(issue).toMatchObject({ path: 'trialFit.endGapMm', received: '"3 N"' });
    expect(issue.allowed).toContain('mm');
  });

  it('refuses a misspelt field and names the nearest', () => {
    expect(refusal({ ...good, trialFit: { endGapMm: 2, sholderGapMm: 3 } })).toMatchObject({
      path: 'trialFit.sholderGapMm',
      nearest: 'shoulderGapMm',
    });
  });

  it('refuses a misspelt word and names the nearest', () => {
    expect(refusal({ ...good, side: 'drivee' })).toMatchObject({ path: 'side', nearest: 'drive' });
  });

  it('refuses crossed limits', () => {
    expect(refusal({ ...good, trialFit: { endGapMm: { lower: 3, nominal: 2, upper: 4 } } }).allowed).toBe(
      'lower <= nominal <= upper',
    );
  });

  it.each([
    ['spindle.flatLengthMm', { spindle: { flatLengthMm: 16, shoulderFromEndMm: 15 } }],
    ['spindle.endChamferMm', { spindle: { endChamferMm: 4, flatLengthMm: 3 } }],
    ['trialFit.endGapMm', { arm: { boltSeatFromMouthMm: 1 } }],
    ['trialFit', { trialFit: {} }],
    ['date', { date: '2026-02-30' }],
    ['title', { title: '  ' }],
  ])('refuses a contradiction at %s', (path, change) => {
    expect(refusal({ ...good, ...change }).path).toBe(path);
  });

  it('reports every fault at once', () => {
    try {
      readJob({ ...good, side: 'left', trialFit: { endGapMm: 'x', shoulderGapMm: -2 } });
      expect.unreachable();
    } catch (error) {
      if (!isDomainError(error)) throw error;
      expect(error.issues.map((issue) => issue.path).sort()).toEqual([
        'side',
        'trialFit.endGapMm',
        'trialFit.shoulderGapMm',
      ]);
    }
  });

  it('takes a key named __proto__ as the unknown key it is', () => {
    const input: unknown = JSON.parse(JSON.stringify(good).replace('"title"', '"__proto__":{"polluted":1},"title"'));
    expect(refusal(input).path).toBe('__proto__');
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});

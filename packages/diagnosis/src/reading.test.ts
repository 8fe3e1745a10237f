import { erf } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { type ReadingRule, readingLikelihood } from './reading.ts';

const rule: ReadingRule = {
  measurement: 'endGapMm',
  check: 'end-gap',
  unit: 'mm',
  usual: 0.1,
  min: -20,
  max: 40,
  bands: { clear: [0.3, 8], flush: [-0.3, 0.3], 'past-end': [-6, -0.3] },
};
const slip = 0.0005 / 60;

/** Share of a normal distribution cut at three standard uncertainties, by the error function of mathjs. */
function share(value: number, u: number, from: number, to: number): number {
  const cdf = (x: number): number => erf(Math.min(3, Math.max(-3, (x - value) / u)) / Math.SQRT2);
  return (cdf(to) - cdf(from)) / (2 * erf(3 / Math.SQRT2));
}

describe('readingLikelihood', () => {
  it.each([
    [0.25, 0.1],
    [0.3, 0.05],
    [-0.4, 0.3],
    [2, 0.5],
  ])('a reading of %f with u %f: share inside each band over its width, plus slips', (value, standardUncertainty) => {
    const { byOutcome } = readingLikelihood(rule, { value, standardUncertainty });
    for (const [outcome, [from, to]] of Object.entries(rule.bands)) {
      const hit = share(value, standardUncertainty, from, to) / (to - from);
      // The formula in use is good to 1.5e-7 in each of two distribution values, over a band at least 0.6 wide.
      expect(byOutcome[outcome]).toBeCloseTo(0.9995 * hit + slip, 6);
    }
  });

  it('limits are rectangular: overlap over both widths', () => {
    const { byOutcome, assumed } = readingLikelihood(rule, { lower: 0, nominal: 0.2, upper: 0.5 });
    expect(byOutcome.flush).toBeCloseTo((0.9995 * (0.3 / 0.5)) / 0.6 + slip, 12);
    expect(byOutcome.clear).toBeCloseTo((0.9995 * (0.2 / 0.5)) / 7.7 + slip, 12);
    expect(byOutcome['past-end']).toBeCloseTo(slip, 12);
    expect(assumed).toBe(false);
  });

  it('a bare number, equal limits and an uncertainty of 0 take the usual uncertainty and say so', () => {
    const usual = readingLikelihood(rule, { value: 0.2, standardUncertainty: 0.1 });
    for (const reading of [0.2, { lower: 0.2, nominal: 0.2, upper: 0.2 }, { value: 0.2, standardUncertainty: 0 }]) {
      const found = readingLikelihood(rule, reading);
      expect(found.byOutcome).toEqual(usual.byOutcome);
      expect(found.assumed).toBe(true);
    }
  });

  it('is on no side at the edge of two bands but by their widths', () => {
    const { byOutcome } = readingLikelihood(rule, { value: 0.3, standardUncertainty: 0.01 });
    expect(byOutcome.flush).toBeCloseTo((0.9995 * 0.5) / 0.6 + slip, 6);
    expect(byOutcome.clear).toBeCloseTo((0.9995 * 0.5) / 7.7 + slip, 6);
  });

  it('outside every band it leaves all outcomes equal', () => {
    const { byOutcome, outside } = readingLikelihood(rule, { value: 30, standardUncertainty: 0.1 });
    expect(outside).toBe(true);
    expect(new Set(Object.values(byOutcome)).size).toBe(1);
  });
});

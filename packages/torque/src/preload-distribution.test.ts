import { mean, quantileSeq, std } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { metricThread } from './metric-thread.ts';
import { preloadDistribution } from './preload-distribution.ts';
import { preloadFromTorque } from './preload-from-torque.ts';
import { preloadRange } from './preload-range.ts';

const thread = metricThread({ nominalDiameterMm: 8, pitchMm: 1 });
const bearing = { outerDiameterMm: 16, holeDiameterMm: 9 };
const narrow = { lower: 0.118, nominal: 0.12, upper: 0.122 };
const input = {
  torqueNm: 40,
  thread,
  threadFriction: narrow,
  bearingFriction: narrow,
  bearing,
  samples: 40_000,
  seed: 5,
};

const preloadAt = (torqueNm: number, threadFriction: number, bearingFriction: number): number =>
  preloadFromTorque({ torqueNm, thread, threadFriction, bearingFriction, bearing }).preloadN;

const rangeOf = <T extends { samples: number; seed: number }>({ samples: _, seed: __, ...range }: T) => range;

describe('preloadDistribution', () => {
  it('agrees with the first order of small spreads', () => {
    const base = preloadAt(40, 0.12, 0.12);
    // An even spread of half width a has the standard deviation a/sqrt 3.
    const byThread = (preloadAt(40, 0.122, 0.12) - preloadAt(40, 0.118, 0.12)) / 2 / Math.sqrt(3);
    const byHead = (preloadAt(40, 0.12, 0.122) - preloadAt(40, 0.12, 0.118)) / 2 / Math.sqrt(3);
    const independent = preloadDistribution(input);
    // Standard error of a standard deviation of 40 000 even draws is 0.22 %; five of them.
    expect(Math.abs(independent.standardDeviationN / Math.hypot(byThread, byHead) - 1)).toBeLessThan(0.011);
    expect(Math.abs(independent.meanN / base - 1)).toBeLessThan(1e-3);
    const alike = preloadDistribution({ ...input, correlation: [{ a: 'threadFriction', b: 'bearingFriction', r: 1 }] });
    expect(Math.abs(alike.standardDeviationN / Math.abs(byThread + byHead) - 1)).toBeLessThan(0.011);
    const half = preloadDistribution({
      ...input,
      correlation: [{ a: 'threadFriction', b: 'bearingFriction', r: 0.5 }],
    });
    const expected = Math.sqrt(byThread ** 2 + byHead ** 2 + byThread * byHead);
    expect(Math.abs(half.standardDeviationN / expected - 1)).toBeLessThan(0.011);
  });

  it('gives every sample back when asked, and the same distribution', () => {
    const { keptN = [], ...kept } = preloadDistribution({ ...input, samples: 1001, keepSamples: true });
    expect(kept).toEqual(preloadDistribution({ ...input, samples: 1001 }));
    expect(keptN).toHaveLength(1001);
    // The middle of an odd number of samples is one of them; in the order drawn they do not rise.
    expect([...keptN].sort((a, b) => a - b)[500]).toBe(kept.quantiles[2]?.preloadN);
    expect(keptN.some((preloadN, index) => preloadN < (keptN[index - 1] ?? 0))).toBe(true);
  });

  it('spreads readings as a normal distribution cut at 3 u, and the tool evenly', () => {
    const exact = { ...input, threadFriction: 0.12, bearingFriction: 0.12 };
    const perNm = preloadAt(1, 0.12, 0.12);
    const reading = preloadDistribution({ ...exact, torqueNm: { value: 40, standardUncertainty: 1 } });
    // Variance of a standard normal distribution cut at 3: 1 - 6 phi(3)/0.9973 = 0.97334.
    expect(Math.abs(reading.standardDeviationN / (perNm * Math.sqrt(0.97334)) - 1)).toBeLessThan(0.018);
    const tool = preloadDistribution({ ...exact, tool: 'click-wrench-iso-6789' });
    expect(Math.abs(tool.standardDeviationN / ((perNm * 1.6) / Math.sqrt(3)) - 1)).toBeLessThan(0.011);
    expect(Math.abs((tool.quantiles[4]?.preloadN ?? 0) / (perNm * (40 + 0.95 * 1.6)) - 1)).toBeLessThan(1e-3);
  });

  it('counts what lies below, and orders its quantiles inside the worst case', () => {
    const wide = { lower: 0.08, nominal: 0.12, upper: 0.16 };
    const result = preloadDistribution({
      ...input,
      threadFriction: wide,
      bearingFriction: wide,
      belowN: [0, 28_000, 1e6],
    });
    expect(result.below[0]?.probability).toBe(0);
    expect(result.below[2]?.probability).toBe(1);
    const [p025, p05, median, p95, p975] = result.quantiles.map((entry) => entry.preloadN);
    const order = [result.preloadN.lower, p025, p05, median, p95, p975, result.preloadN.upper];
    expect(order).toEqual([...order].sort((a = 0, b = 0) => a - b));
    const { below } = preloadDistribution({
      ...input,
      threadFriction: wide,
      bearingFriction: wide,
      belowN: [median ?? 0],
    });
    expect(below[0]?.probability).toBeCloseTo(0.5, 3);
  });

  it('gives the chance of yielding by the strength, between what the worst case forbids and demands', () => {
    const chance = (propertyClass: string | { yieldStrengthMPa: number }): number | undefined =>
      preloadDistribution({ ...input, propertyClass }).yieldProbability;
    expect(preloadDistribution(input).yieldProbability).toBeUndefined();
    expect(chance('12.9')).toBe(0);
    expect(chance({ yieldStrengthMPa: 300 })).toBe(1);
    // Exact frictions and an even spread of torque: stress is proportional to torque, so the yield strength at the middle
    // of the tool's span leaves one half above it, and at three quarters a quarter.
    const exact = { ...input, threadFriction: 0.12, bearingFriction: 0.12, tool: 'click-wrench-iso-6789' };
    const at40 = preloadRange({ ...rangeOf(exact), propertyClass: '8.8' }).strength?.equivalentStressMPa.nominal ?? 0;
    for (const [factor, expected] of [
      [1, 0.5],
      [1.02, 0.25],
    ] as const) {
      const found = preloadDistribution({ ...exact, propertyClass: { yieldStrengthMPa: factor * at40 } });
      // Five standard errors of 40 000 draws.
      expect(Math.abs((found.yieldProbability ?? 0) - expected)).toBeLessThan(0.0125);
    }
  });

  it('repeats itself by the seed', () => {
    expect(preloadDistribution(input)).toEqual(preloadDistribution(input));
    expect(preloadDistribution({ ...input, seed: 6 }).meanN).not.toBe(preloadDistribution(input).meanN);
  });

  it.each([
    [{ samples: 99 }, 'samples'],
    [{ samples: 100.5 }, 'samples'],
    [{ seed: -1 }, 'seed'],
    [{ seed: 0.5 }, 'seed'],
    [{ correlation: [{ a: 'threadFriction', b: 'bearingFriction', r: 1.1 }] }, 'correlation[0].r'],
    [{ correlation: [0, 1].map((r) => ({ a: 'threadFriction', b: 'bearingFriction', r })) }, 'correlation'],
    [{ belowN: [-1] }, 'belowN[0]'],
    [{ torqueNm: -1 }, 'torqueNm'],
    [{ sample: 3 }, 'sample'],
  ])('refuses %j', (change, path) => {
    expect(refusal(() => preloadDistribution({ ...input, ...change } as never)).path).toBe(path);
  });

  it('counts in the samples it gives back what a library of its own makes of them', () => {
    const belowN = [27_900, 28_100, 28_400];
    const { keptN = [], ...found } = preloadDistribution({ ...input, samples: 100, belowN, keepSamples: true });
    expect(keptN).toHaveLength(100);
    expect(found.meanN).toBeCloseTo(mean(keptN), 6);
    // Of a sample: divided by one less than its number.
    expect(found.standardDeviationN / Number(std(keptN, 'unbiased'))).toBeCloseTo(1, 12);
    expect(
      found.quantiles.map(({ preloadN, probability }) => preloadN / Number(quantileSeq(keptN, probability))),
    ).toEqual(found.quantiles.map(() => expect.closeTo(1, 12)));
    expect(found.below.map(({ probability }) => probability)).toEqual(
      belowN.map((limitN) => keptN.filter((preloadN) => preloadN < limitN).length / 100),
    );
  });

  it('has nothing below, nothing kept and no chance of yielding unless asked', () => {
    const found = preloadDistribution({ ...input, samples: 100 });
    expect(found.below).toEqual([]);
    expect(JSON.parse(JSON.stringify(found))).toStrictEqual(found);
    expect(Object.keys(found)).not.toContain('keptN');
    expect(preloadDistribution({ ...input, samples: 100, correlation: [] })).toEqual(found);
  });

  it('counts a preload neither below itself nor beyond a yield strength that it just reaches', () => {
    const exact = { ...input, samples: 100, threadFriction: 0.12, bearingFriction: 0.12 };
    const { strength, preloadN } = preloadRange({ ...rangeOf(exact), propertyClass: '8.8' });
    const yieldStrengthMPa = strength?.equivalentStressMPa.nominal ?? 0;
    const belowN = [preloadN.nominal, preloadN.nominal * 1.000001];
    const found = preloadDistribution({ ...exact, belowN, propertyClass: { yieldStrengthMPa } });
    expect(found.below.map(({ probability }) => probability)).toEqual([0, 1]);
    expect(found.yieldProbability).toBe(0);
    const weaker = { yieldStrengthMPa: yieldStrengthMPa * 0.999999 };
    expect(preloadDistribution({ ...exact, propertyClass: weaker }).yieldProbability).toBe(1);
  });
});

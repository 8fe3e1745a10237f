import { erf } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { cutNormalQuantile, uniformSource } from './random.ts';

describe('uniformSource', () => {
  it('is the same for the same seed and another for the next', () => {
    const ten = (seed: number): number[] => Array.from({ length: 10 }, uniformSource(seed));
    expect(ten(7)).toEqual(ten(7));
    for (const seed of [8, 0, 4294967295]) {
      const shared = ten(7).filter((value) => ten(seed).includes(value));
      expect(shared).toEqual([]);
    }
  });

  it('fills its tenths evenly, neighbours and neighbouring seeds unrelated', () => {
    const count = 100_000;
    const draw = uniformSource(1);
    const other = uniformSource(2);
    const tenths = new Array<number>(10).fill(0);
    let [lag, cross, before] = [0, 0, 0.5];
    for (let i = 0; i < count; i++) {
      const value = draw();
      expect(value > 0 && value < 1).toBe(true);
      tenths[Math.floor(value * 10)] = (tenths[Math.floor(value * 10)] ?? 0) + 1;
      lag += (value - 0.5) * (before - 0.5);
      cross += (value - 0.5) * (other() - 0.5);
      before = value;
    }
    // Chi-square with 9 degrees of freedom: above 33.7 once in 10 000 fair sources (upper 1e-4 point).
    const chi = tenths.reduce((sum, n) => sum + (n - count / 10) ** 2 / (count / 10), 0);
    expect(chi).toBeLessThan(33.7);
    // Correlations have the standard error 1/sqrt(100 000) = 0.0032; four of them.
    expect(Math.abs((12 * lag) / count)).toBeLessThan(0.0127);
    expect(Math.abs((12 * cross) / count)).toBeLessThan(0.0127);
  });
});

describe('cutNormalQuantile', () => {
  it('inverts the distribution of an independent library', () => {
    for (let k = 1; k < 100; k++) {
      const z = cutNormalQuantile(k / 100);
      expect(erf(z / Math.SQRT2) / erf(3 / Math.SQRT2) / 2 + 0.5).toBeCloseTo(k / 100, 12);
    }
  });

  it('stays inside -+3 and is symmetric', () => {
    expect(cutNormalQuantile(0.5)).toBe(0);
    expect(cutNormalQuantile(1e-10)).toBeGreaterThanOrEqual(-3);
    expect(cutNormalQuantile(1e-10)).toBeLessThan(-2.99);
    expect(cutNormalQuantile(0.9)).toBeCloseTo(-cutNormalQuantile(0.1), 12);
  });
});

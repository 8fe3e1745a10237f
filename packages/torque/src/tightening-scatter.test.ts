import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { tighteningMethods } from './data.ts';
import { tighteningScatter } from './tightening-scatter.ts';

describe('tighteningScatter', () => {
  it('keeps best and worst apart, and factors that are the quotients of the bounds', () => {
    const scatter = tighteningScatter({ meanPreloadN: 10_000, method: 'vdi-1986-power-screwdriver' });
    expect(scatter.worstN.lower).toBeLessThan(scatter.bestN.lower);
    expect(scatter.maxTighteningFactor).toBeCloseTo(scatter.worstN.upper / scatter.worstN.lower, 12);
    expect(scatter.minTighteningFactor).toBeCloseTo(scatter.bestN.upper / scatter.bestN.lower, 12);
    expect(scatter.sources).toEqual(['vdi-2230-1986-quoted']);
    const [row] = tighteningMethods.filter((entry) => entry.id === 'vdi-1986-power-screwdriver');
    expect(scatter.bestN.lower).toBeCloseTo(10_000 - 100 * (row?.minScatterPercent ?? 0), 8);
    expect(scatter.worstN.upper).toBeCloseTo(10_000 + 100 * (row?.maxScatterPercent ?? 0), 8);
  });

  it('refuses an unknown way with the nearest, and a negative preload', () => {
    const unknown = refusal(() => tighteningScatter({ meanPreloadN: 1, method: 'nasa-torque-lubricate' }));
    expect([unknown.path, unknown.nearest]).toEqual(['method', 'nasa-torque-lubricated']);
    expect(refusal(() => tighteningScatter({ meanPreloadN: -1, method: 'handbook-feel' })).path).toBe('meanPreloadN');
  });
});

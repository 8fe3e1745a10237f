import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { headPressure } from './head-pressure.ts';

const bearing = { outerDiameterMm: 20, squareHoleMm: 12.6, cornerReliefMm: 0 };

describe('headPressure', () => {
  it('is force over the disc less the square', () => {
    const area = Math.PI * 100 - 12.6 ** 2;
    const { pressureMPa, areaMm2, loadRatio } = headPressure({ preloadN: 25_000, bearing, limitingPressureMPa: 260 });
    expect(areaMm2).toBeCloseTo(area, 3);
    expect(pressureMPa).toBeCloseTo(25_000 / area, 3);
    expect(loadRatio).toBeCloseTo(25_000 / area / 260, 5);
  });

  it('speaks up beyond the limiting pressure, and when that is not known', () => {
    const codesOf = (limit: object): string[] =>
      headPressure({ preloadN: 25_000, bearing: { outerDiameterMm: 16, holeDiameterMm: 9 }, ...limit }).findings.map(
        (f) => f.code,
      );
    expect(codesOf({ limitingPressureMPa: 182 })).toEqual([]);
    expect(codesOf({ limitingPressureMPa: 181 })).toEqual(['head-pressure-high']);
    expect(codesOf({})).toEqual(['member-yields-unknown']);
  });

  it('is not too high at the limit itself, and has no share of a limit that is not known', () => {
    const face = { outerDiameterMm: 16, holeDiameterMm: 9 };
    const { pressureMPa, loadRatio } = headPressure({ preloadN: 25_000, bearing: face });
    expect(loadRatio).toBeNull();
    const at = headPressure({ preloadN: 25_000, bearing: face, limitingPressureMPa: pressureMPa });
    expect(at).toMatchObject({ loadRatio: 1, findings: [] });
  });

  it('refuses what leaves no ring', () => {
    expect(refusal(() => headPressure({ preloadN: -1, bearing })).path).toBe('preloadN');
    expect(refusal(() => headPressure({ preloadN: 1, bearing: { ...bearing, squareHoleMm: 20 } })).path).toBe(
      'bearing.squareHoleMm',
    );
    expect(refusal(() => headPressure({ preloadN: 1 } as never)).path).toBe('bearing');
  });
});

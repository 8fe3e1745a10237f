import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { bearingFindings, checkRing, ringOf } from './bearing.ts';
import { headPressure } from './head-pressure.ts';

/** A quarter of the disc less square and reliefs, strip by strip along x with the gaps of each strip: independent of the
 * polar form of the code. */
function stripped(outerDiameter: number, square: number, relief: number, pressure: (r: number) => number) {
  const [outer, half] = [outerDiameter / 2, square / 2];
  const [strips, pieces] = [2000, 60];
  let [area, weight, moment] = [0, 0, 0];
  for (let i = 0; i < strips; i++) {
    const x = ((i + 0.5) * outer) / strips;
    const top = Math.sqrt(outer * outer - x * x);
    const bottom = x < half ? half : 0;
    const chord = relief * relief > (x - half) ** 2 ? Math.sqrt(relief * relief - (x - half) ** 2) : 0;
    // What a relief leaves of the strip: a part below it and a part above it.
    const parts = [
      [bottom, Math.min(top, Math.max(bottom, half - chord))],
      [Math.max(bottom, half + chord), top],
    ] as const;
    for (const [from, to] of chord > 0 ? parts : [[bottom, top] as const]) {
      if (to <= from) continue;
      const cell = ((to - from) / pieces) * (outer / strips) * 4;
      for (let j = 0; j < pieces; j++) {
        const r = Math.hypot(x, from + ((j + 0.5) * (to - from)) / pieces);
        area += cell;
        weight += pressure(r) * cell;
        moment += pressure(r) * cell * r;
      }
    }
  }
  return { area, radius: moment / weight };
}

const even = (): number => 1;

describe('ring under a head', () => {
  it('of a round hole: mean radius by custom, 2/3 (R^3 - r^3)/(R^2 - r^2) for even pressure', () => {
    const ring = ringOf({ outerDiameterMm: 16, holeDiameterMm: 8 });
    expect(ring.areaMm2).toBeCloseTo(Math.PI * (64 - 16), 10);
    expect(ring.customaryRadiusMm).toBe(6);
    expect(ring.evenPressureRadiusMm).toBeCloseTo((2 * (512 - 64)) / (3 * (64 - 16)), 10);
  });

  it('of a solid face: even pressure acts at two thirds of the radius', () => {
    expect(ringOf({ outerDiameterMm: 12, holeDiameterMm: 0 }).evenPressureRadiusMm).toBeCloseTo(4, 10);
  });

  it('of a sharp square: meets the closed form', () => {
    // Over a square of side s: integral of r dA = s^3 (sqrt 2 + ln(1 + sqrt 2))/6.
    for (const [outerDiameterMm, squareHoleMm] of [
      [20, 12.7],
      [26, 12.5],
      [18, 12.7],
    ] as const) {
      const area = (Math.PI / 4) * outerDiameterMm ** 2 - squareHoleMm ** 2;
      const moment =
        (Math.PI / 12) * outerDiameterMm ** 3 - (squareHoleMm ** 3 * (Math.SQRT2 + Math.log(1 + Math.SQRT2))) / 6;
      const ring = ringOf({ outerDiameterMm, squareHoleMm });
      expect(Math.abs(ring.areaMm2 / area - 1)).toBeLessThan(1e-6);
      expect(Math.abs(ring.evenPressureRadiusMm / (moment / area) - 1)).toBeLessThan(1e-6);
    }
  });

  it.each([
    [20, 12.7, 0.5],
    [20, 12.7, 1],
    [24, 12.5, 3],
    [32, 12.5, 6.25],
  ])(
    'face %d on square %d with relief %d: meets the area of the closed form',
    (outerDiameterMm, squareHoleMm, relief) => {
      // Reliefs wholly under the face and clear of each other: a quarter of each lies inside the square already.
      const area = (Math.PI / 4) * outerDiameterMm ** 2 - squareHoleMm ** 2 - 3 * Math.PI * relief ** 2;
      const ring = ringOf({ outerDiameterMm, squareHoleMm, cornerReliefMm: relief });
      expect(Math.abs(ring.areaMm2 / area - 1)).toBeLessThan(1e-6);
    },
  );

  it.each([
    [20, 12.7, 0.5],
    [20, 12.7, 1],
    [20, 12.7, 1.5],
    [19, 12.6, 0.8],
    [17, 12.7, 0],
    [17, 12.7, 1],
    [24, 12.5, 6.25],
  ])(
    'face %d on square %d with relief %d: agrees with an integral over strips',
    (outerDiameterMm, squareHoleMm, relief) => {
      // Midpoint rule with 2000 strips, each end wrong by up to half a strip: below 1e-3 of the area, 1e-4 of the radius.
      const ring = ringOf({ outerDiameterMm, squareHoleMm, cornerReliefMm: relief });
      const reference = stripped(outerDiameterMm, squareHoleMm, relief, even);
      expect(Math.abs(ring.areaMm2 / reference.area - 1)).toBeLessThan(1e-3);
      expect(Math.abs(ring.evenPressureRadiusMm / reference.radius - 1)).toBeLessThan(1e-4);
    },
  );

  it('has 0.8 to 3.1 % more radius than even wear would give (12.7 mm square, faces of 18 to 26 mm), as its users are told', () => {
    const errors = [18, 20, 22, 24, 26].map(
      (outerDiameterMm) =>
        ringOf({ outerDiameterMm, squareHoleMm: 12.7 }).evenPressureRadiusMm /
          stripped(outerDiameterMm, 12.7, 0, (r) => 1 / r).radius -
        1,
    );
    expect(errors[0]).toBeCloseTo(0.008, 3);
    expect(errors[4]).toBeCloseTo(0.031, 3);
    expect(errors).toEqual([...errors].sort((a, b) => a - b));
  });

  it.each([
    [13, 12.7],
    [15, 12.7],
    [17.9, 12.7],
  ])(
    'face %d within the corners of a square %d: meets the closed form of four segments',
    (outerDiameterMm, squareHoleMm) => {
      const [outer, half] = [outerDiameterMm / 2, squareHoleMm / 2];
      // Area and first moment about the middle of what a chord at the distance h cuts off a disc of radius R.
      const chord = Math.sqrt(outer ** 2 - half ** 2);
      const area = 4 * (outer ** 2 * Math.acos(half / outer) - half * chord);
      const moment =
        8 *
        ((outer ** 3 / 3) * Math.acos(half / outer) -
          (half / 6) * (outer * chord + half ** 2 * Math.acosh(outer / half)));
      const ring = ringOf({ outerDiameterMm, squareHoleMm });
      expect(Math.abs(ring.areaMm2 / area - 1)).toBeLessThan(1e-6);
      expect(Math.abs(ring.evenPressureRadiusMm / (moment / area) - 1)).toBeLessThan(1e-6);
    },
  );

  it('is said to miss the corners up to where their reliefs end, measured along the diagonal', () => {
    // 12.7 x sqrt 2 = 17.96 across the corners; reliefs of 1 mm add 1 mm at either end: 19.96.
    const codesOf = (outerDiameterMm: number, cornerReliefMm?: number): string[] =>
      bearingFindings({
        outerDiameterMm,
        squareHoleMm: 12.7,
        ...(cornerReliefMm === undefined ? {} : { cornerReliefMm }),
      }).map((finding) => finding.code);
    expect(codesOf(17.95)).toContain('head-misses-corners');
    expect(codesOf(17.97)).not.toContain('head-misses-corners');
    expect(codesOf(17.97, 0)).not.toContain('head-misses-corners');
    expect(codesOf(19.95, 1)).toContain('head-misses-corners');
    expect(codesOf(19.97, 1)).not.toContain('head-misses-corners');
    const [, missed] = bearingFindings({ outerDiameterMm: 19, squareHoleMm: 12.7, cornerReliefMm: 1 });
    expect(missed?.values.cornerMm).toBeCloseTo(19.9605, 3);
  });

  it('is said to miss corners that it just meets', () => {
    const codes = bearingFindings({ outerDiameterMm: 12.5 * Math.SQRT2, squareHoleMm: 12.5 }).map(({ code }) => code);
    expect(codes).toContain('head-misses-corners');
  });

  it('may be as thin as a hundredth of a millimetre, and reliefs half as wide as the square', () => {
    // 16.25 - 0.01 is the double next to 16.24.
    expect(() => checkRing('x', { outerDiameterMm: 16.25, holeDiameterMm: 16.25 - 0.01 })).not.toThrow();
    expect(refusal(() => checkRing('x', { outerDiameterMm: 16.25, holeDiameterMm: 16.245 })).path).toBe(
      'bearing.holeDiameterMm',
    );
    const widest = { outerDiameterMm: 30, squareHoleMm: 12.5, cornerReliefMm: 6.25 };
    expect(() => checkRing('x', widest)).not.toThrow();
    expect(refusal(() => checkRing('x', { ...widest, cornerReliefMm: 6.26 })).path).toBe('bearing.cornerReliefMm');
  });

  it.each([null, undefined, 'round', 5])('is not %j', (bearing) => {
    expect(refusal(() => headPressure({ preloadN: 1, bearing: bearing as never })).path).toBe('bearing');
  });

  it('shrinks to the corners left over when the face is smaller than the diagonal', () => {
    const ring = ringOf({ outerDiameterMm: 13, squareHoleMm: 12.7 });
    expect(ring.evenPressureRadiusMm).toBeGreaterThan(6.35);
    expect(ring.evenPressureRadiusMm).toBeLessThan(6.5);
    expect(ring.areaMm2).toBeLessThan(2);
    expect(bearingFindings({ outerDiameterMm: 13, squareHoleMm: 12.7 }).map((finding) => finding.code)).toEqual([
      'square-hole-under-head',
      'head-misses-corners',
    ]);
  });
});

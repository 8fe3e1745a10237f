import { describe, expect, it } from 'vitest';
import { plasticRing } from './plastic-ring.ts';

// Independent of the closed form: equilibrium and, for no plastic strain in volume, du/dr + u/r = (1 - nu)(sr + st)/E are
// integrated step by step from the elastic-plastic boundary to the bore.
function integrated(radiusRatio: number, c: number, nu: number): { pressureRatio: number; growthFactor: number } {
  // Elastic outside c, at first yield there; E = Sy = ri = 1.
  const q = (1 - (c / radiusRatio) ** 2) / 2;
  let radial = -q;
  const hoopAtC = 1 - q;
  let u = c * (hoopAtC + nu * q);
  const steps = 20000;
  const dr = (1 - c) / steps;
  const slope = (r: number, sr: number, ur: number): [number, number] => {
    const hoop = sr + 1;
    return [(hoop - sr) / r, (1 - nu) * (sr + hoop) - ur / r];
  };
  for (let step = 0, r = c; step < steps; step++, r += dr) {
    const [k1, m1] = slope(r, radial, u);
    const [k2, m2] = slope(r + dr / 2, radial + (k1 * dr) / 2, u + (m1 * dr) / 2);
    radial += k2 * dr;
    u += m2 * dr;
  }
  return { pressureRatio: -radial, growthFactor: u / -radial };
}

describe('plasticRing', () => {
  it.each([
    [2, 1.2],
    [2, 1.8],
    [2.6, 1.5],
    [2.6, 2.5],
    [3.2, 1.4],
  ])('agrees with integration: ro/ri %f, plastic to %f', (radiusRatio, c) => {
    const reference = integrated(radiusRatio, c, 0.33);
    const { pressureRatio } = reference;
    const ring = plasticRing({ radiusRatio, pressureRatio, poissonsRatio: 0.33 });
    expect(ring.carries).toBe(true);
    expect(ring.growthFactor).toBeCloseTo(reference.growthFactor, 6);
  });

  it('is the elastic ring up to first yield, and goes on from there without a step', () => {
    const radiusRatio = 2.6;
    const first = (1 - 1 / radiusRatio ** 2) / 2;
    const elastic = (radiusRatio ** 2 + 1) / (radiusRatio ** 2 - 1) + 0.33;
    const at = (pressureRatio: number): number =>
      plasticRing({ radiusRatio, pressureRatio, poissonsRatio: 0.33 }).growthFactor;
    expect(at(0)).toBe(elastic);
    expect(at(first)).toBe(elastic);
    expect(at(first * (1 + 1e-9))).toBeCloseTo(elastic, 7);
  });

  it('ends at collapse, or where the hoop stress at the bore would turn', () => {
    const carries = (radiusRatio: number, pressureRatio: number): boolean =>
      plasticRing({ radiusRatio, pressureRatio, poissonsRatio: 0.33 }).carries;
    expect(carries(2, Math.log(2) * 0.9999)).toBe(true);
    expect(carries(2, Math.log(2))).toBe(false);
    expect(carries(4, 0.9999)).toBe(true);
    expect(carries(4, 1)).toBe(false);
  });
});

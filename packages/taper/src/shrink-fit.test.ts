import { describe, expect, it } from 'vitest';
import { shrinkFit } from './shrink-fit.ts';

const steel = { youngsModulusGPa: 207, poissonsRatio: 0.292 };
const input = {
  interfaceDiameterMm: 40,
  outerDiameterMm: 80,
  diametralInterferenceMm: 0.05,
  inner: steel,
  outer: steel,
};

describe('shrinkFit', () => {
  it('takes the closed form of one material, also for a hollow shaft', () => {
    // p = E d/(2 R^3) (ro^2 - R^2)(R^2 - ri^2)/(ro^2 - ri^2), d radial (source shigley-9)
    const [ro, R, ri] = [40, 20, 10];
    const p = ((207000 * 0.025) / (2 * R ** 3)) * (((ro ** 2 - R ** 2) * (R ** 2 - ri ** 2)) / (ro ** 2 - ri ** 2));
    const fit = shrinkFit({ ...input, boreDiameterMm: 20 });
    expect(fit.pressureMPa).toBeCloseTo(p, 9);
    expect(fit.innerBoreHoopStressMPa).toBeCloseTo((-2 * p * R ** 2) / (R ** 2 - ri ** 2), 9);
    expect(fit.innerHoopStressMPa).toBeCloseTo((-p * (R ** 2 + ri ** 2)) / (R ** 2 - ri ** 2), 9);
  });

  it('squeezes a solid shaft evenly', () => {
    const fit = shrinkFit(input);
    expect(fit.innerHoopStressMPa).toBe(-fit.pressureMPa);
    expect(fit.innerBoreHoopStressMPa).toBe(-fit.pressureMPa);
  });

  it('tells yielding where it knows the strength', () => {
    const fit = shrinkFit(input);
    // Tresca at the bore of the ring: hoop less radial.
    const tresca = fit.outerHoopStressMPa + fit.pressureMPa;
    const ring = (yieldStrengthMPa: number) =>
      shrinkFit({ ...input, outer: { ...steel, yieldStrengthMPa } }).findings.map(({ code }) => code);
    expect(ring(tresca * 1.0001)).toEqual(['yield-not-checked']);
    expect(ring(tresca * 0.9999)).toEqual(['ring-yields', 'yield-not-checked']);
  });

  it('refuses diameters out of order', () => {
    expect(() => shrinkFit({ ...input, outerDiameterMm: 40 })).toThrow('outerDiameterMm');
    expect(() => shrinkFit({ ...input, boreDiameterMm: 40 })).toThrow('boreDiameterMm');
  });

  it('refuses diameters so small that the pressure would run out of numbers', () => {
    const tiny = { ...input, interfaceDiameterMm: 1e-320, outerDiameterMm: 1e-310, diametralInterferenceMm: 0 };
    expect(() => shrinkFit(tiny)).toThrow('interfaceDiameterMm');
  });

  it('doubles the stress at the smallest hole', () => {
    const solid = shrinkFit(input);
    const holed = shrinkFit({ ...input, boreDiameterMm: 1e-200 });
    expect(holed.innerBoreHoopStressMPa / solid.innerBoreHoopStressMPa).toBeCloseTo(2, 12);
  });

  it('is nothing without interference', () => {
    expect(shrinkFit({ ...input, diametralInterferenceMm: 0 })).toMatchObject({
      pressureMPa: 0,
      outerHoopStressMPa: 0,
      innerHoopStressMPa: 0,
      innerBoreHoopStressMPa: 0,
    });
  });
});

import { describe, expect, it } from 'vitest';
import { coneForces } from './cone-forces.ts';

const input = { pressureMPa: 40, meanDiameterMm: 30, lengthMm: 25, faceAngleDeg: 2, friction: 0.1 };

describe('coneForces', () => {
  it('balances normal force and friction along the axis', () => {
    const a = (2 * Math.PI) / 180;
    const forces = coneForces({ ...input, releaseFriction: 0.2 });
    expect(forces.normalForceN * (Math.sin(a) + 0.1 * Math.cos(a))).toBeCloseTo(forces.pushOnForceN, 8);
    expect(forces.normalForceN * (0.2 * Math.cos(a) - Math.sin(a))).toBeCloseTo(forces.releaseForceN, 8);
    expect(forces.slipTorqueNm).toBeCloseTo((0.1 * forces.normalForceN * 0.03) / 2, 10);
  });

  it('pushes on and pulls off alike where it is a cylinder', () => {
    const forces = coneForces({ ...input, faceAngleDeg: 0 });
    expect(forces.pushOnForceN).toBe(forces.releaseForceN);
    expect(forces.pushOnForceN).toBe(forces.slipForceN);
  });

  it('slides off by itself below the friction of its slope', () => {
    const slope = Math.tan((2 * Math.PI) / 180);
    const codes = (releaseFriction: number) =>
      coneForces({ ...input, releaseFriction }).findings.map(({ code }) => code);
    expect(codes(slope * 0.999)).toEqual(['cone-slides-off']);
    expect(codes(slope)).toEqual(['cone-slides-off']);
    expect(codes(slope * 1.001)).toEqual([]);
    expect(coneForces({ ...input, faceAngleDeg: 0, friction: 0 }).findings).toEqual([]);
  });

  it('refuses unknown keys', () => {
    expect(() => coneForces({ ...input, pressure: 1 } as never)).toThrow('pressureMPa');
  });
});

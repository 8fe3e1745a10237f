import { describe, expect, it } from 'vitest';
import { pinchClamp } from './pinch-clamp.ts';

const clamp = {
  boltPreloadN: 8000,
  boltCount: 2,
  spindleDiameterMm: 24,
  clampWidthMm: 20,
  friction: 0.15,
  hingeToBoltMm: 30,
  hingeToAxisMm: 15,
};

describe('pinchClamp', () => {
  it('turns about its hinge', () => {
    // 2 x 8000 N at 30 mm against N at 15 mm.
    expect(pinchClamp(clamp).clampForceN.nominal).toBe(32_000);
    expect(pinchClamp({ ...clamp, closingForceN: 2000 }).clampForceN.nominal).toBe(28_000);
  });

  it.each([
    ['a cosine', (angle: number) => Math.cos(angle), 'nominal'],
    ['an even pressure', () => 1, 'upper'],
  ] as const)('slips at the torque of %s, summed around the spindle', (_, shape, bound) => {
    const strips = 100_000;
    let [normal, across] = [0, 0];
    for (let k = 0; k < strips; k++) {
      const angle = Math.PI * ((k + 0.5) / strips - 0.5);
      const pressure = shape(angle);
      normal += pressure / strips;
      across += (pressure * Math.cos(angle)) / strips;
    }
    // Both halves; the force of one half is the part across the slot.
    const torque = (0.15 * 2 * 32_000 * (normal / across) * 12) / 1000;
    expect(pinchClamp(clamp).slipTorqueNm[bound]).toBeCloseTo(torque, 3);
  });

  it('slips least on two lines: friction of two forces at the radius', () => {
    expect(pinchClamp(clamp).slipTorqueNm.lower).toBeCloseTo((0.15 * 2 * 32_000 * 12) / 1000, 9);
  });

  it('clamps nothing with a closed slot, and says stop', () => {
    const shut = pinchClamp({ ...clamp, slotGapMm: 0 });
    expect(shut.clampForceN.upper).toBe(0);
    expect(shut.slotOpen).toBe(false);
    expect(shut.findings[0]).toMatchObject({ code: 'slot-closed', severity: 'stop' });
    expect(pinchClamp({ ...clamp, slotGapMm: 1 }).slotOpen).toBe(true);
    expect(pinchClamp(clamp).slotOpen).toBeNull();
    const perhaps = pinchClamp({ ...clamp, slotGapMm: { lower: -0.1, nominal: 1, upper: 1.2 } });
    expect(perhaps.findings.map(({ code }) => code)).toContain('slot-may-be-closed');
    expect(perhaps.findings.map(({ code }) => code)).not.toContain('slot-closed');
  });

  it('tells what the cap does to the bearings, and play that it leaves', () => {
    // T = K d F: 0.7 Nm on 20 mm with 0.2.
    const cap = { torqueNm: 0.7, threadDiameterMm: 20, nutFactor: 0.2 };
    expect(pinchClamp({ ...clamp, cap }).capForceN?.nominal).toBeCloseTo(175, 9);
    expect(pinchClamp({ ...clamp, axialPlayMm: 0.3 }).findings.map(({ code }) => code)).toContain('cap-leaves-play');
  });

  it('closes its slot by the clearance, magnified by the lever, before it grips', () => {
    // Two arms of one lever: 0.08 mm at 15 mm are 0.16 mm at 30 mm.
    const loose = pinchClamp({ ...clamp, clearanceMm: 0.08, closingForceN: 400 });
    expect(loose.slotClosingMm?.nominal).toBeCloseTo(0.16, 12);
    expect(loose.closingStiffnessNPerMm?.nominal).toBeCloseTo(2500, 9);
    expect(pinchClamp(clamp)).toMatchObject({ slotClosingMm: null, closingStiffnessNPerMm: null });
    const tight = pinchClamp({ ...clamp, clearanceMm: 0, closingForceN: 400 });
    expect(tight).toMatchObject({ slotClosingMm: { nominal: 0 }, closingStiffnessNPerMm: null });
    expect(tight.findings.map(({ code }) => code)).toContain('closing-stiffness-unbounded');
  });

  it('counts the turns of the cap that take out the play', () => {
    const cap = { torqueNm: 0.7, threadDiameterMm: 20, nutFactor: 0.2, pitchMm: 1 };
    expect(pinchClamp({ ...clamp, cap, axialPlayMm: 0.3 }).capTurns?.nominal).toBeCloseTo(0.3, 12);
    expect(pinchClamp({ ...clamp, cap }).capTurns).toBeNull();
  });

  it('refuses a hinge behind its bolts', () => {
    expect(() => pinchClamp({ ...clamp, hingeToAxisMm: 30 })).toThrow('hingeToAxisMm');
    expect(() => pinchClamp({ ...clamp, boltCount: 2.5 })).toThrow('boltCount');
  });
});

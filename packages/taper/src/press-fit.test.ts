import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { pressFit } from './press-fit.ts';
import type { ArmShape, Material, SpindleShape } from './shapes.ts';

const TAN2 = Math.tan((2 * Math.PI) / 180);
const spindle: SpindleShape = {
  acrossFlatsAtEndMm: 12.6,
  faceAngleDeg: 2,
  flatLengthMm: 20,
  cornerDiameterMm: 16.5,
};
const arm: ArmShape = {
  acrossFlatsAtMouthMm: 12.6 + 28 * TAN2,
  faceAngleDeg: 2,
  boreLengthMm: 15.5,
  bossDiameterMm: 34,
  boreCornerRadiusMm: 1,
};
const steel: Material = { youngsModulusGPa: 205, poissonsRatio: 0.29 };
const aluminium: Material = { youngsModulusGPa: 70, poissonsRatio: 0.33 };
const input = { spindle, arm, axialForceN: 12000, friction: 0.1, materials: { spindle: steel, arm: aluminium } };
const yielding = (yieldStrengthMPa: number) => ({ spindle: steel, arm: { ...aluminium, yieldStrengthMPa } });
const codes = (press: ReturnType<typeof pressFit>): string[] => press.findings.map((finding) => finding.code);
const caught = (run: () => unknown): { path: string; allowed: string } => {
  try {
    run();
  } catch (error) {
    if (isDomainError(error)) return error;
  }
  throw new Error('nothing refused');
};

describe('pressFit', () => {
  it('balances the forces on the four flats', () => {
    const press = pressFit(input);
    const a = (2 * Math.PI) / 180;
    expect(4 * press.normalForceN * (Math.sin(a) + 0.1 * Math.cos(a))).toBeCloseTo(12000, 8);
    expect(press.releaseForceN).toBeCloseTo(4 * press.normalForceN * (0.1 * Math.cos(a) - Math.sin(a)), 8);
    // The same normal force lets go at 12 kN with friction 0.10 and at about 49 kN with 0.30.
    const stuck = pressFit({ ...input, axialForceN: 22000, releaseFriction: 0.3 });
    expect(stuck.releaseForceN / pressFit({ ...input, axialForceN: 22000 }).releaseForceN).toBeCloseTo(49 / 12, 1);
  });

  it('takes section and length in the middle of the engaged length', () => {
    const press = pressFit(input);
    expect(press.engagedLengthMm).toBeCloseTo(14, 12);
    expect(press.acrossFlatsMm).toBeCloseTo(12.6 + 14 * TAN2, 12);
    // Table of press runs: 10.0464 mm at the middle of 14 mm.
    expect(press.flatWidthMm).toBeCloseTo(10.0464, 4);
  });

  it('leaves the chamfers out of the contact', () => {
    const press = pressFit({ ...input, spindle: { ...spindle, endChamferMm: 1 }, arm: { ...arm, mouthChamferMm: 3 } });
    expect(press.engagedLengthMm).toBeCloseTo(14 - 1 - 3, 12);
    expect(press.acrossFlatsMm).toBeCloseTo(12.6 + (1 + 14 - 3) * TAN2, 12);
  });

  it('is stiffer with a longer bore beyond the spindle end, and less and less so', () => {
    const at = (collarMm: number): number =>
      pressFit({ ...input, arm: { ...arm, boreLengthMm: 14 + collarMm } }).stiffnessNPerMm;
    expect(at(1) - at(0)).toBeGreaterThan(at(2) - at(1));
    expect(at(2) - at(1)).toBeGreaterThan(at(8) - at(7));
    expect(at(8)).toBeGreaterThan(at(7));
  });

  it('says what it assumed and nothing of the kind when everything is given', () => {
    const bare = pressFit({
      spindle: { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 20 },
      arm: { acrossFlatsAtMouthMm: arm.acrossFlatsAtMouthMm, faceAngleDeg: 2, boreLengthMm: 15.5 },
      axialForceN: 12000,
      friction: 0.1,
    });
    const assumed = ['flat-width-assumed', 'boss-assumed', 'material-assumed', 'material-assumed', 'yield-unknown'];
    const paths = ['spindle.cornerDiameterMm', 'arm.bossDiameterMm', 'materials.spindle', 'materials.arm'];
    expect(bare.findings.map(({ path }) => path).slice(0, 5)).toEqual([...paths, 'materials.arm.yieldStrengthMPa']);
    expect(codes(bare)).toEqual([...assumed, 'friction-is-a-range', 'never-ride-without-bolt', 'instructions-first']);
    expect(codes(pressFit({ ...input, materials: yielding(500) }))).toEqual([
      'friction-is-a-range',
      'never-ride-without-bolt',
      'instructions-first',
    ]);
    // 16.5 and 34 mm, 205 and 70 GPa are what is assumed, so nothing else changes.
    expect(bare.travelMm).toBe(pressFit(input).travelMm);
  });

  it('picks the plastic model only when the yield strength is known', () => {
    expect(pressFit(input).travelMm).toBe(pressFit({ ...input, compliance: 'fitted' }).travelMm);
    const plastic = pressFit({ ...input, materials: yielding(276) });
    expect(plastic.travelMm).toBe(
      pressFit({ ...input, materials: yielding(276), compliance: 'fitted-plastic' }).travelMm,
    );
    expect(plastic.travelMm).not.toBe(pressFit(input).travelMm);
    for (const compliance of ['fitted-plastic', 'ring-plastic'] as const) {
      expect(caught(() => pressFit({ ...input, compliance })).path).toBe('materials.arm.yieldStrengthMPa');
    }
  });

  it('tells first yield of the ring from just below it', () => {
    const { contactPressureMPa, acrossFlatsMm } = pressFit(input);
    // p = (Sy/2)(1 - s^2/D^2)
    const limit = (2 * (contactPressureMPa ?? 0)) / (1 - (acrossFlatsMm / 34) ** 2);
    const below = pressFit({ ...input, compliance: 'fitted', materials: yielding(limit * 1.0001) });
    const above = pressFit({ ...input, compliance: 'fitted', materials: yielding(limit * 0.9999) });
    expect([below.plastic, above.plastic]).toEqual([false, true]);
    expect(codes(below)).not.toContain('first-yield-passed');
    expect(codes(above)).toContain('first-yield-passed');
    expect(pressFit(input).plastic).toBe(false);
  });

  it('gives no travel from a plasticity ratio of 0.63 on, and none for a ring at collapse', () => {
    const { contactPressureMPa, acrossFlatsMm } = pressFit(input);
    const pressure = contactPressureMPa ?? 0;
    const strength = (ratio: number): number => pressure / (ratio * (34 / acrossFlatsMm - 1));
    const before = pressFit({ ...input, materials: yielding(strength(0.6299)) });
    const beyond = pressFit({ ...input, materials: yielding(strength(0.6301)) });
    expect(before.travelMm).not.toBeNull();
    expect(codes(before)).not.toContain('bore-fully-plastic');
    expect([beyond.travelMm, beyond.travelRangeMm]).toEqual([null, null]);
    expect(beyond.findings.slice(0, 2)).toMatchObject([
      { code: 'bore-fully-plastic', severity: 'stop' },
      { code: 'travel-unbounded', severity: 'stop' },
    ]);
    // The plastic zone reaches the outside at p = Sy ln(D/s).
    const collapse = pressure / Math.log(34 / acrossFlatsMm);
    const ring = (yieldStrengthMPa: number) =>
      pressFit({ ...input, compliance: 'ring-plastic', materials: yielding(yieldStrengthMPa) });
    expect(ring(collapse * 1.0001).travelMm).not.toBeNull();
    expect(ring(collapse * 0.9999).travelMm).toBeNull();
    expect(codes(ring(collapse * 0.9999))).toContain('travel-unbounded');
  });

  it('gives no pressure where nothing bears', () => {
    const apart = pressFit({ ...input, arm: { ...arm, acrossFlatsAtMouthMm: 12.5 } });
    expect(apart).toMatchObject({ contactPressureMPa: null, travelMm: null, stiffnessNPerMm: 0 });
    expect(codes(apart).slice(0, 2)).toEqual(['contact-pressure-unbounded', 'travel-unbounded']);
    const round = pressFit({ ...input, spindle: { ...spindle, cornerDiameterMm: 12 } });
    expect(round).toMatchObject({ flatWidthMm: 0, contactPressureMPa: null, complianceFactors: null });
    const thin = pressFit({ ...input, arm: { ...arm, bossDiameterMm: 16 } });
    expect(thin).toMatchObject({ travelMm: null, boreCornerStressMPa: null });
    expect(codes(thin)).toEqual(expect.arrayContaining(['travel-unbounded', 'outside-fit-range']));
    expect(codes(thin)).toContain('bore-corner-stress-unbounded');
  });

  it('notes where the fit was not checked, on the boss, the flats and the fillet', () => {
    const outside = pressFit({
      ...input,
      spindle: { ...spindle, cornerDiameterMm: 14.3 },
      arm: { ...arm, bossDiameterMm: 60, boreCornerRadiusMm: 3 },
    });
    expect(codes(outside).filter((code) => code === 'outside-fit-range')).toHaveLength(3);
    expect(codes(pressFit({ ...input, compliance: 'ring', arm: { ...arm, bossDiameterMm: 60 } }))).not.toContain(
      'outside-fit-range',
    );
  });

  it('keeps the bore wider after it has yielded, and tells so only where it knows the strength', () => {
    const soft = pressFit({ ...input, materials: yielding(276) });
    const hard = pressFit({ ...input, materials: yielding(500) });
    expect(soft.repressTravelMm?.nominal).toBeGreaterThan(hard.repressTravelMm?.nominal ?? Number.NaN);
    // More stays than nothing, less than the whole plastic travel.
    const elastic = pressFit(input).travelMm ?? 0;
    expect(soft.repressTravelMm?.nominal).toBeLessThan((soft.travelMm ?? 0) - elastic);
    expect(soft.permanentOpeningMm?.nominal).toBeCloseTo(2 * TAN2 * (soft.repressTravelMm?.nominal ?? 0), 12);
    expect(pressFit(input)).toMatchObject({ permanentOpeningMm: null, repressTravelMm: null });
  });

  it('gives the corner stress from the thinnest boss of its fit on', () => {
    const stress = (bossDiameterMm: number) =>
      pressFit({ ...input, arm: { ...arm, bossDiameterMm } }).boreCornerStressMPa;
    expect(stress(24)).toBeNull();
    expect(stress(24.5)).toBeGreaterThan(stress(34) ?? Number.NaN);
  });

  it('says when the arm slides off by itself', () => {
    const slick = pressFit({ ...input, releaseFriction: 0.02 });
    expect(slick.findings[0]).toMatchObject({ code: 'slides-off', severity: 'stop' });
    expect(slick.holdsAtRestWithoutBolt).toBe(false);
    expect(slick.releaseForceN).toBeLessThan(0);
  });

  it('counts the turns of the bolt when it knows the bolt', () => {
    const press = pressFit({ ...input, boltStiffnessNPerMm: 200000, boltPitchMm: 1 });
    expect(press.boltTurns).toBeCloseTo((press.travelMm ?? 0) + 0.06, 12);
    expect(codes(press)).toContain('stop-before-half-a-turn');
    expect(caught(() => pressFit({ ...input, boltPitchMm: 1 })).path).toBe('boltStiffnessNPerMm');
    expect(caught(() => pressFit({ ...input, boltStiffnessNPerMm: 2e5 })).path).toBe('boltPitchMm');
  });

  it('is zero without force', () => {
    const idle = pressFit({ ...input, axialForceN: 0 });
    expect(idle).toMatchObject({ normalForceN: 0, contactPressureMPa: 0, travelMm: 0, releaseForceN: 0 });
    expect(idle.travelRangeMm).toEqual({ lower: 0, nominal: 0, upper: 0 });
  });

  it('adds the closing of a difference of angles to the travel', () => {
    const bore = (faceAngleDeg: number): ArmShape => ({
      ...arm,
      faceAngleDeg,
      acrossFlatsAtMouthMm: 12.6 + 28 * Math.tan((Math.max(2, faceAngleDeg) * Math.PI) / 180),
    });
    const travel = (degrees: number, more: Partial<ArmShape> = {}): number =>
      pressFit({ ...input, arm: { ...bore(degrees), ...more } }).travelMm ?? 0;
    // Without a collar the closed contact is that of parallel faces plus an even tilt, which by its antisymmetry takes no
    // force: half of L |tan s - tan a|/tan s comes on top. On the steeper bore the spindle's end is wedged sooner.
    const plain = { boreLengthMm: 14 };
    const tangent = (degrees: number): number => Math.tan((degrees * Math.PI) / 180) / TAN2;
    expect(travel(1.95, plain) - travel(2, plain)).toBeCloseTo(7 * (1 - tangent(1.95)), 9);
    expect(travel(2.05, plain) * tangent(2.05) - travel(2, plain)).toBeCloseTo(7 * (tangent(2.05) - 1), 9);
    expect(travel(1.5)).toBeGreaterThan(travel(1.8));
    expect(travel(2.3)).toBeGreaterThan(travel(2.1));
    expect(codes(pressFit({ ...input, arm: bore(2.05) }))).toContain('angles-differ');
  });

  it.each([
    ['a misspelt key', { ...input, axialForce: 1 }, 'axialForce'],
    ['a negative force', { ...input, axialForceN: -1 }, 'axialForceN'],
    ['friction above 1', { ...input, friction: 1.01 }, 'friction'],
    ['limits where a number is asked for', { ...input, friction: { lower: 0, nominal: 0, upper: 0 } }, 'friction'],
    ['an angle of zero', { ...input, spindle: { ...spindle, faceAngleDeg: 0 } }, 'spindle.faceAngleDeg'],
    ['an unknown model', { ...input, compliance: 'fited' }, 'compliance'],
    ['a missing arm', { spindle, axialForceN: 1, friction: 0.1 }, 'arm'],
  ])('refuses %s', (_name, value, path) => {
    expect(caught(() => pressFit(value as never)).path).toBe(path);
  });
});

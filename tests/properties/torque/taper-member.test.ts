// The taper as the member under a crank bolt: both packages together.
import { pressFit } from '@spindlewright/taper';
import { angleTightening, boltStiffness, loadFactor, threadFor } from '@spindlewright/torque';
import { describe, expect, it } from 'vitest';

const thread = threadFor('M8x1');
const press = pressFit({
  spindle: { acrossFlatsAtEndMm: 12.63, faceAngleDeg: 2, flatLengthMm: 15 },
  arm: { acrossFlatsAtMouthMm: 13.54, faceAngleDeg: 2, boreLengthMm: 15.5, bossDiameterMm: 34 },
  axialForceN: 12_000,
  friction: 0.1,
});
const boltStiffnessNPerMm = boltStiffness({
  segments: [{ areaMm2: thread.stressAreaMm2, lengthMm: 16 }],
  modulusGPa: 205,
}).stiffnessNPerMm;

describe('an arm on its taper under the bolt', () => {
  it('is softer than the bolt by more than ten times', () => {
    // Finite-element row p3 of the press: 12 kN in 0.805 mm, that is 14.9 kN/mm; the bolt 205 GPa x 39.2 mm2/16 mm = 502.
    expect(press.stiffnessNPerMm).toBeGreaterThan(10_000);
    expect(press.stiffnessNPerMm).toBeLessThan(25_000);
    expect(boltStiffnessNPerMm / press.stiffnessNPerMm).toBeGreaterThan(10);
  });

  it('lets the bolt feel nearly all of a load along it, by the share of two springs', () => {
    const springs = { boltStiffnessNPerMm, memberStiffnessNPerMm: press.stiffnessNPerMm };
    const { loadFactor: share } = loadFactor({ ...springs, preloadN: 12_000, externalLoadN: 1000 });
    expect(share).toBeCloseTo(boltStiffnessNPerMm / (boltStiffnessNPerMm + press.stiffnessNPerMm), 12);
  });

  it('takes most of a turn from snug to 12 kN, where a stiff joint takes a few degrees', () => {
    const { angleDeg } = angleTightening({
      boltStiffnessNPerMm,
      memberStiffnessNPerMm: press.stiffnessNPerMm,
      thread,
      snugPreloadN: 0.001,
      targetPreloadN: 12_000,
    });
    // (F/kb + F/km)/P turns, by hand.
    const turns = (12_000 / boltStiffnessNPerMm + 12_000 / press.stiffnessNPerMm) / thread.pitchMm;
    expect(angleDeg).toBeCloseTo(360 * turns, 3);
    expect(angleDeg).toBeGreaterThan(180);
  });
});

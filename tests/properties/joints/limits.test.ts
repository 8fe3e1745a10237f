// Joints without friction, and at the ends of what their readings may be: there the laws of work and of the lever hold.

import { cotterWedge, faceSpline, onePieceCrank, pinchClamp, splinePress } from '@spindlewright/taper';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactly, type Numbers, SUBJECTS } from './subjects.ts';

const tangent = (angleDeg = 0): number => Math.tan((angleDeg * Math.PI) / 180);

/** Near enough for a chain of roundings. */
function near(ours: number | undefined, expected: number, scale = Math.abs(expected)): void {
  expect(Math.abs((ours ?? Number.NaN) - expected)).toBeLessThanOrEqual(1e-9 * (scale + 1e-9));
}

function forAll(name: keyof typeof SUBJECTS, law: (input: never) => void): void {
  const { exact = {}, ...subject }: { exact?: Numbers } & (typeof SUBJECTS)[typeof name] = SUBJECTS[name];
  fc.assert(
    fc.property(exactly(subject), (input) => law({ ...input, ...exact } as never)),
    { numRuns: 300 },
  );
}

type Splines = Record<keyof (typeof SUBJECTS)['splinePress']['ranges'], number> & { splineCount: number };
type Clamp = Record<keyof (typeof SUBJECTS)['pinchClamp']['ranges'], number> & { boltCount: number };
type Cotter = Record<keyof (typeof SUBJECTS)['cotterWedge']['ranges'], number>;
type Teeth = Record<keyof (typeof SUBJECTS)['faceSpline']['ranges'], number>;
type Bar = Record<keyof (typeof SUBJECTS)['onePieceCrank']['ranges'], number>;

describe('splines with a stop', () => {
  it('without friction give back the whole press, and do as much work on the flanks as is done on them', () => {
    forAll('splinePress', (input: Splines) => {
      const gapAtStopMm = Math.abs(input.gapAtStopMm) + 0.01;
      const press = splinePress({ ...input, gapAtStopMm, friction: 0 });
      const pressing = Math.min(input.axialForceN, input.forceToStopN);
      near(press.releaseForceN.nominal, -pressing);
      expect(press.holdsAtRestWithoutBolt).toBe(false);
      // Each of the 2 z flanks moves by half the interference against the part of its force across the axis.
      const a = (input.taperPerSideDeg * Math.PI) / 180;
      const across = 2 * input.splineCount * press.normalForceN.nominal * Math.cos(a);
      near((across * (press.interferenceMm?.nominal ?? 0)) / 2, pressing * (press.travelMm?.nominal ?? 0));
    });
  });

  it('with friction lose on the way on and on the way off together twice what friction takes', () => {
    forAll('splinePress', (input: Splines) => {
      const press = splinePress({ ...input, gapAtStopMm: 1 });
      const a = (input.taperPerSideDeg * Math.PI) / 180;
      const drag = 2 * input.splineCount * press.normalForceN.nominal * input.friction * Math.cos(a);
      const pressing = Math.min(input.axialForceN, input.forceToStopN);
      near(pressing + press.releaseForceN.nominal, 2 * drag, pressing);
    });
  });

  it('go nowhere without force, to the stop with its force, and no farther with more', () => {
    forAll('splinePress', (input: Splines) => {
      const gapAtStopMm = Math.abs(input.gapAtStopMm) + 0.01;
      const at = (axialForceN: number) => splinePress({ ...input, gapAtStopMm, axialForceN });
      expect(at(0)).toMatchObject({ travelMm: { nominal: 0 }, stopForceN: { nominal: 0 } });
      near(at(0).leftToStopMm?.nominal, gapAtStopMm);
      near(at(input.forceToStopN).travelMm?.nominal, gapAtStopMm);
      const beyond = at(2 * input.forceToStopN);
      near(beyond.travelMm?.nominal, gapAtStopMm);
      near(beyond.stopForceN.nominal, input.forceToStopN);
      near(beyond.normalForceN.nominal, at(input.forceToStopN).normalForceN.nominal);
    });
  });

  it('press nothing when the arm stands on its stop by hand: the stop takes it all', () => {
    forAll('splinePress', (input: Splines) => {
      const worn = splinePress({ ...input, gapAtStopMm: -Math.abs(input.gapAtStopMm) });
      expect(worn).toMatchObject({ pressesBeforeStop: false, normalForceN: { nominal: 0 }, travelMm: { nominal: 0 } });
      near(worn.stopForceN.nominal, input.axialForceN);
    });
  });
});

describe('pinch clamp', () => {
  it('without friction clamps as hard, and holds nothing', () => {
    forAll('pinchClamp', (input: Clamp) => {
      const smooth = pinchClamp({ ...input, friction: 0 });
      expect(smooth).toMatchObject({ slipTorqueNm: { upper: 0 }, axialHoldN: { upper: 0 } });
      expect(smooth.clampForceN).toEqual(pinchClamp(input).clampForceN);
    });
  });

  it('does as much work on the spindle as its bolts do beyond the bending of the slot', () => {
    forAll('pinchClamp', (input: Clamp) => {
      const { clampForceN, slotClosingMm } = pinchClamp({ ...input, slotGapMm: 1, clearanceMm: 0.1 });
      const bolts = Math.max(0, input.boltCount * input.boltPreloadN - input.closingForceN);
      near(clampForceN.nominal * 0.1, bolts * (slotClosingMm?.nominal ?? 0));
    });
  });

  it('needs no closing without clearance, and nothing is clamped by less than the closing force', () => {
    forAll('pinchClamp', (input: Clamp) => {
      expect(pinchClamp({ ...input, clearanceMm: 0 })).toMatchObject({
        slotClosingMm: { nominal: 0 },
        closingStiffnessNPerMm: null,
      });
      const weak = { ...input, boltPreloadN: input.closingForceN / input.boltCount };
      near(pinchClamp(weak).clampForceN.nominal, 0, 1);
    });
  });

  it('loads the bearings with the work of the cap when half of the nut factor is its lead', () => {
    // A thread without friction: T = F pitch/(2 pi), which is K = pitch/(2 pi d).
    forAll('pinchClamp', (input: Clamp) => {
      const cap = { torqueNm: 1, threadDiameterMm: 3, nutFactor: 4 / (2 * Math.PI * 3), pitchMm: 4 };
      const { capForceN, capTurns } = pinchClamp({ ...input, axialPlayMm: 2, cap });
      near((capForceN?.nominal ?? 0) * 2, (capTurns?.nominal ?? 0) * 2 * Math.PI * 1000);
    });
  });
});

describe('cotter', () => {
  it('without friction gives back the whole press, and does as much work across as is done along it', () => {
    forAll('cotterWedge', (input: Cotter) => {
      const smooth = cotterWedge({ ...input, flatFriction: 0, backFriction: 0 });
      near(smooth.releaseForceN.nominal, -input.pressForceN);
      expect(smooth.holdsAtRestWithoutNut).toBe(false);
      const t = tangent(input.flatAngleDeg);
      near(smooth.stiffnessNPerMm?.nominal, input.acrossStiffnessNPerMm * t * t);
      // Energy of the squeezed joint is half of force times travel.
      const squeeze = (smooth.travelMm?.nominal ?? 0) * t;
      near(input.acrossStiffnessNPerMm * squeeze ** 2, input.pressForceN * (smooth.travelMm?.nominal ?? 0));
    });
  });

  it('holds itself up to the sum of the two angles of friction, and not beyond', () => {
    forAll('cotterWedge', (input: Cotter) => {
      const pressForceN = input.pressForceN + 1;
      const limit = ((Math.atan(input.flatFriction) + Math.atan(input.backFriction)) * 180) / Math.PI;
      fc.pre(Math.abs(limit - input.flatAngleDeg) > 1e-6);
      expect(cotterWedge({ ...input, pressForceN }).holdsAtRestWithoutNut).toBe(input.flatAngleDeg < limit);
    });
  });

  it('travels nowhere without force or play', () => {
    forAll('cotterWedge', (input: Cotter) => {
      const calm = cotterWedge({ ...input, pressForceN: 0, slackMm: 0 });
      expect(calm).toMatchObject({ travelMm: { nominal: 0 }, slackTravelMm: { nominal: 0 } });
    });
  });
});

describe('face teeth', () => {
  it('climb when the work of the torque is that of lifting the bolt, friction not counted', () => {
    forAll('faceSpline', (input: Teeth) => {
      const radius = (input.outerDiameterMm + input.innerDiameterMm) / 4;
      const rise = radius / tangent(input.flankAngleDeg);
      near(faceSpline(input).torqueCapacityNm.nominal * 1000, input.axialForceN * rise);
    });
  });

  it('need just the force that is there at the torque of climbing, and then open under any bending', () => {
    forAll('faceSpline', (input: Teeth) => {
      const capacity = faceSpline({ ...input, torqueNm: 0, bendingNm: 0 }).torqueCapacityNm.nominal;
      fc.pre(capacity > 1e-3 && capacity < 2000);
      const full = faceSpline({ ...input, torqueNm: capacity, bendingNm: 0 });
      near(full.neededForceN.nominal, input.axialForceN);
      near(full.openingMomentNm.nominal, 0, capacity);
      near(full.reserveRatio?.nominal, 1);
      const opening = faceSpline({ ...input, torqueNm: 0 }).openingMomentNm.nominal;
      fc.pre(opening < 2000);
      near(faceSpline({ ...input, torqueNm: 0, bendingNm: opening }).neededForceN.nominal, input.axialForceN);
    });
  });
});

describe('one piece', () => {
  it('is bending alone or torsion alone at the ends, and never more than their sum', () => {
    forAll('onePieceCrank', (input: Bar) => {
      const both = onePieceCrank(input);
      const section = (Math.PI * input.barDiameterMm ** 3) / 32;
      const torsion = (Math.sqrt(3) * input.pedalForceN * input.crankLengthMm) / (2 * section);
      const bending = (input.pedalForceN * input.overhangMm) / section;
      near(onePieceCrank({ ...input, overhangMm: 0 }).equivalentStressMPa.nominal, torsion);
      const { nominal } = both.equivalentStressMPa;
      expect(nominal).toBeLessThanOrEqual((torsion + bending) * (1 + 1e-12));
      expect(nominal).toBeGreaterThanOrEqual(Math.max(torsion, bending) * (1 - 1e-12));
    });
  });
});

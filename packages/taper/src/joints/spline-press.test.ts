import { describe, expect, it } from 'vitest';
import { splinePress } from './spline-press.ts';

const spline = {
  axialForceN: 25_000,
  forceToStopN: 15_000,
  friction: 0.13,
  taperPerSideDeg: 1,
  splineCount: 10,
  flankHeightMm: 1.8,
  engagedLengthMm: 16,
  meanRadiusMm: 10,
  allowablePressureMPa: 100,
  carryingShare: 1,
};

describe('splinePress', () => {
  it('gives the flanks what reaches the stop, and the stop the rest', () => {
    const { normalForceN, stopForceN, contactPressureMPa } = splinePress(spline);
    const a = Math.PI / 180;
    // Twenty flanks, each with its slope and its friction, balance the press.
    expect(20 * normalForceN.nominal * (Math.sin(a) + 0.13 * Math.cos(a))).toBeCloseTo(15_000, 6);
    expect(stopForceN.nominal).toBe(10_000);
    expect(contactPressureMPa.nominal).toBeCloseTo(normalForceN.nominal / (1.8 * 16), 9);
  });

  it('bears the torque of a pressure summed over ten flanks', () => {
    const strips = 1000;
    let torque = 0;
    for (let k = 0; k < strips; k++) torque += (100 * (16 * 1.8) * (9.1 + (1.8 * (k + 0.5)) / strips)) / strips;
    expect(splinePress(spline).torqueCapacityNm.nominal).toBeCloseTo((10 * torque) / 1000, 6);
  });

  it('is not home with too little force, and says what is left', () => {
    const short = splinePress({ ...spline, axialForceN: 12_000 });
    expect(short).toMatchObject({ home: false, stopForceN: { nominal: 0 } });
    expect(short.pressReached.nominal).toBeCloseTo(0.8, 12);
    expect(short.findings.map(({ code }) => code)).toContain('not-home');
    const perhaps = splinePress({ ...spline, axialForceN: { lower: 14_000, nominal: 16_000, upper: 18_000 } });
    expect(perhaps.home).toBe(false);
    expect(perhaps.findings.map(({ code }) => code)).toContain('may-not-be-home');
  });

  it('comes off by itself without friction, with the force that pressed it', () => {
    const smooth = splinePress({ ...spline, friction: 0 });
    expect(smooth.releaseForceN.nominal).toBeCloseTo(-15_000, 6);
    expect(smooth.holdsAtRestWithoutBolt).toBe(false);
    expect(splinePress(spline).holdsAtRestWithoutBolt).toBe(true);
  });

  it('travels to its stop evenly with the force, and no farther', () => {
    const half = splinePress({ ...spline, axialForceN: 7500, gapAtStopMm: 0.6 });
    expect(half.travelMm?.nominal).toBeCloseTo(0.3, 12);
    expect(half.leftToStopMm?.nominal).toBeCloseTo(0.3, 12);
    expect(half.stiffnessNPerMm?.nominal).toBeCloseTo(25_000, 9);
    // Two flanks at 1 deg: 0.0349 mm a mm of travel.
    expect(half.interferenceMm?.nominal).toBeCloseTo(0.3 * 0.03491, 6);
    const home = splinePress({ ...spline, gapAtStopMm: 0.6 });
    expect(home).toMatchObject({ pressesBeforeStop: true, travelMm: { nominal: 0.6 }, leftToStopMm: { nominal: 0 } });
    expect(splinePress(spline)).toMatchObject({ pressesBeforeStop: null, travelMm: null, stiffnessNPerMm: null });
    expect(splinePress(spline).findings.map(({ code }) => code)).toContain('travel-not-reckoned');
  });

  it('presses nothing when it stands on its stop by hand, and says do not ride', () => {
    const worn = splinePress({ ...spline, gapAtStopMm: -0.1 });
    expect(worn).toMatchObject({
      home: true,
      pressesBeforeStop: false,
      normalForceN: { upper: 0 },
      stopForceN: { lower: 25_000 },
      travelMm: { nominal: 0 },
      stiffnessNPerMm: null,
      holdsAtRestWithoutBolt: false,
    });
    expect(worn.findings[0]).toMatchObject({ code: 'stop-before-press', severity: 'stop' });
    const perhaps = splinePress({ ...spline, gapAtStopMm: { lower: 0, nominal: 0.2, upper: 0.4 } });
    expect(perhaps.pressesBeforeStop).toBe(false);
    expect(perhaps.normalForceN.lower).toBe(0);
    expect(perhaps.findings.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['stop-may-come-first', 'press-stiffness-unbounded']),
    );
  });

  it('says when the share of the flanks was taken', () => {
    const { carryingShare: _share, ...rest } = spline;
    expect(splinePress(rest).findings.map(({ code }) => code)).toContain('share-of-flanks-assumed');
    expect(() => splinePress({ ...spline, splineCount: 1 })).toThrow('splineCount');
  });
});

import { describe, expect, it } from 'vitest';
import { cotterWedge } from './cotter-wedge.ts';

const cotter = {
  pressForceN: 10_000,
  flatAngleDeg: 5,
  flatFriction: 0.12,
  backFriction: 0.12,
  flatLengthMm: 12,
  flatWidthMm: 8,
  axisToFlatMm: 6.5,
};
const codes = (input: Parameters<typeof cotterWedge>[0]) => cotterWedge(input).findings.map(({ code }) => code);

describe('cotterWedge', () => {
  it('balances the forces on the cotter, along and across it', () => {
    const { normalForceN } = cotterWedge(cotter);
    const a = (5 * Math.PI) / 180;
    const N = normalForceN.nominal;
    // Across: the back carries what the flat presses; along: press = both frictions and the slope.
    const back = N * (Math.cos(a) - 0.12 * Math.sin(a));
    expect(N * (Math.sin(a) + 0.12 * Math.cos(a)) + 0.12 * back).toBeCloseTo(10_000, 6);
  });

  it('is the frictionless wedge without friction, and works out by itself', () => {
    const bare = { ...cotter, flatFriction: 0, backFriction: 0 };
    expect(cotterWedge(bare).normalForceN.nominal).toBeCloseTo(10_000 / Math.sin((5 * Math.PI) / 180), 6);
    expect(cotterWedge(bare).releaseForceN.nominal).toBeCloseTo(-10_000, 6);
    expect(cotterWedge(bare).holdsAtRestWithoutNut).toBe(false);
    expect(codes(bare)).toContain('cotter-works-out');
  });

  it('lifts an edge where a summed linear pressure reaches zero there', () => {
    const { normalForceN, firstEdgeUnloadingNm, rockingLimitNm } = cotterWedge(cotter);
    const T = firstEdgeUnloadingNm.nominal * 1000;
    // Pressure N/l + 12 T x/l^3 per mm of length, by sums over strips.
    const strips = 100_000;
    let [force, moment] = [0, 0];
    for (let k = 0; k < strips; k++) {
      const x = 12 * ((k + 0.5) / strips - 0.5);
      const pressure = normalForceN.nominal / 12 + (12 * T * x) / 12 ** 3;
      force += (pressure * 12) / strips;
      moment += (pressure * x * 12) / strips;
    }
    expect(force).toBeCloseTo(normalForceN.nominal, 3);
    expect(moment / T).toBeCloseTo(1, 6);
    expect(normalForceN.nominal / 12 + (12 * T * -6) / 12 ** 3).toBeCloseTo(0, 6);
    expect(rockingLimitNm.nominal).toBeCloseTo((normalForceN.nominal * 6) / 1000, 9);
  });

  it('says so when both cotters sit the same way round, and when the flat lifts', () => {
    expect(cotterWedge({ ...cotter, sameWayRound: true }).misalignmentDeg.nominal).toBe(10);
    expect(codes({ ...cotter, sameWayRound: true })).toContain('cotters-same-way-round');
    expect(codes({ ...cotter, crankTorqueNm: 300 })).toContain('flat-lifts');
    expect(codes(cotter)).toEqual(['cotter-travel-not-reckoned', 'joint-instructions-first']);
    expect(codes({ ...cotter, slackMm: 0.1, acrossStiffnessNPerMm: 2e5 })).toEqual(['joint-instructions-first']);
  });

  it('travels as far as the slope of the flat takes up the play, and then as the joint gives', () => {
    const { travelPerSlackRatio, slackTravelMm, travelMm, stiffnessNPerMm, normalForceN } = cotterWedge({
      ...cotter,
      slackMm: 0.1,
      acrossStiffnessNPerMm: 200_000,
    });
    const a = (5 * Math.PI) / 180;
    expect(travelPerSlackRatio.nominal).toBeCloseTo(11.4301, 4);
    expect(slackTravelMm?.nominal).toBeCloseTo(1.14301, 5);
    // The force across the joint squeezes it by as much as the slope takes of the travel.
    const across = normalForceN.nominal * (Math.cos(a) - 0.12 * Math.sin(a));
    expect((travelMm?.nominal ?? 0) * Math.tan(a)).toBeCloseTo(across / 200_000, 9);
    expect((stiffnessNPerMm?.nominal ?? 0) * (travelMm?.nominal ?? 0)).toBeCloseTo(10_000, 6);
    expect(cotterWedge(cotter)).toMatchObject({ slackTravelMm: null, travelMm: null, stiffnessNPerMm: null });
  });

  it('refuses a flat without an angle', () => {
    expect(() => cotterWedge({ ...cotter, flatAngleDeg: 0 })).toThrow('flatAngleDeg');
  });
});

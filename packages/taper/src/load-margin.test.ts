import { describe, expect, it } from 'vitest';
import { loadMargin } from './load-margin.ts';
import { crankTestLoad } from './pedal-load.ts';

const TAN2 = Math.tan((2 * Math.PI) / 180);
const spindle = { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 20, cornerDiameterMm: 16.5 };
const arm = { acrossFlatsAtMouthMm: 12.6 + 28 * TAN2, faceAngleDeg: 2, boreLengthMm: 15.5 };
const load = { pedalForceN: 700, crankLengthMm: 170, overhangMm: 65, faceToSeatMm: 15, crankAngleDeg: 0 };
const input = { spindle, arm, axialForceN: 12000, friction: 0.1, load, squareOrientation: 'flat-in-line' } as const;
const at = (more: object) => loadMargin({ ...input, ...more });
const first = (margin: ReturnType<typeof at>, side: 'left' | 'right'): number =>
  margin[side].firstEdgeUnloading?.nominal ?? Number.NaN;

describe('loadMargin', () => {
  it('gives the linear pressure its moments: summed over the flats, they are torque and bending', () => {
    const { left, torsionLimitNm } = at({});
    const [normalN, lengthMm, widthMm] = [22249, 14, 10.0464];
    // At the limit the pressure runs from 0 to twice the mean over the width: 4 flats, moment 2 p L b^2/12 each.
    const mean = normalN / (lengthMm * widthMm);
    let moment = 0;
    for (let k = 0; k < 1000; k++) {
      const x = ((k + 0.5) / 1000 - 0.5) * widthMm;
      moment += 4 * mean * (1 + (2 * x) / widthMm) * x * lengthMm * (widthMm / 1000);
    }
    expect(torsionLimitNm?.nominal).toBeCloseTo(moment / 1000, 1);
    // T = 119 Nm, M = 56 Nm, M0 = N L/3 for a rigid spindle, which is the upper limit.
    const used = 119 / (moment / 1000) + 56 / ((normalN * lengthMm) / 3000);
    expect(left.firstEdgeUnloading?.upper).toBeCloseTo(1 / used, 3);
    expect(left.rockingLimit?.upper).toBeCloseTo(3 / used, 3);
    expect(left.loadedEdgePressureMPa?.lower).toBeCloseTo(mean * (1 + used), 0);
  });

  it('leaves more to the mouth of a spindle that bends, and nothing where nothing bends it', () => {
    const { left } = at({});
    for (const margin of [left.firstEdgeUnloading, left.rockingLimit]) {
      expect(margin?.lower).toBeLessThan(margin?.nominal ?? 0);
      expect(margin?.nominal).toBeLessThan(margin?.upper ?? 0);
    }
    const unbent = at({ load: { ...load, overhangMm: 0, faceToSeatMm: 0 } }).left.firstEdgeUnloading;
    expect(unbent?.upper).toBeCloseTo(unbent?.lower ?? 0, 12);
  });

  it('says from when on contact opens in places, by bending alone', () => {
    const opens = (pedalForceN: number) =>
      at({ load: { ...load, pedalForceN, crankAngleDeg: 90 } }).findings.find(
        ({ code }) => code === 'contact-opens-in-places',
      );
    // A quarter of N L/3 = 103.8 Nm at a lever of 80 mm: 324 N.
    const forceN = (0.25 * 22249 * 14) / 3 / 80;
    expect(opens(forceN * 0.999)).toBeUndefined();
    expect(opens(forceN * 1.001)?.severity).toBe('caution');
    expect(opens(2 * forceN)?.values.bendingPercent).toBeCloseTo(50, 1);
  });

  it('loads the left taper more than the right, and a square on its corner less where the load meets the corner', () => {
    const flat = at({});
    const corner = at({ squareOrientation: 'corner-in-line' });
    expect(first(flat, 'left')).toBeLessThan(first(flat, 'right'));
    expect(first(corner, 'left')).toBeGreaterThan(first(flat, 'left'));
    // At 45 deg, as in the test, the flats change their places.
    const tilted = { ...load, crankAngleDeg: crankTestLoad.crankAngleDeg.value };
    expect(first(at({ load: tilted, squareOrientation: 'corner-in-line' }), 'left')).toBeLessThan(
      first(at({ load: tilted }), 'left'),
    );
    // Bending alone: an arm pointing down takes no torque, and the diagonal sqrt 2 more.
    const bent = (crankAngleDeg: number) => first(at({ load: { ...load, crankLengthMm: 50, crankAngleDeg } }), 'right');
    expect(bent(45) / bent(90)).toBeCloseTo(Math.SQRT2, 9);
  });

  it('knows the torques and moments of the test as commonly derived', () => {
    // 1300 N at 45 deg on 170 mm: 156 Nm; overhang of 65 mm: 84.5 Nm.
    const test = { pedalForceN: 1300, crankLengthMm: 170, overhangMm: 65, faceToSeatMm: 0, crankAngleDeg: 45 };
    const { left } = at({ load: test });
    expect(left.torqueNm.nominal).toBeCloseTo(156, 0);
    expect(left.bendingNm.nominal).toBeCloseTo(84.5, 9);
  });

  it('brackets by the limits of its inputs', () => {
    const { left } = at({
      friction: { lower: 0.1, nominal: 0.13, upper: 0.16 },
      axialForceN: { lower: 9e3, nominal: 12e3, upper: 15e3 },
    });
    const [least, most] = [at({ friction: 0.16, axialForceN: 9e3 }), at({ friction: 0.1, axialForceN: 15e3 })];
    expect(left.firstEdgeUnloading?.lower).toBeCloseTo(least.left.firstEdgeUnloading?.lower ?? 0, 9);
    expect(left.firstEdgeUnloading?.upper).toBeCloseTo(most.left.firstEdgeUnloading?.upper ?? 0, 9);
  });

  it('gives nothing where nothing bears or nothing pushes', () => {
    const apart = at({ arm: { ...arm, acrossFlatsAtMouthMm: 12.5 } });
    expect(apart.left.firstEdgeUnloading).toBeNull();
    expect(apart.torsionLimitNm).toBeNull();
    expect(apart.findings.map(({ code }) => code)).toContain('no-contact');
    const idle = at({ load: { ...load, pedalForceN: 0 } });
    expect(idle.right.rockingLimit).toBeNull();
    expect(idle.findings.map(({ code }) => code)).toContain('load-unbounded');
  });

  it('refuses what it does not know', () => {
    expect(() => at({ squareOrientation: 'corner' })).toThrow('squareOrientation');
    expect(() => at({ load: { ...load, overhang: 65 } })).toThrow('load.overhang');
  });
});

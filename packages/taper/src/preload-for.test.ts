import { describe, expect, it } from 'vitest';
import { loadMargin } from './load-margin.ts';
import { preloadFor } from './preload-for.ts';

const TAN2 = Math.tan((2 * Math.PI) / 180);
const spindle = { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 20, cornerDiameterMm: 16.5 };
const arm = { acrossFlatsAtMouthMm: 12.6 + 28 * TAN2, faceAngleDeg: 2, boreLengthMm: 15.5 };
const load = { pedalForceN: 700, crankLengthMm: 170, overhangMm: 65, faceToSeatMm: 15, crankAngleDeg: 0 };
const rest = { spindle, arm, friction: 0.1, load, squareOrientation: 'flat-in-line' } as const;

describe('preloadFor', () => {
  it('is the inverse of the margin', () => {
    const needed = preloadFor({ ...rest, firstEdgeUnloading: 1.5 });
    for (const [side, force] of [
      ['left', needed.leftAxialForceN],
      ['right', needed.rightAxialForceN],
    ] as const) {
      expect(loadMargin({ ...rest, axialForceN: force?.nominal ?? 0 })[side].firstEdgeUnloading?.nominal).toBeCloseTo(
        1.5,
        9,
      );
    }
    expect(preloadFor({ ...rest, firstEdgeUnloading: 1, arm: { ...arm, acrossFlatsAtMouthMm: 12.5 } })).toMatchObject({
      leftAxialForceN: null,
      rightAxialForceN: null,
    });
    expect(() => preloadFor({ ...rest, firstEdgeUnloading: 0 })).toThrow('firstEdgeUnloading');
  });

  it('asks for more the more of the bending the mouth takes, and says where contact opens all the same', () => {
    // 4 (sin a + mu cos a) (3 T/(2 b) + 3 f M/L): b 10.0464 mm, L 14 mm, T 119 Nm, M 56 Nm along the diagonal.
    const wedge = 4 * (Math.sin((2 * Math.PI) / 180) + 0.1 * Math.cos((2 * Math.PI) / 180));
    const forceN = (f: number) => wedge * ((1.5 * 119e3) / 10.0464 + (3 * f * 56e3 * Math.SQRT1_2) / 14);
    const { leftAxialForceN, findings } = preloadFor({
      ...rest,
      squareOrientation: 'corner-in-line',
      firstEdgeUnloading: 1,
    });
    expect((leftAxialForceN?.lower ?? 0) / forceN(1)).toBeCloseTo(1, 4);
    expect((leftAxialForceN?.upper ?? 0) / forceN(1.35)).toBeCloseTo(1, 4);
    expect(findings.map(({ code }) => code)).toContain('contact-opens-in-places');
    const unbent = preloadFor({ ...rest, load: { ...load, overhangMm: 5, faceToSeatMm: 0 }, firstEdgeUnloading: 1 });
    expect(unbent.findings.map(({ code }) => code)).not.toContain('contact-opens-in-places');
  });
});

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
});

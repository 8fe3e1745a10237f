// Margins under load: inside their limits, growing with the bolt, falling with the rider.
import type { Limits } from '@spindlewright/quantity';
import { loadMargin, preloadFor, type SquareOrientation } from '@spindlewright/taper';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between, drawn, joints, limitsIn, tolerancedJoints } from './arbitraries.ts';

const orientations = fc.constantFrom<SquareOrientation>('corner-in-line', 'flat-in-line');
const legs = fc.record({
  crankLengthMm: between(150, 190),
  overhangMm: between(20, 80),
  faceToSeatMm: between(5, 30),
  crankAngleDeg: between(-80, 80),
});
const inside = (value: Limits | null, bounds: Limits | null): void => {
  if (value === null || bounds === null) return;
  expect(value.nominal).toBeGreaterThanOrEqual(bounds.lower * (1 - 1e-9));
  expect(value.nominal).toBeLessThanOrEqual(bounds.upper * (1 + 1e-9));
};

describe('load margin', () => {
  it('of every combination of readings lies inside the limits', () => {
    const readings = fc.record({
      axialForceN: limitsIn(5000, 25000, 3000),
      friction: limitsIn(0.03, 0.35, 0.05),
      pedalForceN: limitsIn(300, 2000, 200),
    });
    const shares = fc.array(between(0, 1), { minLength: 30, maxLength: 30 });
    fc.assert(
      fc.property(
        tolerancedJoints,
        readings,
        legs,
        orientations,
        shares,
        (joint, read, leg, squareOrientation, list) => {
          let next = 0;
          const of = ({ joint: shapes, read: { pedalForceN, ...rest } }: { joint: typeof joint; read: typeof read }) =>
            loadMargin({ ...shapes, ...rest, squareOrientation, load: { ...leg, pedalForceN } });
          const worst = of({ joint, read });
          const sample = of(drawn({ joint, read }, () => list[next++ % list.length] ?? 0) as never);
          for (const side of ['left', 'right'] as const) {
            inside(sample[side].firstEdgeUnloading, worst[side].firstEdgeUnloading);
            inside(sample[side].loadedEdgePressureMPa, worst[side].loadedEdgePressureMPa);
          }
          inside(sample.torsionLimitNm, worst.torsionLimitNm);
        },
      ),
    );
  });

  it('goes with the bolt, against the rider, and never puts the right side before the left', () => {
    fc.assert(
      fc.property(
        joints,
        legs,
        orientations,
        between(5000, 25000),
        between(0.03, 0.3),
        between(300, 2000),
        (joint, leg, squareOrientation, axialForceN, friction, pedalForceN) => {
          const at = (bolt: number, rider: number) =>
            loadMargin({
              ...joint,
              axialForceN: bolt,
              friction,
              squareOrientation,
              load: { ...leg, pedalForceN: rider },
            });
          const [plain, tight, heavy] = [
            at(axialForceN, pedalForceN),
            at(2 * axialForceN, pedalForceN),
            at(axialForceN, 2 * pedalForceN),
          ];
          const margin = plain.left.firstEdgeUnloading?.nominal;
          fc.pre(margin !== undefined);
          expect((tight.left.firstEdgeUnloading?.nominal ?? 0) / margin).toBeCloseTo(2, 9);
          expect((heavy.left.firstEdgeUnloading?.nominal ?? 0) / margin).toBeCloseTo(0.5, 9);
          expect(plain.right.firstEdgeUnloading?.nominal).toBeGreaterThanOrEqual(margin);
          const needed = preloadFor({
            ...joint,
            friction,
            squareOrientation,
            load: { ...leg, pedalForceN },
            firstEdgeUnloading: Math.min(100, Math.max(0.01, margin)),
          });
          expect((needed.leftAxialForceN?.nominal ?? 0) / axialForceN).toBeCloseTo(1, 9);
        },
      ),
    );
  });
});

// Sampled seats against the worst case, the first order and the moments of the larger of two normal variables.
import { type SeatDistribution, seatDistribution } from '@spindlewright/taper';
import fc from 'fast-check';
import { erf } from 'mathjs';
import { describe, expect, it } from 'vitest';
import * as ours from '../../../packages/taper/src/random.ts';
import * as theirs from '../../../packages/torque/src/random.ts';
import { between, limitsIn, models, tolerancedJoints, tolerancedMaterials } from './arbitraries.ts';

const TAN_PER_DEG = Math.PI / 180;
const normal = (z: number): number => (1 + erf(z / Math.SQRT2)) / 2;
const density = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

describe('samples', () => {
  it('lie inside the worst case, whatever goes together', () => {
    const pressings = fc.record({
      axialForceN: limitsIn(0, 30000, 3000),
      friction: limitsIn(0.03, 0.35, 0.05),
      materials: tolerancedMaterials,
      compliance: models,
    });
    const ways = fc.constantFrom<'shapes' | 'trial-fit' | 'witness-mark'>('shapes', 'trial-fit', 'witness-mark');
    fc.assert(
      fc.property(
        tolerancedJoints,
        pressings,
        ways,
        limitsIn(0, 5, 0.5),
        fc.nat(),
        between(-1, 1),
        (joint, pressing, way, gap, seed, r) => {
          const mark = { lower: gap.lower + 10, nominal: gap.nominal + 10, upper: gap.upper + 10 };
          const result = seatDistribution({
            ...joint,
            pressing,
            ...(way === 'trial-fit' ? { trialFit: { endGapMm: gap } } : {}),
            ...(way === 'witness-mark' ? { witnessMark: { markEndFromSpindleEndMm: mark } } : {}),
            mixWays: seed % 2 === 0,
            samples: 100,
            seed,
            keepSamples: true,
            correlation:
              joint.spindle.faceAngleDeg.upper > joint.spindle.faceAngleDeg.lower &&
              joint.arm.faceAngleDeg.upper > joint.arm.faceAngleDeg.lower
                ? [{ a: 'spindle.faceAngleDeg', b: 'arm.faceAngleDeg', r }]
                : [],
          });
          const { pressed } = result.worstCase;
          for (const { pressed: sample } of result.kept ?? []) {
            for (const key of ['mouthFromEndMm', 'endGapMm', 'shoulderGapMm', 'engagedLengthMm'] as const) {
              const [value, bounds] = [sample[key], pressed[key]];
              expect(value === null).toBe(bounds === null);
              if (value === null || bounds === null) continue;
              expect(value).toBeGreaterThanOrEqual(bounds.lower - 1e-9);
              expect(value).toBeLessThanOrEqual(bounds.upper + 1e-9);
            }
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('spread as the first order says where the angles are apart', () => {
    const about = (value: number, standardUncertainty: number) => ({ value, standardUncertainty });
    fc.assert(
      fc.property(
        between(13.3, 13.8),
        between(0.12, 0.4),
        fc.boolean(),
        between(0.002, 0.008),
        between(0.01, 0.02),
        fc.nat(),
        (across, apartDeg, steeperBore, u, uDeg, seed) => {
          const [s, a] = steeperBore ? [2, 2 + apartDeg] : [2 + apartDeg, 2];
          const result = seatDistribution({
            spindle: { acrossFlatsAtEndMm: about(12.6, u), faceAngleDeg: about(s, uDeg), flatLengthMm: 30 },
            arm: { acrossFlatsAtMouthMm: about(across, u), faceAngleDeg: about(a, uDeg), boreLengthMm: 30 },
            samples: 20_000,
            seed,
          });
          const sampled = result.handFit.mouthFromEndMm?.standardDeviationMm ?? Number.NaN;
          // Standard error of a deviation from 20 000 samples: 0.5 %; curvature of 1/tan: a few tenths of a per cent.
          expect(Math.abs(sampled / result.firstOrderDeviationMm - 1)).toBeLessThan(0.03);
        },
      ),
      { numRuns: 10 },
    );
  });

  // C. E. Clark, The greatest of a finite set of random variables, Operations Research 9 (2), 1961, equations 2 and 3.
  it.each([
    [0, 0],
    [0, 0.6],
    [0.5, -0.5],
    [1.5, 0.3],
  ])('have the moments of the larger of two normal variables at the kink (%f u apart, correlation %f)', (apart, r) => {
    const uDeg = 0.02;
    const result: SeatDistribution = seatDistribution({
      spindle: {
        acrossFlatsAtEndMm: 12.6,
        faceAngleDeg: { value: 2, standardUncertainty: uDeg },
        flatLengthMm: 30,
        cornerDiameterMm: 16.5,
      },
      arm: {
        acrossFlatsAtMouthMm: 13.6,
        faceAngleDeg: { value: 2 + apart * uDeg, standardUncertainty: uDeg },
        boreLengthMm: 30,
        bossDiameterMm: 34,
        boreCornerRadiusMm: 1,
      },
      samples: 100_000,
      seed: 5,
      keepSamples: true,
      correlation: [{ a: 'spindle.faceAngleDeg', b: 'arm.faceAngleDeg', r }],
    });
    // The mouth lies at 1/(2 tan) of the steeper face, so that the angle comes back out of it.
    const steeper = (result.kept ?? []).map(
      ({ pressed }) => (Math.atan(1 / (2 * (pressed.mouthFromEndMm ?? Number.NaN))) / TAN_PER_DEG - 2) / uDeg,
    );
    const mean = steeper.reduce((sum, value) => sum + value, 0) / steeper.length;
    const square = steeper.reduce((sum, value) => sum + value * value, 0) / steeper.length;
    // Deviation of each, cut at 3 u: 0.98658 u.
    const variance = 0.98658 ** 2;
    const theta = Math.sqrt(2 * variance * (1 - r));
    const alpha = -apart / theta;
    const first = apart * normal(-alpha) + theta * density(alpha);
    const second = variance * normal(alpha) + (apart ** 2 + variance) * normal(-alpha) + apart * theta * density(alpha);
    // Standard errors 0.003 and 0.005; the cut moves the moments of the maximum by less than 0.01.
    expect(Math.abs(mean - first)).toBeLessThan(0.02);
    expect(Math.abs(square - second)).toBeLessThan(0.03);
  });
});

describe('generator', () => {
  it('is the same as that of the torque package', () => {
    for (const seed of [0, 1, 4294967295]) {
      const [one, other] = [ours.uniformSource(seed), theirs.uniformSource(seed)];
      for (let k = 0; k < 50; k++) {
        const value = one();
        expect(value).toBe(other());
        expect(ours.cutNormalQuantile(value)).toBe(theirs.cutNormalQuantile(value));
      }
    }
  });
});

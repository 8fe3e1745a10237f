// Several ways of knowing one seat, put together: against joints whose truth is known, and against what the theory of
// errors says of two measurements of one length.
import { hardLimits, type Limits } from '@spindlewright/quantity';
import { predictSeat, type SeatPrediction, seatDistribution } from '@spindlewright/taper';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seededRandom, seedOfRun } from '../../seed.ts';
import { between, drawn, limitsIn, models, tolerancedJoints, tolerancedMaterials } from './arbitraries.ts';

const SEATS = ['handFit', 'pressed'] as const;
const LENGTHS = ['mouthFromEndMm', 'endGapMm', 'shoulderGapMm', 'engagedLengthMm'] as const;

const outside = (part: Limits | null, whole: Limits | null): boolean =>
  part === null || whole === null || part.nominal < whole.lower - 1e-9 || part.nominal > whole.upper + 1e-9;
const escapes = (truth: SeatPrediction<Limits | null>, worst: SeatPrediction<Limits | null>): string[] =>
  SEATS.flatMap((seat) =>
    LENGTHS.filter((key) => outside(truth[seat][key], worst[seat][key])).map((key) => `${seat}.${key}`),
  );

const pressings = fc.record({
  axialForceN: limitsIn(0, 30000, 3000),
  friction: limitsIn(0.03, 0.35, 0.05),
  materials: tolerancedMaterials,
  compliance: models,
});
const shares = fc.array(between(0, 1), { minLength: 40, maxLength: 40 });
const halves = fc.tuple(between(0.01, 1), between(0.01, 1), between(0, 1));

/** A reading whose limits hold the truth, with its nominal value anywhere in them. */
const readingOf = (truthMm: number, [below, above, place]: readonly [number, number, number]): Limits => {
  const [lower, upper] = [truthMm - below, truthMm + above];
  return { lower, nominal: lower + place * (upper - lower), upper };
};
const drawer = (list: readonly number[]): (() => number) => {
  let next = 0;
  return () => list[next++ % list.length] ?? 0;
};

describe('a joint whose readings hold the truth', () => {
  it('lies within what its trial fit and its shapes leave together, which is never wider than either', () => {
    const ways = new Set<string>();
    fc.assert(
      fc.property(tolerancedJoints, pressings, shares, halves, halves, (joint, pressing, list, end, shoulder) => {
        const share = drawer(list);
        const truth = predictSeat({
          ...(drawn(joint, share) as typeof joint),
          pressing: drawn(pressing, share) as typeof pressing,
        });
        const trialFit = {
          endGapMm: readingOf(truth.handFit.endGapMm.nominal, end),
          shoulderGapMm: readingOf(truth.handFit.shoulderGapMm.nominal, shoulder),
        };
        const mixed = predictSeat({ ...joint, pressing, trialFit, mixWays: true });
        ways.add(mixed.ways.join());
        expect(escapes(truth, mixed)).toEqual([]);
        expect(mixed.findings.map(({ code }) => code)).not.toContain('readings-disagree');
        const best = predictSeat({ ...joint, pressing, trialFit });
        for (const key of ['mouthFromEndMm', 'endGapMm', 'shoulderGapMm'] as const) {
          expect(outside({ ...mixed.handFit[key], nominal: mixed.handFit[key].lower }, best.handFit[key])).toBe(false);
          expect(outside({ ...mixed.handFit[key], nominal: mixed.handFit[key].upper }, best.handFit[key])).toBe(false);
        }
        // A way that took no part bounds nothing.
        if (mixed.ways.includes('shapes')) {
          const byShapes = predictSeat({ ...joint, pressing }).handFit.mouthFromEndMm;
          const { lower, upper } = mixed.handFit.mouthFromEndMm;
          expect(lower).toBeGreaterThanOrEqual(byShapes.lower - 1e-9);
          expect(upper).toBeLessThanOrEqual(byShapes.upper + 1e-9);
        }
      }),
    );
    expect([...ways]).toContain('end-gap,shoulder-gap,shapes');
  });

  it('lies pressed within what its witness mark and its shapes leave together', () => {
    const ways = new Set<string>();
    fc.assert(
      fc.property(tolerancedJoints, pressings, shares, halves, (joint, pressing, list, half) => {
        const share = drawer(list);
        const exact = drawn(joint, share) as typeof joint;
        const truth = predictSeat({ ...exact, pressing: drawn(pressing, share) as typeof pressing });
        const markMm = truth.pressed.mouthFromEndMm.nominal - hardLimits(exact.arm.mouthChamferMm).nominal;
        fc.pre(markMm > 1 && markMm < 99);
        const witnessMark = { markEndFromSpindleEndMm: readingOf(markMm, half) };
        const mixed = predictSeat({ ...joint, pressing, witnessMark, mixWays: true });
        ways.add(mixed.ways.join());
        expect(escapes(truth, mixed).filter((path) => path.startsWith('pressed'))).toEqual([]);
      }),
    );
    expect([...ways]).toContain('witness-mark,shapes');
  });
});

describe('two measurements of one length', () => {
  const TAN2 = Math.tan((2 * Math.PI) / 180);
  const shapes = (deviationMm: number, mouthMm: number) => ({
    spindle: { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 18, cornerDiameterMm: 16.5 },
    arm: {
      acrossFlatsAtMouthMm: { value: 12.6 + 2 * mouthMm * TAN2, standardUncertainty: deviationMm * 2 * TAN2 },
      faceAngleDeg: 2,
      boreLengthMm: 17,
      bossDiameterMm: 34,
      boreCornerRadiusMm: 1,
    },
  });

  // JCGM 100:2008 and any text on the theory of errors: weights 1/s^2, and 1/s^2 = 1/s1^2 + 1/s2^2 of the mean.
  it.each([
    [0.1, 0.2, 3, 14.1],
    [0.2, 0.1, 3, 14.1],
    [0.15, 0.15, 2.9, 13.9],
  ])('with deviations of %f and %f mm make their weighted mean', (gapDeviationMm, shapeDeviationMm, gapMm, mouthMm) => {
    const weights = [1 / gapDeviationMm ** 2, 1 / shapeDeviationMm ** 2] as const;
    const meanMm = ((17 - gapMm) * weights[0] + mouthMm * weights[1]) / (weights[0] + weights[1]);
    const deviationMm = 1 / Math.sqrt(weights[0] + weights[1]);
    const input = {
      ...shapes(shapeDeviationMm, mouthMm),
      trialFit: { endGapMm: { value: gapMm, standardUncertainty: gapDeviationMm } },
      mixWays: true,
    };
    const { handFit, ways } = predictSeat(input);
    expect(ways).toEqual(['end-gap', 'shapes']);
    expect(handFit.mouthFromEndMm.nominal).toBeCloseTo(meanMm, 9);
    expect(handFit.endGapMm.nominal).toBeCloseTo(17 - meanMm, 9);
    const spread = seatDistribution({ ...input, samples: 100_000, seed: 3 });
    const { mouthFromEndMm } = spread.handFit;
    // The cut at three deviations takes 1.3 % (the deviation of the cut normal distribution is 0.9866).
    expect(mouthFromEndMm?.meanMm).toBeCloseTo(meanMm, 2);
    expect(mouthFromEndMm?.standardDeviationMm).toBeGreaterThan(0.97 * deviationMm);
    expect(mouthFromEndMm?.standardDeviationMm).toBeLessThan(1.01 * deviationMm);
    expect(spread.firstOrderDeviationMm / deviationMm).toBeCloseTo(0.9866, 3);
  });

  it('make what Bayes makes of them, by drawing both and keeping those that agree', () => {
    const random = seededRandom(seedOfRun());
    const normal = (): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const [byGap, byShapes] = [
      { meanMm: 14, deviationMm: 0.15 },
      { meanMm: 14.2, deviationMm: 0.25 },
    ];
    let [count, sum, squares] = [0, 0, 0];
    while (count < 20_000) {
      const placeMm = byShapes.meanMm + byShapes.deviationMm * normal();
      if (Math.abs(placeMm - (byGap.meanMm + byGap.deviationMm * normal())) > 0.02) continue;
      count++;
      sum += placeMm;
      squares += placeMm ** 2;
    }
    const meanMm = sum / count;
    const deviationMm = Math.sqrt(squares / count - meanMm ** 2);
    const spread = seatDistribution({
      ...shapes(byShapes.deviationMm, byShapes.meanMm),
      trialFit: { endGapMm: { value: 17 - byGap.meanMm, standardUncertainty: byGap.deviationMm } },
      mixWays: true,
      samples: 50_000,
      seed: 4,
    }).handFit.mouthFromEndMm;
    expect(spread?.meanMm).toBeCloseTo(meanMm, 1.8);
    expect((spread?.standardDeviationMm ?? 0) / deviationMm).toBeCloseTo(0.987, 1.5);
  });
});

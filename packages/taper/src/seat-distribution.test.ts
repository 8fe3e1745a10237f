import type { Measurand } from '@spindlewright/quantity';
import { erf } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { type SeatDistributionInput, seatDistribution } from './seat-distribution.ts';

const about = (value: number, standardUncertainty = 0.1) => ({ value, standardUncertainty });
const even = (lower: number, upper: number) => ({ lower, nominal: (lower + upper) / 2, upper });
const spindle = { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 20, cornerDiameterMm: 16.5 };
const arm = {
  acrossFlatsAtMouthMm: 13.6,
  faceAngleDeg: 2,
  boreLengthMm: 18,
  bossDiameterMm: 34,
  boreCornerRadiusMm: 1,
};
const run = (input: Partial<SeatDistributionInput>) => seatDistribution({ samples: 20_000, seed: 1, ...input });
const shareOf = (result: ReturnType<typeof run>, verdict: string): number =>
  result.verdicts.find((one) => one.verdict === verdict)?.probability ?? Number.NaN;
const normal = (z: number): number => (1 + erf(z / Math.SQRT2)) / 2;
const correlationOf = (pairs: readonly (readonly [number, number])[]): number => {
  const mean = (k: 0 | 1): number => pairs.reduce((sum, pair) => sum + pair[k], 0) / pairs.length;
  const [x, y] = [mean(0), mean(1)];
  const sum = (of: (a: number, b: number) => number): number =>
    pairs.reduce((total, [a, b]) => total + of(a - x, b - y), 0);
  return sum((a, b) => a * b) / Math.sqrt(sum((a) => a * a) * sum((_, b) => b * b));
};

describe('seatDistribution', () => {
  it('gives the probabilities of a cut normal gap', () => {
    const result = run({ trialFit: { endGapMm: about(0.6, 0.3), shoulderGapMm: 5 } });
    const below = (limit: number): number => (normal((limit - 0.6) / 0.3) - normal(-3)) / (normal(3) - normal(-3));
    // Standard error of a probability: 0.35 % at 20 000 samples.
    expect(Math.abs(shareOf(result, 'seats') - (1 - below(0.5)))).toBeLessThan(0.014);
    expect(Math.abs(shareOf(result, 'bottoms-on-end') - below(0))).toBeLessThan(0.006);
    expect(result.verdicts.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 12);
    expect(result.pressed.endGapMm?.meanMm).toBeCloseTo(0.6, 2);
    // Deviation of a normal distribution cut at 3 u: 0.98658 u.
    expect(result.pressed.endGapMm?.standardDeviationMm).toBeCloseTo(0.3 * 0.98658, 2);
    expect(result.pressed.mouthFromEndMm).toBeNull();
  });

  it('gives quantiles and deviation of an even spread', () => {
    const { pressed, firstOrderDeviationMm } = run({ trialFit: { endGapMm: even(1, 2), shoulderGapMm: 5 } });
    expect(pressed.endGapMm?.quantiles.map(({ probability }) => probability)).toEqual([0.025, 0.05, 0.5, 0.95, 0.975]);
    for (const { probability, lengthMm } of pressed.endGapMm?.quantiles ?? []) {
      expect(Math.abs(lengthMm - 1 - probability)).toBeLessThan(0.015);
    }
    expect(firstOrderDeviationMm).toBeCloseTo(1 / Math.sqrt(12), 9);
  });

  it('lets inputs go together as far as their correlation says', () => {
    const pairs = (endGapMm: Measurand, shoulderGapMm: Measurand, r: number) => {
      const { kept = [] } = run({
        trialFit: { endGapMm, shoulderGapMm },
        correlation: [{ a: 'trialFit.endGapMm', b: 'trialFit.shoulderGapMm', r }],
        keepSamples: true,
      });
      return kept.map(({ pressed }) => [pressed.endGapMm ?? 0, pressed.shoulderGapMm ?? 0] as const);
    };
    // Normal inputs keep r but for the cut; two even ones have (6/pi) asin(r/2).
    expect(correlationOf(pairs(about(3), about(5, 0.4), 0.7))).toBeCloseTo(0.7, 1);
    expect(correlationOf(pairs(even(1, 2), even(3, 6), -0.8))).toBeCloseTo((6 / Math.PI) * Math.asin(-0.4), 1);
    expect(correlationOf(pairs(even(1, 2), even(3, 6), 1))).toBeCloseTo(1, 9);
    expect(Math.abs(correlationOf(pairs(even(1, 2), about(3), 0)))).toBeLessThan(0.03);
  });

  it('takes equal errors of both calipers out of the hand fit', () => {
    const sizes = {
      spindle: { ...spindle, acrossFlatsAtEndMm: about(12.6, 0.01) },
      arm: { ...arm, acrossFlatsAtMouthMm: about(13.6, 0.01) },
    };
    const apart = run(sizes);
    const together = run({
      ...sizes,
      correlation: [{ a: 'spindle.acrossFlatsAtEndMm', b: 'arm.acrossFlatsAtMouthMm', r: 1 }],
    });
    // 1/(2 tan 2 deg) = 14.318 mm of seat for 1 mm across flats.
    expect(apart.firstOrderDeviationMm).toBeCloseTo(14.318 * 0.01 * 0.98658 * Math.SQRT2, 4);
    expect(together.firstOrderDeviationMm).toBeCloseTo(0, 9);
    expect(together.handFit.mouthFromEndMm?.standardDeviationMm).toBeLessThan(1e-9);
  });

  it('names the reading to improve and what that would leave', () => {
    const { contributions, firstOrderDeviationMm } = run({
      spindle: { ...spindle, acrossFlatsAtEndMm: about(12.6, 0.03) },
      arm: { ...arm, acrossFlatsAtMouthMm: about(13.6, 0.01) },
      pressing: { axialForceN: 12000, friction: { lower: 0.1, nominal: 0.13, upper: 0.16 } },
    });
    expect(contributions[0]?.path).toBe('spindle.acrossFlatsAtEndMm');
    expect(contributions.map(({ path }) => path)).toEqual(expect.arrayContaining(['pressing.friction', 'model']));
    for (const { standardDeviationMm, remainingMm } of contributions) {
      expect(Math.hypot(standardDeviationMm, remainingMm)).toBeCloseTo(firstOrderDeviationMm, 9);
    }
  });

  it('keeps a bolt seat that is the bore length equal to it', () => {
    const { kept = [] } = run({
      spindle,
      arm: { ...arm, boreLengthMm: even(16, 18) },
      keepSamples: true,
      samples: 100,
    });
    for (const { pressed } of kept) expect(pressed.endGapMm).toBeGreaterThan(16 - 14.4);
  });

  it('follows from its seed and says what it means', () => {
    const input = { trialFit: { endGapMm: about(0.6), shoulderGapMm: about(1) }, samples: 500 };
    expect(run(input)).toEqual(run(input));
    expect(run({ ...input, seed: 2 }).pressed).not.toEqual(run(input).pressed);
    expect(run(input).findings.map(({ code }) => code)).toEqual(['probabilities-of-the-inputs']);
    const exact = run({ trialFit: { endGapMm: 0.6, shoulderGapMm: 1 }, samples: 100 });
    expect(exact.findings.map(({ code }) => code)).toContain('nothing-varies');
    expect(shareOf(exact, 'seats')).toBe(1);
  });

  it.each([
    ['no samples', { samples: 0 }, 'samples'],
    ['half a sample', { samples: 100.5 }, 'samples'],
    ['a seed below 0', { seed: -1 }, 'seed'],
    [
      'an unknown path',
      { correlation: [{ a: 'trialFit.endGap', b: 'trialFit.shoulderGapMm', r: 0 }] },
      'correlation[0].a',
    ],
    [
      'an input with itself',
      { correlation: [{ a: 'trialFit.endGapMm', b: 'trialFit.endGapMm', r: 0 }] },
      'correlation[0].b',
    ],
    ['r above 1', { correlation: [{ a: 'trialFit.endGapMm', b: 'trialFit.shoulderGapMm', r: 2 }] }, 'correlation[0].r'],
    ['a misspelt key', { keepSample: true }, 'keepSample'],
  ])('refuses %s', (_name, more, path) => {
    expect(() => run({ trialFit: { endGapMm: about(3), shoulderGapMm: about(4) }, ...more })).toThrow(path);
  });

  it('refuses correlations that cannot hold together', () => {
    const sizes = {
      spindle: { ...spindle, acrossFlatsAtEndMm: about(12.6, 0.01), faceAngleDeg: about(2, 0.01) },
      arm: { ...arm, acrossFlatsAtMouthMm: about(13.6, 0.01) },
    };
    const [s, a, m] = ['spindle.acrossFlatsAtEndMm', 'spindle.faceAngleDeg', 'arm.acrossFlatsAtMouthMm'] as const;
    const all = (r: number) =>
      [
        { a: s, b: a, r: 1 },
        { a, b: m, r: 1 },
        { a: s, b: m, r },
      ].map(({ a: one, b, r: value }) => ({ a: one, b, r: value }));
    expect(() => run({ ...sizes, samples: 100, correlation: all(-1) })).toThrow('correlation');
    expect(() => run({ ...sizes, samples: 100, correlation: all(0.5) })).toThrow('contradict');
    expect(() => run({ ...sizes, samples: 100, correlation: all(1) })).not.toThrow();
  });
});

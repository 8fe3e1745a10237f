import { isDomainError, type Limits } from '@spindlewright/quantity';
import { describe, expect, expectTypeOf, it } from 'vitest';
import { predictSeat } from './predict-seat.ts';
import type { SeatPrediction } from './seat.ts';
import type { SeatInput } from './seat-input.ts';
import type { ArmShape, SpindleShape } from './shapes.ts';

const TAN2 = Math.tan((2 * Math.PI) / 180);
const spindle: SpindleShape = {
  acrossFlatsAtEndMm: 12.6,
  faceAngleDeg: 2,
  flatLengthMm: 18,
  endChamferMm: 1,
  shoulderFromEndMm: 20,
  cornerDiameterMm: 16.5,
};
/** An arm whose mouth comes to stand at a depth by hand. */
const armAt = (mouthMm: number, more: Partial<ArmShape> = {}): ArmShape => ({
  acrossFlatsAtMouthMm: 12.6 + 2 * mouthMm * TAN2,
  faceAngleDeg: 2,
  boreLengthMm: 17,
  bossDiameterMm: 34,
  boreCornerRadiusMm: 1,
  mouthChamferMm: 0.5,
  ...more,
});
const pressing = { axialForceN: 12000, friction: 0.1 };
const codes = (seat: SeatPrediction<Limits | null>): string[] => seat.findings.map((finding) => finding.code);
const stops = (seat: SeatPrediction<Limits | null>): string[] =>
  seat.findings.filter((finding) => finding.severity === 'stop').map((finding) => finding.code);
const caughtPath = (input: unknown): string => {
  try {
    predictSeat(input as SeatInput);
  } catch (error) {
    if (isDomainError(error)) return error.path;
  }
  throw new Error('nothing refused');
};

describe('predictSeat from shapes', () => {
  it('places mouth, gaps and engaged length by the definitions of the frame', () => {
    const arm = armAt(14, { boltSeatFromMouthMm: 18, seatIntrusionMm: 0.4 });
    const { handFit, basis } = predictSeat({ spindle, arm });
    expect(basis).toBe('shapes');
    expect(handFit.mouthFromEndMm.nominal).toBeCloseTo(14, 10);
    expect(handFit.endGapMm.nominal).toBeCloseTo(18 - 14 - 0.4, 10);
    // The run-out meets the edge of the bore at 18.5, before the shoulder at 20 meets the face.
    expect(handFit.shoulderGapMm.nominal).toBeCloseTo(18 + 0.5 - 14, 10);
    expect(handFit.engagedLengthMm.nominal).toBeCloseTo(14 - 0.5 - 1, 10);
  });

  it('takes the shoulder where it comes before the run-out, and none where none is given', () => {
    const near = predictSeat({ spindle: { ...spindle, shoulderFromEndMm: 17 }, arm: armAt(14) });
    expect(near.handFit.shoulderGapMm.nominal).toBeCloseTo(3, 10);
    const { shoulderFromEndMm: _, ...open } = spindle;
    expect(predictSeat({ spindle: open, arm: armAt(14) }).handFit.shoulderGapMm.nominal).toBeCloseTo(4.5, 10);
  });

  it('moves the hand fit by 14.3 mm per mm across flats at 2 deg', () => {
    const { sensitivity } = predictSeat({ spindle, arm: armAt(14) });
    const slope = (path: string): number => sensitivity.find((entry) => entry.path === path)?.mmPerUnit ?? 0;
    expect(slope('arm.acrossFlatsAtMouthMm')).toBeCloseTo(1 / (2 * TAN2), 6);
    expect(slope('spindle.acrossFlatsAtEndMm')).toBeCloseTo(-1 / (2 * TAN2), 6);
  });

  it('names the reading to improve first', () => {
    const arm = { ...armAt(14), boreLengthMm: { lower: 16.5, nominal: 17, upper: 17.5 } };
    const loose = { ...spindle, acrossFlatsAtEndMm: { value: 12.6, standardUncertainty: 0.01 } };
    const { sensitivity } = predictSeat({ spindle: loose, arm, pressing });
    expect(sensitivity[0]?.path).toBe('spindle.acrossFlatsAtEndMm');
    // 0.03 mm either way, the hand fit moves 0.43 mm and the travel a little against it.
    expect(sensitivity[0]?.effectMm).toBeCloseTo(0.42, 1);
    const effects = sensitivity.map((entry) => entry.effectMm);
    expect(effects).toEqual([...effects].sort((a, b) => b - a));
  });

  it('adds the travel and takes it off the gaps', () => {
    const seat = predictSeat({ spindle, arm: armAt(14), pressing });
    expect(seat.travelMm.nominal).toBeGreaterThan(0.7);
    expect(seat.pressed.mouthFromEndMm.nominal).toBeCloseTo(14 + seat.travelMm.nominal, 10);
    expect(seat.pressed.endGapMm.nominal).toBeCloseTo(3 - seat.travelMm.nominal, 10);
    expect(seat.travelMm.lower).toBeLessThan(0.96 * seat.travelMm.nominal);
    expect(seat.travelMm.upper).toBeGreaterThan(1.04 * seat.travelMm.nominal);
  });

  it('gives the verdict of the hand fit without pressing, and says so', () => {
    const seat = predictSeat({ spindle, arm: armAt(14) });
    expect(seat.pressed).toEqual(seat.handFit);
    expect(seat.verdict).toBe('seats');
    expect(codes(seat)).toEqual(['pressing-not-given', 'instructions-first']);
  });

  it('ends at the end chamfer or the mouth chamfer with unequal angles', () => {
    const steeper = predictSeat({ spindle, arm: { ...armAt(14), faceAngleDeg: 2.2 } });
    const tan22 = Math.tan((2.2 * Math.PI) / 180);
    // Contact at z = 1: 12.6 + 2 tan 2 = bore at that place.
    expect(steeper.handFit.mouthFromEndMm.nominal).toBeCloseTo(1 + (28 * TAN2 - 2 * TAN2) / (2 * tan22), 10);
    const flatter = predictSeat({ spindle, arm: { ...armAt(14), faceAngleDeg: 1.8 } });
    const tan18 = Math.tan((1.8 * Math.PI) / 180);
    // Contact at the chamfer of the mouth: bore there = A - 2 0.5 tan 1.8.
    expect(flatter.handFit.mouthFromEndMm.nominal).toBeCloseTo(0.5 + (28 * TAN2 - tan18) / (2 * TAN2), 10);
  });
});

describe('worst case', () => {
  const strong = { youngsModulusGPa: 70, poissonsRatio: 0.33, yieldStrengthMPa: 400 };
  const steel = { youngsModulusGPa: 205, poissonsRatio: 0.29 };
  const limits = (nominal: number, half: number): Limits => ({
    lower: nominal - half,
    nominal,
    upper: nominal + half,
  });

  // A reading that acts in one place only leaves nothing between the worst case and the results at its two ends.
  it.each<[string, (value: Limits | number) => SeatInput, number, number]>([
    ['force', (axialForceN) => ({ pressing: { axialForceN, friction: 0.1 } }), 15000, 3000],
    ['friction', (friction) => ({ pressing: { axialForceN: 15000, friction } }), 0.12, 0.03],
    ['boss', (bossDiameterMm) => ({ arm: { ...armAt(14), bossDiameterMm } }), 34, 3],
    ['fillet', (boreCornerRadiusMm) => ({ arm: { ...armAt(14), boreCornerRadiusMm } }), 1, 0.3],
    ['corner diameter', (cornerDiameterMm) => ({ spindle: { ...spindle, cornerDiameterMm } }), 16.5, 0.3],
    [
      'modulus of the arm',
      (youngsModulusGPa) => ({
        pressing: { ...pressing, materials: { spindle: steel, arm: { ...strong, youngsModulusGPa } } },
      }),
      70,
      3,
    ],
    [
      'modulus of the spindle',
      (youngsModulusGPa) => ({
        pressing: { ...pressing, materials: { spindle: { ...steel, youngsModulusGPa }, arm: strong } },
      }),
      205,
      9,
    ],
    [
      'yield strength',
      (yieldStrengthMPa) => ({
        pressing: {
          axialForceN: 20000,
          friction: 0.1,
          materials: { spindle: steel, arm: { ...strong, yieldStrengthMPa } },
        },
      }),
      400,
      50,
    ],
    [
      "Poisson's ratio of the arm, in a ring",
      (poissonsRatio) => ({
        pressing: { ...pressing, compliance: 'ring', materials: { spindle: steel, arm: { ...strong, poissonsRatio } } },
      }),
      0.33,
      0.03,
    ],
    [
      "Poisson's ratio of the spindle, in a ring",
      (poissonsRatio) => ({
        pressing: { ...pressing, compliance: 'ring', materials: { spindle: { ...steel, poissonsRatio }, arm: strong } },
      }),
      0.29,
      0.03,
    ],
  ])('is reached at the ends of one uncertain %s', (_name, inputWith, value, half) => {
    const given = { spindle, arm: armAt(14), pressing: { ...pressing, materials: { spindle: steel, arm: strong } } };
    const travel = (input: SeatInput): Limits => predictSeat({ ...given, ...input }).travelMm;
    const worst = travel(inputWith(limits(value, half)));
    const [one, other] = [travel(inputWith(value - half)), travel(inputWith(value + half))];
    expect(worst.lower).toBeCloseTo(Math.min(one.lower, other.lower), 10);
    expect(worst.upper).toBeCloseTo(Math.max(one.upper, other.upper), 10);
    expect(Math.abs(one.nominal - other.nominal)).toBeGreaterThan(1e-4);
  });

  it.each([
    [12.61, 'barely larger than the spindle end'],
    [13.6, 'of a sound fit'],
  ])('finds the extremes over two uncertain face angles, bore %f mm, %s', (acrossFlatsAtMouthMm) => {
    const [as, aa] = [limits(2, 0.15), limits(2.02, 0.1)];
    const shape = { ...armAt(14), mouthChamferMm: 1.5, acrossFlatsAtMouthMm };
    const mouth = (s: Limits | number, a: Limits | number): Limits =>
      predictSeat({ spindle: { ...spindle, faceAngleDeg: s }, arm: { ...shape, faceAngleDeg: a } }).handFit
        .mouthFromEndMm;
    const places: number[] = [];
    for (let i = 0; i <= 40; i++) {
      for (let j = 0; j <= 40; j++) {
        places.push(mouth(as.lower + (i / 40) * 0.3, aa.lower + (j / 40) * 0.2).nominal);
      }
    }
    const worst = mouth(as, aa);
    // Grid points miss the line of equal angles by up to 0.004 deg.
    expect(worst.lower).toBeLessThanOrEqual(Math.min(...places) + 1e-12);
    expect(worst.lower).toBeCloseTo(Math.min(...places), 2);
    expect(worst.upper).toBeGreaterThanOrEqual(Math.max(...places) - 1e-12);
    expect(worst.upper).toBeCloseTo(Math.max(...places), 2);
  });

  it('holds the least engagement against the longest usable flat', () => {
    const mouth = 0.75 * 16.5 + 1.5 + 0.01;
    const arm = armAt(mouth);
    expect(predictSeat({ spindle, arm }).worstVerdicts.lower).toBe('seats');
    const loose = { ...arm, boreLengthMm: limits(17, 0.2), boltSeatFromMouthMm: 18 };
    expect(predictSeat({ spindle, arm: loose }).worstVerdicts.lower).toBe('too-little-engagement');
    // With a longer bore the flats are the shorter: 17.5 - 1.
    const long = armAt(0.75 * 16.5 + 1.5 + 0.05, { boreLengthMm: 18 });
    const worst = (shape: SpindleShape<Limits | number>) =>
      predictSeat({ spindle: shape, arm: long }).worstVerdicts.lower;
    expect(worst({ ...spindle, flatLengthMm: 17.5 })).toBe('seats');
    expect(worst({ ...spindle, flatLengthMm: limits(17.5, 0.2) })).toBe('too-little-engagement');
    expect(worst({ ...spindle, flatLengthMm: 17.5, endChamferMm: limits(1, 0.05) })).toBe('too-little-engagement');
  });
});

describe('verdicts', () => {
  const verdictOf = (arm: ArmShape, shape: SpindleShape = spindle) => predictSeat({ spindle: shape, arm, pressing });

  it.each([
    ['seats', armAt(14), spindle],
    ['bottoms-on-end', armAt(14, { boltSeatFromMouthMm: 14.5 }), spindle],
    ['hits-shoulder', armAt(17.8, { boltSeatFromMouthMm: 24 }), spindle],
    ['marginal', armAt(14, { boltSeatFromMouthMm: 15.2 }), spindle],
    ['too-little-engagement', armAt(9), spindle],
    ['does-not-start', armAt(1.4), spindle],
  ] as const)('%s', (verdict, arm, shape) => {
    const seat = verdictOf(arm, shape);
    expect(seat.verdict).toBe(verdict);
    const finding = seat.findings.find(({ code }) => code === verdict);
    if (verdict === 'seats') expect(stops(seat)).toEqual([]);
    else expect(finding?.severity).toBe(verdict === 'marginal' ? 'caution' : 'stop');
    if (verdict !== 'seats' && verdict !== 'marginal') expect(finding?.message).toContain('Do not ride');
  });

  it('lets the smaller gap name what stops the arm, and the bolt when they are equal', () => {
    const both = (endGapMm: number, shoulderGapMm: number) => predictSeat({ trialFit: { endGapMm, shoulderGapMm } });
    expect(both(-1, -2).verdict).toBe('hits-shoulder');
    expect(both(-2, -1).verdict).toBe('bottoms-on-end');
    expect(both(-1, -1).verdict).toBe('bottoms-on-end');
    expect(both(0, 5).verdict).toBe('bottoms-on-end');
  });

  it('turns at half a millimetre of gap and at three quarters of the usable flat', () => {
    const gap = (endGapMm: number) => predictSeat({ trialFit: { endGapMm, shoulderGapMm: 5 } }).verdict;
    expect([gap(0.5), gap(0.4999)]).toEqual(['seats', 'marginal']);
    // Usable: the bore, 17 - 0.5; engaged: mouth - 0.5 - 1.
    const engaged = (lengthMm: number) => predictSeat({ spindle, arm: armAt(lengthMm + 1.5) }).verdict;
    expect([engaged(0.75 * 16.5 + 1e-6), engaged(0.75 * 16.5 - 1e-6)]).toEqual(['seats', 'too-little-engagement']);
  });

  it('is marginal when a worst case is not good, and says between what it runs', () => {
    const endGapMm = { value: 1, standardUncertainty: 0.4 };
    const seat = predictSeat({ trialFit: { endGapMm, shoulderGapMm: 5 } });
    expect(seat.worstVerdicts).toEqual({ lower: 'seats', upper: 'bottoms-on-end' });
    expect(seat.verdict).toBe('marginal');
    const finding = seat.findings.find(({ code }) => code === 'worst-case-differs');
    expect(finding?.values).toEqual({ lower: 'seats', upper: 'bottoms-on-end', path: 'trialFit.endGapMm' });
  });

  it('tells how much of the press the stop leaves', () => {
    const seat = verdictOf(armAt(14, { boltSeatFromMouthMm: 14.5 }));
    expect(seat.pressReached.nominal).toBeCloseTo(0.5 / seat.travelMm.nominal, 10);
    expect(seat.pressed.endGapMm.nominal).toBeCloseTo(0.5 - seat.travelMm.nominal, 10);
    expect(verdictOf(armAt(14)).pressReached).toEqual({ lower: 1, nominal: 1, upper: 1 });
    expect(predictSeat({ trialFit: { endGapMm: -0.1 } }).pressReached.nominal).toBe(0);
  });
});

describe('trial fit', () => {
  it('alone gives the gaps, and null with a finding for what it cannot tell', () => {
    const seat = predictSeat({ trialFit: { endGapMm: { value: 3, standardUncertainty: 0.1 } } });
    expect(seat.basis).toBe('trial-fit');
    expect(seat.handFit).toEqual({
      mouthFromEndMm: null,
      endGapMm: { lower: 3 - 3 * 0.1, nominal: 3, upper: 3 + 3 * 0.1 },
      shoulderGapMm: null,
      engagedLengthMm: null,
    });
    expect(seat.verdict).toBe('marginal');
    expect(codes(seat)).toEqual(
      expect.arrayContaining(['shoulder-gap-unbounded', 'mouth-from-end-unbounded', 'engaged-length-unbounded']),
    );
    expect(codes(seat)).not.toContain('reading-taken-as-exact');
  });

  it('beats the shapes for the place, and the shapes still give the press', () => {
    const seat = predictSeat({ spindle, arm: armAt(14), trialFit: { endGapMm: 2.8 }, pressing });
    expect(seat.handFit.endGapMm.nominal).toBe(2.8);
    expect(seat.handFit.mouthFromEndMm.nominal).toBeCloseTo(17 - 2.8, 12);
    expect(seat.handFit.shoulderGapMm.nominal).toBeCloseTo(18.5 - 14.2, 12);
    expect(seat.travelMm.nominal).toBeGreaterThan(0.7);
    const byShoulder = predictSeat({ spindle, arm: armAt(14), trialFit: { shoulderGapMm: 4.3 } });
    expect(byShoulder.handFit.mouthFromEndMm.nominal).toBeCloseTo(14.2, 12);
  });

  it('takes a plain number as exact and says so for each', () => {
    const seat = predictSeat({ trialFit: { endGapMm: 3, shoulderGapMm: 4 } });
    const notes = seat.findings.filter(({ code }) => code === 'reading-taken-as-exact');
    expect(notes.map((note) => note.path)).toEqual(['trialFit.endGapMm', 'trialFit.shoulderGapMm']);
  });

  it('says when it and the shapes, or its own two gaps, contradict each other', () => {
    const about = (value: number) => ({ value, standardUncertainty: 0.1 });
    const near = predictSeat({ spindle, arm: armAt(14), trialFit: { endGapMm: about(2.8) } });
    expect(codes(near)).not.toContain('readings-disagree');
    const far = predictSeat({ spindle, arm: armAt(14), trialFit: { endGapMm: about(2.6) } });
    const finding = far.findings.find(({ code }) => code === 'readings-disagree');
    expect(finding?.severity).toBe('caution');
    expect(finding?.values).toMatchObject({ firstMm: 14.4, second: 'sizes of the parts' });
    expect(finding?.values.secondMm).toBeCloseTo(14, 9);
    const own = predictSeat({ spindle, arm: armAt(14), trialFit: { endGapMm: about(3), shoulderGapMm: about(3) } });
    expect(own.findings.filter(({ code }) => code === 'readings-disagree').map(({ values }) => values.second)).toEqual([
      'gap to the shoulder',
    ]);
  });
});

describe('several ways of knowing one place', () => {
  const loose = (mouthMm: number, halfMm: number) => {
    const half = 2 * TAN2 * halfMm;
    const nominal = 12.6 + 2 * mouthMm * TAN2;
    return { ...armAt(14), acrossFlatsAtMouthMm: { lower: nominal - half, nominal, upper: nominal + half } };
  };
  const gap = (nominal: number, half: number): Limits => ({ lower: nominal - half, nominal, upper: nominal + half });
  const seatOf = (shapeMm: number, trialFit: { endGapMm?: Limits | number; shoulderGapMm?: Limits | number }) =>
    predictSeat({ spindle, arm: loose(shapeMm, 0.4), trialFit, mixWays: true });

  it('leave what all of them leave, and say which took part', () => {
    // By the gap 13.7 to 14.3, by the shapes 13.8 to 14.6.
    const seat = seatOf(14.2, { endGapMm: gap(3, 0.3) });
    expect(seat.ways).toEqual(['end-gap', 'shapes']);
    expect(seat.handFit.mouthFromEndMm.lower).toBeCloseTo(13.8, 9);
    expect(seat.handFit.mouthFromEndMm.upper).toBeCloseTo(14.3, 9);
    const weights = [1 / 0.3 ** 2, 1 / 0.4 ** 2] as const;
    const mean = (14 * weights[0] + 14.2 * weights[1]) / (weights[0] + weights[1]);
    expect(seat.handFit.mouthFromEndMm.nominal).toBeCloseTo(mean, 9);
    expect(seat.handFit.endGapMm.upper).toBeCloseTo(3.2, 9);
    const both = seatOf(14.2, { endGapMm: gap(3, 0.3), shoulderGapMm: gap(4.4, 0.25) });
    expect(both.ways).toEqual(['end-gap', 'shoulder-gap', 'shapes']);
    expect(both.handFit.mouthFromEndMm.lower).toBeCloseTo(13.85, 9);
  });

  it('stay apart where they hardly meet, and the best alone counts', () => {
    // 0.5 apart is just what half widths of 0.3 and 0.4 let independent errors make.
    expect(seatOf(14.499, { endGapMm: gap(3, 0.3) }).ways).toEqual(['end-gap', 'shapes']);
    const seat = seatOf(14.501, { endGapMm: gap(3, 0.3) });
    expect(seat.ways).toEqual(['end-gap']);
    expect(seat.handFit.endGapMm).toEqual(gap(3, 0.3));
    const finding = seat.findings.find(({ code }) => code === 'ways-strained');
    expect(finding?.severity).toBe('caution');
    expect(finding?.values).toMatchObject({
      first: 'gap to the spindle end',
      firstMm: 14,
      second: 'sizes of the parts',
    });
    expect(codes(seat)).not.toContain('readings-disagree');
    expect(codes(seatOf(14.8, { endGapMm: gap(3, 0.3) }))).toContain('readings-disagree');
  });

  it('do not mix with a number that claims no error, nor unasked', () => {
    expect(seatOf(14.2, { endGapMm: 3 }).ways).toEqual(['end-gap']);
    expect(predictSeat({ spindle, arm: armAt(14), trialFit: { endGapMm: gap(3, 0.3) }, mixWays: true }).ways).toEqual([
      'end-gap',
    ]);
    const input = { spindle, arm: loose(14.2, 0.4), trialFit: { endGapMm: gap(3, 0.3) } };
    const alone = predictSeat(input);
    const strained = predictSeat({ ...input, arm: loose(14.6, 0.4) });
    expect(codes(strained)).not.toContain('ways-strained');
    expect(alone.ways).toEqual(['end-gap']);
    expect(alone.handFit.endGapMm).toEqual(gap(3, 0.3));
    expect(predictSeat({ ...input, mixWays: false })).toEqual(alone);
    expect(predictSeat({ ...input, mixWays: true }).ways).toEqual(['end-gap', 'shapes']);
  });

  it('put a mark together with shapes only where the press is known, and never beside a trial fit', () => {
    const witnessMark = { markEndFromSpindleEndMm: gap(14.2, 0.3) };
    const arm = loose(14, 0.6);
    expect(predictSeat({ spindle, arm, witnessMark, mixWays: true }).ways).toEqual(['witness-mark']);
    expect(predictSeat({ spindle, arm, witnessMark, pressing, mixWays: true }).ways).toEqual([
      'witness-mark',
      'shapes',
    ]);
    const trialFit = { endGapMm: gap(3, 0.3) };
    const beside = predictSeat({ spindle, arm, witnessMark, pressing, trialFit, mixWays: true });
    expect(beside.ways).toEqual(['end-gap', 'shapes']);
  });

  it('are named without shapes too', () => {
    expect(predictSeat({ trialFit: { shoulderGapMm: 3, endGapMm: 2 } }).ways).toEqual(['end-gap', 'shoulder-gap']);
    expect(predictSeat({ witnessMark: { markEndFromSpindleEndMm: 14 } }).ways).toEqual(['witness-mark']);
    expect(predictSeat({ spindle, arm: armAt(14) }).ways).toEqual(['shapes']);
  });
});

describe('trial fit beside a witness mark', () => {
  const about = (value: number) => ({ value, standardUncertainty: 0.1 });
  const known = { spindle, arm: armAt(14), trialFit: { endGapMm: about(3) } };
  const disagrees = (mark: number, press: object): boolean =>
    codes(predictSeat({ ...known, ...press, witnessMark: { markEndFromSpindleEndMm: about(mark) } })).includes(
      'mark-disagrees',
    );

  it('is held against it where the press is known', () => {
    const { pressed } = predictSeat({ ...known, pressing });
    const mouth = pressed.mouthFromEndMm.nominal;
    expect([mouth - 1.5, mouth, mouth + 1.5].map((mark) => disagrees(mark, { pressing }))).toEqual([true, false, true]);
  });

  it('without a press only contradicts a mark that ends before the hand fit', () => {
    expect([12.5, 14, 15.5].map((mark) => disagrees(mark, {}))).toEqual([true, false, false]);
  });
});

describe('witness mark', () => {
  it('is the pressed place of the arm that made it; the hand fit lies a travel farther out', () => {
    const seat = predictSeat({ spindle, arm: armAt(14), witnessMark: { markEndFromSpindleEndMm: 14.2 }, pressing });
    expect(seat.basis).toBe('witness-mark');
    expect(seat.pressed.mouthFromEndMm.nominal).toBeCloseTo(14.7, 12);
    expect(seat.handFit.mouthFromEndMm.nominal).toBeCloseTo(14.7 - seat.travelMm.nominal, 12);
    expect(seat.handFit.endGapMm.nominal).toBeCloseTo(17 - 14.7 + seat.travelMm.nominal, 12);
    expect(codes(seat)).toContain('mark-of-old-arm');
    expect(stops(seat)).toEqual([]);
  });

  it('is a stop when it covers the flats', () => {
    const seat = predictSeat({ spindle, arm: armAt(14), witnessMark: { markEndFromSpindleEndMm: 18 } });
    expect(stops(seat)).toEqual(['bottoms-on-end', 'mark-covers-flat']);
    const markEndFromSpindleEndMm = { lower: 17, nominal: 17.5, upper: 18 };
    const near = predictSeat({ spindle, arm: armAt(14), witnessMark: { markEndFromSpindleEndMm } });
    expect(near.findings.find(({ code }) => code === 'mark-covers-flat')?.severity).toBe('caution');
  });

  it('yields to a trial fit, and alone knows only the mouth', () => {
    const both = predictSeat({ trialFit: { endGapMm: 2 }, witnessMark: { markEndFromSpindleEndMm: 14 } });
    expect(both.basis).toBe('trial-fit');
    const alone = predictSeat({ witnessMark: { markEndFromSpindleEndMm: 14 } });
    expect(alone.pressed.mouthFromEndMm?.nominal).toBe(14);
    expect([alone.pressed.endGapMm, alone.pressed.engagedLengthMm]).toEqual([null, null]);
  });
});

describe('travel without bound', () => {
  const soft = {
    arm: { youngsModulusGPa: 70, poissonsRatio: 0.33, yieldStrengthMPa: 150 },
  };

  it('runs up to the nearest stop', () => {
    const seat = predictSeat({
      spindle,
      arm: armAt(14),
      pressing: { ...pressing, axialForceN: 25000, materials: soft },
    });
    expect(seat.pressed.endGapMm.nominal).toBeLessThanOrEqual(0);
    expect(seat.verdict).toBe('bottoms-on-end');
    expect(stops(seat)).toEqual(expect.arrayContaining(['bore-fully-plastic', 'travel-unbounded']));
  });

  it('is a caution when only the worst case gives way', () => {
    const friction = { lower: 0.04, nominal: 0.2, upper: 0.3 };
    const seat = predictSeat({ spindle, arm: armAt(14), pressing: { axialForceN: 12000, friction, materials: soft } });
    expect(seat.findings.find(({ code }) => code === 'travel-unbounded')?.severity).toBe('caution');
    expect(seat.travelMm.upper).toBeGreaterThanOrEqual(seat.handFit.endGapMm.upper);
  });
});

describe('input', () => {
  it.each([
    ['nothing to go by', {}, 'trialFit'],
    ['one shape alone', { spindle }, 'arm'],
    ['the other shape alone', { arm: armAt(14) }, 'spindle'],
    ['pressing without shapes', { trialFit: { endGapMm: 3 }, pressing }, 'spindle'],
    ['an empty trial fit', { trialFit: {} }, 'trialFit.endGapMm'],
    ['a misspelt key', { trialFit: { endGap: 3 } }, 'trialFit.endGap'],
    [
      'a plastic model without yield strength',
      { spindle, arm: armAt(14), pressing: { ...pressing, compliance: 'ring-plastic' } },
      'pressing.materials.arm.yieldStrengthMPa',
    ],
    [
      'an uncertainty that leaves the domain',
      { spindle: { ...spindle, endChamferMm: { value: 0.1, standardUncertainty: 0.1 } }, arm: armAt(14) },
      'spindle.endChamferMm',
    ],
  ])('refuses %s', (_name, input, path) => {
    expect(caughtPath(input)).toBe(path);
  });

  it('takes a stop nearer than a nanometre for reached, however small the force', () => {
    const faint = { axialForceN: 1e-300, friction: 0.1 };
    const share = (endGapMm: number) =>
      predictSeat({ spindle, arm: armAt(14, { faceAngleDeg: 2.2 }), trialFit: { endGapMm }, pressing: faint })
        .pressReached;
    expect(share(1e-30).upper).toBe(0);
    expect(share(1e-5).lower).toBe(1);
  });

  it('stays finite where limits cross so far that no spindle is left', () => {
    const { travelMm } = predictSeat({
      spindle: { acrossFlatsAtEndMm: 0.001, faceAngleDeg: 0.2, flatLengthMm: 0.0011 },
      arm: {
        acrossFlatsAtMouthMm: 0.001,
        faceAngleDeg: 0.2,
        boreLengthMm: 0.0011,
        mouthChamferMm: { lower: 0, nominal: 0, upper: 0.3 },
      },
      witnessMark: { markEndFromSpindleEndMm: 0 },
      pressing: { axialForceN: 1, friction: 0 },
    });
    expect(Object.values(travelMm).every(Number.isFinite)).toBe(true);
  });

  it('gives limits throughout when the shapes are given, and may give null otherwise', () => {
    const shaped = predictSeat({ spindle, arm: armAt(14) });
    const bare = predictSeat({ trialFit: { endGapMm: 3 } });
    expectTypeOf(shaped.pressed.mouthFromEndMm).toEqualTypeOf<Limits>();
    expectTypeOf(bare.pressed.mouthFromEndMm).toEqualTypeOf<Limits | null>();
  });

  it('leaves the sensitivities out where nobody asks for them, and says the same else', () => {
    const input = { spindle, arm: armAt(13.5), pressing };
    const whole = predictSeat(input);
    expect(whole.sensitivity.length).toBeGreaterThan(3);
    const { sensitivity, ...lean } = predictSeat({ ...input, sensitivities: false });
    expect(sensitivity).toEqual([]);
    const { sensitivity: _, ...rest } = whole;
    expect(lean).toEqual(rest);
    expect(predictSeat({ ...input, sensitivities: true })).toEqual(whole);
    expect(() => predictSeat({ ...input, sensitivities: 'no' as never })).toThrow(/sensitivities/);
  });
});

import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { predictSeat } from './predict-seat.ts';
import { type ScreenSeatsInput, screenSeats } from './screen-seats.ts';

const spindle = {
  acrossFlatsAtEndMm: 12.6,
  faceAngleDeg: 2,
  flatLengthMm: 20,
  endChamferMm: 0.5,
  cornerDiameterMm: 16.5,
} as const;
const TAN2 = Math.tan((2 * Math.PI) / 180);
/** Across flats of a bore that comes to stand at a depth by hand. */
const standingAt = (mouthMm: number): number => 12.6 + 2 * mouthMm * TAN2;
const pressing = { axialForceN: 15_000, friction: { lower: 0.1, nominal: 0.13, upper: 0.16 } };
const names = ({ verdict, verdictNames }: ReturnType<typeof screenSeats>, column: Uint8Array = verdict): string[] =>
  Array.from(column, (code) => verdictNames[code] ?? 'refused');
const caughtPath = (input: unknown): string => {
  try {
    screenSeats(input as ScreenSeatsInput);
  } catch (error) {
    if (isDomainError(error)) return error.path;
  }
  throw new Error('nothing refused');
};

describe('screenSeats', () => {
  it('judges a hand fit by the gaps of the frame', () => {
    // Bore of 16 mm: by hand the bolt's seat stands 16 - m proud, the run-out 20 - m off; usable flat 16 mm, of which 12.
    const hand = screenSeats({
      spindle,
      arms: { acrossFlatsAtMouthMm: [0.4, 12, 14, 15.4, 15.6, 16.1].map(standingAt), boreLengthMm: 16 },
    });
    expect(names(hand)).toEqual([
      'does-not-start',
      'too-little-engagement',
      'seats',
      'seats',
      'marginal',
      'bottoms-on-end',
    ]);
    const long = screenSeats({
      spindle,
      arms: { acrossFlatsAtMouthMm: [19.4, 19.6, 20.1].map(standingAt), boreLengthMm: 24 },
    });
    expect(names(long)).toEqual(['seats', 'marginal', 'hits-shoulder']);
  });

  it('gives the lengths of predictSeat when asked, and 0 where there is no verdict', () => {
    const acrossFlatsAtMouthMm = [standingAt(13), Number.NaN, 70];
    const { travelMm, endGapMm, shoulderGapMm } = screenSeats({
      spindle,
      arms: { acrossFlatsAtMouthMm, boreLengthMm: 17, boltSeatFromMouthMm: 16 },
      pressing,
      lengths: true,
    });
    const seat = predictSeat({
      spindle,
      arm: {
        acrossFlatsAtMouthMm: standingAt(13),
        faceAngleDeg: 2,
        boreLengthMm: 17,
        boltSeatFromMouthMm: 16,
      },
      pressing,
    });
    expect(travelMm?.[0]).toBeCloseTo(seat.travelMm.nominal, 12);
    expect(endGapMm?.[0]).toBeCloseTo(seat.pressed.endGapMm.nominal, 12);
    expect(shoulderGapMm?.[0]).toBeCloseTo(seat.pressed.shoulderGapMm.nominal, 12);
    expect([...(travelMm?.slice(1) ?? [])]).toEqual([0, 0]);
  });

  it('codes what is not known and what is outside its domain, and counts', () => {
    const bore = { lower: [15, 15, 16, 15], nominal: [16, Number.NaN, 15, 16], upper: [17, 17, 17, 200] };
    const { verdict, worstLower, worstUpper, counts } = screenSeats({
      spindle,
      arms: { acrossFlatsAtMouthMm: standingAt(14), boreLengthMm: bore },
    });
    expect([...verdict]).toEqual([0, 6, 255, 255]);
    expect([...worstLower].slice(1)).toEqual([6, 255, 255]);
    expect([...worstUpper].slice(1)).toEqual([6, 255, 255]);
    expect(counts).toEqual([1, 0, 0, 0, 0, 0, 1, 2]);
  });

  it('takes what is no number in a plain list for refused, what is absent for not known', () => {
    const acrossFlatsAtMouthMm = ['13.5', null, undefined, standingAt(13)] as unknown as number[];
    expect(names(screenSeats({ spindle, arms: { acrossFlatsAtMouthMm, boreLengthMm: 16 } }))).toEqual([
      'refused',
      'cannot-tell',
      'cannot-tell',
      'seats',
    ]);
  });

  it('writes into the columns of the caller', () => {
    const out = { verdict: new Uint8Array(2), worstLower: new Uint8Array(2), worstUpper: new Uint8Array(2) };
    const arms = { acrossFlatsAtMouthMm: [standingAt(13), standingAt(16.1)], boreLengthMm: 16 };
    const screened = screenSeats({ spindle, arms, out });
    expect(screened.verdict).toBe(out.verdict);
    expect([...out.worstUpper]).toEqual([0, 2]);
  });

  it.each([
    ['no column', { spindle, arms: { acrossFlatsAtMouthMm: 13.5, boreLengthMm: 16 } }, 'arms'],
    [
      'columns of two lengths',
      { spindle, arms: { acrossFlatsAtMouthMm: [13.5], boreLengthMm: [16, 17] } },
      'arms.boreLengthMm',
    ],
    ['a misspelt size', { spindle, arms: { acrossFlatsAtMouthMm: [13.5], boreLenghtMm: 16 } }, 'arms.boreLengthMm'],
    [
      'a number outside its domain',
      { spindle, arms: { acrossFlatsAtMouthMm: [13.5], boreLengthMm: -1 } },
      'arms.boreLengthMm',
    ],
    [
      'a tolerance below 0',
      { spindle, arms: { acrossFlatsAtMouthMm: { nominal: [13.5], plusMinusMm: -1 }, boreLengthMm: 16 } },
      'arms.acrossFlatsAtMouthMm',
    ],
    [
      'an angle known within limits only',
      {
        spindle: { ...spindle, faceAngleDeg: { lower: 1.9, nominal: 2, upper: 2.1 } },
        arms: { acrossFlatsAtMouthMm: [13.5], boreLengthMm: 16 },
      },
      'spindle.faceAngleDeg',
    ],
    [
      'an angle of the arms',
      { spindle, arms: { acrossFlatsAtMouthMm: [13.5], boreLengthMm: 16, faceAngleDeg: 2 } },
      'arms.faceAngleDeg',
    ],
    [
      'a model of its own choice',
      {
        spindle,
        arms: { acrossFlatsAtMouthMm: [13.5], boreLengthMm: 16 },
        pressing: { ...pressing, compliance: 'ring' },
      },
      'pressing.compliance',
    ],
    [
      'an array of another length to write into',
      { spindle, arms: { acrossFlatsAtMouthMm: [13.5], boreLengthMm: 16 }, out: { verdict: new Uint8Array(2) } },
      'out.verdict',
    ],
    ['nothing', undefined, 'spindle'],
  ])('refuses %s', (_name, input, path) => {
    expect(caughtPath(input)).toBe(path);
  });
});

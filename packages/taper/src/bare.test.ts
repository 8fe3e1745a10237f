import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { type BareSeatInput, bareSeat, bareSeatOfEqualAngles } from './bare.ts';

const input: BareSeatInput = {
  spindle: { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 15, endChamferMm: 0.5, cornerDiameterMm: 16.5 },
  arm: {
    acrossFlatsAtMouthMm: { lower: 13.36, nominal: 13.38, upper: 13.4 },
    faceAngleDeg: 2,
    boreLengthMm: 14,
    boltSeatFromMouthMm: 14,
    seatIntrusionMm: 0,
    mouthChamferMm: 0.3,
    bossDiameterMm: 34,
    boreCornerRadiusMm: 1,
  },
  pressing: {
    axialForceN: 12_000,
    friction: 0.1,
    materials: {
      spindle: { youngsModulusGPa: 205, poissonsRatio: 0.29 },
      arm: { youngsModulusGPa: 70, poissonsRatio: 0.33 },
    },
  },
};

const pathOf = (run: () => unknown): string | undefined => {
  try {
    run();
  } catch (error) {
    return isDomainError(error) ? error.path : `${error}`;
  }
  return undefined;
};

describe('bareSeat', () => {
  it('sits by hand where two equal tapers meet', () => {
    const { handFit } = bareSeat(input);
    // (A - S)/(2 tan a) by hand.
    const depth = (mouth: number): number => (mouth - 12.6) / (2 * Math.tan((2 * Math.PI) / 180));
    expect(handFit.mouthFromEndMm.lower).toBeCloseTo(depth(13.36), 9);
    expect(handFit.mouthFromEndMm.nominal).toBeCloseTo(depth(13.38), 9);
    expect(handFit.endGapMm.upper).toBeCloseTo(14 - depth(13.36), 9);
  });

  it('tells a stop that is crossed by its verdict', () => {
    expect(bareSeat(input).verdict).toBe('seats');
    const short = { ...input, arm: { ...input.arm, boltSeatFromMouthMm: 11.5 } };
    expect(bareSeat(short).verdict).toBe('bottoms-on-end');
    const walled = { ...input, spindle: { ...input.spindle, shoulderFromEndMm: 11.6 } };
    expect(bareSeat(walled).verdict).toBe('hits-shoulder');
  });

  it.each([
    ['spindle.faceAngleDeg', { ...input, spindle: { ...input.spindle, faceAngleDeg: 0 } }],
    ['spindle.acrossFlatsAtEndMm', { ...input, spindle: { ...input.spindle, acrossFlatsAtEndMm: 0 } }],
    ['spindle.shoulderFromEndMm', { ...input, spindle: { ...input.spindle, shoulderFromEndMm: Number.NaN } }],
    ['arm.boreLengthMm', { ...input, arm: { ...input.arm, boreLengthMm: { lower: 3, nominal: 2, upper: 4 } } }],
    ['arm.bossDiameterMm', { ...input, arm: { ...input.arm, bossDiameterMm: '34' } }],
    ['pressing.friction', { ...input, pressing: { ...input.pressing, friction: 1.5 } }],
    [
      'pressing.materials.spindle.youngsModulusGPa',
      { ...input, pressing: { ...input.pressing, materials: { arm: input.pressing.materials.arm } } },
    ],
  ])('refuses %s', (path, wrong) => {
    expect(pathOf(() => bareSeat(wrong as never))).toBe(path);
  });

  it.each([undefined, null, 7, {}])('refuses %o as well', (wrong) => {
    expect(pathOf(() => bareSeat(wrong as never))).toBe('spindle.acrossFlatsAtEndMm');
  });
});

describe('bareSeatOfEqualAngles', () => {
  it('is bareSeat where both angles are equal and exact', () => {
    expect(bareSeatOfEqualAngles(input)).toEqual(bareSeat(input));
  });

  it.each([
    ['another angle', 2.1],
    ['an angle with limits', { lower: 1.9, nominal: 2, upper: 2.1 }],
  ])('refuses %s, which bareSeat takes', (_, faceAngleDeg) => {
    const uneven = { ...input, arm: { ...input.arm, faceAngleDeg } };
    expect(bareSeat(uneven).travelMm.nominal).toBeGreaterThan(0);
    expect(pathOf(() => bareSeatOfEqualAngles(uneven))).toBe('arm.faceAngleDeg');
  });

  it('says where it refuses, what came and what it takes', () => {
    const wrong = { ...input, arm: { ...input.arm, boreLengthMm: 101 } };
    expect(() => bareSeatOfEqualAngles(wrong)).toThrow(
      'bareSeatOfEqualAngles: arm.boreLengthMm: received 101; allowed: a number or rising limits from 0.000001 to 100',
    );
  });
});

import { describe, expect, it } from 'vitest';
import { seatFromWitnessMark } from './seat-from-witness-mark.ts';

const spindle = { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 18, endChamferMm: 1 };
const arm = { acrossFlatsAtMouthMm: 13.6, faceAngleDeg: 2, boreLengthMm: 17, mouthChamferMm: 0.5 };

describe('seatFromWitnessMark', () => {
  it('puts the mouth behind the mark by its chamfer', () => {
    const mark = { lower: 14, nominal: 14.2, upper: 14.3 };
    const { pressed, findings } = seatFromWitnessMark({ markEndFromSpindleEndMm: mark, spindle, arm });
    expect(pressed.mouthFromEndMm).toEqual({ lower: 14.5, nominal: 14.7, upper: 14.8 });
    expect(pressed.endGapMm?.nominal).toBeCloseTo(2.3, 12);
    expect(pressed.shoulderGapMm?.nominal).toBeCloseTo(3.8, 12);
    expect(pressed.engagedLengthMm?.nominal).toBeCloseTo(13.2, 12);
    expect(findings.map(({ code }) => code)).toEqual(['mark-of-old-arm']);
  });

  it('leaves the rest open without shapes', () => {
    const { pressed, findings } = seatFromWitnessMark({ markEndFromSpindleEndMm: 14 });
    expect(pressed).toEqual({
      mouthFromEndMm: { lower: 14, nominal: 14, upper: 14 },
      endGapMm: null,
      shoulderGapMm: null,
      engagedLengthMm: null,
    });
    expect(findings.filter(({ code }) => code.endsWith('-unbounded'))).toHaveLength(3);
  });

  it('stops at a mark that covers the flats, from their inner end on', () => {
    const first = (mark: number) => seatFromWitnessMark({ markEndFromSpindleEndMm: mark, spindle, arm }).findings[0];
    expect(first(18)).toMatchObject({
      code: 'mark-covers-flat',
      severity: 'stop',
      sources: ['service-manual-page-16'],
    });
    expect(first(17.99)?.code).toBe('mark-of-old-arm');
  });

  it('refuses one shape alone', () => {
    expect(() => seatFromWitnessMark({ markEndFromSpindleEndMm: 14, arm })).toThrow('spindle');
  });
});

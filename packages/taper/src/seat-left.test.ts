import { describe, expect, it } from 'vitest';
import { seatLeft } from './seat-left.ts';

const input = { clearanceMm: 0.02, faceAngleDeg: 2, travelMm: 0.8, endGapMm: 3, shoulderGapMm: 5 };

describe('seatLeft', () => {
  it('holds the seat against what clearance and press need', () => {
    const worn = seatLeft(input);
    // 14.318 mm of seat for 1 mm across flats, twice the clearance per side.
    expect(worn.advanceMm.nominal).toBeCloseTo(0.04 * 14.318, 4);
    expect(worn.neededMm.nominal).toBeCloseTo(0.04 * 14.318 + 0.8 + 0.5, 4);
    expect(worn).toMatchObject({ seatMm: { nominal: 3 }, state: 'has-seat' });
  });

  it('is beyond use or cannot tell where the limits say so', () => {
    expect(seatLeft({ ...input, endGapMm: 1.5 })).toMatchObject({ state: 'beyond-use' });
    expect(seatLeft({ ...input, endGapMm: 1.5 }).findings[0]?.message).toContain('Do not ride');
    const open = seatLeft({ ...input, endGapMm: { lower: 1.5, nominal: 2, upper: 2.5 } });
    expect(open).toMatchObject({ state: 'cannot-tell', findings: [{ severity: 'stop' }, {}] });
    expect(seatLeft({ ...input, shoulderGapMm: -1 }).state).toBe('beyond-use');
  });

  it('names the reading to improve and has nothing to say of a sound bore', () => {
    const vague = seatLeft({ ...input, clearanceMm: { lower: 0, nominal: 0.05, upper: 0.1 } });
    expect(vague.findings[0]?.path).toBe('clearanceMm');
    expect(seatLeft({ ...input, clearanceMm: 0 }).findings).toEqual([]);
    expect(() => seatLeft({ ...input, clearance: 1 } as never)).toThrow('clearance');
  });
});

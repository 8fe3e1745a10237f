import { describe, expect, it } from 'vitest';
import { armClearance } from './arm-clearance.ts';

describe('armClearance', () => {
  it('loses what the seat goes in, and gains what spindle and arm stand out, by hand', () => {
    const input = { clearanceMm: 6, seatChangeMm: 2, spindleEndChangeMm: 1.5, offsetDifferenceMm: -1, flexMm: 0 };
    // 6 - 2 + 1.5 - 1.
    expect(armClearance(input).clearanceMm).toEqual({ lower: 4.5, nominal: 4.5, upper: 4.5 });
  });

  it('takes every reading at its worst', () => {
    const about = (nominal: number) => ({ lower: nominal - 0.25, nominal, upper: nominal + 0.5 });
    const { clearanceMm, underLoadMm } = armClearance({
      clearanceMm: about(6),
      seatChangeMm: about(2),
      flexMm: { lower: 1, nominal: 1, upper: 2 },
    });
    expect(clearanceMm).toEqual({ lower: 3.25, nominal: 4, upper: 4.75 });
    expect(underLoadMm).toEqual({ lower: 1.25, nominal: 3, upper: 3.75 });
  });

  it.each([
    [10, 'clear', 'flex-assumed'],
    [4, 'close', 'arm-close-to-frame'],
    [2, 'touches', 'arm-touches-frame'],
  ] as const)('%d mm before: %s', (clearanceMm, verdict, code) => {
    const result = armClearance({ clearanceMm, seatChangeMm: 2 });
    expect(result.verdict).toBe(verdict);
    expect(result.findings.map((finding) => finding.code)).toContain(code);
  });

  it('refuses what is no room', () => {
    expect(() => armClearance({ clearanceMm: -1 })).toThrow('clearanceMm');
    expect(() => armClearance({ clearanceMm: 1, seatChange: 1 } as never)).toThrow('seatChange');
  });
});

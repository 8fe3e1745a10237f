import { describe, expect, it } from 'vitest';
import { chainlineShift } from './chainline-shift.ts';

const codes = (shift: ReturnType<typeof chainlineShift>): string[] => shift.findings.map(({ code }) => code);

describe('chainlineShift', () => {
  it('moves by half the change of a symmetric spindle', () => {
    // Published pair: 113 to 118 mm of spindle, 47.5 to 50 mm of chainline (source chainline-pairs-jp).
    const shift = chainlineShift({ spindleLengthChangeMm: 118 - 113 });
    expect(shift.chainlineShiftMm.nominal).toBe(50 - 47.5);
    expect(shift.nonDriveArmShiftMm.nominal).toBe(2.5);
    expect(shift.treadChangeMm.nominal).toBe(5);
    expect(codes(shift)).toContain('spindle-taken-as-symmetric');
  });

  it('moves in with an arm that sits farther in, and makes up for a spindle longer by twice that', () => {
    const shift = chainlineShift({ driveSeatChangeMm: 1.79, nonDriveSeatChangeMm: 1.79, spindleLengthChangeMm: 3.58 });
    expect(shift.chainlineShiftMm.nominal).toBeCloseTo(0, 12);
    expect(shift.treadChangeMm.nominal).toBeCloseTo(0, 12);
    expect(chainlineShift({ driveSeatChangeMm: 2 }).chainlineShiftMm.nominal).toBe(-2);
  });

  it('takes the drive end by itself for a spindle that is not symmetric', () => {
    const shift = chainlineShift({ spindleLengthChangeMm: 4, driveEndChangeMm: 3 });
    expect(shift.chainlineShiftMm.nominal).toBe(3);
    expect(shift.nonDriveArmShiftMm.nominal).toBe(1);
    expect(shift.treadChangeMm.nominal).toBe(4);
    // A spacer moves the whole spindle.
    const spacer = chainlineShift({ driveEndChangeMm: 1 });
    expect([spacer.chainlineShiftMm.nominal, spacer.nonDriveArmShiftMm.nominal]).toEqual([1, -1]);
    expect(spacer.treadChangeMm.nominal).toBe(0);
    expect(codes(spacer)).toContain('length-taken-as-unchanged');
  });

  it('widens by the limits of what it is given', () => {
    const shift = chainlineShift({
      driveSeatChangeMm: { lower: -0.5, nominal: 0, upper: 0.3 },
      nonDriveSeatChangeMm: { value: 0, standardUncertainty: 0.1 },
    });
    expect(shift.chainlineShiftMm).toEqual({ lower: -0.3, nominal: 0, upper: 0.5 });
    expect(shift.treadChangeMm.upper).toBeCloseTo(0.8, 12);
    expect(codes(shift)).toEqual([]);
  });

  it('refuses to shift by nothing, and unknown keys', () => {
    expect(() => chainlineShift({})).toThrow('at least one change');
    expect(() => chainlineShift({ driveSeatChange: 1 } as never)).toThrow('driveSeatChangeMm');
  });
});

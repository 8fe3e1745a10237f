import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { wrenchSetting } from './wrench-setting.ts';

const wrench = { targetTorqueNm: 40, wrenchLengthMm: 300, extensionLengthMm: 75 };

describe('wrenchSetting', () => {
  it.each([
    [0, 32],
    [90, 40],
    [-90, 40],
    [270, 40],
    [180, 160 / 3],
    [-180, 160 / 3],
    [360, 32],
  ])('is exact at %d degrees', (extensionAngleDeg, settingNm) => {
    expect(wrenchSetting({ ...wrench, extensionAngleDeg }).settingNm).toBeCloseTo(settingNm, 12);
  });

  it('changes nothing at right angles or without an extension', () => {
    expect(wrenchSetting({ ...wrench, extensionAngleDeg: 90 })).toEqual({ settingNm: 40, leverRatio: 1, findings: [] });
    expect(wrenchSetting({ ...wrench, extensionLengthMm: 0 }).settingNm).toBe(40);
    // However long the extension: the cosine is 0 to the last digit.
    for (const extensionAngleDeg of [90, -90, 270, -270]) {
      const far = { targetTorqueNm: 40, wrenchLengthMm: 1, extensionLengthMm: 10_000, extensionAngleDeg };
      expect(wrenchSetting(far)).toEqual({ settingNm: 40, leverRatio: 1, findings: [] });
    }
  });

  it('takes the part along the wrench at other angles', () => {
    expect(wrenchSetting({ ...wrench, extensionAngleDeg: 60 }).leverRatio).toBeCloseTo(1.125, 12);
    expect(wrenchSetting({ ...wrench, extensionAngleDeg: 120 }).leverRatio).toBeCloseTo(0.875, 12);
    expect(wrenchSetting(wrench).settingNm).toBe(32);
  });

  it('asks for the hand at the mark where that matters', () => {
    expect(wrenchSetting(wrench).findings[0]?.message).toContain('300 mm from the square');
  });

  it('refuses an extension that reaches back past the grip', () => {
    const back = { ...wrench, extensionAngleDeg: 180 };
    expect(refusal(() => wrenchSetting({ ...back, extensionLengthMm: 300 })).path).toBe('extensionLengthMm');
    expect(wrenchSetting({ ...back, extensionLengthMm: 299 }).settingNm).toBeCloseTo(12_000, 8);
    expect(refusal(() => wrenchSetting({ ...wrench, targetTorqueNm: -1 })).path).toBe('targetTorqueNm');
    expect(refusal(() => wrenchSetting({ ...wrench, wrenchLengthMm: 0 })).path).toBe('wrenchLengthMm');
    expect(refusal(() => wrenchSetting({ ...wrench, extensionAngelDeg: 0 } as never)).nearest).toBe(
      'extensionAngleDeg',
    );
  });
});

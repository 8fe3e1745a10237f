import { describe, expect, it } from 'vitest';
import { wrenchReach } from './wrench-reach.ts';
import { wrenchSetting } from './wrench-setting.ts';

const scale = { lowestSettingNm: 6.8, highestSettingNm: 33.9, wrenchLengthMm: 250 };

describe('wrenchReach', () => {
  it('sets what is on the scale directly', () => {
    expect(wrenchReach({ ...scale, targetTorqueNm: 20 })).toEqual({
      reach: 'direct',
      settingNm: 20,
      extensionLengthMm: 0,
      findings: [],
    });
  });

  it('takes the shortest extension that reaches, and agrees with the setting of that extension', () => {
    const { settingNm, extensionLengthMm } = wrenchReach({ ...scale, targetTorqueNm: 40, extensionStepMm: 1 });
    // 250 (40/33.9 - 1) = 44.98 mm.
    expect(extensionLengthMm).toBe(45);
    const { settingNm: expected } = wrenchSetting({
      targetTorqueNm: 40,
      wrenchLengthMm: 250,
      extensionLengthMm: 45,
    });
    expect(settingNm).toBeCloseTo(expected, 12);
    expect(settingNm ?? 0).toBeLessThanOrEqual(33.9);
  });

  it.each([3, 60])('%d Nm is out of reach, and says so', (targetTorqueNm) => {
    const result = wrenchReach({ ...scale, targetTorqueNm });
    expect(result).toMatchObject({ reach: 'no', settingNm: null, extensionLengthMm: null });
    expect(result.findings.map(({ code }) => code)).toEqual(['wrench-out-of-reach']);
  });

  it('refuses a scale that runs backwards and a target that is none', () => {
    expect(() => wrenchReach({ ...scale, lowestSettingNm: 40, targetTorqueNm: 20 })).toThrow('lowestSettingNm');
    expect(() => wrenchReach({ ...scale, targetTorqueNm: 0 })).toThrow('targetTorqueNm');
  });
});

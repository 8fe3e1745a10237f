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

  it('has both ends on its scale, even where they are one', () => {
    for (const targetTorqueNm of [6.8, 33.9]) {
      expect(wrenchReach({ ...scale, targetTorqueNm })).toMatchObject({ reach: 'direct', settingNm: targetTorqueNm });
    }
    const preset = { lowestSettingNm: 5, highestSettingNm: 5, wrenchLengthMm: 150, targetTorqueNm: 5 };
    expect(wrenchReach(preset)).toMatchObject({ reach: 'direct', settingNm: 5 });
  });

  it('steps by 5 mm unless told, and takes a length that just reaches', () => {
    expect(wrenchReach({ ...scale, targetTorqueNm: 40 }).extensionLengthMm).toBe(45);
    // 250 (38/33.9 - 1) = 30.2 mm; 250 (36/32 - 1) = 31.25 mm.
    expect(wrenchReach({ ...scale, targetTorqueNm: 38 }).extensionLengthMm).toBe(35);
    const even = { ...scale, highestSettingNm: 32, targetTorqueNm: 36, extensionStepMm: 6.25 };
    expect(wrenchReach(even)).toMatchObject({ extensionLengthMm: 31.25, settingNm: 32 });
  });

  it('proposes extensions up to half the wrench', () => {
    // 250 (1.5 - 1) = 125 mm.
    const half = { ...scale, highestSettingNm: 32, targetTorqueNm: 48 };
    expect(wrenchReach(half)).toMatchObject({ reach: 'with-extension', extensionLengthMm: 125 });
    expect(wrenchReach({ ...half, targetTorqueNm: 48.1 }).reach).toBe('no');
  });

  it('takes no step that leaves the scale at its lower end', () => {
    // A step of 75 mm on 300 mm: 40 Nm are set as 32, on a scale that begins there or just above.
    const narrow = { targetTorqueNm: 40, highestSettingNm: 35, wrenchLengthMm: 300, extensionStepMm: 75 };
    expect(wrenchReach({ ...narrow, lowestSettingNm: 32 })).toMatchObject({ reach: 'with-extension', settingNm: 32 });
    expect(wrenchReach({ ...narrow, lowestSettingNm: 32.1 })).toMatchObject({ reach: 'no', settingNm: null });
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

import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { thermalPreload } from './thermal-preload.ts';

const joint = {
  preloadN: 25_000,
  temperatureChangeKelvin: 50,
  clampedLengthMm: 20,
  boltExpansionPerKelvin: 12e-6,
  memberExpansionPerKelvin: 24e-6,
  boltStiffnessNPerMm: 250_000,
  memberStiffnessNPerMm: 500_000,
};

describe('thermalPreload', () => {
  it('stretches the joint by the difference of growth', () => {
    // By hand: 12e-6 x 20 mm x 50 K = 0.012 mm; springs of 250 and 500 kN/mm in series are 166.7 kN/mm: 2000 N.
    expect(thermalPreload(joint).changeN).toBeCloseTo(2000, 9);
    expect(thermalPreload(joint).preloadAfterN).toBeCloseTo(27_000, 9);
    expect(thermalPreload({ ...joint, temperatureChangeKelvin: -50 }).changeN).toBeCloseTo(-2000, 9);
  });

  it('changes nothing where all is of one material, without a negative zero', () => {
    const same = thermalPreload({ ...joint, memberExpansionPerKelvin: 12e-6, temperatureChangeKelvin: -50 });
    expect(Object.is(same.changeN, 0)).toBe(true);
  });

  it('ends when the joint is slack', () => {
    const slack = thermalPreload({ ...joint, preloadN: 1000, temperatureChangeKelvin: -100 });
    expect(slack).toMatchObject({ changeN: -1000, preloadAfterN: 0 });
    expect(slack.findings.map((finding) => finding.code)).toEqual(['thermally-slack']);
    expect(thermalPreload({ ...joint, preloadN: 0 }).findings).toEqual([]);
    // What was slack before is not made slack by the cold; and a joint that keeps some of its preload is not slack.
    const cold = { ...joint, temperatureChangeKelvin: -50 };
    expect(thermalPreload({ ...cold, preloadN: 0 })).toMatchObject({ preloadAfterN: 0, findings: [] });
    expect(thermalPreload({ ...cold, preloadN: 2001 }).findings).toEqual([]);
    expect(refusal(() => thermalPreload({ ...joint, clampedLengthMm: 0 })).path).toBe('clampedLengthMm');
  });
});

import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { loadFactor } from './load-factor.ts';

const joint = { boltStiffnessNPerMm: 1e5, memberStiffnessNPerMm: 3e5, preloadN: 30_000, externalLoadN: 10_000 };

describe('loadFactor', () => {
  it('shares the load so that bolt and clamp differ by it', () => {
    const { boltForceN, clampForceN, loadFactor: share } = loadFactor(joint);
    expect(share).toBe(0.25);
    expect(boltForceN - clampForceN).toBeCloseTo(10_000, 9);
    expect(boltForceN).toBeCloseTo(32_500, 9);
  });

  it('lets the bolt carry all once the parts are apart', () => {
    const apart = loadFactor({ ...joint, externalLoadN: 40_001 });
    expect(apart).toMatchObject({ boltForceN: 40_001, clampForceN: 0, separationLoadN: 40_000 });
    expect(apart.findings.map((finding) => finding.code)).toEqual(['parts-come-apart']);
    // Continuous at the border.
    expect(loadFactor({ ...joint, externalLoadN: 40_000 })).toMatchObject({ boltForceN: 40_000, clampForceN: 0 });
    expect(loadFactor({ ...joint, externalLoadN: 40_000 }).findings).toEqual([]);
  });

  it('stays finite for the stiffest bolt, and refuses what is outside', () => {
    const stiff = loadFactor({ ...joint, boltStiffnessNPerMm: 1e12, memberStiffnessNPerMm: 1e-3 });
    expect(Number.isFinite(stiff.separationLoadN)).toBe(true);
    expect(refusal(() => loadFactor({ ...joint, preloadN: -1 })).path).toBe('preloadN');
    expect(refusal(() => loadFactor({ ...joint, memberStiffnessNPerMm: 0 })).path).toBe('memberStiffnessNPerMm');
  });
});

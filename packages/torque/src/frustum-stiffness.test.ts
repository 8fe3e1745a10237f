import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { frustumStiffness } from './frustum-stiffness.ts';

const layer = { outerFaceDiameterMm: 18, holeDiameterMm: 12, thicknessMm: 13, modulusGPa: 207 };

describe('frustumStiffness', () => {
  it('tends to E A/t for a thin layer', () => {
    const thin = frustumStiffness({ ...layer, thicknessMm: 1e-6 }).stiffnessNPerMm;
    expect(thin / ((207_000 * (Math.PI / 4) * (18 ** 2 - 12 ** 2)) / 1e-6)).toBeCloseTo(1, 5);
  });

  it('equals the same cone cut in two, in series', () => {
    const whole = frustumStiffness(layer).stiffnessNPerMm;
    const upper = frustumStiffness({ ...layer, thicknessMm: 5 }).stiffnessNPerMm;
    const face = 18 + 2 * 5 * Math.tan(Math.PI / 6);
    const lower = frustumStiffness({ ...layer, outerFaceDiameterMm: face, thicknessMm: 8 }).stiffnessNPerMm;
    expect(1 / (1 / upper + 1 / lower) / whole).toBeCloseTo(1, 12);
  });

  it('refuses a hole as large as the face', () => {
    expect(refusal(() => frustumStiffness({ ...layer, holeDiameterMm: 18 })).path).toBe('holeDiameterMm');
    expect(refusal(() => frustumStiffness({ ...layer, thicknessMm: 0 })).path).toBe('thicknessMm');
  });
});

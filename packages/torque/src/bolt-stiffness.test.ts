import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { boltStiffness } from './bolt-stiffness.ts';

describe('boltStiffness', () => {
  it('adds the give of its segments', () => {
    const one = boltStiffness({ segments: [{ areaMm2: 50, lengthMm: 20 }], modulusGPa: 200 }).stiffnessNPerMm;
    expect(one).toBeCloseTo(500_000, 6);
    const halves = [
      { areaMm2: 50, lengthMm: 10 },
      { areaMm2: 50, lengthMm: 10 },
    ];
    expect(boltStiffness({ segments: halves, modulusGPa: 200 }).stiffnessNPerMm).toBeCloseTo(one, 6);
  });

  it('refuses no segments and empty ones', () => {
    expect(refusal(() => boltStiffness({ segments: [], modulusGPa: 200 })).path).toBe('segments');
    const faulty = { segments: [{ areaMm2: 0, lengthMm: 1 }], modulusGPa: 200 };
    expect(refusal(() => boltStiffness(faulty)).path).toBe('segments[0].areaMm2');
  });
});

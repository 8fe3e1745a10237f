import { describe, expect, it } from 'vitest';
import { onePieceCrank } from './one-piece-crank.ts';

const crank = { pedalForceN: 1000, crankLengthMm: 165, overhangMm: 80, barDiameterMm: 20 };

describe('onePieceCrank', () => {
  it('is the distortion energy of bending and torsion, each by its own formula', () => {
    const bending = (32 * 80_000) / (Math.PI * 20 ** 3);
    const torsion = (16 * 165_000) / (Math.PI * 20 ** 3);
    expect(onePieceCrank(crank).equivalentStressMPa.nominal).toBeCloseTo(
      Math.hypot(bending, Math.sqrt(3) * torsion),
      9,
    );
  });

  it('judges only what was given, and always says that there is no joint', () => {
    expect(onePieceCrank(crank).yieldShare).toBeNull();
    const weak = onePieceCrank({ ...crank, yieldStrengthMPa: 200 });
    expect(weak.yieldShare?.nominal).toBeGreaterThan(1);
    expect(weak.findings.map(({ code }) => code)).toEqual(['no-joint', 'past-yield', 'joint-instructions-first']);
  });

  it('refuses a crank of no length', () => {
    expect(() => onePieceCrank({ ...crank, crankLengthMm: 0 })).toThrow('crankLengthMm');
  });
});

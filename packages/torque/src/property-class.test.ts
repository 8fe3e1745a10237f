import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { propertyClass } from './property-class.ts';

describe('propertyClass', () => {
  it('changes at 16 mm where the standard does, 16 itself belonging below', () => {
    expect(propertyClass('8.8', 16)).toMatchObject({
      yieldStrengthMPa: 640,
      tensileStrengthMPa: 800,
      proofStressMPa: 580,
    });
    expect(propertyClass('8.8', 16.01)).toMatchObject({
      yieldStrengthMPa: 660,
      tensileStrengthMPa: 830,
      proofStressMPa: 600,
    });
  });

  it('has no proof stress for stainless steel', () => {
    expect(propertyClass('A2-70', 8)).toMatchObject({ yieldStrengthMPa: 450, proofStressMPa: null });
  });

  it('says where its numbers come from', () => {
    expect(propertyClass('10.9', 8).sources).toEqual(['shigley-9']);
    // Only what stands behind the rows of this size: those above 16 mm have another source.
    const small = ['iso-898-1-quoted', 'iso-898-1-ultimate-quoted', 'vdi-2230-2001-quoted'];
    expect(propertyClass('8.8', 16).sources).toEqual(small);
    expect(propertyClass('8.8', 17).sources).toEqual(['shigley-9']);
    expect(propertyClass('8.8', 8).dataEdition).toBe('2026.11');
  });

  it('speaks up outside M1.6 to M39', () => {
    expect(propertyClass('10.9', 39).findings).toEqual([]);
    expect(propertyClass('10.9', 1.6).findings).toEqual([]);
    expect(propertyClass('10.9', 40).findings.map((finding) => finding.code)).toEqual(['outside-class-sizes']);
    expect(propertyClass('10.9', 1.5).findings).toHaveLength(1);
  });

  it('refuses what there is not, with the nearest', () => {
    expect(refusal(() => propertyClass('8,8', 8))).toMatchObject({ path: 'propertyClass', nearest: '8.8' });
    expect(refusal(() => propertyClass('A2-75', 8)).allowed).toContain('A2-70');
    expect(refusal(() => propertyClass('9.8', 17)).path).toBe('nominalDiameterMm');
    expect(refusal(() => propertyClass('8.8', 0)).path).toBe('nominalDiameterMm');
    expect(refusal(() => propertyClass(8.8 as never, 8)).path).toBe('propertyClass');
  });

  it('names the class that is not made in a size, and no nearest name where there is none', () => {
    expect(refusal(() => propertyClass('9.8', 17)).issues).toStrictEqual([
      { path: 'nominalDiameterMm', received: '17', allowed: 'a size in which 9.8 is made' },
    ]);
  });
});

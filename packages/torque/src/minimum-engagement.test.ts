import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { minimumEngagement } from './minimum-engagement.ts';
import { threadFor } from './thread-for.ts';

const input = { thread: threadFor('M10'), pitch: 'coarse', propertyClass: '8.8', nutMaterial: 'Al 99.5' } as const;

describe('minimumEngagement', () => {
  it('asks for more in softer material, for stronger bolts and fine pitch', () => {
    expect(minimumEngagement(input).engagementMm).toBe(20);
    const steel = { ...input, nutMaterial: 'S235' };
    const inSteel = minimumEngagement(steel).engagementMm;
    expect(inSteel).toBeLessThan(20);
    expect(minimumEngagement({ ...steel, propertyClass: '10.9' }).engagementMm).toBeGreaterThan(inSteel);
    expect(minimumEngagement({ ...steel, pitch: 'fine' }).engagementMm).toBeGreaterThan(inSteel);
  });

  it('refuses what the table lacks', () => {
    expect(refusal(() => minimumEngagement({ ...input, pitch: 'fine' })).path).toBe('propertyClass');
    expect(refusal(() => minimumEngagement({ ...input, nutMaterial: 'Al 99' })).nearest).toBe('Al 99.5');
    expect(refusal(() => minimumEngagement({ ...input, propertyClass: '9.9' })).path).toBe('propertyClass');
  });
});

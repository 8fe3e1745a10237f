import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { engagementLengths } from './data.ts';
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
    expect(refusal(() => minimumEngagement({ ...input, pitch: 'fine' }))).toMatchObject({
      path: 'propertyClass',
      received: '8.8 fine',
      allowed: expect.stringMatching(/^for Al 99\.5: (.*, )?8\.8 coarse/),
    });
    expect(refusal(() => minimumEngagement({ ...input, nutMaterial: 'Al 99' })).nearest).toBe('Al 99.5');
    expect(refusal(() => minimumEngagement({ ...input, propertyClass: '9.9' })).path).toBe('propertyClass');
  });

  it('names the sources of its row', () => {
    const [row] = engagementLengths.filter((entry) => entry.nutMaterial === 'Al 99.5' && entry.propertyClass === '8.8');
    expect(minimumEngagement(input).sources).toEqual(row?.sources);
    expect(row?.sources).not.toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { metricThread } from './metric-thread.ts';
import { strippingEngagement } from './stripping-engagement.ts';

const input = { thread: metricThread({ nominalDiameterMm: 22, pitchMm: 1 }), loadN: 20_000, shearStrengthMPa: 180 };

describe('strippingEngagement', () => {
  it('carries just the load at the engagement it asks for', () => {
    const { engagementMm, engagedTurns } = strippingEngagement(input);
    const carried = strippingEngagement({ ...input, engagementMm });
    expect(carried.strippingForceN).toBeCloseTo(20_000, 6);
    expect(engagedTurns).toBeCloseTo(engagementMm, 12);
    expect(strippingEngagement({ ...input, engagementMm: engagementMm * 0.99 }).findings.map((f) => f.code)).toEqual([
      'strips-under-load',
    ]);
    expect(strippingEngagement({ ...input, engagementMm: engagementMm * 1.01 }).findings).toEqual([]);
    expect(strippingEngagement(input).strippingForceN).toBeNull();
  });

  it('takes seven eighths of the pitch for basic sizes, as the basic profile has it', () => {
    // At the major diameter the ridge of the basic profile is P/2 + (3/8 H) x 2 tan 30 x ... = 7/8 P wide.
    const { shearAreaPerLengthMm } = strippingEngagement(input);
    expect(shearAreaPerLengthMm).toBeCloseTo(Math.PI * 22 * (7 / 8), 9);
  });

  it('shears the thread of the bolt at the crests of the hole, three quarters of the pitch for basic sizes', () => {
    // Basic profile: P/2 at the pitch line and (d2 - D1) tan 30 = P/4 more at the minor diameter of the nut.
    const { shearAreaPerLengthMm } = strippingEngagement({ ...input, part: 'bolt' });
    expect(shearAreaPerLengthMm).toBeCloseTo(Math.PI * input.thread.internalMinorDiameterMm * 0.75, 6);
    const worn = strippingEngagement({ ...input, part: 'bolt', internalMinorDiameterMm: 21.2 });
    expect(worn.shearAreaPerLengthMm).toBeLessThan(shearAreaPerLengthMm);
  });

  it('refuses limit diameters of the other part, which would do nothing', () => {
    expect(refusal(() => strippingEngagement({ ...input, internalMinorDiameterMm: 21 })).path).toBe(
      'internalMinorDiameterMm',
    );
    const bolt = { ...input, part: 'bolt' } as const;
    expect(refusal(() => strippingEngagement({ ...bolt, internalPitchDiameterMm: 21 })).path).toBe(
      'internalPitchDiameterMm',
    );
    expect(refusal(() => strippingEngagement({ ...bolt, externalPitchDiameterMm: 24 })).path).toBe(
      'externalPitchDiameterMm',
    );
  });

  it('refuses diameters that leave no thread', () => {
    expect(refusal(() => strippingEngagement({ ...input, internalPitchDiameterMm: 24 })).path).toBe(
      'internalPitchDiameterMm',
    );
    expect(refusal(() => strippingEngagement({ ...input, externalMajorDiameterMm: 30 })).path).toBe(
      'externalMajorDiameterMm',
    );
    expect(refusal(() => strippingEngagement({ ...input, shearStrengthMPa: 0 })).path).toBe('shearStrengthMPa');
  });

  it('counts its turns by the pitch', () => {
    const coarse = strippingEngagement({ ...input, thread: metricThread({ nominalDiameterMm: 22, pitchMm: 2.5 }) });
    expect(coarse.engagedTurns * 2.5).toBeCloseTo(coarse.engagementMm, 12);
  });

  it('carries a load that is just its stripping force', () => {
    const { strippingForceN } = strippingEngagement({ ...input, engagementMm: 4 });
    const at = (loadN: number) => strippingEngagement({ ...input, engagementMm: 4, loadN }).findings;
    expect(at(strippingForceN ?? 0)).toEqual([]);
    expect(at((strippingForceN ?? 0) + 1)).toHaveLength(1);
  });
});

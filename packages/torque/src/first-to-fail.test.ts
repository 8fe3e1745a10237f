import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { assemblyLimit } from './assembly-limit.ts';
import { firstToFail } from './first-to-fail.ts';
import { strippingEngagement } from './stripping-engagement.ts';
import { threadFor } from './thread-for.ts';

const thread = threadFor('M8x1');
const input = { thread, propertyClass: '8.8', loadN: 15_000, engagementMm: 8, tappedShearStrengthMPa: 180 };
const forceOf = (result: ReturnType<typeof firstToFail>, mode: string) =>
  result.modes.find((entry) => entry.mode === mode)?.forceN ?? 0;

describe('firstToFail', () => {
  it('orders the ways by their force and names the first', () => {
    const result = firstToFail({
      ...input,
      bearing: { outerDiameterMm: 16, holeDiameterMm: 9 },
      limitingPressureMPa: 260,
    });
    const forces = result.modes.map((entry) => entry.forceN);
    expect(forces).toEqual([...forces].sort((a, b) => a - b));
    expect(result.modes).toHaveLength(5);
    expect(result.first).toBe(result.modes[0]?.mode);
    expect(result.marginRatio).toBeCloseTo((forces[1] ?? 0) / (forces[0] ?? 1), 12);
    // By hand: pi/4 (16^2 - 9^2) x 260.
    expect(forceOf(result, 'head-sinks-in')).toBeCloseTo(35_736, 0);
    // ISO 898-1: 8.8 up to M16 yields at 640 and breaks at 800 MPa; stress area 39.2 mm2.
    expect(forceOf(result, 'bolt-yields') / (640 * 39.17)).toBeCloseTo(1, 3);
    expect(forceOf(result, 'bolt-breaks') / (800 * 39.17)).toBeCloseTo(1, 3);
  });

  it('agrees with the parts it is made of', () => {
    const result = firstToFail({ ...input, threadFriction: 0.12 });
    const joint = { thread, propertyClass: '8.8', threadFriction: 0.12, utilisation: 1 };
    const limit = assemblyLimit({ ...joint, bearing: { outerDiameterMm: 16, holeDiameterMm: 9 } });
    expect(forceOf(result, 'bolt-yields')).toBeCloseTo(limit.preloadN, 6);
    const { strippingForceN } = strippingEngagement({
      thread,
      loadN: 0,
      shearStrengthMPa: 180,
      engagementMm: 8,
    });
    expect(forceOf(result, 'tapped-thread-strips')).toBeCloseTo(strippingForceN ?? 0, 6);
  });

  it('warns of a thread that goes before the bolt, and stops at too much load', () => {
    const codes = (change: object) => firstToFail({ ...input, ...change }).findings.map((finding) => finding.code);
    expect(codes({ engagementMm: 12 })).toEqual([]);
    expect(codes({ engagementMm: 4 })).toEqual(['strips-before-bolt-breaks']);
    expect(codes({ loadN: 60_000, engagementMm: 12 })).toEqual(['fails-under-load']);
    expect(firstToFail({ ...input, loadN: 0 }).modes[0]?.reserveRatio).toBeNull();
  });

  it('refuses by path', () => {
    expect(refusal(() => firstToFail({ ...input, engagementMm: 0 })).path).toBe('engagementMm');
    expect(refusal(() => firstToFail({ ...input, propertyClass: '8.9' })).path).toBe('propertyClass');
    expect(refusal(() => firstToFail({ ...input, internalMinorDiameterMm: 9 })).path).toBe('internalMinorDiameterMm');
    const face = { outerDiameterMm: 9, holeDiameterMm: 9 };
    expect(refusal(() => firstToFail({ ...input, bearing: face })).path).toBe('bearing.holeDiameterMm');
  });

  it('reckons the thread of the bolt with 1/sqrt 3 of its tensile strength unless told', () => {
    // Basic profile: three quarters of the pitch shear at the minor diameter of the hole; 8.8 breaks at 800 MPa.
    const areaMm2 = Math.PI * thread.internalMinorDiameterMm * 0.75 * 8;
    expect(forceOf(firstToFail(input), 'bolt-thread-strips')).toBeCloseTo((800 / Math.sqrt(3)) * areaMm2, 4);
    const given = firstToFail({ ...input, boltShearStrengthMPa: 500 });
    expect(forceOf(given, 'bolt-thread-strips')).toBeCloseTo(500 * areaMm2, 4);
  });

  it('reckons the face under the head only when both are known, face and pressure', () => {
    for (const half of [{ bearing: { outerDiameterMm: 16, holeDiameterMm: 9 } }, { limitingPressureMPa: 260 }]) {
      const { modes } = firstToFail({ ...input, ...half });
      expect(modes.map((entry) => entry.mode)).not.toContain('head-sinks-in');
      expect(modes).toHaveLength(4);
    }
  });

  it('sets each force against the load; one that just carries it does not fail', () => {
    const { modes } = firstToFail(input);
    for (const { forceN, reserveRatio } of modes) expect((reserveRatio ?? 0) * 15_000).toBeCloseTo(forceN, 8);
    const weakestN = modes[0]?.forceN ?? 0;
    expect(firstToFail({ ...input, loadN: weakestN }).findings.map(({ code }) => code)).not.toContain(
      'fails-under-load',
    );
    expect(firstToFail({ ...input, loadN: weakestN + 1 }).findings[0]?.code).toBe('fails-under-load');
  });

  it('names its sources', () => {
    expect(firstToFail(input).sources).toEqual([
      'fastener-handbook-stripping',
      'iso-898-1-quoted',
      'iso-898-1-ultimate-quoted',
      'vdi-2230-2001-quoted',
    ]);
  });
});

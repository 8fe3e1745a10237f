import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { metricThread } from './metric-thread.ts';
import { preloadFromTorque } from './preload-from-torque.ts';
import { torqueFromPreload } from './torque-from-preload.ts';

const joint = {
  thread: metricThread({ nominalDiameterMm: 8, pitchMm: 1 }),
  threadFriction: 0.12,
  bearingFriction: 0.15,
  bearing: { outerDiameterMm: 16, holeDiameterMm: 9 },
};
const methods = ['exact', 'vdi-2230', 'nut-factor'] as const;

describe('preloadFromTorque', () => {
  it.each(methods)('%s: is the inverse', (method) => {
    for (const preloadN of [0, 0.001, 1, 25_000, 1e9]) {
      const { torqueNm } = torqueFromPreload({ ...joint, preloadN, method });
      const back = preloadFromTorque({ ...joint, torqueNm, method });
      expect(Math.abs(back.preloadN - preloadN)).toBeLessThanOrEqual(1e-12 * preloadN);
      expect(back.nutFactor).toBe(torqueFromPreload({ ...joint, preloadN, method }).nutFactor);
    }
  });

  it('is the inverse with a bare nut factor', () => {
    const bare = { thread: joint.thread, nutFactor: 0.17, method: 'nut-factor' } as const;
    const { torqueNm } = torqueFromPreload({ ...bare, preloadN: 12_345 });
    expect(preloadFromTorque({ ...bare, torqueNm }).preloadN).toBeCloseTo(12_345, 8);
  });

  it('takes the prevailing torque off first, and adds it to loosening', () => {
    const free = preloadFromTorque({ ...joint, torqueNm: 30 });
    const locked = preloadFromTorque({ ...joint, torqueNm: 36, prevailingTorqueNm: 6 });
    expect(locked.preloadN).toBe(free.preloadN);
    expect(locked.looseningTorqueNm).toBeCloseTo(free.looseningTorqueNm + 6, 12);
    const { torqueNm, split } = torqueFromPreload({ ...joint, preloadN: free.preloadN, prevailingTorqueNm: 6 });
    expect(torqueNm).toBeCloseTo(36, 12);
    expect(split.pitchNm + split.frictionNm + split.prevailingNm).toBeCloseTo(36, 12);
  });

  it('clamps nothing where the locking element takes it all', () => {
    const none = preloadFromTorque({ ...joint, torqueNm: 5, prevailingTorqueNm: 6 });
    expect(none.preloadN).toBe(0);
    expect(none.findings.map((finding) => finding.code)).toContain('prevailing-not-overcome');
    expect(refusal(() => preloadFromTorque({ ...joint, torqueNm: 5, prevailingTorqueNm: -1 })).path).toBe(
      'prevailingTorqueNm',
    );
  });

  it('clamps nothing either where the locking element takes just all, and says nothing where it does not', () => {
    const codes = (torqueNm: number, prevailingTorqueNm?: number): string[] =>
      preloadFromTorque({
        ...joint,
        torqueNm,
        ...(prevailingTorqueNm === undefined ? {} : { prevailingTorqueNm }),
      }).findings.map((finding) => finding.code);
    expect(codes(6, 6)).toEqual(['prevailing-not-overcome']);
    expect(codes(6.01, 6)).toEqual([]);
    // Without a locking element there is nothing to overcome, not even by a torque of 0.
    expect(codes(0)).toEqual([]);
    expect(codes(0, 0)).toEqual([]);
    expect(codes(5)).toEqual([]);
  });

  it('lets a locking element hold a thread that would unwind by itself', () => {
    const slippery = { ...joint, threadFriction: 0.01, bearingFriction: 0.01, torqueNm: 10 };
    const codes = (prevailingTorqueNm: number): string[] =>
      preloadFromTorque({ ...slippery, prevailingTorqueNm }).findings.map((finding) => finding.code);
    expect(codes(0)).toContain('self-loosening');
    expect(codes(8)).not.toContain('self-loosening');
  });

  it('refuses a negative torque', () => {
    expect(refusal(() => preloadFromTorque({ ...joint, torqueNm: -1 })).path).toBe('torqueNm');
  });
});

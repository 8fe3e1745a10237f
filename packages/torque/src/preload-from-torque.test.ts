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

  it('refuses a negative torque', () => {
    expect(refusal(() => preloadFromTorque({ ...joint, torqueNm: -1 })).path).toBe('torqueNm');
  });
});

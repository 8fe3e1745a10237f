import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { frictionFromTest } from './friction-from-test.ts';
import { threadFor } from './thread-for.ts';
import { torqueFromPreload } from './torque-from-preload.ts';

const thread = threadFor('M8x1');
const bearing = { outerDiameterMm: 16, holeDiameterMm: 9 };

describe('frictionFromTest', () => {
  it('finds the friction that the exact form was given, to the share by which the linear form differs', () => {
    for (const friction of [0.08, 0.12, 0.2]) {
      const joint = { preloadN: 20_000, thread, threadFriction: friction, bearingFriction: friction, bearing };
      const { torqueNm } = torqueFromPreload(joint);
      const { totalFriction, nutFactor } = frictionFromTest({ torqueNm, preloadN: 20_000, thread, bearing });
      expect(Math.abs(totalFriction.nominal / friction - 1)).toBeLessThan(0.01);
      expect(nutFactor.nominal).toBeCloseTo(torqueNm / 20 / 8, 12);
    }
  });

  it('tells thread and head apart when the torque in the thread is known', () => {
    const joint = { preloadN: 20_000, thread, threadFriction: 0.1, bearingFriction: 0.16, bearing };
    const { torqueNm, split } = torqueFromPreload(joint);
    const found = frictionFromTest({
      torqueNm,
      preloadN: 20_000,
      threadTorqueNm: torqueNm - (split.bearingFrictionNm ?? 0),
      thread,
      bearing,
    });
    expect(found.bearingFriction?.nominal).toBeCloseTo(0.16, 12);
    expect(Math.abs((found.threadFriction?.nominal ?? 0) / 0.1 - 1)).toBeLessThan(0.01);
    expect(found.totalFriction.nominal).toBeGreaterThan(0.1);
    expect(found.totalFriction.nominal).toBeLessThan(0.16);
  });

  it('carries the width of the readings through', () => {
    const sharp = frictionFromTest({ torqueNm: 40, preloadN: 25_000, thread, bearing });
    expect(sharp.totalFriction.lower).toBe(sharp.totalFriction.upper);
    const reading = { value: 40, standardUncertainty: 1 };
    const wide = frictionFromTest({ torqueNm: reading, preloadN: 25_000, thread, bearing });
    const high = frictionFromTest({ torqueNm: 43, preloadN: 25_000, thread, bearing });
    expect(wide.totalFriction.upper).toBeCloseTo(high.totalFriction.nominal, 12);
  });

  it('refuses a pair without friction and a thread that takes more than all', () => {
    expect(refusal(() => frictionFromTest({ torqueNm: 3.9, preloadN: 25_000, thread, bearing })).path).toBe('torqueNm');
    const more = { torqueNm: 40, preloadN: 25_000, threadTorqueNm: 40, thread, bearing };
    expect(refusal(() => frictionFromTest(more)).path).toBe('threadTorqueNm');
    expect(frictionFromTest({ torqueNm: 4.5, preloadN: 25_000, thread, bearing }).findings[0]?.code).toBe(
      'friction-unusual',
    );
  });
});

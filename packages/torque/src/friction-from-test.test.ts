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

  it('bounds the frictions by the ends of the readings, worked by hand', () => {
    const found = frictionFromTest({
      torqueNm: { lower: 38, nominal: 40, upper: 43 },
      preloadN: { lower: 24_000, nominal: 25_000, upper: 26_000 },
      threadTorqueNm: { lower: 17, nominal: 18, upper: 20 },
      thread,
      bearing,
    });
    // Radius under the head (16 + 9)/4 = 6.25 mm; the rest of the torque is smallest where the thread takes most.
    expect(found.bearingFriction?.lower).toBeCloseTo((38 - 20) / 26 / 6.25, 12);
    expect(found.bearingFriction?.nominal).toBeCloseTo((40 - 18) / 25 / 6.25, 12);
    expect(found.bearingFriction?.upper).toBeCloseTo((43 - 17) / 24 / 6.25, 12);
    const armMm = 0.577 * thread.pitchDiameterMm;
    expect(found.threadFriction?.lower).toBeCloseTo((17 / 26 - 1 / (2 * Math.PI)) / armMm, 12);
    expect(found.threadFriction?.upper).toBeCloseTo((20 / 24 - 1 / (2 * Math.PI)) / armMm, 12);
    expect(found.nutFactor.lower).toBeCloseTo(38 / 26 / 8, 12);
    expect(found.nutFactor.upper).toBeCloseTo(43 / 24 / 8, 12);
  });

  it('says once that friction is unusual, however wide it is', () => {
    const codes = (lower: number, upper: number): string[] =>
      frictionFromTest({ torqueNm: { lower, nominal: 40, upper }, preloadN: 25_000, thread, bearing }).findings.map(
        (finding) => finding.code,
      );
    expect(codes(4.5, 200)).toEqual(['friction-unusual']);
    expect(codes(39, 41)).toEqual([]);
  });

  it.each([
    [{ preloadN: 0 }, 'preloadN'],
    // The pitch takes 25 kN x 1 mm/(2 pi) = 3.98 Nm, of the torque in the thread too; without friction nothing is left.
    [{ threadTorqueNm: 3.9 }, 'threadTorqueNm'],
    [{ torqueNm: (25_000 * (1 / (2 * Math.PI))) / 1000 }, 'torqueNm'],
    [{ bearing: { outerDiameterMm: 9, holeDiameterMm: 9 } }, 'bearing.holeDiameterMm'],
  ])('refuses %j', (change, path) => {
    const input = { torqueNm: 40, preloadN: 25_000, thread, bearing, ...change };
    expect(refusal(() => frictionFromTest(input as never)).path).toBe(path);
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

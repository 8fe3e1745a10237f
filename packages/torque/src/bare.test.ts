import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { barePreloadN, bareTorqueNm } from './bare.ts';
import { metricThread } from './metric-thread.ts';
import { torqueFromPreload } from './torque-from-preload.ts';

const thread = metricThread({ nominalDiameterMm: 8, pitchMm: 1 });
const joint = {
  thread,
  threadFriction: 0.12,
  bearingFriction: 0.12,
  bearing: { outerDiameterMm: 16, holeDiameterMm: 9 },
} as const;

const pathOf = (run: () => unknown): string | undefined => {
  try {
    run();
  } catch (error) {
    return isDomainError(error) ? error.path : `${error}`;
  }
  return undefined;
};

describe('the bare conversions', () => {
  it('are inverse to each other', () => {
    const preloadN = barePreloadN({ torqueNm: 40, ...joint });
    expect(Math.abs(bareTorqueNm({ preloadN, ...joint }) / 40 - 1)).toBeLessThan(1e-12);
  });

  it('take the square of an arm, with reliefs and without', () => {
    for (const bearing of [
      { outerDiameterMm: 20, squareHoleMm: 12.6 },
      { outerDiameterMm: 20, squareHoleMm: 12.6, cornerReliefMm: 6.3 },
    ]) {
      const full = torqueFromPreload({ preloadN: 20_000, ...joint, bearing });
      expect(bareTorqueNm({ preloadN: 20_000, ...joint, bearing })).toBe(full.torqueNm);
    }
  });

  it('refuse texts, however much they read like the number that would fit', () => {
    for (const [field, value] of Object.entries(thread)) {
      if (typeof value !== 'number') continue;
      const mixed = { ...thread, [field]: String(value) };
      expect(pathOf(() => bareTorqueNm({ preloadN: 1, ...joint, thread: mixed as never }))).toBe(`thread.${field}`);
    }
    const text = { threadFriction: '0.12' as never };
    expect(pathOf(() => bareTorqueNm({ preloadN: 1, ...joint, ...text }))).toBe('threadFriction');
  });

  it('refuse a thread beyond any fastener even if its sizes agree, as the full conversions do', () => {
    const scaled = Object.fromEntries(
      Object.entries(thread).map(([key, value]) => [key, key.endsWith('Mm') ? 200 * Number(value) : value]),
    );
    const huge = { ...thread, ...scaled, stressAreaMm2: 40_000 * thread.stressAreaMm2 };
    // A lead angle of 22 degrees: pitch 1 on a pitch diameter of 0.8.
    const steep = {
      ...thread,
      majorDiameterMm: 1.45,
      pitchMm: 1,
      pitchDiameterMm: 0.8,
      minorDiameterMm: 0.3,
      internalMinorDiameterMm: 0.4,
      stressDiameterMm: 0.55,
      stressAreaMm2: (Math.PI / 4) * 0.55 ** 2,
      leadAngleDeg: (Math.atan(1 / (Math.PI * 0.8)) * 180) / Math.PI,
    };
    // Sizes that round to the smallest ones allowed, on an area below the smallest.
    const tiny = {
      ...thread,
      majorDiameterMm: 0.002,
      pitchMm: 0.001,
      pitchDiameterMm: 0.0014,
      minorDiameterMm: 0.001,
      internalMinorDiameterMm: 0.0011,
      stressDiameterMm: 0.00105,
      stressAreaMm2: (Math.PI / 4) * 0.00105 ** 2,
      leadAngleDeg: (Math.atan(1 / (Math.PI * 1.4)) * 180) / Math.PI,
    };
    for (const [odd, path] of [
      [huge, 'thread.majorDiameterMm'],
      [steep, 'thread.leadAngleDeg'],
      [tiny, 'thread.stressAreaMm2'],
    ] as const) {
      expect(pathOf(() => bareTorqueNm({ preloadN: 1, ...joint, thread: odd }))).toBe(path);
      expect(pathOf(() => torqueFromPreload({ preloadN: 1, ...joint, thread: odd }))).toBe(path);
    }
  });

  it('name the range in their words', () => {
    expect(() => bareTorqueNm({ ...joint, preloadN: -1 })).toThrow('allowed: a number from 0 to 1000000000');
    expect(() => bareTorqueNm({ ...joint, preloadN: 1, threadFriction: 0 })).toThrow('allowed: a number above 0 to 1');
    expect(() => bareTorqueNm({ ...joint, preloadN: 1, method: 'guess' as never })).toThrow(
      'received guess; allowed: exact, vdi-2230, nut-factor',
    );
  });

  it('agree with the linear form written out by hand', () => {
    // Linear VDI 2230 form: T = F (0.16 P + 0.58 mu d2 + mu rb), rb the mean of both radii of the face.
    const armMm = 0.16 + 0.58 * 0.12 * thread.pitchDiameterMm + 0.12 * 6.25;
    expect(bareTorqueNm({ preloadN: 1000, method: 'vdi-2230', ...joint })).toBeCloseTo(armMm, 12);
  });

  it.each([
    ['preloadN', () => bareTorqueNm({ ...joint, preloadN: -1 })],
    ['preloadN', () => bareTorqueNm({ ...joint, preloadN: Number.NaN })],
    ['torqueNm', () => barePreloadN({ ...joint, torqueNm: Number.POSITIVE_INFINITY })],
    ['threadFriction', () => barePreloadN({ ...joint, torqueNm: 1, threadFriction: 0 })],
    ['bearingFriction', () => barePreloadN({ ...joint, torqueNm: 1, bearingFriction: 1.5 })],
    [
      'bearing.holeDiameterMm',
      () => barePreloadN({ ...joint, torqueNm: 1, bearing: { outerDiameterMm: 16, holeDiameterMm: 16 } }),
    ],
    [
      'bearing.squareHoleMm',
      () => barePreloadN({ ...joint, torqueNm: 1, bearing: { outerDiameterMm: 12, squareHoleMm: 12.6 } }),
    ],
    [
      'bearing.cornerReliefMm',
      () =>
        barePreloadN({ ...joint, torqueNm: 1, bearing: { outerDiameterMm: 20, squareHoleMm: 12, cornerReliefMm: 7 } }),
    ],
    ['thread.pitchMm', () => barePreloadN({ ...joint, torqueNm: 1, thread: { ...thread, pitchMm: 1.25 } })],
    ['thread', () => barePreloadN({ ...joint, torqueNm: 1, thread: undefined as never })],
    ['bearing', () => barePreloadN({ ...joint, torqueNm: 1, bearing: null as never })],
    ['method', () => barePreloadN({ ...joint, torqueNm: 1, method: 'guess' as never })],
    ['', () => bareTorqueNm(undefined as never)],
  ])('refuse %s by its path', (path, run) => {
    expect(pathOf(run)).toBe(path);
  });
});

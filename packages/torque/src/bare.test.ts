import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { barePreloadN, bareTorqueNm } from './bare.ts';
import { metricThread } from './metric-thread.ts';

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

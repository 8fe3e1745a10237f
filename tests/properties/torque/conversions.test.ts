import { isDomainError } from '@spindlewright/quantity';
import {
  assemblyLimit,
  type Bearing,
  headPressure,
  metricThread,
  preloadFromTorque,
  preloadFromTorqueColumns,
  type TorqueMethod,
  torqueFromPreload,
  torqueFromPreloadColumns,
  unifiedThread,
} from '@spindlewright/torque';
import { barePreloadN, bareTorqueNm } from '@spindlewright/torque/bare';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const double = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const friction = double(0.001, 1);
// Subnormal numbers have no twelve digits to compare.
const preload = fc.oneof(fc.constant(0), double(1e-9, 1e9));
const method = fc.constantFrom<TorqueMethod>('exact', 'vdi-2230', 'nut-factor');
const thread = fc.oneof(
  fc
    .record({ nominalDiameterMm: double(2, 64), share: double(0.02, 0.5) })
    .map(({ nominalDiameterMm, share }) => metricThread({ nominalDiameterMm, pitchMm: nominalDiameterMm * share })),
  fc
    .record({ nominalDiameterIn: double(0.1, 3), turns: double(2.1, 60) })
    .map(({ nominalDiameterIn, turns }) =>
      unifiedThread({ nominalDiameterIn, threadsPerInch: turns / nominalDiameterIn }),
    ),
);
const bearing: fc.Arbitrary<Bearing> = fc.oneof(
  fc
    .record({ outerDiameterMm: double(5, 80), share: double(0, 0.95) })
    .map(({ outerDiameterMm, share }) => ({ outerDiameterMm, holeDiameterMm: outerDiameterMm * share })),
  fc
    .record({ outerDiameterMm: double(5, 80), share: double(0.1, 0.95), relief: double(0, 0.5) })
    .map(({ outerDiameterMm, share, relief }) => {
      const squareHoleMm = outerDiameterMm * share;
      return { outerDiameterMm, squareHoleMm, cornerReliefMm: squareHoleMm * relief };
    }),
);
const joint = fc.record({ thread, threadFriction: friction, bearingFriction: friction, bearing, method });

describe('torque and preload', () => {
  it('are each the inverse of the other', () => {
    fc.assert(
      fc.property(joint, preload, (input, preloadN) => {
        const { torqueNm } = torqueFromPreload({ ...input, preloadN });
        const back = preloadFromTorque({ ...input, torqueNm });
        expect(Math.abs(back.preloadN - preloadN)).toBeLessThanOrEqual(1e-12 * preloadN);
      }),
    );
  });

  it('give the same to the last digit when bare, and are refused alike', () => {
    // Each number in turn is made worse; the full function says which are faults.
    const worse = fc.constantFrom(0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e12, 1e-9, 2, 0.5, 1);
    const place = fc.constantFrom(
      ['amount'],
      ['threadFriction'],
      ['bearingFriction'],
      ['thread', 'pitchMm'],
      ['thread', 'majorDiameterMm'],
      ['thread', 'pitchDiameterMm'],
      ['thread', 'stressAreaMm2'],
      ['thread', 'leadAngleDeg'],
      ['bearing', 'outerDiameterMm'],
      ['bearing', 'holeDiameterMm'],
      ['bearing', 'squareHoleMm'],
      ['bearing', 'cornerReliefMm'],
    );
    const outcome = (run: () => number): number | string => {
      try {
        return run();
      } catch (error) {
        return isDomainError(error) ? 'refused' : `${error}`;
      }
    };
    let refusals = 0;
    fc.assert(
      fc.property(joint, preload, place, fc.option(worse), (input, amount, path, value) => {
        const all: Record<string, unknown> = {
          ...input,
          amount,
          thread: { ...input.thread },
          bearing: { ...input.bearing },
        };
        const holder = path.length === 1 ? all : (all[path[0] ?? ''] as Record<string, unknown>);
        const key = path.at(-1) ?? '';
        if (value !== null && Object.hasOwn(holder, key)) holder[key] = value;
        const { amount: number, ...rest } = all as { amount: number } & typeof input;
        const full = outcome(() => torqueFromPreload({ ...rest, preloadN: number }).torqueNm);
        if (full === 'refused') refusals++;
        expect(outcome(() => bareTorqueNm({ ...rest, preloadN: number }))).toBe(full);
        expect(outcome(() => barePreloadN({ ...rest, torqueNm: number }))).toBe(
          outcome(() => preloadFromTorque({ ...rest, torqueNm: number }).preloadN),
        );
      }),
      { numRuns: 2000 },
    );
    expect(refusals).toBeGreaterThan(100);
  });

  it('give the same to the last digit in columns', () => {
    fc.assert(
      fc.property(joint, fc.array(preload, { minLength: 1, maxLength: 5 }), (input, column) => {
        const { torqueNm } = torqueFromPreloadColumns({ ...input, preloadN: column });
        expect(Array.from(torqueNm)).toEqual(
          column.map((preloadN) => torqueFromPreload({ ...input, preloadN }).torqueNm),
        );
        const inRange = Array.from(torqueNm, (torque) => Math.min(torque, 1e9));
        const { preloadN } = preloadFromTorqueColumns({ ...input, torqueNm: inRange });
        expect(Array.from(preloadN)).toEqual(
          inRange.map((torque) => preloadFromTorque({ ...input, torqueNm: torque }).preloadN),
        );
      }),
    );
  });

  it('stay inverse under a prevailing torque', () => {
    fc.assert(
      fc.property(joint, double(100, 1e6), double(0, 50), (input, preloadN, prevailingTorqueNm) => {
        const { torqueNm } = torqueFromPreload({ ...input, preloadN, prevailingTorqueNm });
        const back = preloadFromTorque({ ...input, torqueNm, prevailingTorqueNm });
        // What the locking element takes cancels: its rounding stands against the torque that is left.
        const cancelled = (1 + prevailingTorqueNm / (torqueNm - prevailingTorqueNm)) * 1e-12;
        expect(Math.abs(back.preloadN - preloadN)).toBeLessThanOrEqual(cancelled * preloadN);
      }),
    );
  });

  it('are in proportion, and split without rest', () => {
    fc.assert(
      fc.property(joint, double(1, 1e6), double(0.1, 10), (input, preloadN, factor) => {
        const one = torqueFromPreload({ ...input, preloadN });
        const more = torqueFromPreload({ ...input, preloadN: preloadN * factor });
        expect(more.torqueNm / (one.torqueNm * factor)).toBeCloseTo(1, 12);
        const { split } = one;
        const sum = split.pitchNm + (split.threadFrictionNm ?? 0) + (split.bearingFrictionNm ?? 0);
        expect(sum / one.torqueNm).toBeCloseTo(1, 12);
        expect(one.looseningTorqueNm).toBeLessThan(one.torqueNm);
      }),
    );
  });

  it('do not depend on the size of the unit: all lengths doubled, torque doubled', () => {
    fc.assert(
      fc.property(double(2, 30), double(0.02, 0.4), friction, friction, method, (d, share, m, mb, how) => {
        const at = (scale: number): number =>
          torqueFromPreload({
            preloadN: 1000,
            thread: metricThread({ nominalDiameterMm: d * scale, pitchMm: d * share * scale }),
            threadFriction: m,
            bearingFriction: mb,
            bearing: { outerDiameterMm: 2 * d * scale, squareHoleMm: d * scale, cornerReliefMm: 0.1 * d * scale },
            method: how,
          }).torqueNm;
        expect(at(2) / at(1)).toBeCloseTo(2, 10);
      }),
    );
  });

  it('grow with each friction', () => {
    fc.assert(
      fc.property(joint, double(0.0001, 0.5), (input, more) => {
        const at = (change: object): number => torqueFromPreload({ ...input, preloadN: 1000, ...change }).torqueNm;
        const base = at({});
        fc.pre(input.threadFriction + more <= 1 && input.bearingFriction + more <= 1);
        expect(at({ threadFriction: input.threadFriction + more })).toBeGreaterThan(base);
        expect(at({ bearingFriction: input.bearingFriction + more })).toBeGreaterThan(base);
      }),
    );
  });

  it('by the linear form stays close to the long form, as far as its square terms reach', () => {
    // (tan l + m')/(1 - m' tan l) less (tan l + m') is at most m' tan l (tan l + m')/(1 - m' tan l); 0.16 and 0.58 round
    // 1/(2 pi) and 1/(2 cos 30) up by 0.54 and 0.46 %.
    fc.assert(
      fc.property(fc.record({ thread, threadFriction: friction, bearingFriction: friction, bearing }), (input) => {
        const exact = torqueFromPreload({ ...input, preloadN: 1000, method: 'exact' }).torqueNm;
        const linear = torqueFromPreload({ ...input, preloadN: 1000, method: 'vdi-2230' }).torqueNm;
        const product =
          (input.threadFriction / Math.cos(Math.PI / 6)) * Math.tan((input.thread.leadAngleDeg * Math.PI) / 180);
        expect(linear / exact).toBeLessThan(1.0054);
        expect(linear / exact).toBeGreaterThan(1 - product);
      }),
    );
  });
});

describe('a square under the head', () => {
  it('bears between the circle inside it and the circle about it, at a radius inside the ring', () => {
    fc.assert(
      fc.property(double(10, 60), double(0.2, 0.7), (outerDiameterMm, share) => {
        const squareHoleMm = outerDiameterMm * share;
        const square = headPressure({ preloadN: 1, bearing: { outerDiameterMm, squareHoleMm } });
        const inscribed = headPressure({ preloadN: 1, bearing: { outerDiameterMm, holeDiameterMm: squareHoleMm } });
        const about = headPressure({
          preloadN: 1,
          bearing: { outerDiameterMm, holeDiameterMm: squareHoleMm * Math.SQRT2 },
        });
        expect(square.areaMm2).toBeLessThan(inscribed.areaMm2);
        expect(square.areaMm2).toBeGreaterThan(about.areaMm2);
        expect(square.evenPressureRadiusMm).toBeGreaterThan(inscribed.evenPressureRadiusMm);
        expect(square.evenPressureRadiusMm).toBeLessThan(about.evenPressureRadiusMm);
      }),
    );
  });

  it('loses area to reliefs, never gains', () => {
    fc.assert(
      fc.property(double(10, 60), double(0.2, 0.95), double(0, 0.25), (outerDiameterMm, share, relief) => {
        const squareHoleMm = outerDiameterMm * share;
        const areaWith = (cornerReliefMm: number): number =>
          headPressure({ preloadN: 1, bearing: { outerDiameterMm, squareHoleMm, cornerReliefMm } }).areaMm2;
        expect(areaWith(2 * relief * squareHoleMm)).toBeLessThanOrEqual(areaWith(relief * squareHoleMm) * (1 + 1e-6));
        expect(areaWith(relief * squareHoleMm)).toBeLessThanOrEqual(areaWith(0) * (1 + 1e-6));
      }),
    );
  });
});

describe('the assembly limit', () => {
  it('lets less preload in with more friction, and grows with the utilisation in proportion', () => {
    fc.assert(
      fc.property(
        thread,
        double(0.01, 0.5),
        double(0.001, 0.4),
        double(0.1, 1),
        (bolt, threadFriction, more, utilisation) => {
          const bearing = { outerDiameterMm: 2 * bolt.majorDiameterMm, holeDiameterMm: bolt.majorDiameterMm };
          const at = (friction: number, share: number): number =>
            assemblyLimit({
              thread: bolt,
              propertyClass: { yieldStrengthMPa: 640 },
              threadFriction: friction,
              bearing,
              utilisation: share,
            }).preloadN;
          expect(at(threadFriction + more, 1)).toBeLessThan(at(threadFriction, 1));
          expect(at(threadFriction, utilisation) / at(threadFriction, 1)).toBeCloseTo(utilisation, 12);
        },
      ),
    );
  });
});

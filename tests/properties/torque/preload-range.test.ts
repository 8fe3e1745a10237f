import {
  assemblyLimit,
  metricThread,
  preloadDistribution,
  preloadFromTorque,
  preloadRange,
  type TorqueMethod,
  threadFor,
} from '@spindlewright/torque';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

// Half of the draws even over the span: doubles alone crowd about small numbers, and bounds turn at high frictions.
const double = (min: number, max: number): fc.Arbitrary<number> =>
  fc.oneof(
    fc.double({ min, max, noNaN: true }),
    fc.integer({ min: 0, max: 1000 }).map((n) => Math.min(max, min + (n / 1000) * (max - min))),
  );

/** Limits within bounds, by three sorted draws. */
const limitsWithin = (min: number, max: number) =>
  fc.tuple(double(min, max), double(min, max), double(min, max)).map((draws) => {
    const [lower = min, nominal = min, upper = max] = [...draws].sort((a, b) => a - b);
    return { lower, nominal, upper };
  });

const input = fc.record({
  torqueNm: limitsWithin(0, 100),
  // Usual threads, and any the package takes: up to a pitch of half the diameter, a lead angle of 13 degrees.
  thread: fc.oneof(
    fc.constantFrom('M5', 'M8x1', 'M8', 'M12x1', 'M15x1', '9/16-20 UN').map(threadFor),
    fc
      .tuple(double(2, 64), double(0.01, 0.5))
      .map(([nominalDiameterMm, part]) => metricThread({ nominalDiameterMm, pitchMm: nominalDiameterMm * part })),
  ),
  threadFriction: limitsWithin(0.001, 1),
  bearingFriction: limitsWithin(0.001, 1),
  // Down to the point of a set screw: the less the head takes, the more the thread decides.
  bearing: fc.oneof(
    fc.constantFrom(
      { outerDiameterMm: 16, holeDiameterMm: 9 },
      { outerDiameterMm: 20, squareHoleMm: 12.6, cornerReliefMm: 0.5 },
      { outerDiameterMm: 15, squareHoleMm: 12.6 },
    ),
    fc
      .tuple(double(0.5, 100), double(0, 0.95))
      .map(([outerDiameterMm, part]) => ({ outerDiameterMm, holeDiameterMm: outerDiameterMm * part })),
  ),
  method: fc.constantFrom<TorqueMethod>('exact', 'vdi-2230', 'nut-factor'),
  propertyClass: fc.constant('10.9'),
});
// The ends count most: bounds are made there.
const share = fc.oneof(fc.constantFrom(0, 1), double(0, 1));
const at = ({ lower, upper }: { lower: number; upper: number }, part: number): number =>
  Math.min(upper, Math.max(lower, lower + part * (upper - lower)));
/** Points all along the limits, ends included: over thread friction bounds may lie in between. */
const along = (limits: { lower: number; upper: number }): number[] =>
  Array.from({ length: 41 }, (_, i) => at(limits, i / 40));

describe('the range of preload', () => {
  it('contains what any values inside the limits make', () => {
    fc.assert(
      fc.property(input, share, share, (given, torquePart, bearingPart) => {
        const range = preloadRange(given);
        const rounding = 1e-12 * range.preloadN.upper;
        const { thread, bearing, method } = given;
        const torqueNm = at(given.torqueNm, torquePart);
        const bearingFriction = at(given.bearingFriction, bearingPart);
        for (const threadFriction of along(given.threadFriction)) {
          const joint = { thread, threadFriction, bearingFriction, bearing, method };
          const { preloadN, looseningTorqueNm } = preloadFromTorque({ torqueNm, ...joint });
          expect(preloadN).toBeGreaterThanOrEqual(range.preloadN.lower - rounding);
          expect(preloadN).toBeLessThanOrEqual(range.preloadN.upper + rounding);
          expect(looseningTorqueNm).toBeGreaterThanOrEqual(range.looseningTorqueNm.lower - 1e-9);
          expect(looseningTorqueNm).toBeLessThanOrEqual(range.looseningTorqueNm.upper + 1e-9);
        }
      }),
    );
  });

  it('contains the stress of any values inside the limits', () => {
    fc.assert(
      fc.property(input, share, share, (given, torquePart, bearingPart) => {
        const { strength } = preloadRange(given);
        const { thread, bearing, method } = given;
        const torqueNm = at(given.torqueNm, torquePart);
        const bearingFriction = at(given.bearingFriction, bearingPart);
        for (const threadFriction of along(given.threadFriction)) {
          const joint = { thread, threadFriction, bearingFriction, bearing, method };
          // The limit has the same ratio of twist to pull, so that the stress is in proportion to the preload.
          const limit = assemblyLimit({ thread, propertyClass: '10.9', threadFriction, bearing, utilisation: 1 });
          const utilisation = preloadFromTorque({ torqueNm, ...joint }).preloadN / limit.preloadN;
          expect(utilisation).toBeGreaterThanOrEqual((strength?.utilisation.lower ?? 1e9) * (1 - 1e-9) - 1e-12);
          expect(utilisation).toBeLessThanOrEqual((strength?.utilisation.upper ?? 0) * (1 + 1e-9) + 1e-12);
        }
      }),
    );
  });

  it('keeps lower, nominal and upper in order, and its corners make them', () => {
    fc.assert(
      fc.property(input, (given) => {
        const { preloadN, looseningTorqueNm, corners, strength } = preloadRange(given);
        for (const { lower, nominal, upper } of [preloadN, looseningTorqueNm, strength?.utilisation ?? preloadN]) {
          const slack = 1e-12 * Math.abs(upper) + 1e-12 * Math.abs(lower);
          expect(lower).toBeLessThanOrEqual(nominal + slack);
          expect(nominal).toBeLessThanOrEqual(upper + slack);
        }
        for (const end of ['lower', 'nominal', 'upper'] as const) {
          const { thread, bearing, method } = given;
          const made = preloadFromTorque({ ...corners[end], thread, bearing, method }).preloadN;
          expect(Math.abs(made - preloadN[end])).toBeLessThanOrEqual(1e-9 * made);
        }
      }),
    );
  });

  it('only widens when a limit or a tool is added', () => {
    fc.assert(
      fc.property(input, double(0, 0.3), (given, more) => {
        const before = preloadRange(given).preloadN;
        const { lower, nominal, upper } = given.threadFriction;
        const wider = { lower: Math.max(0.0005, lower - more), nominal, upper: Math.min(1, upper + more) };
        const after = preloadRange({ ...given, threadFriction: wider, tool: 'uncalibrated-wrench' }).preloadN;
        expect(after.lower).toBeLessThanOrEqual(before.lower);
        expect(after.upper).toBeGreaterThanOrEqual(before.upper);
        expect(after.nominal).toBeCloseTo(before.nominal, 9);
      }),
    );
  });
});

describe('the distribution of preload', () => {
  it('has no sample outside the worst case, whatever the correlation', () => {
    fc.assert(
      fc.property(input, double(0, 1), fc.nat({ max: 4_294_967_295 }), (given, r, seed) => {
        const { lower, upper } = preloadRange({ ...given, tool: 'by-feel' }).preloadN;
        const { below, meanN } = preloadDistribution({
          ...given,
          tool: 'by-feel',
          samples: 100,
          seed,
          correlation: [{ a: 'threadFriction', b: 'bearingFriction', r }],
          belowN: [lower * (1 - 1e-12), upper * (1 + 1e-12) + 1e-300],
        });
        expect(below.map((entry) => entry.probability)).toEqual([0, 1]);
        expect(meanN).toBeGreaterThanOrEqual(lower * (1 - 1e-12));
        expect(meanN).toBeLessThanOrEqual(upper * (1 + 1e-12));
      }),
    );
  });
});

describe('measured preloads', () => {
  // Shigley, 9th edition, tables 8-13 and 8-14: 1/2-20 UNF tightened to about 90 Nm (800 lbf.in given as M12x1.25), kN.
  const unlubricated = [
    23.6, 27.6, 28.0, 29.4, 30.3, 30.7, 32.9, 33.8, 33.8, 33.8, 34.7, 35.6, 35.6, 37.4, 37.8, 37.8, 39.2, 40.0, 40.5,
    42.7,
  ];
  const lubricated = [30.3, 32.5, 32.5, 32.9, 32.9, 33.8, 34.3, 34.7, 37.4, 40.5];

  it('lie inside the range of the friction 0.12 to 0.26, and fill more than half of it', () => {
    const friction = { lower: 0.12, nominal: 0.17, upper: 0.26 };
    const { preloadN } = preloadRange({
      torqueNm: 90,
      thread: threadFor('M12x1.25'),
      threadFriction: friction,
      bearingFriction: friction,
      bearing: { outerDiameterMm: 16.63, holeDiameterMm: 13.5 },
    });
    const all = [...unlubricated, ...lubricated].map((force) => force * 1000);
    expect(Math.min(...all)).toBeGreaterThan(preloadN.lower);
    expect(Math.max(...all)).toBeLessThan(preloadN.upper);
    expect((Math.max(...all) - Math.min(...all)) / (preloadN.upper - preloadN.lower)).toBeGreaterThan(0.5);
  });
});

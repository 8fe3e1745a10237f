// Laws that hold for each joint beside the square taper, whatever its sizes.

import type { Limits } from '@spindlewright/quantity';
import { cotterWedge, faceSpline, onePieceCrank, pinchClamp, splinePress } from '@spindlewright/taper';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

type Range = readonly [number, number];
type Numbers = Record<string, number>;

interface Subject {
  run: (input: never) => object;
  ranges: Record<string, Range>;
  /** Fields that are no readings. */
  exact?: Numbers;
}

const SUBJECTS: Record<string, Subject> = {
  splinePress: {
    run: splinePress,
    ranges: {
      axialForceN: [0, 40_000],
      forceToStopN: [100, 30_000],
      friction: [0, 1],
      taperPerSideDeg: [0.1, 10],
      flankHeightMm: [0.5, 4],
      engagedLengthMm: [3, 30],
      meanRadiusMm: [5, 20],
      allowablePressureMPa: [20, 300],
      carryingShare: [0.3, 1],
    },
    exact: { splineCount: 10 },
  },
  pinchClamp: {
    run: pinchClamp,
    ranges: {
      boltPreloadN: [0, 20_000],
      spindleDiameterMm: [10, 40],
      clampWidthMm: [5, 40],
      friction: [0, 1],
      hingeToBoltMm: [25, 60],
      hingeToAxisMm: [5, 20],
      closingForceN: [0, 5000],
      slotGapMm: [-1, 3],
    },
    exact: { boltCount: 2 },
  },
  cotterWedge: {
    run: cotterWedge,
    ranges: {
      pressForceN: [0, 30_000],
      flatAngleDeg: [0.5, 20],
      flatFriction: [0, 0.6],
      backFriction: [0, 0.6],
      flatLengthMm: [5, 20],
      flatWidthMm: [4, 12],
      axisToFlatMm: [4, 9],
      crankTorqueNm: [0, 300],
    },
  },
  faceSpline: {
    run: faceSpline,
    ranges: {
      axialForceN: [0, 60_000],
      flankAngleDeg: [1, 60],
      outerDiameterMm: [22, 60],
      innerDiameterMm: [0, 20],
      bearingShare: [0.2, 1],
      torqueNm: [0, 400],
      bendingNm: [0, 300],
    },
  },
  onePieceCrank: {
    run: onePieceCrank,
    ranges: {
      pedalForceN: [0, 5000],
      crankLengthMm: [100, 200],
      overhangMm: [0, 150],
      barDiameterMm: [10, 40],
      yieldStrengthMPa: [100, 1500],
    },
  },
};

const isLimits = (value: unknown): value is Limits =>
  typeof value === 'object' && value !== null && Object.keys(value).join() === 'lower,nominal,upper';
const limitsOf = (result: object): [string, Limits][] =>
  Object.entries(result).filter((entry): entry is [string, Limits] => isLimits(entry[1]));

/** Readings have no more than six decimals; smaller numbers have no digits left to compare. */
const read = (value: number): number => Math.round(value * 1e6) / 1e6;

const limitsIn = ([low, high]: Range): fc.Arbitrary<Limits> =>
  fc
    .tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 0.1, noNaN: true }))
    .map(([place, half]) => {
      const at = (share: number): number => read(low + Math.min(1, Math.max(0, share)) * (high - low));
      return { lower: at(place - half), nominal: at(place), upper: at(place + half) };
    });

const toleranced = ({ ranges }: Subject): fc.Arbitrary<Record<string, Limits>> =>
  fc.record(Object.fromEntries(Object.entries(ranges).map(([key, range]) => [key, limitsIn(range)])));

const call = ({ run, exact = {} }: Subject, input: object): object => run({ ...input, ...exact } as never);

describe.each(Object.entries(SUBJECTS))('%s', (_, subject) => {
  it('gives rising, finite limits that survive JSON', () => {
    fc.assert(
      fc.property(toleranced(subject), (input) => {
        const result = call(subject, input);
        for (const [name, { lower, nominal, upper }] of limitsOf(result)) {
          expect([lower, nominal, upper].every(Number.isFinite), name).toBe(true);
          expect(lower <= nominal && nominal <= upper, name).toBe(true);
        }
        expect(JSON.parse(JSON.stringify(result))).toEqual(result);
      }),
      { numRuns: 500 },
    );
  });

  it('has every combination of exact readings inside its limits', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const shares = fc.array(share, { minLength: 12, maxLength: 12 });
    fc.assert(
      fc.property(toleranced(subject), shares, (input, places) => {
        const wide = new Map(limitsOf(call(subject, input)));
        const drawn = Object.fromEntries(
          Object.entries(input).map(([key, { lower, upper }], index) => [
            key,
            Math.min(upper, read(lower + (places[index] ?? 0) * (upper - lower))),
          ]),
        );
        for (const [name, { nominal }] of limitsOf(call(subject, drawn))) {
          const bounds = wide.get(name);
          // Limits that have no end are null with a finding; what is exact may have one.
          if (bounds === undefined) continue;
          const { lower, upper } = bounds;
          const slack = 1e-9 * (Math.abs(lower) + Math.abs(upper) + 1e-9);
          expect(nominal >= lower - slack && nominal <= upper + slack, name).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('scales: lengths by k and forces by k squared leave pressures as they are and torques by k cubed', () => {
    const factor = fc.double({ min: 0.7, max: 1.3, noNaN: true });
    // Gaps of a slot are judged, not scaled; a crank's length has a range of its own.
    const scaled = (input: Numbers, k: number): Numbers =>
      Object.fromEntries(
        Object.entries(input).map(([key, value]) => {
          const power = key.endsWith('Nm') ? 3 : key.endsWith('N') ? 2 : key.endsWith('Mm') ? 1 : 0;
          return [key, value * k ** power];
        }),
      );
    const exact = fc.record(
      Object.fromEntries(
        Object.entries(subject.ranges).map(([key, [min, max]]) => [
          key,
          fc.double({ min, max, noNaN: true }).map(read),
        ]),
      ),
    );
    fc.assert(
      fc.property(exact, factor, (input, k) => {
        fc.pre(input.slotGapMm === undefined || Math.abs(input.slotGapMm) > 1e-6);
        const before = new Map(limitsOf(call(subject, input)));
        for (const [name, { nominal }] of limitsOf(call(subject, scaled(input, k)))) {
          const power = name.endsWith('Nm') ? 3 : name.endsWith('N') ? 2 : 0;
          const expected = (before.get(name)?.nominal ?? 0) * k ** power;
          expect(Math.abs(nominal - expected), name).toBeLessThanOrEqual(1e-9 * (Math.abs(expected) + 1e-6));
        }
      }),
      { numRuns: 300 },
    );
  });
});

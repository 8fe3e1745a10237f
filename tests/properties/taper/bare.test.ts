// The bare form against the full one.
import { isDomainError, type Limits } from '@spindlewright/quantity';
import { predictSeat } from '@spindlewright/taper';
import { type BareSeatInput, bareSeat, bareSeatOfEqualAngles } from '@spindlewright/taper/bare';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between, limitsIn, tolerancedJoints, tolerancedMaterials } from './arbitraries.ts';

describe('the bare seat', () => {
  it('gives the same as predictSeat, to the last digit', () => {
    const presses = fc.record({
      axialForceN: limitsIn(0, 30_000, 2000),
      friction: limitsIn(0.02, 0.35, 0.05),
      materials: tolerancedMaterials,
      yields: fc.boolean(),
    });
    const verdicts = new Set<string>();
    const sameAngle = new Set<string>();
    fc.assert(
      fc.property(tolerancedJoints, presses, ({ spindle, arm }, { yields, materials, ...press }) => {
        const { yieldStrengthMPa: _strength, ...elastic } = materials.arm;
        const pressing = { ...press, materials: { spindle: materials.spindle, arm: yields ? materials.arm : elastic } };
        const { handFit, pressed, travelMm, pressReached, verdict, worstVerdicts } = predictSeat({
          spindle,
          arm,
          pressing,
        });
        verdicts.add(verdict);
        const faceAngleDeg = spindle.faceAngleDeg.nominal;
        const even = { spindle: { ...spindle, faceAngleDeg }, arm: { ...arm, faceAngleDeg }, pressing };
        const evenSeat = bareSeatOfEqualAngles(even);
        const {
          basis: _basis,
          ways: _ways,
          sensitivity: _sensitivity,
          findings: _findings,
          ...numbers
        } = predictSeat(even);
        sameAngle.add(evenSeat.verdict);
        expect(evenSeat).toEqual(numbers);
        expect(bareSeat({ spindle, arm, pressing })).toEqual({
          handFit,
          pressed,
          travelMm,
          pressReached,
          verdict,
          worstVerdicts,
        });
      }),
      { numRuns: 500 },
    );
    expect(verdicts.size).toBeGreaterThan(2);
    expect(sameAngle.size).toBeGreaterThan(2);
  });
});

describe('over its whole domain', () => {
  const RANGES = {
    spindle: {
      acrossFlatsAtEndMm: [1e-6, 60],
      faceAngleDeg: [0.2, 10],
      flatLengthMm: [1e-6, 100],
      endChamferMm: [0, 20],
      shoulderFromEndMm: [1e-6, 200],
      cornerDiameterMm: [1e-6, 80],
    },
    arm: {
      acrossFlatsAtMouthMm: [1e-6, 60],
      faceAngleDeg: [0.2, 10],
      boreLengthMm: [1e-6, 100],
      boltSeatFromMouthMm: [1e-6, 100],
      seatIntrusionMm: [0, 50],
      mouthChamferMm: [0, 20],
      bossDiameterMm: [1e-6, 200],
      boreCornerRadiusMm: [1e-6, 10],
    },
    press: { axialForceN: [0, 200_000], friction: [0, 1] },
    material: { youngsModulusGPa: [1, 1000], poissonsRatio: [0, 0.49], yieldStrengthMPa: [1, 5000] },
  } as const;
  type Range = readonly [number, number];
  // Ends and all between, alone or as limits.
  const inside = ([least, most]: Range): fc.Arbitrary<number | Limits> => {
    const one = fc.oneof(fc.constantFrom(least, most), between(least, most));
    const three = fc.tuple(one, one, one).map((values) => {
      const [lower = least, nominal = least, upper = least] = values.sort((a, b) => a - b);
      return { lower, nominal, upper };
    });
    return fc.oneof(one, three);
  };
  const group = <R extends Record<string, Range>>(ranges: R) =>
    fc.record(Object.fromEntries(Object.entries(ranges).map(([key, range]) => [key, inside(range)]))) as fc.Arbitrary<
      Record<keyof R, number | Limits>
    >;
  const inputs = fc
    .tuple(
      group(RANGES.spindle),
      group(RANGES.arm),
      group(RANGES.press),
      group(RANGES.material),
      group(RANGES.material),
    )
    .map(([spindle, arm, press, first, second]) => ({
      spindle,
      arm,
      pressing: { ...press, materials: { spindle: first, arm: second } },
    }));
  const paths = Object.entries({ ...RANGES, press: {}, material: {} }).flatMap(([part, ranges]) =>
    Object.keys(ranges).map((key) => [part, key] as const),
  );

  it('gives finite numbers', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const seat = bareSeat(input);
        expect(JSON.parse(JSON.stringify(seat))).toStrictEqual(seat);
        const faceAngleDeg = 2;
        const even = { ...input, spindle: { ...input.spindle, faceAngleDeg }, arm: { ...input.arm, faceAngleDeg } };
        const evenSeat = bareSeatOfEqualAngles(even);
        expect(JSON.parse(JSON.stringify(evenSeat))).toStrictEqual(evenSeat);
        expect(evenSeat).toStrictEqual(bareSeat(even));
      }),
      { numRuns: 500 },
    );
  });

  it('refuses by its path what no number is, what lies outside and limits that cross', () => {
    const wrong = fc.constantFrom<unknown>(
      Number.NaN,
      Number.POSITIVE_INFINITY,
      -1,
      1e9,
      '2',
      null,
      [],
      true,
      Object.create(null),
      Symbol('a'),
      { lower: 2, nominal: 1, upper: 3 },
      { lower: 1, nominal: 2 },
      { lower: '1', nominal: 2, upper: 3 },
    );
    fc.assert(
      fc.property(inputs, fc.constantFrom(...paths), wrong, (input, [part, key], value) => {
        const spoilt = { ...input, [part]: { ...input[part as 'arm'], [key]: value } } as BareSeatInput;
        for (const run of [bareSeat, bareSeatOfEqualAngles]) {
          try {
            run(spoilt);
            expect.unreachable(`${part}.${key} took ${typeof value}`);
          } catch (error) {
            expect(isDomainError(error) && [error.path, error.received !== '', error.allowed !== '']).toEqual([
              `${part}.${key}`,
              true,
              true,
            ]);
          }
        }
      }),
      { numRuns: 300 },
    );
  });
});

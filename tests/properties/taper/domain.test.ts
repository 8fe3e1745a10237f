// Over the whole domain, however absurd the geometry: every result is finite or null, equals its JSON round trip and fits
// its schema; and the schemas and the functions refuse the same inputs.
import { isDomainError } from '@spindlewright/quantity';
import * as taper from '@spindlewright/taper';
import * as schemas from '@spindlewright/taper/schema';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { z } from 'zod/v4';
import { between } from './arbitraries.ts';

type Field = readonly [low: number, high: number];
type Fields = Readonly<Record<string, Field>>;

const spindle: Fields = {
  acrossFlatsAtEndMm: [1e-3, 60],
  faceAngleDeg: [0.2, 10],
  flatLengthMm: [1e-3, 100],
};
const spindleMore: Fields = {
  endChamferMm: [0, 20],
  shoulderFromEndMm: [1e-3, 200],
  cornerDiameterMm: [1e-3, 80],
};
const arm: Fields = { acrossFlatsAtMouthMm: [1e-3, 60], faceAngleDeg: [0.2, 10], boreLengthMm: [1e-3, 100] };
const armMore: Fields = {
  boltSeatFromMouthMm: [1e-3, 100],
  seatIntrusionMm: [0, 50],
  mouthChamferMm: [0, 20],
  bossDiameterMm: [1e-3, 200],
  boreCornerRadiusMm: [1e-3, 10],
};
const material: Fields = { youngsModulusGPa: [1, 1000], poissonsRatio: [0, 0.49] };
const square: Fields = { halfWidthMm: [1e-3, 30], flatWidthMm: [1e-3, 60], crankLengthMm: [50, 300] };

/** Numbers of a field: inside, on its ends, and now and then outside. */
const plain = ([low, high]: Field): fc.Arbitrary<number> =>
  fc.oneof(
    { weight: 40, arbitrary: between(low, high) },
    { weight: 4, arbitrary: fc.constantFrom(low, high) },
    { weight: 1, arbitrary: fc.constantFrom(-1, 0, 1e9, Number.NaN, Number.POSITIVE_INFINITY) },
  );
const measured = (field: Field): fc.Arbitrary<unknown> =>
  fc.oneof(
    plain(field),
    fc.tuple(plain(field), plain(field), plain(field)).map((three) => {
      const [lower, nominal, upper] = [...three].sort((a, b) => a - b);
      return { lower, nominal, upper };
    }),
    fc.record({ value: plain(field), standardUncertainty: between(0, 0.01 * field[1]) }),
  );

type Of = (field: Field) => fc.Arbitrary<unknown>;
const shape = (of: Of, needed: Fields, optional: Fields = {}): fc.Arbitrary<Record<string, unknown>> => {
  const all = Object.fromEntries(Object.entries({ ...needed, ...optional }).map(([key, field]) => [key, of(field)]));
  return fc.record(all, { requiredKeys: Object.keys(needed) });
};
const maybe = (arbitrary: fc.Arbitrary<unknown>, key: string): fc.Arbitrary<Record<string, unknown>> =>
  fc.oneof(
    arbitrary.map((value) => ({ [key]: value })),
    fc.constant({}),
  );
const joined = (...parts: fc.Arbitrary<Record<string, unknown>>[]): fc.Arbitrary<Record<string, unknown>> =>
  fc.tuple(...parts).map((records) => Object.assign({}, ...records) as Record<string, unknown>);

const materialOf = (of: Of) => shape(of, material, { yieldStrengthMPa: [1, 5000] });
const pressingOf = (of: Of) =>
  joined(
    shape(of, { axialForceN: [0, 200000], friction: [0, 1] }),
    maybe(joined(maybe(materialOf(of), 'spindle'), maybe(materialOf(of), 'arm')), 'materials'),
    maybe(fc.constantFrom('fitted', 'fitted-plastic', 'ring', 'ring-plastic', 'fited'), 'compliance'),
  );
const shapes = (of: Of) =>
  joined(
    shape(of, spindle, spindleMore).map((value) => ({ spindle: value })),
    shape(of, arm, armMore).map((value) => ({ arm: value })),
  );
const loadOf = joined(
  shape(measured, { friction: [0, 1] }),
  fc.record({
    squareOrientation: fc.constantFrom('corner-in-line', 'flat-in-line'),
    load: joined(
      shape(measured, { pedalForceN: [0, 20000] }),
      shape(plain, {
        crankLengthMm: [50, 300],
        overhangMm: [0, 200],
        faceToSeatMm: [0, 100],
        crankAngleDeg: [-90, 90],
      }),
    ),
  }),
);
const strayKey = fc.oneof(
  { weight: 30, arbitrary: fc.constant({}) },
  { weight: 1, arbitrary: fc.constant({ unknownKey: 1 }) },
);

const cases: [string, (input: never) => unknown, z.ZodType, z.ZodType, fc.Arbitrary<Record<string, unknown>>][] = [
  [
    'predictSeat',
    taper.predictSeat,
    schemas.seatInputSchema,
    schemas.seatPredictionSchema,
    joined(
      fc.oneof(shapes(measured), shapes(plain), fc.constant({})),
      maybe(shape(measured, {}, { endGapMm: [-100, 100], shoulderGapMm: [-100, 100] }), 'trialFit'),
      maybe(shape(measured, { markEndFromSpindleEndMm: [0, 100] }), 'witnessMark'),
      maybe(pressingOf(measured), 'pressing'),
    ),
  ],
  [
    'seatDistribution',
    taper.seatDistribution,
    schemas.seatDistributionInputSchema,
    schemas.seatDistributionSchema,
    joined(
      fc.oneof(shapes(measured), shapes(plain), fc.constant({})),
      maybe(shape(measured, {}, { endGapMm: [-100, 100], shoulderGapMm: [-100, 100] }), 'trialFit'),
      maybe(shape(measured, { markEndFromSpindleEndMm: [0, 100] }), 'witnessMark'),
      maybe(pressingOf(measured), 'pressing'),
      fc.record({ samples: fc.constantFrom(100, 100, 100, 100.5, 99), seed: fc.nat(), keepSamples: fc.boolean() }),
    ),
  ],
  [
    'loadMargin',
    taper.loadMargin,
    schemas.loadMarginInputSchema,
    schemas.loadMarginSchema,
    joined(shapes(measured), loadOf, shape(measured, { axialForceN: [0, 200000] })),
  ],
  [
    'preloadFor',
    taper.preloadFor,
    schemas.preloadForInputSchema,
    schemas.neededPreloadSchema,
    joined(shapes(measured), loadOf, shape(plain, { firstEdgeUnloading: [0.01, 100] })),
  ],
  [
    'retighteningPath',
    taper.retighteningPath,
    schemas.retighteningPathInputSchema,
    schemas.retighteningPathSchema,
    joined(
      shape(plain, {
        preloadN: [1, 200000],
        friction: [0, 1],
        faceAngleDeg: [0.2, 10],
        travelMm: [1e-3, 50],
        boltStiffnessNPerMm: [1e3, 1e7],
        endGapMm: [-100, 100],
      }),
      shape(
        plain,
        {},
        { contactPressureMPa: [1e-3, 5000], largestPressureMPa: [1e-3, 5000], wearPerCycleUm: [0, 100] },
      ),
    ),
  ],
  [
    'pullerTurns',
    taper.pullerTurns,
    schemas.pullerTurnsInputSchema,
    schemas.pullerTurnsSchema,
    joined(
      shape(measured, { releaseForceN: [0, 1e6] }),
      shape(plain, {
        armThreadForcePerTurnN: [1, 1e6],
        pullerThreadForcePerTurnN: [1, 1e6],
        engagedTurns: [0.1, 100],
      }),
    ),
  ],
  [
    'temperatureEffect',
    taper.temperatureEffect,
    schemas.temperatureEffectInputSchema,
    schemas.temperatureEffectSchema,
    shape(
      plain,
      {
        acrossFlatsMm: [1, 60],
        faceAngleDeg: [0.2, 10],
        travelMm: [0, 50],
        armRiseKelvin: [-100, 300],
        spindleRiseKelvin: [-100, 300],
      },
      { armExpansionPerKelvin: [0, 1e-4], spindleExpansionPerKelvin: [0, 1e-4] },
    ),
  ],
  [
    'seatLeft',
    taper.seatLeft,
    schemas.seatLeftInputSchema,
    schemas.seatLeftSchema,
    shape(measured, {
      clearanceMm: [0, 10],
      faceAngleDeg: [0.2, 10],
      travelMm: [0, 50],
      endGapMm: [-100, 100],
      shoulderGapMm: [-100, 100],
    }),
  ],
  [
    'pressFit',
    taper.pressFit,
    schemas.pressFitInputSchema,
    schemas.pressFitSchema,
    joined(
      shapes(plain),
      pressingOf(plain),
      shape(plain, {}, { releaseFriction: [0, 1], boltStiffnessNPerMm: [1e3, 1e7], boltPitchMm: [1e-3, 5] }),
    ),
  ],
  [
    'seatFromWitnessMark',
    taper.seatFromWitnessMark,
    schemas.witnessMarkInputSchema,
    schemas.witnessMarkSeatSchema,
    joined(fc.oneof(shapes(measured), fc.constant({})), shape(measured, { markEndFromSpindleEndMm: [0, 100] })),
  ],
  [
    'fitFlats',
    taper.fitFlats,
    schemas.fitFlatsInputSchema,
    schemas.flatFitSchema,
    joined(
      fc.record({
        part: fc.constantFrom('spindle', 'arm'),
        readings: fc.array(
          joined(
            shape(measured, { acrossFlatsMm: [1e-3, 60], atMm: [0, 100] }),
            fc.record({ pair: fc.constantFrom('a', 'b', 'b', 'a', 'c') }),
          ),
          { maxLength: 4 },
        ),
      }),
      // Always given: whether readings alone allow the angle is no matter of the schema.
      shape(measured, { faceAngleDeg: [0.2, 10] }),
    ),
  ],
  [
    'boltTurns',
    taper.boltTurns,
    schemas.boltTurnsInputSchema,
    schemas.boltTurnsSchema,
    shape(plain, {
      travelMm: [0, 50],
      axialForceN: [0, 200000],
      boltStiffnessNPerMm: [1e3, 1e7],
      boltPitchMm: [1e-3, 5],
    }),
  ],
  [
    'settledPreload',
    taper.settledPreload,
    schemas.settledPreloadInputSchema,
    schemas.settledPreloadSchema,
    shape(plain, {
      preloadN: [0, 200000],
      friction: [0, 1],
      faceAngleDeg: [0.2, 10],
      travelMm: [1e-3, 50],
      boltStiffnessNPerMm: [1e3, 1e7],
    }),
  ],
  [
    'playFromClearance',
    taper.playFromClearance,
    schemas.playInputSchema,
    schemas.borePlaySchema,
    shape(plain, { ...square, clearanceMm: [0, 10] }, { faceAngleDeg: [0.2, 10] }),
  ],
  [
    'clearanceFromPlay',
    taper.clearanceFromPlay,
    schemas.clearanceInputSchema,
    schemas.clearanceSchema,
    shape(plain, { ...square, playAtPedalMm: [0, 500] }),
  ],
  [
    'chainlineShift',
    taper.chainlineShift,
    schemas.chainlineShiftInputSchema,
    schemas.chainlineShiftSchema,
    shape(
      measured,
      {},
      {
        driveSeatChangeMm: [-100, 100],
        nonDriveSeatChangeMm: [-100, 100],
        spindleLengthChangeMm: [-100, 100],
        driveEndChangeMm: [-100, 100],
      },
    ),
  ],
  [
    'shrinkFit',
    taper.shrinkFit,
    schemas.shrinkFitInputSchema,
    schemas.shrinkFitSchema,
    joined(
      shape(
        plain,
        { interfaceDiameterMm: [1e-3, 1000], outerDiameterMm: [1e-3, 1000], diametralInterferenceMm: [0, 10] },
        { boreDiameterMm: [0, 1000] },
      ),
      fc.record({ inner: materialOf(plain), outer: materialOf(plain) }),
    ),
  ],
  [
    'coneForces',
    taper.coneForces,
    schemas.coneForcesInputSchema,
    schemas.coneForcesSchema,
    shape(
      plain,
      {
        pressureMPa: [0, 5000],
        meanDiameterMm: [1e-3, 1000],
        lengthMm: [1e-3, 1000],
        faceAngleDeg: [0, 10],
        friction: [0, 1],
      },
      { releaseFriction: [0, 1] },
    ),
  ],
];

describe.each(cases)('%s', (_name, run, inputSchema, resultSchema, inputs) => {
  it('gives finite results that fit their schema, or refuses what the schema of its input refuses', () => {
    let accepted = 0;
    fc.assert(
      fc.property(joined(inputs, strayKey), (input) => {
        const allowed = inputSchema.safeParse(input).success;
        let result: unknown;
        try {
          result = run(input as never);
        } catch (error) {
          expect(isDomainError(error), String(error)).toBe(true);
          expect(allowed, String(error)).toBe(false);
          return;
        }
        expect(allowed).toBe(true);
        accepted++;
        expect(JSON.parse(JSON.stringify(result))).toStrictEqual(result);
        expect(structuredClone(result)).toStrictEqual(result);
        const parsed = resultSchema.safeParse(result);
        expect(parsed.success, parsed.error?.message).toBe(true);
      }),
      { numRuns: 300 },
    );
    expect(accepted).toBeGreaterThan(10);
  });
});

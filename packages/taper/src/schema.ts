/**
 * Schemas of the public inputs and results of this package.
 *
 * @packageDocumentation
 */
import { hardLimits, type Limits, type Measurand } from '@spindlewright/quantity';
import { findingSchema, limitsSchema, measurandSchema } from '@spindlewright/quantity/schema';
import { z } from 'zod/v4';
import type { ArmClearance, armClearance } from './arm-clearance.ts';
import type { BoltTurns, boltTurns } from './bolt-turns.ts';
import type { ChainlineShift, chainlineShift } from './chainline-shift.ts';
import type { clearanceFromPlay } from './clearance-from-play.ts';
import type { ConeForces, coneForces } from './cone-forces.ts';
import type { FlatFit, FlatReading, fitFlats } from './fit-flats.ts';
import type { CotterWedge, CotterWedgeInput } from './joints/cotter-wedge.ts';
import type { FaceSpline, FaceSplineInput } from './joints/face-spline.ts';
import type { OnePieceCrank, OnePieceCrankInput } from './joints/one-piece-crank.ts';
import type { PinchClamp, PinchClampInput } from './joints/pinch-clamp.ts';
import type { SplinePress, SplinePressInput } from './joints/spline-press.ts';
import type { LoadMargin, loadMargin, SideMargin } from './load-margin.ts';
import type { BorePlay, playFromClearance } from './play-from-clearance.ts';
import type { NeededPreload, preloadFor } from './preload-for.ts';
import type { PressFit, pressFit } from './press-fit.ts';
import type { PullerTurns, pullerTurns } from './puller-turns.ts';
import type { RetighteningPath, retighteningPath } from './retightening-path.ts';
import { SEAT_VERDICTS, type Seat, type SeatPrediction, type SeatVerdict } from './seat.ts';
import type { SeatDistribution, SeatDistributionInput } from './seat-distribution.ts';
import type { seatFromWitnessMark } from './seat-from-witness-mark.ts';
import type { PredictSeatInput, SeatInput } from './seat-input.ts';
import type { SeatLeft, seatLeft } from './seat-left.ts';
import type { SettledPreload, settledPreload } from './settled-preload.ts';
import type { ArmShape, Material, Pressing, SpindleShape } from './shapes.ts';
import type { ShrinkFit, shrinkFit } from './shrink-fit.ts';
import type { TemperatureEffect, temperatureEffect } from './temperature-effect.ts';

type InputOf<F extends (input: never) => unknown> = Parameters<F>[0];

interface Range {
  min?: number;
  above?: number;
  max: number;
}

const inRange = (value: number, { min, above, max }: Range): boolean =>
  (min === undefined || value >= min) && (above === undefined || value > above) && value <= max;

const plain = ({ min, above, max }: Range): z.ZodType<number> => {
  const bounded = z.number().max(max);
  if (above !== undefined) return bounded.gt(above);
  return min === undefined ? bounded : bounded.min(min);
};

const measured = (range: Range): z.ZodType<Measurand> =>
  measurandSchema.refine(
    (value) => {
      const { lower, upper } = hardLimits(value);
      return inRange(lower, range) && inRange(upper, range);
    },
    { message: `bounds from ${range.min ?? `above ${range.above}`} to ${range.max}` },
  );

const length = { above: 0, max: 100 };
const jointLength = { min: 0.01, max: 100 };
const width = { above: 0, max: 60 };
const angle = { min: 0.2, max: 10 };
const friction = { min: 0, max: 1 };
const force = { min: 0, max: 200000 };
const boltStiffness = { min: 1e3, max: 1e7 };
const pitch = { min: 0.2, max: 5 };
const mark = { min: 0, max: 100 };
const gap = { min: -100, max: 100 };
const radius = { above: 0, max: 10 };
const crankLength = { min: 50, max: 300 };
const round = { above: 0, max: 1000 };
const compliance = z.enum(['fitted', 'fitted-plastic', 'ring', 'ring-plastic']);
const verdict: z.ZodType<SeatVerdict> = z.enum(SEAT_VERDICTS);
const findings = z.array(findingSchema);

type Numbers<N> = (range: Range) => z.ZodType<N>;

const spindleOf = <N>(of: Numbers<N>): z.ZodType<SpindleShape<N>> =>
  z.strictObject({
    acrossFlatsAtEndMm: of(width),
    faceAngleDeg: of(angle),
    flatLengthMm: of(length),
    endChamferMm: of({ min: 0, max: 20 }).exactOptional(),
    shoulderFromEndMm: of({ above: 0, max: 200 }).exactOptional(),
    cornerDiameterMm: of({ above: 0, max: 80 }).exactOptional(),
  });

const armOf = <N>(of: Numbers<N>): z.ZodType<ArmShape<N>> =>
  z.strictObject({
    acrossFlatsAtMouthMm: of(width),
    faceAngleDeg: of(angle),
    boreLengthMm: of(length),
    boltSeatFromMouthMm: of(length).exactOptional(),
    seatIntrusionMm: of({ min: 0, max: 50 }).exactOptional(),
    mouthChamferMm: of({ min: 0, max: 20 }).exactOptional(),
    bossDiameterMm: of({ above: 0, max: 200 }).exactOptional(),
    boreCornerRadiusMm: of(radius).exactOptional(),
  });

const materialOf = <N>(of: Numbers<N>): z.ZodType<Material<N>> =>
  z.strictObject({
    youngsModulusGPa: of({ min: 1, max: 1000 }),
    poissonsRatio: of({ min: 0, max: 0.49 }),
    yieldStrengthMPa: of({ min: 1, max: 5000 }).exactOptional(),
  });

const pressingFields = <N>(of: Numbers<N>) => ({
  axialForceN: of(force),
  friction: of(friction),
  materials: z
    .strictObject({ spindle: materialOf(of).exactOptional(), arm: materialOf(of).exactOptional() })
    .exactOptional(),
  compliance: compliance.exactOptional(),
});

const plasticHasYield = (pressing: Pressing<Measurand>): boolean =>
  !pressing.compliance?.endsWith('plastic') || pressing.materials?.arm?.yieldStrengthMPa !== undefined;
const needsYield = { message: 'a plastic model needs the yield strength of the arm' };
const bothShapes = (input: { spindle?: unknown; arm?: unknown }): boolean =>
  (input.spindle === undefined) === (input.arm === undefined);

/** Schema of a {@link SpindleShape} of readings. */
export const spindleShapeSchema: z.ZodType<SpindleShape<Measurand>> = spindleOf(measured);

/** Schema of an {@link ArmShape} of readings. */
export const armShapeSchema: z.ZodType<ArmShape<Measurand>> = armOf(measured);

/** Schema of a {@link Pressing} of readings. */
export const pressingSchema: z.ZodType<Pressing<Measurand>> = z
  .strictObject(pressingFields(measured))
  .refine(plasticHasYield, needsYield);

const seatFields = {
  spindle: spindleShapeSchema.exactOptional(),
  arm: armShapeSchema.exactOptional(),
  trialFit: z
    .strictObject({ endGapMm: measured(gap).exactOptional(), shoulderGapMm: measured(gap).exactOptional() })
    .refine((readings) => readings.endGapMm !== undefined || readings.shoulderGapMm !== undefined, {
      message: 'at least one gap',
    })
    .exactOptional(),
  witnessMark: z.strictObject({ markEndFromSpindleEndMm: measured(mark) }).exactOptional(),
  pressing: pressingSchema.exactOptional(),
  mixWays: z.boolean().exactOptional(),
};
const pressingHasShapes = (input: SeatInput): boolean => input.pressing === undefined || input.spindle !== undefined;
const somethingToGoBy = (input: SeatInput): boolean =>
  (input.spindle ?? input.trialFit ?? input.witnessMark) !== undefined;

/** Schema of the input of `predictSeat`: both shapes or neither, something to go by, pressing only with shapes. */
export const seatInputSchema: z.ZodType<PredictSeatInput> = z
  .strictObject({ ...seatFields, sensitivities: z.boolean().exactOptional() })
  .refine(bothShapes, { message: 'both shapes or neither' })
  .refine(pressingHasShapes, { message: 'pressing needs the shapes' })
  .refine(somethingToGoBy, { message: 'something to go by' });

/** Schema of the input of `seatDistribution`; whether correlations can hold together, only the function tells. */
export const seatDistributionInputSchema: z.ZodType<SeatDistributionInput> = z
  .strictObject({
    ...seatFields,
    samples: z.int().min(100).max(1_000_000),
    seed: z.int().min(0).max(4294967295),
    correlation: z
      .array(z.strictObject({ a: z.string(), b: z.string(), r: z.number().min(-1).max(1) }))
      .exactOptional(),
    keepSamples: z.boolean().exactOptional(),
  })
  .refine(bothShapes, { message: 'both shapes or neither' })
  .refine(pressingHasShapes, { message: 'pressing needs the shapes' })
  .refine(somethingToGoBy, { message: 'something to go by' });

const limitsOrNull = limitsSchema.nullable();
const seatSchema: z.ZodType<Seat<Limits | null>> = z.strictObject({
  mouthFromEndMm: limitsOrNull,
  endGapMm: limitsOrNull,
  shoulderGapMm: limitsOrNull,
  engagedLengthMm: limitsOrNull,
});

/** Schema of a {@link SeatPrediction}. */
export const seatPredictionSchema: z.ZodType<SeatPrediction<Limits | null>> = z.strictObject({
  basis: z.enum(['trial-fit', 'witness-mark', 'shapes']),
  ways: z.array(z.enum(['end-gap', 'shoulder-gap', 'witness-mark', 'shapes'])).min(1),
  handFit: seatSchema,
  pressed: seatSchema,
  travelMm: limitsSchema,
  pressReached: limitsSchema,
  verdict,
  worstVerdicts: z.strictObject({ lower: verdict, upper: verdict }),
  sensitivity: z.array(z.strictObject({ path: z.string().min(1), mmPerUnit: z.number(), effectMm: z.number().min(0) })),
  findings,
});

const spread = z.strictObject({
  meanMm: z.number(),
  standardDeviationMm: z.number().min(0),
  quantiles: z.array(z.strictObject({ probability: z.number().min(0).max(1), lengthMm: z.number() })),
});
const seatOf = <T extends z.ZodType>(of: T) => ({
  mouthFromEndMm: of.nullable(),
  endGapMm: of.nullable(),
  shoulderGapMm: of.nullable(),
  engagedLengthMm: of.nullable(),
});

/** Schema of a {@link SeatDistribution}. */
export const seatDistributionSchema: z.ZodType<SeatDistribution> = z.strictObject({
  worstCase: seatPredictionSchema,
  verdicts: z.array(z.strictObject({ verdict, probability: z.number().min(0).max(1) })).length(6),
  handFit: z.strictObject(seatOf(spread)),
  pressed: z.strictObject(seatOf(spread)),
  travelMm: spread,
  firstOrderDeviationMm: z.number().min(0),
  contributions: z.array(
    z.strictObject({
      path: z.string().min(1),
      standardDeviationMm: z.number().min(0),
      remainingMm: z.number().min(0),
    }),
  ),
  kept: z.array(z.strictObject({ pressed: z.strictObject(seatOf(z.number())), verdict })).exactOptional(),
  samples: z.int(),
  seed: z.int(),
  findings,
});

/** Schema of the input of `pressFit`. */
export const pressFitInputSchema: z.ZodType<InputOf<typeof pressFit>> = z
  .strictObject({
    spindle: spindleOf(plain),
    arm: armOf(plain),
    ...pressingFields(plain),
    releaseFriction: plain(friction).exactOptional(),
    boltStiffnessNPerMm: plain(boltStiffness).exactOptional(),
    boltPitchMm: plain(pitch).exactOptional(),
  })
  .refine(plasticHasYield, needsYield)
  .refine((input) => (input.boltStiffnessNPerMm === undefined) === (input.boltPitchMm === undefined), {
    message: 'both bolt fields or neither',
  });

/** Schema of a {@link PressFit}. */
export const pressFitSchema: z.ZodType<PressFit> = z.strictObject({
  engagedLengthMm: z.number(),
  flatWidthMm: z.number().min(0),
  acrossFlatsMm: z.number(),
  normalForceN: z.number().min(0),
  contactPressureMPa: z.number().min(0).nullable(),
  travelMm: z.number().min(0).nullable(),
  travelRangeMm: limitsOrNull,
  permanentOpeningMm: limitsOrNull,
  repressTravelMm: limitsOrNull,
  stiffnessNPerMm: z.number().min(0),
  releaseForceN: z.number(),
  holdsAtRestWithoutBolt: z.boolean(),
  boreCornerStressMPa: z.number().min(0).nullable(),
  plastic: z.boolean(),
  complianceFactors: z.strictObject({ armFactor: z.number(), spindleFactor: z.number() }).nullable(),
  boltTurns: z.number().min(0).exactOptional(),
  findings,
});

const loadFields = {
  spindle: spindleShapeSchema,
  arm: armShapeSchema,
  friction: measured(friction),
  squareOrientation: z.enum(['corner-in-line', 'flat-in-line']),
  load: z.strictObject({
    pedalForceN: measured({ min: 0, max: 20000 }),
    crankLengthMm: plain(crankLength),
    overhangMm: plain({ min: 0, max: 200 }),
    faceToSeatMm: plain({ min: 0, max: 100 }),
    crankAngleDeg: plain({ min: -90, max: 90 }),
  }),
};
const sideMarginSchema: z.ZodType<SideMargin> = z.strictObject({
  torqueNm: limitsSchema,
  bendingNm: limitsSchema,
  firstEdgeUnloading: limitsOrNull,
  rockingLimit: limitsOrNull,
  loadedEdgePressureMPa: limitsOrNull,
});

/** Schema of the input of `loadMargin`. */
export const loadMarginInputSchema: z.ZodType<InputOf<typeof loadMargin>> = z.strictObject({
  ...loadFields,
  axialForceN: measured(force),
});

/** Schema of a {@link LoadMargin}. */
export const loadMarginSchema: z.ZodType<LoadMargin> = z.strictObject({
  left: sideMarginSchema,
  right: sideMarginSchema,
  torsionLimitNm: limitsOrNull,
  torsionLimitWithFrictionNm: limitsOrNull,
  findings,
});

/** Schema of the input of `preloadFor`. */
export const preloadForInputSchema: z.ZodType<InputOf<typeof preloadFor>> = z.strictObject({
  ...loadFields,
  firstEdgeUnloading: plain({ min: 0.01, max: 100 }),
});

/** Schema of a {@link NeededPreload}. */
export const neededPreloadSchema: z.ZodType<NeededPreload> = z.strictObject({
  leftAxialForceN: limitsOrNull,
  rightAxialForceN: limitsOrNull,
  findings,
});

/** Schema of the input of `retighteningPath`: both pressures or neither. */
export const retighteningPathInputSchema: z.ZodType<InputOf<typeof retighteningPath>> = z
  .strictObject({
    preloadN: plain({ min: 1, max: 200000 }),
    friction: plain(friction),
    faceAngleDeg: plain(angle),
    travelMm: plain({ min: 1e-3, max: 50 }),
    boltStiffnessNPerMm: plain(boltStiffness),
    endGapMm: plain(gap),
    contactPressureMPa: plain({ min: 1e-3, max: 5000 }).exactOptional(),
    largestPressureMPa: plain({ min: 1e-3, max: 5000 }).exactOptional(),
    wearPerCycleUm: plain({ min: 0, max: 100 }).exactOptional(),
    cycleCount: z.int().min(1).max(1000).exactOptional(),
  })
  .refine((input) => (input.contactPressureMPa === undefined) === (input.largestPressureMPa === undefined), {
    message: 'both pressures or neither',
  });

/** Schema of a {@link RetighteningPath}. */
export const retighteningPathSchema: z.ZodType<RetighteningPath> = z.strictObject({
  cycles: z.array(
    z.strictObject({
      cycleCount: z.int().min(1),
      settledPreloadN: z.number().min(0),
      advanceMm: z.number().min(0),
      pressRatio: z.number().min(0),
      endGapMm: z.number(),
    }),
  ),
  endsBy: z.enum(['end-gap', 'boss', 'nothing-yet']),
  findings,
});

/** Schema of the input of `pullerTurns`. */
export const pullerTurnsInputSchema: z.ZodType<InputOf<typeof pullerTurns>> = z.strictObject({
  releaseForceN: measured({ min: 0, max: 1e6 }),
  armThreadForcePerTurnN: plain({ min: 1, max: 1e6 }),
  pullerThreadForcePerTurnN: plain({ min: 1, max: 1e6 }),
  engagedTurns: plain({ min: 0.1, max: 100 }),
});

/** Schema of {@link PullerTurns}. */
export const pullerTurnsSchema: z.ZodType<PullerTurns> = z.strictObject({
  neededTurns: limitsSchema,
  stripForceN: z.number().min(0),
  stripsFirst: z.enum(['arm', 'puller']),
  holds: z.boolean(),
  findings,
});

/** Schema of the input of `temperatureEffect`. */
export const temperatureEffectInputSchema: z.ZodType<InputOf<typeof temperatureEffect>> = z.strictObject({
  acrossFlatsMm: plain({ min: 1, max: 60 }),
  faceAngleDeg: plain(angle),
  travelMm: plain({ min: 0, max: 50 }),
  armRiseKelvin: plain({ min: -100, max: 300 }),
  spindleRiseKelvin: plain({ min: -100, max: 300 }),
  armExpansionPerKelvin: plain({ min: 0, max: 1e-4 }).exactOptional(),
  spindleExpansionPerKelvin: plain({ min: 0, max: 1e-4 }).exactOptional(),
});

/** Schema of a {@link TemperatureEffect}. */
export const temperatureEffectSchema: z.ZodType<TemperatureEffect> = z.strictObject({
  openingMm: z.number(),
  interferenceMm: z.number().min(0),
  lostShare: z.number().nullable(),
  axialMm: z.number(),
  findings,
});

/** Schema of the input of `seatLeft`. */
export const seatLeftInputSchema: z.ZodType<InputOf<typeof seatLeft>> = z.strictObject({
  clearanceMm: measured({ min: 0, max: 10 }),
  faceAngleDeg: measured(angle),
  travelMm: measured({ min: 0, max: 50 }),
  endGapMm: measured(gap),
  shoulderGapMm: measured(gap),
});

/** Schema of {@link SeatLeft}. */
export const seatLeftSchema: z.ZodType<SeatLeft> = z.strictObject({
  advanceMm: limitsSchema,
  neededMm: limitsSchema,
  seatMm: limitsSchema,
  state: z.enum(['has-seat', 'beyond-use', 'cannot-tell']),
  findings,
});

/** Schema of the input of `boltTurns`. */
export const boltTurnsInputSchema: z.ZodType<InputOf<typeof boltTurns>> = z.strictObject({
  travelMm: plain({ min: 0, max: 50 }),
  axialForceN: plain(force),
  boltStiffnessNPerMm: plain(boltStiffness),
  boltPitchMm: plain(pitch),
});

/** Schema of {@link BoltTurns}. */
export const boltTurnsSchema: z.ZodType<BoltTurns> = z.strictObject({
  boltTurns: z.number().min(0),
  solidTurns: z.number().min(0),
  findings,
});

/** Schema of the input of `settledPreload`. */
export const settledPreloadInputSchema: z.ZodType<InputOf<typeof settledPreload>> = z.strictObject({
  preloadN: plain(force),
  friction: plain(friction),
  faceAngleDeg: plain(angle),
  travelMm: plain({ above: 0, max: 50 }),
  boltStiffnessNPerMm: plain(boltStiffness),
});

/** Schema of {@link SettledPreload}. */
export const settledPreloadSchema: z.ZodType<SettledPreload> = z.strictObject({
  preloadAfterShakedownN: z.number().min(0),
  frictionlessForceN: z.number().min(0),
  preloadLossPerMicrometreN: z.number().min(0),
  findings,
});

/** Schema of a {@link FlatReading}. */
export const flatReadingSchema: z.ZodType<FlatReading> = z.strictObject({
  acrossFlatsMm: measured(width),
  atMm: measured(mark),
  pair: z.string(),
});

/** Schema of the input of `fitFlats`. */
export const fitFlatsInputSchema: z.ZodType<InputOf<typeof fitFlats>> = z
  .strictObject({
    part: z.enum(['spindle', 'arm']),
    readings: z.array(flatReadingSchema).min(1),
    faceAngleDeg: measured(angle).exactOptional(),
  })
  .refine((input) => new Set(input.readings.map((reading) => reading.pair)).size <= 2, {
    message: 'at most two pairs',
  });

/** Schema of a {@link FlatFit}. */
export const flatFitSchema: z.ZodType<FlatFit> = z.strictObject({
  acrossFlatsMm: limitsSchema,
  faceAngleDeg: limitsSchema,
  decidingPair: z.string(),
  pairs: z.array(z.strictObject({ pair: z.string(), acrossFlatsMm: limitsSchema })),
  findings,
});

/** Schema of the input of `seatFromWitnessMark`. */
export const witnessMarkInputSchema: z.ZodType<InputOf<typeof seatFromWitnessMark>> = z
  .strictObject({
    markEndFromSpindleEndMm: measured(mark),
    spindle: spindleShapeSchema.exactOptional(),
    arm: armShapeSchema.exactOptional(),
  })
  .refine(bothShapes, { message: 'both shapes or neither' });

/** Schema of the result of `seatFromWitnessMark`. */
export const witnessMarkSeatSchema: z.ZodType<ReturnType<typeof seatFromWitnessMark>> = z.strictObject({
  pressed: seatSchema,
  findings,
});

const square = {
  halfWidthMm: plain({ above: 0, max: 30 }),
  flatWidthMm: plain({ above: 0, max: 60 }),
  crankLengthMm: plain(crankLength),
};
const flatInSquare = (input: { halfWidthMm: number; flatWidthMm: number }): boolean =>
  input.flatWidthMm <= 2 * input.halfWidthMm;

/** Schema of the input of `playFromClearance`. */
export const playInputSchema: z.ZodType<InputOf<typeof playFromClearance>> = z
  .strictObject({ clearanceMm: plain({ min: 0, max: 10 }), ...square, faceAngleDeg: plain(angle).exactOptional() })
  .refine(flatInSquare, { message: 'flats no wider than the square' });

/** Schema of a {@link BorePlay}. */
export const borePlaySchema: z.ZodType<BorePlay> = z.strictObject({
  rotationDeg: z.number().min(0).nullable(),
  playAtPedalMm: z.number().min(0).nullable(),
  takeUpAdvanceMm: z.number().min(0).exactOptional(),
  findings,
});

/** Schema of the input of `clearanceFromPlay`. */
export const clearanceInputSchema: z.ZodType<InputOf<typeof clearanceFromPlay>> = z
  .strictObject({ playAtPedalMm: plain({ min: 0, max: 500 }), ...square })
  .refine(flatInSquare, { message: 'flats no wider than the square' });

/** Schema of the result of `clearanceFromPlay`. */
export const clearanceSchema: z.ZodType<ReturnType<typeof clearanceFromPlay>> = z.strictObject({
  clearanceMm: z.number().min(0).nullable(),
  rotationDeg: z.number().min(0),
  findings,
});

const change = measured(gap).exactOptional();

/** Schema of the input of `armClearance`. */
export const armClearanceInputSchema: z.ZodType<InputOf<typeof armClearance>> = z.strictObject({
  clearanceMm: measured({ min: 0, max: 200 }),
  seatChangeMm: change,
  spindleEndChangeMm: change,
  offsetDifferenceMm: change,
  flexMm: measured({ min: 0, max: 20 }).exactOptional(),
});

/** Schema of an {@link ArmClearance}. */
export const armClearanceSchema: z.ZodType<ArmClearance> = z.strictObject({
  clearanceMm: limitsSchema,
  underLoadMm: limitsSchema,
  verdict: z.enum(['clear', 'close', 'touches']),
  findings,
});

/** Schema of the input of `chainlineShift`. */
export const chainlineShiftInputSchema: z.ZodType<InputOf<typeof chainlineShift>> = z
  .strictObject({
    driveSeatChangeMm: change,
    nonDriveSeatChangeMm: change,
    spindleLengthChangeMm: change,
    driveEndChangeMm: change,
  })
  .refine((input) => Object.values(input).some((value) => value !== undefined), { message: 'at least one change' });

/** Schema of a {@link ChainlineShift}. */
export const chainlineShiftSchema: z.ZodType<ChainlineShift> = z.strictObject({
  chainlineShiftMm: limitsSchema,
  nonDriveArmShiftMm: limitsSchema,
  treadChangeMm: limitsSchema,
  findings,
});

/** Schema of the input of `shrinkFit`. */
export const shrinkFitInputSchema: z.ZodType<InputOf<typeof shrinkFit>> = z
  .strictObject({
    interfaceDiameterMm: plain({ min: 0.1, max: 1000 }),
    outerDiameterMm: plain({ min: 0.1, max: 1000 }),
    boreDiameterMm: plain({ min: 0, max: 1000 }).exactOptional(),
    diametralInterferenceMm: plain({ min: 0, max: 10 }),
    inner: materialOf(plain),
    outer: materialOf(plain),
  })
  .refine((input) => input.outerDiameterMm > input.interfaceDiameterMm, { message: 'outside above the interface' })
  .refine((input) => (input.boreDiameterMm ?? 0) < input.interfaceDiameterMm, { message: 'bore below the interface' });

/** Schema of a {@link ShrinkFit}. */
export const shrinkFitSchema: z.ZodType<ShrinkFit> = z.strictObject({
  pressureMPa: z.number().min(0),
  outerHoopStressMPa: z.number().min(0),
  innerHoopStressMPa: z.number().max(0),
  innerBoreHoopStressMPa: z.number().max(0),
  findings,
});

/** Schema of the input of `coneForces`. */
export const coneForcesInputSchema: z.ZodType<InputOf<typeof coneForces>> = z.strictObject({
  pressureMPa: plain({ min: 0, max: 5000 }),
  meanDiameterMm: plain(round),
  lengthMm: plain(round),
  faceAngleDeg: plain({ min: 0, max: 10 }),
  friction: plain(friction),
  releaseFriction: plain(friction).exactOptional(),
});

/** Schema of {@link ConeForces}. */
export const coneForcesSchema: z.ZodType<ConeForces> = z.strictObject({
  normalForceN: z.number().min(0),
  pushOnForceN: z.number().min(0),
  releaseForceN: z.number(),
  slipForceN: z.number().min(0),
  slipTorqueNm: z.number().min(0),
  findings,
});

const share = { above: 0, max: 1 };
const pressForce = { min: 0, max: 100_000 };

/** Schema of a {@link SplinePressInput}. */
export const splinePressInputSchema: z.ZodType<SplinePressInput> = z.strictObject({
  axialForceN: measured(force),
  forceToStopN: measured({ min: 1, max: 200_000 }),
  friction: measured(friction),
  taperPerSideDeg: measured({ min: 0.01, max: 10 }),
  splineCount: z.int().min(2).max(200),
  flankHeightMm: measured({ min: 0.01, max: 20 }),
  engagedLengthMm: measured(jointLength),
  meanRadiusMm: measured(length),
  allowablePressureMPa: measured({ above: 0, max: 2000 }),
  carryingShare: measured(share).exactOptional(),
  gapAtStopMm: measured({ min: -10, max: 20 }).exactOptional(),
});

/** Schema of a {@link SplinePress}. */
export const splinePressSchema: z.ZodType<SplinePress> = z.strictObject({
  home: z.boolean(),
  pressesBeforeStop: z.boolean().nullable(),
  pressReached: limitsSchema,
  travelMm: limitsOrNull,
  leftToStopMm: limitsOrNull,
  stiffnessNPerMm: limitsOrNull,
  interferenceMm: limitsOrNull,
  stopForceN: limitsSchema,
  normalForceN: limitsSchema,
  contactPressureMPa: limitsSchema,
  releaseForceN: limitsSchema,
  holdsAtRestWithoutBolt: z.boolean(),
  torqueCapacityNm: limitsSchema,
  findings,
});

/** Schema of a {@link PinchClampInput}. */
export const pinchClampInputSchema: z.ZodType<PinchClampInput> = z.strictObject({
  boltPreloadN: measured(pressForce),
  boltCount: z.int().min(1).max(6),
  spindleDiameterMm: measured(jointLength),
  clampWidthMm: measured(jointLength),
  friction: measured(friction),
  hingeToBoltMm: measured({ min: 0.01, max: 200 }),
  hingeToAxisMm: measured({ min: 0.01, max: 200 }),
  closingForceN: measured(pressForce).exactOptional(),
  clearanceMm: measured({ min: 0, max: 5 }).exactOptional(),
  slotGapMm: measured({ min: -10, max: 20 }).exactOptional(),
  axialPlayMm: measured({ min: 0, max: 10 }).exactOptional(),
  cap: z
    .strictObject({
      torqueNm: measured({ min: 0, max: 20 }),
      threadDiameterMm: measured(jointLength),
      nutFactor: measured({ min: 0.05, max: 1 }),
      pitchMm: measured(pitch).exactOptional(),
    })
    .exactOptional(),
});

/** Schema of a {@link PinchClamp}. */
export const pinchClampSchema: z.ZodType<PinchClamp> = z.strictObject({
  clampForceN: limitsSchema,
  contactPressureMPa: limitsSchema,
  slipTorqueNm: limitsSchema,
  axialHoldN: limitsSchema,
  slotClosingMm: limitsOrNull,
  closingStiffnessNPerMm: limitsOrNull,
  capTurns: limitsOrNull,
  capForceN: limitsOrNull,
  slotOpen: z.boolean().nullable(),
  findings,
});

/** Schema of a {@link CotterWedgeInput}. */
export const cotterWedgeInputSchema: z.ZodType<CotterWedgeInput> = z.strictObject({
  pressForceN: measured(pressForce),
  flatAngleDeg: measured({ min: 0.01, max: 20 }),
  flatFriction: measured({ min: 0, max: 0.6 }),
  backFriction: measured({ min: 0, max: 0.6 }),
  flatLengthMm: measured({ min: 0.01, max: 50 }),
  flatWidthMm: measured({ min: 0.01, max: 50 }),
  axisToFlatMm: measured({ min: 0.01, max: 50 }),
  crankTorqueNm: measured({ min: 0, max: 1000 }).exactOptional(),
  sameWayRound: z.boolean().exactOptional(),
  slackMm: measured({ min: 0, max: 5 }).exactOptional(),
  acrossStiffnessNPerMm: measured(boltStiffness).exactOptional(),
});

/** Schema of a {@link CotterWedge}. */
export const cotterWedgeSchema: z.ZodType<CotterWedge> = z.strictObject({
  normalForceN: limitsSchema,
  contactPressureMPa: limitsSchema,
  travelPerSlackRatio: limitsSchema,
  slackTravelMm: limitsOrNull,
  travelMm: limitsOrNull,
  stiffnessNPerMm: limitsOrNull,
  releaseForceN: limitsSchema,
  holdsAtRestWithoutNut: z.boolean(),
  firstEdgeUnloadingNm: limitsSchema,
  rockingLimitNm: limitsSchema,
  shearStressMPa: limitsSchema,
  misalignmentDeg: limitsSchema,
  findings,
});

/** Schema of a {@link FaceSplineInput}. */
export const faceSplineInputSchema: z.ZodType<FaceSplineInput> = z.strictObject({
  axialForceN: measured(force),
  flankAngleDeg: measured({ min: 1, max: 60 }),
  outerDiameterMm: measured({ min: 0.01, max: 200 }),
  innerDiameterMm: measured({ min: 0, max: 200 }),
  bearingShare: measured({ min: 0.01, max: 1 }).exactOptional(),
  torqueNm: measured({ min: 0, max: 2000 }).exactOptional(),
  bendingNm: measured({ min: 0, max: 2000 }).exactOptional(),
});

/** Schema of a {@link FaceSpline}. */
export const faceSplineSchema: z.ZodType<FaceSpline> = z.strictObject({
  torqueCapacityNm: limitsSchema,
  openingMomentNm: limitsSchema,
  neededForceN: limitsSchema,
  reserveRatio: limitsOrNull,
  contactPressureMPa: limitsSchema,
  staysTogether: z.boolean(),
  findings,
});

/** Schema of a {@link OnePieceCrankInput}. */
export const onePieceCrankInputSchema: z.ZodType<OnePieceCrankInput> = z.strictObject({
  pedalForceN: measured({ min: 0, max: 20_000 }),
  crankLengthMm: measured(crankLength),
  overhangMm: measured({ min: 0, max: 300 }),
  barDiameterMm: measured(jointLength),
  yieldStrengthMPa: measured({ min: 1, max: 5000 }).exactOptional(),
});

/** Schema of a {@link OnePieceCrank}. */
export const onePieceCrankSchema: z.ZodType<OnePieceCrank> = z.strictObject({
  torqueNm: limitsSchema,
  bendingNm: limitsSchema,
  equivalentStressMPa: limitsSchema,
  yieldShare: limitsOrNull,
  findings,
});

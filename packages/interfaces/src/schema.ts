/**
 * Schemas of the records, of the inputs and of the results, for data that comes from outside.
 *
 * @packageDocumentation
 */
import type { Standing } from '@spindlewright/quantity';
import {
  datumSchema,
  findingSchema,
  type JsonSchema,
  jsonSchemaOf,
  limitsInputSchema,
  limitsSchema,
  measurandSchema,
  standingSchema,
  standingsWithoutSource,
} from '@spindlewright/quantity/schema';
import { z } from 'zod/v4';
import type { IdentifyBoreInput } from './bore-readings.ts';
import type { MateResult } from './check-mate.ts';
import type { BoreIdentificationData, IdentificationData, ThreadIdentificationData } from './identification-data.ts';
import type { BoreIdentification } from './identify-bore.ts';
import type { SpindleIdentification } from './identify-spindle.ts';
import type { ThreadIdentification } from './identify-thread.ts';
import type { InterfaceFilter } from './list-interfaces.ts';
import type { MatingData } from './mating-data.ts';
import type { NeighbourRecord, NeighbourRule, ShellWidth, SidedThreads } from './neighbour.ts';
import type { ObservationRecord } from './observation.ts';
import type { ArmGeometry, SpindleGeometry } from './published-geometry.ts';
import type { Claim, Conflict, FixingHead, InterfaceRecord, TaperSet, ThreadRecord, TorquePractice } from './record.ts';
import type { IdentifySpindleInput } from './square-readings.ts';
import type { IdentifyThreadInput } from './thread-readings.ts';

const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);
const text = z.string().min(1);
const optionalDatum = datumSchema.exactOptional();
const optionalText = text.exactOptional();

const claimShape = {
  id,
  statement: text,
  standing: standingSchema,
  sources: z.array(id),
  value: optionalDatum,
  support: z.literal('none-found').exactOptional(),
  note: optionalText,
};

const isSourced = ({ standing, sources }: { standing: Standing; sources: readonly string[] }): boolean =>
  sources.length > 0 || standingsWithoutSource.includes(standing);
const NEEDS_SOURCE = { message: 'this standing needs a source' };

/** Schema of a {@link Claim}: a standing that claims a source names one. */
export const claimSchema: z.ZodType<Claim> = z.strictObject(claimShape).refine(isSourced, NEEDS_SOURCE);
const claims = z.array(claimSchema);

/** Schema of a {@link Conflict}: at least two positions. */
export const conflictSchema: z.ZodType<Conflict> = z.strictObject({
  id,
  subject: text,
  positions: claims.min(2),
  comment: text,
});

const threadSchema: z.ZodType<ThreadRecord> = z.strictObject({
  id,
  use: text,
  designation: text,
  nominalDiameterMm: datumSchema,
  pitchMm: optionalDatum,
  threadsPerInch: optionalDatum,
  hand: z.enum(['right', 'left']),
  member: z.enum(['external', 'internal']).exactOptional(),
  usual: z.boolean().exactOptional(),
  pitchDiameterMm: optionalDatum,
  minorDiameterMm: optionalDatum,
  internalMinorDiameterMm: optionalDatum,
  stressAreaMm2: optionalDatum,
  note: optionalText,
});

const fixingHeadSchema: z.ZodType<FixingHead> = z.strictObject({
  id,
  kind: z.enum(['external-hexagon', 'internal-hexagon']),
  acrossFlatsMm: datumSchema,
  note: optionalText,
});

const torquePracticeSchema: z.ZodType<TorquePractice> = z.strictObject({ id, joint: text, torqueNm: datumSchema });

const taperSetSchema: z.ZodType<TaperSet> = z.strictObject({
  id,
  acrossFlatsAtEndMm: datumSchema,
  faceAngleDeg: optionalDatum,
  flatLengthMm: optionalDatum,
  interpreted: z.array(
    z.strictObject({ field: z.enum(['acrossFlatsAtEndMm', 'faceAngleDeg', 'flatLengthMm']), why: text }),
  ),
});

const mateVerdictSchema = z.enum(['mates', 'mates-with-shift', 'starts-then-fails', 'does-not-mate', 'unknown']);

const geometries = {
  'square-taper': z.strictObject({
    sets: z.array(taperSetSchema),
    fallback: z.strictObject({ faceAngleDeg: datumSchema, flatLengthMm: datumSchema }),
    handFitShoulderGapMm: datumSchema,
    handFitEndGapMm: datumSchema,
    claims,
  }),
  spline: z.strictObject({
    splineCount: datumSchema,
    spindleDiameterMm: optionalDatum,
    majorDiameterMm: optionalDatum,
    minorDiameterMm: optionalDatum,
    splineWidthMm: optionalDatum,
    engagementMm: optionalDatum,
    minimumSplineLengthMm: optionalDatum,
    taperPerSideDeg: optionalDatum,
    stopFromEndMm: optionalDatum,
    claims,
  }),
  'face-spline': z.strictObject({ toothCount: optionalDatum, outerDiameterMm: optionalDatum, claims }),
  'through-spindle': z.strictObject({
    driveSideDiameterMm: datumSchema,
    nonDriveSideDiameterMm: datumSchema,
    claims,
  }),
  cottered: z.strictObject({
    spindleDiameterMm: datumSchema,
    cotterDiameterMm: datumSchema,
    cotterFlatAngleDeg: optionalDatum,
    claims,
  }),
  'one-piece': z.strictObject({ shellBoreMm: datumSchema, claims }),
};

const recordShape = {
  dataEdition: z.string().regex(/^\d{4}\.\d{2}$/),
  id,
  aliases: z.array(id),
  title: text,
  summary: text,
  documents: claims,
  interchange: z
    .strictObject({
      ...claimShape,
      kind: z.enum(['open-standard', 'published-sizes', 'maker-specific', 'inseparable']),
    })
    .refine(isSourced, NEEDS_SOURCE),
  axialStop: z.strictObject({
    kind: z.enum(['press-on-taper', 'shoulder', 'preload-adjuster', 'cotter', 'face-teeth', 'forged']),
    claims,
  }),
  drawnTight: z.strictObject({ by: z.enum(['centre-bolt-or-nut', 'pinch-bolts', 'cotters', 'none']), claims }),
  fixingThreads: z.array(threadSchema),
  fixingHeads: z.array(fixingHeadSchema),
  puller: z.strictObject({ threads: z.array(threadSchema), tip: claims, practice: claims }),
  indexPositions: z.strictObject({ count: optionalDatum, stepDeg: optionalDatum, claims }),
  torquePractice: z.array(torquePracticeSchema),
  lubrication: z.array(
    z
      .strictObject({
        ...claimShape,
        surface: z.enum(['flats', 'spline', 'cotter', 'bolt-thread-and-head']),
        advice: z.enum(['grease', 'dry', 'depends']),
      })
      .refine(isSourced, NEEDS_SOURCE),
  ),
  retightening: z.array(
    z
      .strictObject({ ...claimShape, advice: z.enum(['once', 'never', 'repeatedly', 'explains']) })
      .refine(isSourced, NEEDS_SOURCE),
  ),
  failures: z.array(
    z
      .strictObject({ ...claimShape, where: z.enum(['arm', 'arm-bore', 'spindle', 'fixing', 'joint']) })
      .refine(isSourced, NEEDS_SOURCE),
  ),
  inspection: z.array(z.strictObject({ ...claimShape, look: id }).refine(isSourced, NEEDS_SOURCE)),
  mating: z.array(
    z.strictObject({ ...claimShape, spindle: id, arm: id, verdict: mateVerdictSchema }).refine(isSourced, NEEDS_SOURCE),
  ),
  conflicts: z.array(conflictSchema),
  missing: z.array(text),
};

/** Schema of an {@link InterfaceRecord}, told apart by `family`. */
export const interfaceRecordSchema: z.ZodType<InterfaceRecord> = z.discriminatedUnion('family', [
  z.strictObject({ ...recordShape, family: z.literal('square-taper'), geometry: geometries['square-taper'] }),
  z.strictObject({ ...recordShape, family: z.literal('spline'), geometry: geometries.spline }),
  z.strictObject({ ...recordShape, family: z.literal('face-spline'), geometry: geometries['face-spline'] }),
  z.strictObject({ ...recordShape, family: z.literal('through-spindle'), geometry: geometries['through-spindle'] }),
  z.strictObject({ ...recordShape, family: z.literal('cottered'), geometry: geometries.cottered }),
  z.strictObject({ ...recordShape, family: z.literal('one-piece'), geometry: geometries['one-piece'] }),
]);

const neighbourRuleSchema: z.ZodType<NeighbourRule> = z
  .strictObject({ ...claimShape, male: id, female: id, verdict: mateVerdictSchema })
  .refine(isSourced, NEEDS_SOURCE);
const widthsSchema: z.ZodType<ShellWidth[]> = z.array(z.strictObject({ id, widthMm: datumSchema, note: optionalText }));
const sidedThreadsSchema: z.ZodType<SidedThreads> = z.strictObject({ left: threadSchema, right: threadSchema });

const neighbourShape = {
  dataEdition: recordShape.dataEdition,
  id,
  aliases: z.array(id),
  title: text,
  summary: text,
  documents: claims,
  claims,
  torquePractice: recordShape.torquePractice,
  mating: z.array(neighbourRuleSchema),
  conflicts: recordShape.conflicts,
  missing: recordShape.missing,
};

/** Schema of a {@link NeighbourRecord}, told apart by `kind`. */
export const neighbourRecordSchema: z.ZodType<NeighbourRecord> = z.discriminatedUnion('kind', [
  z.strictObject({
    ...neighbourShape,
    kind: z.literal('shell-thread'),
    threads: sidedThreadsSchema,
    widths: widthsSchema,
    caliper: z.strictObject({ cupOutsideMm: optionalDatum, shellInsideMm: optionalDatum }),
  }),
  z.strictObject({
    ...neighbourShape,
    kind: z.literal('shell-bore'),
    seat: z.enum(['bearing', 'pressed-cup', 'loose-pressed-cup', 'clamped-cartridge']),
    bores: z.array(z.strictObject({ id, boreMm: datumSchema })).min(1),
    widths: widthsSchema,
    spindles: z.array(z.strictObject({ id, spindleDiameterMm: datumSchema })),
  }),
  z.strictObject({
    ...neighbourShape,
    kind: z.literal('fixing'),
    form: z.enum(['spindle-bolt', 'spindle-nut', 'pinch-bolt', 'chainring-bolt']),
    thread: threadSchema,
    heads: recordShape.fixingHeads,
  }),
  z.strictObject({ ...neighbourShape, kind: z.literal('puller-thread'), thread: threadSchema }),
  z.strictObject({ ...neighbourShape, kind: z.literal('pedal-thread'), threads: sidedThreadsSchema }),
  z.strictObject({
    ...neighbourShape,
    kind: z.literal('bolt-circle'),
    armCount: datumSchema,
    boltCircleDiameterMm: datumSchema,
    smallestRing: datumSchema,
    holeSpacingMm: datumSchema,
  }),
  z.strictObject({
    ...neighbourShape,
    kind: z.literal('convention'),
    topic: z.enum(['chainline', 'spindle-length', 'arm-length', 'tread', 'square-orientation']),
    values: z.array(z.strictObject({ id, use: text, quantity: datumSchema })),
  }),
]);

/** Schema of an {@link ObservationRecord}. */
export const observationRecordSchema: z.ZodType<ObservationRecord> = z.strictObject({
  dataEdition: recordShape.dataEdition,
  id,
  aliases: z.array(id),
  family: z.enum(['any', 'square-taper', 'spline', 'face-spline', 'through-spindle', 'cottered', 'one-piece']),
  checksWithoutObject: z.array(id),
  meanings: z.array(
    z
      .strictObject({
        ...claimShape,
        check: id,
        outcome: id,
        reading: z.enum(['right', 'wrong', 'depends', 'cannot-be']),
        interfaces: z.array(id).exactOptional(),
      })
      .refine(isSourced, NEEDS_SOURCE),
  ),
});

const boreDataSchema: z.ZodType<BoreIdentificationData> = z.strictObject({
  unlisted: z.strictObject({
    acrossFlatsAtMouthMm: datumSchema,
    acrossFlatsSpreadMm: datumSchema,
    faceAngleDeg: datumSchema,
    faceAngleSpreadDeg: datumSchema,
    boreLengthMm: datumSchema,
    boreLengthSpreadMm: datumSchema,
  }),
  assumedUncertainty: z.strictObject({
    acrossFlatsMm: datumSchema,
    planeMm: datumSchema,
    boreLengthMm: datumSchema,
    diameterMm: datumSchema,
  }),
  nextReading: z.strictObject({
    acrossFlatsAtMm: datumSchema,
    acrossFlatsMm: datumSchema,
    planeMm: datumSchema,
    boreLengthMm: datumSchema,
  }),
  round: z.strictObject({
    unlistedProbability: datumSchema,
    clearanceMm: datumSchema,
    clearanceSpreadMm: datumSchema,
    toothDepthMm: datumSchema,
    toothDepthSpreadMm: datumSchema,
    minorSpreadMm: datumSchema,
    slipProbability: datumSchema,
    toothedUnlistedProbability: datumSchema,
  }),
});

const threadDataSchema: z.ZodType<ThreadIdentificationData> = z.strictObject({
  unlistedProbability: datumSchema,
  unlistedPitchMm: datumSchema,
  unlistedPitchSpreadMm: datumSchema,
  unstatedPitchMm: datumSchema,
  unstatedPitchSpreadMm: datumSchema,
  limits: z.strictObject({
    allowanceUm: datumSchema,
    allowancePerPitchUm: datumSchema,
    majorWidthUm: datumSchema,
    majorWidthFallUm: datumSchema,
    minorWidthUm: datumSchema,
    fineMinorWidthUm: datumSchema,
    fineMinorWidthFallUm: datumSchema,
  }),
  spread: z.strictObject({ metricMm: datumSchema, otherMm: datumSchema }),
  chamfer: z.strictObject({ lengthRatio: datumSchema, lengthSpreadRatio: datumSchema }),
  assumedUncertainty: z.strictObject({
    externalDiameterMm: datumSchema,
    internalDiameterMm: datumSchema,
    planeMm: datumSchema,
    pitchMm: datumSchema,
    threadsPerInch: datumSchema,
  }),
  assumedPlaneMm: datumSchema,
  slipProbability: z.strictObject({ diameter: datumSchema, pitch: datumSchema, hand: datumSchema }),
  slipSpread: z.strictObject({ diameterMm: datumSchema, pitchMm: datumSchema }),
  blunderProbability: datumSchema,
  nextReading: z.strictObject({ diameterMm: datumSchema, planeRatio: datumSchema, pitchMm: datumSchema }),
  nearMiss: z.strictObject({
    leastOverlapShare: datumSchema,
    soundOverlapShare: datumSchema,
    pitchShare: datumSchema,
    engagedTurns: datumSchema,
    axialPlayMm: datumSchema,
    worthNaming: datumSchema,
  }),
});

/** Schema of {@link MatingData}. */
export const matingDataSchema: z.ZodType<MatingData> = z.strictObject({
  dataEdition: recordShape.dataEdition,
  sameDiameterMm: datumSchema,
  clampClosesMm: datumSchema,
  sameBoreMm: datumSchema,
});

/** Schema of {@link IdentificationData}. */
export const identificationDataSchema: z.ZodType<IdentificationData> = z.strictObject({
  dataEdition: recordShape.dataEdition,
  priors: z.array(z.strictObject({ id, probability: datumSchema })),
  spread: z.strictObject({ acrossFlatsMm: datumSchema, faceAngleDeg: datumSchema, flatLengthMm: datumSchema }),
  unlisted: z.strictObject({
    acrossFlatsAtEndMm: datumSchema,
    acrossFlatsSpreadMm: datumSchema,
    faceAngleDeg: datumSchema,
    faceAngleSpreadDeg: datumSchema,
    flatLengthMm: datumSchema,
    flatLengthSpreadMm: datumSchema,
  }),
  assumedUncertainty: z.strictObject({
    acrossFlatsMm: datumSchema,
    planeMm: datumSchema,
    flatLengthMm: datumSchema,
    finestMm: datumSchema,
  }),
  nextReading: z.strictObject({
    acrossFlatsAtMm: datumSchema,
    acrossFlatsMm: datumSchema,
    planeMm: datumSchema,
    flatLengthMm: datumSchema,
    worthwhileGain: datumSchema,
  }),
  slip: z.strictObject({ probability: datumSchema, spreadMm: datumSchema }),
  commonErrorShare: datumSchema,
  bore: boreDataSchema,
  threads: threadDataSchema,
  blunderProbability: datumSchema,
  convincingProbability: datumSchema,
});

/** Schema of the filter of `listInterfaces`. */
export const interfaceFilterSchema: z.ZodType<InterfaceFilter> = z.strictObject({
  family: z.enum(['square-taper', 'spline', 'face-spline', 'through-spindle', 'cottered', 'one-piece']).exactOptional(),
  drawnTightBy: recordShape.drawnTight.shape.by.exactOptional(),
});

const publishedShape = {
  set: id,
  sources: z.array(id),
  standing: standingSchema,
  assumed: z.array(text),
  note: optionalText,
  dataEdition: recordShape.dataEdition,
};
const optionalLimits = limitsInputSchema.exactOptional();

/** Schema of one entry of `spindleGeometries`. */
export const spindleGeometrySchema: z.ZodType<SpindleGeometry> = z.strictObject({
  ...publishedShape,
  geometry: z.strictObject({
    acrossFlatsAtEndMm: limitsInputSchema,
    faceAngleDeg: limitsInputSchema,
    flatLengthMm: limitsInputSchema,
    endChamferMm: optionalLimits,
    shoulderFromEndMm: optionalLimits,
    cornerDiameterMm: optionalLimits,
  }),
  endFromMidplaneMm: z.number().positive().exactOptional(),
});

/** Schema of one entry of `armGeometries`. */
export const armGeometrySchema: z.ZodType<ArmGeometry> = z.strictObject({
  ...publishedShape,
  geometry: z.strictObject({
    acrossFlatsAtMouthMm: limitsInputSchema,
    faceAngleDeg: limitsInputSchema,
    boreLengthMm: limitsInputSchema,
    boltSeatFromMouthMm: optionalLimits,
    seatIntrusionMm: optionalLimits,
    mouthChamferMm: optionalLimits,
    bossDiameterMm: optionalLimits,
    boreCornerRadiusMm: optionalLimits,
  }),
});

const findings = z.array(findingSchema);

/** Schema of the result of `checkMate`. */
export const mateResultSchema: z.ZodType<MateResult> = z.strictObject({
  verdict: mateVerdictSchema,
  shiftMm: z.array(
    z.strictObject({
      set: id,
      shiftMm: limitsSchema,
      direction: z.enum(['toward-frame', 'away-from-frame', 'none']),
      sources: z.array(id),
    }),
  ),
  claims,
  consequence: text,
  findings,
  cautions: findings,
  sources: z.array(id),
  dataEdition: recordShape.dataEdition,
});

const flatsReadingShape = { acrossFlatsMm: measurandSchema, atMm: measurandSchema };

/** Schema of the input of `identifySpindle`; ranges are checked by the function. */
export const identifySpindleInputSchema: z.ZodType<IdentifySpindleInput> = z.strictObject({
  acrossFlatsMm: measurandSchema.exactOptional(),
  atMm: measurandSchema.exactOptional(),
  readings: z.array(z.strictObject(flatsReadingShape)).exactOptional(),
  flatLengthMm: measurandSchema.exactOptional(),
});

const probability = z.number().min(0).max(1);

/** Schema of the result of `identifySpindle`. */
export const spindleIdentificationSchema: z.ZodType<SpindleIdentification> = z.strictObject({
  candidates: z.array(z.strictObject({ id, probability, sets: z.array(z.strictObject({ set: id, probability })) })),
  next: z.strictObject({
    reading: z.enum(['across-flats', 'flat-length', 'trial-fit']),
    expectedProbability: probability.exactOptional(),
    message: text,
  }),
  findings,
  cautions: findings,
  sources: z.array(id),
  dataEdition: recordShape.dataEdition,
});

/** Schema of the input of `identifyBore`; ranges are checked by the function. */
export const identifyBoreInputSchema: z.ZodType<IdentifyBoreInput> = z.strictObject({
  acrossFlatsMm: measurandSchema.exactOptional(),
  atMm: measurandSchema.exactOptional(),
  readings: z.array(z.strictObject(flatsReadingShape)).exactOptional(),
  boreLengthMm: measurandSchema.exactOptional(),
  diameterMm: measurandSchema.exactOptional(),
  toothed: z.boolean().exactOptional(),
});

/** Schema of the result of `identifyBore`. */
export const boreIdentificationSchema: z.ZodType<BoreIdentification> = z.strictObject({
  shape: z.enum(['square', 'round']),
  candidates: z.array(z.strictObject({ id, probability, sets: z.array(z.strictObject({ set: id, probability })) })),
  next: z.strictObject({
    reading: z.enum(['across-flats', 'bore-length', 'diameter', 'teeth', 'trial-fit']),
    expectedProbability: probability.exactOptional(),
    message: text,
  }),
  findings,
  cautions: findings,
  sources: z.array(id),
  dataEdition: recordShape.dataEdition,
});

const handSchema = z.enum(['right', 'left']);
const kindSchema = z.enum(['external', 'internal']);

/** Schema of the input of `identifyThread`; ranges are checked by the function. */
export const identifyThreadInputSchema: z.ZodType<IdentifyThreadInput> = z.strictObject({
  diameterMm: measurandSchema.exactOptional(),
  atMm: measurandSchema.exactOptional(),
  pitchMm: measurandSchema.exactOptional(),
  threadsPerInch: measurandSchema.exactOptional(),
  hand: handSchema.exactOptional(),
  kind: kindSchema.exactOptional(),
});

/** Schema of the result of `identifyThread`. */
export const threadIdentificationSchema: z.ZodType<ThreadIdentification> = z.strictObject({
  candidates: z.array(
    z.strictObject({
      id,
      probability,
      designation: text.exactOptional(),
      hand: handSchema.exactOptional(),
      uses: z.array(text),
      records: z.array(id),
      sets: z.array(z.strictObject({ set: id, kind: kindSchema, probability })),
    }),
  ),
  next: z.strictObject({
    reading: z.enum(['diameter', 'pitch', 'hand', 'trial-fit']),
    expectedProbability: probability.exactOptional(),
    message: text,
  }),
  findings,
  cautions: findings,
  sources: z.array(id),
  dataEdition: recordShape.dataEdition,
});

/**
 * Gives the JSON Schema of an interface record, for editors and validators outside this library.
 *
 * @remarks
 * Formula: none; derived from {@link interfaceRecordSchema} when asked for, so that nobody pays for it who does not ask.
 *
 * Validity: draft 2020-12. It cannot say that bounds enclose a value or that a standing needs a source; the zod schema
 * checks both.
 *
 * Accuracy: exact.
 *
 * @returns A new JSON Schema object with `$id` `urn:spindlewright:schema:interface-record`.
 * @throws Nothing.
 * @example
 * ```ts
 * import { interfaceRecordJsonSchema } from '@spindlewright/interfaces/schema';
 * interfaceRecordJsonSchema().$id; // => 'urn:spindlewright:schema:interface-record'
 * ```
 * @see JSON Schema, draft 2020-12.
 */
export function interfaceRecordJsonSchema(): JsonSchema {
  return jsonSchemaOf(interfaceRecordSchema, 'interface-record');
}

/**
 * Gives the JSON Schema of a neighbour record, for editors and validators outside this library.
 *
 * @remarks
 * Formula: none; derived from {@link neighbourRecordSchema} when asked for.
 *
 * Validity: draft 2020-12. It cannot say that bounds enclose a value or that a standing needs a source; the zod schema
 * checks both.
 *
 * Accuracy: exact.
 *
 * @returns A new JSON Schema object with `$id` `urn:spindlewright:schema:neighbour-record`.
 * @throws Nothing.
 * @example
 * ```ts
 * import { neighbourRecordJsonSchema } from '@spindlewright/interfaces/schema';
 * neighbourRecordJsonSchema().$id; // => 'urn:spindlewright:schema:neighbour-record'
 * ```
 * @see JSON Schema, draft 2020-12.
 */
export function neighbourRecordJsonSchema(): JsonSchema {
  return jsonSchemaOf(neighbourRecordSchema, 'neighbour-record');
}

/**
 * Gives the JSON Schema of a record of meanings of observations, for editors and validators outside this library.
 *
 * @remarks
 * Formula: none; derived from {@link observationRecordSchema} when asked for.
 *
 * Validity: draft 2020-12. It cannot say that a standing needs a source; the zod schema checks it.
 *
 * Accuracy: exact.
 *
 * @returns A new JSON Schema object with `$id` `urn:spindlewright:schema:observation-record`.
 * @throws Nothing.
 * @example
 * ```ts
 * import { observationRecordJsonSchema } from '@spindlewright/interfaces/schema';
 * observationRecordJsonSchema().$id; // => 'urn:spindlewright:schema:observation-record'
 * ```
 * @see JSON Schema, draft 2020-12.
 */
export function observationRecordJsonSchema(): JsonSchema {
  return jsonSchemaOf(observationRecordSchema, 'observation-record');
}

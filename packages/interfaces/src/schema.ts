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
import type { MateResult } from './check-mate.ts';
import type { IdentificationData } from './identification-data.ts';
import type { SpindleIdentification } from './identify-spindle.ts';
import type { InterfaceFilter } from './list-interfaces.ts';
import type { ArmGeometry, SpindleGeometry } from './published-geometry.ts';
import type { Claim, Conflict, FixingHead, InterfaceRecord, TaperSet, ThreadRecord, TorquePractice } from './record.ts';
import type { IdentifySpindleInput } from './square-readings.ts';

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
    sets: z.array(taperSetSchema).min(1),
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
    .strictObject({ ...claimShape, kind: z.enum(['open-standard', 'published-sizes', 'maker-specific']) })
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

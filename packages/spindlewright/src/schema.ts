import { type ActionId, listActions } from '@spindlewright/diagnosis';
import {
  diagnosisSchema,
  measurementsSchema,
  observationsSchema,
  sideComparisonSchema,
} from '@spindlewright/diagnosis/schema';
import { mateResultSchema, spindleIdentificationSchema } from '@spindlewright/interfaces/schema';
import {
  findingSchema,
  type JsonSchema,
  jsonSchemaOf,
  limitsSchema,
  measurandSchema,
} from '@spindlewright/quantity/schema';
import type { SeatPrediction } from '@spindlewright/taper';
import {
  cotterWedgeSchema,
  faceSplineSchema,
  onePieceCrankSchema,
  pinchClampSchema,
  seatPredictionSchema,
  splinePressSchema,
} from '@spindlewright/taper/schema';
import { fixingCheckSchema } from '@spindlewright/torque/schema';
import { z } from 'zod/v4';
import type { JudgedCandidate } from './candidates.ts';
import type { DiagnosisPart } from './diagnosis-part.ts';
import type { Job, Rates, Reading } from './job.ts';
import type { FasteningPlan, JointPart } from './joint-part.ts';
import type { Provenance } from './provenance.ts';
import type { FitData } from './screen/fit-data.ts';
import type { Mapping } from './screen/mapping.ts';
import type { Need } from './screen/need.ts';
import type { ScreenedPart, ScreenSummary } from './screen/screened.ts';
import type { OtherWay, PressPlan, SeatPart, SeatWay, SheetDrawing, StatedTorque } from './seat-part.ts';
import type { Block, JobSheet, Section } from './sheet.ts';
import type { TighteningPart, WrenchPlan } from './tightening-part.ts';
import type { WhatIfRow } from './what-if.ts';

const reading: z.ZodType<Reading> = measurandSchema;

const flats = z
  .array(z.strictObject({ acrossFlatsMm: reading, atMm: reading, pair: z.enum(['a', 'b']) }))
  .min(1)
  .exactOptional();

const armSchema = z.strictObject({
  flats,
  faceAngleDeg: reading.exactOptional(),
  boreLengthMm: reading.exactOptional(),
  boltSeatFromMouthMm: reading.exactOptional(),
  seatIntrusionMm: reading.exactOptional(),
  mouthChamferMm: reading.exactOptional(),
  bossDiameterMm: reading.exactOptional(),
  yieldStrengthMPa: reading.exactOptional(),
});

const spindleSchema = z.strictObject({
  flats,
  faceAngleDeg: reading.exactOptional(),
  flatLengthMm: reading.exactOptional(),
  endChamferMm: reading.exactOptional(),
  shoulderFromEndMm: reading.exactOptional(),
  cornerDiameterMm: reading.exactOptional(),
});

const fixingSchema = z.strictObject({
  thread: z.string().min(1),
  lubrication: z.enum(['lubricated', 'dry', 'unknown']),
  spindleThread: z.string().exactOptional(),
  propertyClass: z.string().exactOptional(),
  lengthUnderHeadMm: reading.exactOptional(),
  threadDepthMm: reading.exactOptional(),
  washerThicknessMm: reading.exactOptional(),
  head: z.enum(['plain', 'flanged']).exactOptional(),
  extras: z.array(z.enum(['dust-cap', 'self-extractor-ring'])).exactOptional(),
  bearingOuterDiameterMm: reading.exactOptional(),
});

/** Readings that only one family of joints has. */
const jointReadings = {
  clamp: z
    .strictObject({
      slotGapMm: reading.exactOptional(),
      axialPlayMm: reading.exactOptional(),
      boltCount: z.int().min(1).max(6).exactOptional(),
      clampWidthMm: reading.exactOptional(),
      hingeToBoltMm: reading.exactOptional(),
      hingeToAxisMm: reading.exactOptional(),
      safetyCatch: z.enum(['engaged', 'not-engaged', 'none', 'unknown']).exactOptional(),
    })
    .exactOptional(),
  spline: z
    .strictObject({
      forceToStopN: reading.exactOptional(),
      gapByHandMm: reading.exactOptional(),
      gapAtTorqueMm: reading.exactOptional(),
    })
    .exactOptional(),
  cotter: z
    .strictObject({
      pressForceN: reading.exactOptional(),
      flatAngleDeg: reading.exactOptional(),
      flatLengthMm: reading.exactOptional(),
      flatWidthMm: reading.exactOptional(),
      axisToFlatMm: reading.exactOptional(),
      sameWayRound: z.boolean().exactOptional(),
    })
    .exactOptional(),
  faceTeeth: z
    .strictObject({
      flankAngleDeg: reading.exactOptional(),
      outerDiameterMm: reading.exactOptional(),
      innerDiameterMm: reading.exactOptional(),
    })
    .exactOptional(),
  bar: z
    .strictObject({
      crankLengthMm: reading.exactOptional(),
      overhangMm: reading.exactOptional(),
      barDiameterMm: reading.exactOptional(),
      yieldStrengthMPa: reading.exactOptional(),
    })
    .exactOptional(),
};

const trialFitSchema = z.strictObject({
  endGapMm: reading.exactOptional(),
  shoulderGapMm: reading.exactOptional(),
});

/** Fields of a job that a change may replace. */
const changeable = {
  interface: z.strictObject({ spindle: z.string(), arm: z.string() }),
  spindle: spindleSchema.exactOptional(),
  arm: armSchema.exactOptional(),
  trialFit: trialFitSchema.exactOptional(),
  flats: z.enum(['greased', 'dry', 'unknown']).exactOptional(),
  ...jointReadings,
  fixing: fixingSchema.exactOptional(),
  partMakerTorqueNm: reading.exactOptional(),
};

const amount = z.strictObject({ value: z.number(), unit: z.string() });

const soldPart = z.enum(['arm', 'spindle', 'fixing', 'bearing']);
const action = z.enum(listActions().map(({ id }) => id) as [ActionId, ...ActionId[]]);

/** Schema of {@link Rates}. */
export const ratesSchema: z.ZodType<Rates> = z.strictObject({
  unit: z.string().min(1),
  chargePerMinute: z.number().min(0),
  work: z.array(z.strictObject({ action, minutes: z.number().min(0) })).exactOptional(),
  parts: z
    .array(
      z.strictObject({
        part: soldPart,
        value: z.number().min(0),
        unit: z.string(),
      }),
    )
    .exactOptional(),
});

/** Schema of a {@link Job} whose texts with units have been read; `readJob` checks ranges and contradictions besides. */
export const jobSchema: z.ZodType<Job> = z.strictObject({
  format: z.literal('spindlewright-job-1'),
  title: z.string().min(1),
  date: z.iso.date(),
  invented: z.boolean().exactOptional(),
  bike: z.string().min(1),
  side: z.enum(['drive', 'non-drive']),
  ...changeable,
  observations: observationsSchema.exactOptional(),
  measurements: measurementsSchema.exactOptional(),
  otherSide: z
    .strictObject({ observations: observationsSchema, measurements: measurementsSchema.exactOptional() })
    .exactOptional(),
  wrench: z
    .strictObject({
      unit: z.enum(['Nm', 'lbf.in', 'lbf.ft', 'kgf.cm']),
      lowestSetting: z.number().min(0),
      highestSetting: z.number().positive(),
      lengthMm: z.number().positive().exactOptional(),
    })
    .exactOptional(),
  candidates: z
    .array(
      z.strictObject({
        name: z.string(),
        interface: z.string(),
        arm: armSchema.exactOptional(),
        trialFit: trialFitSchema.exactOptional(),
      }),
    )
    .exactOptional(),
  whatIf: z
    .array(
      z.strictObject({
        name: z.string(),
        change: z.strictObject({ ...changeable, interface: changeable.interface.exactOptional() }),
      }),
    )
    .exactOptional(),
  rates: ratesSchema.exactOptional(),
});

/** Schema of a {@link Block}. */
export const blockSchema: z.ZodType<Block> = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('paragraph'), text: z.string() }),
  z.strictObject({ kind: z.literal('list'), ordered: z.boolean(), items: z.array(z.string()) }),
  z.strictObject({
    kind: z.literal('table'),
    caption: z.string(),
    head: z.array(z.string()),
    rows: z.array(z.array(z.string())),
  }),
  z.strictObject({ kind: z.literal('findings'), findings: z.array(findingSchema) }),
  z.strictObject({
    kind: z.literal('drawing'),
    narrowSvg: z.string(),
    wideSvg: z.string(),
    description: z.string(),
    told: z.boolean().exactOptional(),
  }),
]);

/** Schema of a {@link Section}. */
export const sectionSchema: z.ZodType<Section> = z.strictObject({
  id: z.string().min(1),
  title: z.string().min(1),
  detail: z.boolean().exactOptional(),
  blocks: z.array(blockSchema),
});

/** Schema of a {@link SeatWay}. */
export const seatWaySchema: z.ZodType<SeatWay> = z.strictObject({
  basis: z.enum(['trial-fit', 'readings', 'published-set']),
  set: z.string(),
  // A sheet always has both shapes, so nothing of its prediction is unknown; the leaf's schema allows for less.
  prediction: seatPredictionSchema as z.ZodType<SeatPrediction>,
  assumed: z.array(z.string()),
  sources: z.array(z.string()),
});

const seatVerdict = z.enum([
  'seats',
  'marginal',
  'bottoms-on-end',
  'hits-shoulder',
  'too-little-engagement',
  'does-not-start',
]);

const seatLengths = z.strictObject({
  mouthFromEndMm: limitsSchema,
  endGapMm: limitsSchema,
  shoulderGapMm: limitsSchema,
  engagedLengthMm: limitsSchema,
});

/** Schema of an {@link OtherWay}. */
export const otherWaySchema: z.ZodType<OtherWay> = z.strictObject({
  basis: z.enum(['trial-fit', 'readings', 'published-set']),
  set: z.string(),
  prediction: z.strictObject({
    handFit: seatLengths,
    pressed: seatLengths,
    travelMm: limitsSchema,
    pressReached: limitsSchema,
    verdict: seatVerdict,
    worstVerdicts: z.strictObject({ lower: seatVerdict, upper: seatVerdict }),
  }),
  assumed: z.array(z.string()),
  sources: z.array(z.string()),
});

const statedTorqueSchema: z.ZodType<StatedTorque> = z.strictObject({
  id: z.string(),
  lowerNm: z.number(),
  upperNm: z.number(),
  sources: z.array(z.string()),
});

/** Schema of a {@link PressPlan}. */
export const pressPlanSchema: z.ZodType<PressPlan> = z.strictObject({
  torqueNm: limitsSchema,
  torqueFrom: z.enum(['part-maker', 'trade-range']),
  tradeTorques: z.array(statedTorqueSchema),
  preloadN: limitsSchema,
  flatsFriction: limitsSchema,
  threadFriction: limitsSchema,
  flats: z.enum(['greased', 'dry', 'unknown']),
  thread: z.string(),
  lubrication: z.enum(['lubricated', 'dry', 'unknown']),
});

const sheetDrawingSchema: z.ZodType<SheetDrawing> = z.strictObject({
  narrowSvg: z.string(),
  wideSvg: z.string(),
  description: z.string(),
});

/** Schema of a {@link SeatPart}. */
export const seatPartSchema: z.ZodType<SeatPart> = z.strictObject({
  lead: seatWaySchema,
  others: z.array(otherWaySchema),
  mate: mateResultSchema,
  drawing: sheetDrawingSchema,
  chances: z
    .strictObject({
      verdicts: z.array(z.strictObject({ verdict: seatVerdict, probability: z.number().min(0).max(1) })),
      samples: z.int(),
      seed: z.int(),
      drawing: sheetDrawingSchema,
    })
    .exactOptional(),
});

/** Schema of a {@link Provenance}. */
export const provenanceSchema: z.ZodType<Provenance> = z.strictObject({
  versions: z.record(z.string(), z.string()),
  dataEdition: z.string(),
  sources: z.array(z.string()),
});

const state = z.enum(['fits', 'does-not-fit', 'cannot-tell']);

/** Schema of a {@link DiagnosisPart}. */
export const diagnosisPartSchema: z.ZodType<DiagnosisPart> = z.strictObject({
  result: diagnosisSchema,
  comparison: sideComparisonSchema.exactOptional(),
});

/** Schema of a {@link JudgedCandidate}. */
export const judgedCandidateSchema: z.ZodType<JudgedCandidate> = z.strictObject({
  name: z.string(),
  interface: z.string(),
  state,
  missingFact: z.string().exactOptional(),
  seat: z
    .strictObject({
      lead: seatWaySchema,
      others: z.array(otherWaySchema),
      mate: mateResultSchema,
      drawing: sheetDrawingSchema.exactOptional(),
    })
    .exactOptional(),
  mate: mateResultSchema.exactOptional(),
});

const wrenchPlanSchema: z.ZodType<WrenchPlan> = z.strictObject({
  unit: z.enum(['Nm', 'lbf.in', 'lbf.ft', 'kgf.cm']),
  target: z.number(),
  reach: z.enum(['direct', 'with-extension', 'other-wrench']),
  setting: z.number().exactOptional(),
  extensionLengthMm: z.number().exactOptional(),
});

/** Schema of a {@link TighteningPart}. */
export const tighteningPartSchema: z.ZodType<TighteningPart> = z.strictObject({
  press: pressPlanSchema,
  strength: z.strictObject({
    propertyClass: z.string(),
    read: z.boolean(),
    limitTorqueNm: limitsSchema,
    limitPreloadN: z.number(),
    state: z.enum(['within', 'within-if-friction-is-not-low', 'exceeded', 'unknown']),
  }),
  wrench: wrenchPlanSchema.exactOptional(),
  fixing: fixingCheckSchema.exactOptional(),
  settling: z
    .strictObject({
      tighteningTurns: limitsSchema,
      solidBoltTurns: limitsSchema,
      preloadAfterShakedownN: limitsSchema,
      preloadLossPerMicrometreN: limitsSchema,
    })
    .exactOptional(),
  findings: z.array(findingSchema),
});

/** Schema of a {@link FasteningPlan}. */
export const fasteningPlanSchema: z.ZodType<FasteningPlan> = z.strictObject({
  by: z.enum(['centre-bolt-or-nut', 'pinch-bolts', 'cotters', 'none']),
  torqueFrom: z.enum(['part-maker', 'trade-range', 'not-known', 'no-torque']),
  torqueNm: limitsSchema.exactOptional(),
  tradeTorques: z.array(statedTorqueSchema),
  preloadN: limitsSchema.exactOptional(),
  threadFriction: limitsSchema,
  lubrication: z.enum(['lubricated', 'dry', 'unknown']),
  thread: z.string().exactOptional(),
  wrench: wrenchPlanSchema.exactOptional(),
  steps: z.array(z.string()),
});

/** Schema of a {@link JointPart}. */
export const jointPartSchema: z.ZodType<JointPart> = z.strictObject({
  interface: z.string(),
  family: z.enum([
    'square-taper',
    'spline-10',
    'spline-8',
    'spline-48',
    'face-spline',
    'through-spindle',
    'cottered',
    'one-piece',
  ]),
  mate: mateResultSchema.exactOptional(),
  fastening: fasteningPlanSchema,
  clamp: pinchClampSchema.exactOptional(),
  spline: splinePressSchema.exactOptional(),
  cotter: cotterWedgeSchema.exactOptional(),
  faceTeeth: faceSplineSchema.exactOptional(),
  bar: onePieceCrankSchema.exactOptional(),
  notHere: z.array(z.strictObject({ what: z.string(), why: z.string() })),
  findings: z.array(findingSchema),
});

/** Schema of a {@link WhatIfRow}. */
export const whatIfRowSchema: z.ZodType<WhatIfRow> = z.strictObject({
  name: z.string(),
  changed: z.array(z.string()),
  state,
  doNotRide: z.boolean(),
  verdict: seatVerdict.exactOptional(),
  endGapMm: limitsSchema.nullable().exactOptional(),
  shoulderGapMm: limitsSchema.nullable().exactOptional(),
  mate: z.enum(['mates', 'mates-with-shift', 'starts-then-fails', 'does-not-mate', 'unknown']).exactOptional(),
  torqueNm: limitsSchema.exactOptional(),
  preloadN: limitsSchema.exactOptional(),
});

/** Schema of a {@link JobSheet}. */
export const jobSheetSchema: z.ZodType<JobSheet> = z.strictObject({
  format: z.literal('spindlewright-sheet-1'),
  title: z.string(),
  date: z.iso.date(),
  invented: z.boolean(),
  bike: z.string(),
  side: z.enum(['drive', 'non-drive']),
  state,
  missingFact: z.string().exactOptional(),
  doNotRide: z.boolean(),
  answer: z.string(),
  headline: z.string(),
  forOwner: z.array(z.string()),
  diagnosis: diagnosisPartSchema.exactOptional(),
  identification: spindleIdentificationSchema.exactOptional(),
  seat: seatPartSchema.exactOptional(),
  candidates: z.array(judgedCandidateSchema),
  tightening: tighteningPartSchema.exactOptional(),
  joint: jointPartSchema.exactOptional(),
  whatIf: z.array(whatIfRowSchema).exactOptional(),
  cost: z
    .strictObject({
      unit: z.string(),
      sides: z.array(
        z.strictObject({
          side: z.enum(['drive', 'non-drive', 'both']),
          action,
          minutes: z.number().exactOptional(),
          work: amount.exactOptional(),
          parts: z.array(z.strictObject({ part: soldPart, price: amount.exactOptional() })),
          total: amount,
        }),
      ),
      checkMinutes: z.number(),
      checks: amount,
      totalMinutes: z.number(),
      total: amount,
      missing: z.array(z.string()),
    })
    .exactOptional(),
  findings: z.array(findingSchema),
  cautions: z.array(z.string()),
  sections: z.array(sectionSchema),
  provenance: provenanceSchema,
});

/**
 * Gives the JSON Schema of a job file, for editors and other programs.
 *
 * @remarks
 * Formula: none; derived from {@link jobSchema}, draft 2020-12.
 *
 * Validity: jobs whose texts with units have been read. Ranges, contradictions between fields and readings that a joint
 * does not have are left to `readJob`: what fails the schema is wrong, what passes it may still be refused.
 *
 * Accuracy: exact.
 *
 * @returns A new JSON Schema object with `$id` `urn:spindlewright:schema:job`.
 * @throws Nothing.
 * @example
 * ```ts
 * import { jobJsonSchema } from 'spindlewright/schema';
 * jobJsonSchema().$id; // => 'urn:spindlewright:schema:job'
 * ```
 * @see JSON Schema, draft 2020-12.
 */
export const jobJsonSchema = (): JsonSchema => jsonSchemaOf(jobSchema, 'job');

/**
 * Gives the JSON Schema of a job sheet, for programs that read one.
 *
 * @remarks
 * Formula: none; derived from {@link jobSheetSchema}, draft 2020-12.
 *
 * Validity: sheets as `workJob` gives them, also after a round trip through JSON.
 *
 * Accuracy: exact.
 *
 * @returns A new JSON Schema object with `$id` `urn:spindlewright:schema:job-sheet`.
 * @throws Nothing.
 * @example
 * ```ts
 * import { jobSheetJsonSchema } from 'spindlewright/schema';
 * jobSheetJsonSchema().$id; // => 'urn:spindlewright:schema:job-sheet'
 * ```
 * @see JSON Schema, draft 2020-12.
 */
export const jobSheetJsonSchema = (): JsonSchema => jsonSchemaOf(jobSheetSchema, 'job-sheet');

const partKind = z.enum(['arm', 'spindle', 'bolt', 'chainring', 'pedals', 'puller']);
const partField = z.enum([
  'partId',
  'title',
  'kind',
  'interface',
  'thread',
  'shell',
  'side',
  'armLengthMm',
  'spindleLengthMm',
  'boltCircleMm',
  'boltCount',
  'toothCount',
  'acrossFlatsAtMouthMm',
  'boreLengthMm',
  'boltSeatFromMouthMm',
  'acrossFlatsAtEndMm',
  'flatLengthMm',
  'shoulderFromEndMm',
  'faceAngleDeg',
]);

/** Schema of a {@link Need}; screening checks names against the records besides. */
export const needSchema: z.ZodType<Need> = z.strictObject({
  format: z.literal('spindlewright-need-1'),
  for: partKind,
  interface: z.string().exactOptional(),
  thread: z.string().exactOptional(),
  boltCircle: z.string().exactOptional(),
  shell: z.string().exactOptional(),
  side: z.enum(['drive', 'non-drive']).exactOptional(),
  armLengthMm: z.number().exactOptional(),
  spindleLengthMm: z.number().exactOptional(),
  spindle: spindleSchema.exactOptional(),
  arm: armSchema.exactOptional(),
  flats: z.enum(['greased', 'dry', 'unknown']).exactOptional(),
  fixing: fixingSchema.exactOptional(),
  partMakerTorqueNm: reading.exactOptional(),
});

/** Schema of a {@link Mapping}, the shop's own file. */
export const mappingSchema: z.ZodType<Mapping> = z.strictObject({
  format: z.literal('spindlewright-mapping-1'),
  note: z.string().exactOptional(),
  columns: z.partialRecord(
    partField,
    z.union([
      z.string().min(1),
      z.strictObject({
        column: z.union([z.string().min(1), z.array(z.string().min(1))]).exactOptional(),
        always: z.string().exactOptional(),
        unit: z.enum(['mm', 'cm', 'm', 'in', 'deg', 'rad']).exactOptional(),
        values: z.record(z.string(), z.string()).exactOptional(),
        separator: z.string().exactOptional(),
        digitCount: z.number().min(1).max(40).exactOptional(),
      }),
    ]),
  ),
  missing: z.array(z.string()).exactOptional(),
}) as z.ZodType<Mapping>;

const fitState = z.enum(['fits', 'does-not-fit', 'cannot-tell']);

/** Schema of a {@link ScreenedPart}. */
export const screenedPartSchema: z.ZodType<ScreenedPart> = z.strictObject({
  line: z.number(),
  partId: z.string(),
  state: z.enum(['fits', 'does-not-fit', 'cannot-tell', 'refused']),
  basis: z.enum(['names', 'sizes']).exactOptional(),
  missingFact: z.string().exactOptional(),
  reasons: z.array(findingSchema),
  predictedSeat: z
    .strictObject({
      basis: z.enum(['trial-fit', 'readings', 'published-set']),
      set: z.string(),
      verdict: seatVerdict,
      endGapMm: limitsSchema,
      shoulderGapMm: limitsSchema,
    })
    .exactOptional(),
  chainlineEffectMm: limitsSchema.exactOptional(),
});

const screenCount = z.array(z.strictObject({ what: z.string(), rowCount: z.number() }));

/** Schema of a {@link ScreenSummary}. */
export const screenSummarySchema: z.ZodType<ScreenSummary> = z.strictObject({
  rowCount: z.number(),
  fitsCount: z.number(),
  doesNotFitCount: z.number(),
  cannotTellCount: z.number(),
  refusedCount: z.number(),
  duplicateCount: z.number(),
  reasons: screenCount,
  missingFacts: screenCount,
  unmappedWords: z.array(z.strictObject({ field: partField, word: z.string(), rowCount: z.number() })),
  cautions: z.array(findingSchema),
  provenance: provenanceSchema,
});

/** Schema of {@link FitData}. */
export const fitDataSchema: z.ZodType<FitData> = z.strictObject({
  format: z.literal('spindlewright-fit-data-1'),
  dataEdition: z.string(),
  version: z.string(),
  answers: z.array(
    z.strictObject({ state: fitState, missingFact: z.string().exactOptional(), codes: z.array(z.string()) }),
  ),
  pairs: z.record(z.string(), z.number()),
  circles: z.record(z.string(), z.tuple([z.number(), z.number(), z.number()])),
  parts: z.record(
    z.string(),
    z.strictObject({
      words: z.record(z.string(), z.array(z.string())),
      numbers: z.record(z.string(), z.number()),
      doubts: z.record(z.string(), z.strictObject({ code: z.string(), received: z.string() })),
    }),
  ),
  cautions: z.array(z.string()),
}) as unknown as z.ZodType<FitData>;

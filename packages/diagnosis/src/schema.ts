/**
 * Schemas of the public inputs and results of this package.
 *
 * @packageDocumentation
 */
import { hardLimits } from '@spindlewright/quantity';
import {
  findingSchema,
  type JsonSchema,
  jsonSchemaOf,
  limitsSchema,
  measurandSchema,
} from '@spindlewright/quantity/schema';
import { z } from 'zod/v4';
import type { SideComparison, SideInput } from './compare-sides.ts';
import {
  ACTIONS,
  BESIDES,
  CAUSES,
  CHECK_OUTCOMES,
  CONDITIONS,
  MEASUREMENTS,
  MODELLED_JOINTS,
  NEED_KINDS,
  NO_ANSWERS,
} from './ids.ts';
import { NEEDS } from './model.generated.ts';
import { readingRules, readingValue } from './reading.ts';
import type {
  CheckId,
  DiagnoseInput,
  Diagnosis,
  MeasurementId,
  Measurements,
  NeedId,
  Observations,
  Probable,
} from './types.ts';

const probability = z.number().min(0).max(1);
const check = z.enum(Object.keys(CHECK_OUTCOMES) as CheckId[]);
const outcome = z.enum([...new Set(Object.values(CHECK_OUTCOMES).flat())]);
const side = z.enum(['drive', 'non-drive']);

const answersTo = <C extends CheckId>(id: C) => z.enum([...CHECK_OUTCOMES[id], ...NO_ANSWERS]);

const observationShape = Object.fromEntries(
  (Object.keys(CHECK_OUTCOMES) as CheckId[]).map((id): [CheckId, z.ZodType] => {
    const answer = answersTo(id);
    return [id, (id === 'history' ? z.union([answer, z.array(answer)]) : answer).exactOptional()];
  }),
);

/** Schema of the observations: every check may be left out, no other key may come. */
export const observationsSchema: z.ZodType<Observations> = z.strictObject(observationShape) as z.ZodType<Observations>;

/** A reading inside the range that `diagnose` takes. */
const reading = (measurement: MeasurementId) => {
  const { min = 0, max = 0, unit = '' } = readingRules().find((rule) => rule.measurement === measurement) ?? {};
  return measurandSchema
    .refine(
      (value) => {
        const { lower, upper } = hardLimits(value);
        const known = readingValue(value);
        return known >= min && known <= max && lower >= 2 * min - max && upper <= 2 * max;
      },
      { message: `a value from ${min} to ${max} ${unit}, bounds from ${2 * min - max} to ${2 * max}` },
    )
    .exactOptional();
};

/** Schema of the readings. */
export const measurementsSchema: z.ZodType<Measurements> = z.strictObject({
  endGapMm: reading('endGapMm'),
  shoulderGapMm: reading('shoulderGapMm'),
  playAngleDeg: reading('playAngleDeg'),
  markEndFromSpindleEndMm: reading('markEndFromSpindleEndMm'),
  releaseForceN: reading('releaseForceN'),
  runoutMm: reading('runoutMm'),
  torqueAtFirstMovementNm: reading('torqueAtFirstMovementNm'),
  turnsToTorque: reading('turnsToTorque'),
});

/** Schema of the input of `diagnose`. */
export const diagnoseInputSchema: z.ZodType<DiagnoseInput> = z.strictObject({
  joint: z.enum(MODELLED_JOINTS),
  side: side.exactOptional(),
  observations: observationsSchema,
  measurements: measurementsSchema.exactOptional(),
});

const ranked = <const Ids extends readonly [string, ...string[]]>(ids: Ids): z.ZodType<Probable<Ids[number]>[]> =>
  z.array(z.strictObject({ id: z.enum(ids), probability })) as z.ZodType<Probable<Ids[number]>[]>;

/** Schema of the result of `diagnose`. */
export const diagnosisSchema: z.ZodType<Diagnosis> = z.strictObject({
  joint: z.enum(MODELLED_JOINTS),
  side: side.exactOptional(),
  conditions: ranked(CONDITIONS),
  besides: ranked(BESIDES),
  causes: ranked(CAUSES),
  action: z.enum(ACTIONS),
  actions: z.array(
    z.strictObject({ id: z.enum(ACTIONS), expectedLossMinutes: z.number().min(0), admissible: z.boolean() }),
  ),
  doNotRide: z.boolean(),
  repairNeeds: z.array(
    z.strictObject({
      id: z.enum(Object.keys(NEEDS) as NeedId[]),
      kind: z.enum(NEED_KINDS),
      cause: z.enum(CAUSES).exactOptional(),
      probability,
    }),
  ),
  spindleStillGood: z.strictObject({
    state: z.enum(['good', 'not-good', 'cannot-tell']),
    probability,
    check: check.exactOptional(),
  }),
  nextChecks: z.array(
    z.strictObject({ check, gain: z.number().gt(0), minutes: z.number().gt(0), gainPerMinute: z.number().gt(0) }),
  ),
  evidence: z.array(
    z.strictObject({
      check,
      outcomes: z.array(outcome).min(1),
      measurement: z.enum(MEASUREMENTS).exactOptional(),
      logOddsRatio: z.number(),
      weight: z.enum(['strongly-for', 'for', 'hardly', 'against', 'strongly-against']),
    }),
  ),
  contradictions: z.array(findingSchema),
  cautions: z.array(findingSchema),
  findings: z.array(findingSchema),
  dataEdition: z.string().min(1),
});

const sideInputSchema: z.ZodType<SideInput> = z.strictObject({
  observations: observationsSchema,
  measurements: measurementsSchema.exactOptional(),
});

/** Schema of the input of `compareSides`. */
export const compareSidesInputSchema: z.ZodType<{
  joint: DiagnoseInput['joint'];
  drive: SideInput;
  nonDrive: SideInput;
}> = z.strictObject({ joint: z.enum(MODELLED_JOINTS), drive: sideInputSchema, nonDrive: sideInputSchema });

/** Schema of the result of `compareSides`. */
export const sideComparisonSchema: z.ZodType<SideComparison> = z.strictObject({
  drive: diagnosisSchema,
  nonDrive: diagnosisSchema,
  firstSide: z.enum(['drive', 'non-drive', 'neither']),
  action: z.enum(ACTIONS),
  doNotRide: z.boolean(),
  differences: z.array(z.strictObject({ check, drive: outcome, nonDrive: outcome })),
  readings: z.array(
    z.strictObject({ measurement: z.enum(MEASUREMENTS), difference: limitsSchema, beyondUncertainty: z.boolean() }),
  ),
  findings: z.array(findingSchema),
});

/**
 * Gives the JSON Schema of what `diagnose` takes, for editors, forms and validators outside this library.
 *
 * @remarks
 * Formula: none; derived from {@link diagnoseInputSchema} when asked for.
 *
 * Validity: draft 2020-12. It cannot say that bounds enclose a value; the zod schema checks that.
 *
 * Accuracy: exact.
 *
 * @returns A new JSON Schema object with `$id` `urn:spindlewright:schema:diagnose-input`.
 * @throws Nothing.
 * @example
 * ```ts
 * import { diagnoseInputJsonSchema } from '@spindlewright/diagnosis/schema';
 * diagnoseInputJsonSchema().$id; // => 'urn:spindlewright:schema:diagnose-input'
 * ```
 * @see JSON Schema, draft 2020-12.
 */
export function diagnoseInputJsonSchema(): JsonSchema {
  return jsonSchemaOf(diagnoseInputSchema, 'diagnose-input');
}

/**
 * Gives the JSON Schema of what `diagnose` returns.
 *
 * @remarks
 * Formula: none; derived from {@link diagnosisSchema} when asked for.
 *
 * Validity: draft 2020-12. It cannot say that probabilities sum to 1.
 *
 * Accuracy: exact.
 *
 * @returns A new JSON Schema object with `$id` `urn:spindlewright:schema:diagnosis`.
 * @throws Nothing.
 * @example
 * ```ts
 * import { diagnosisJsonSchema } from '@spindlewright/diagnosis/schema';
 * diagnosisJsonSchema().$id; // => 'urn:spindlewright:schema:diagnosis'
 * ```
 * @see JSON Schema, draft 2020-12.
 */
export function diagnosisJsonSchema(): JsonSchema {
  return jsonSchemaOf(diagnosisSchema, 'diagnosis');
}

import { z } from 'zod/v4';
import type { Datum, Standing } from './datum.ts';
import { describeValue } from './describe-value.ts';
import { DomainError } from './domain-error.ts';
import type { Finding, Severity } from './finding.ts';
import type { Limits, LimitsInput } from './limits.ts';
import type { Measurand } from './measurand.ts';
import { TRUNCATION_UNCERTAINTIES } from './numeric-issues.ts';
import type { Source } from './sources.ts';

/** Schema of {@link Limits}: finite, `lower <= nominal <= upper`. */
export const limitsSchema: z.ZodType<Limits> = z
  .strictObject({ lower: z.number(), nominal: z.number(), upper: z.number() })
  .refine((value) => value.lower <= value.nominal && value.nominal <= value.upper, {
    message: 'lower <= nominal <= upper',
    // Else what is asked of the bounds further on would be asked of bounds that are none.
    abort: true,
  });

/** Schema of a number or {@link Limits}. */
export const limitsInputSchema: z.ZodType<LimitsInput> = z.union([z.number(), limitsSchema]);

/** Schema of a {@link Measurand}: number, limits or reading with standard uncertainty. */
export const measurandSchema: z.ZodType<Measurand> = z.union([
  z.number(),
  limitsSchema,
  z
    .strictObject({ value: z.number(), standardUncertainty: z.number().min(0) })
    .refine(
      ({ value, standardUncertainty: u }) => u >= 0 && Number.isFinite(Math.abs(value) + TRUNCATION_UNCERTAINTIES * u),
      { message: 'bounds at 3 u that are finite', abort: true },
    ),
]);

const standings = [
  'standard',
  'handbook',
  'secondary',
  'measured',
  'common-practice',
  'judgement',
  'from-memory',
  'derived',
  'invented',
] as const satisfies readonly Standing[];

/** Schema of a {@link Standing}. */
export const standingSchema: z.ZodType<Standing> = z.enum(standings);

/** Standings that claim no source and so need to name none. */
export const standingsWithoutSource: readonly Standing[] = ['common-practice', 'judgement', 'from-memory', 'invented'];

/** Schema of a {@link Datum}: bounds enclose the value, and a standing that claims a source names one. */
export const datumSchema: z.ZodType<Datum> = z
  .strictObject({
    value: z.number(),
    unit: z.string().min(1),
    lower: z.number().exactOptional(),
    upper: z.number().exactOptional(),
    standing: standingSchema,
    sources: z.array(z.string().min(1)),
    set: z.string().min(1).exactOptional(),
    note: z.string().min(1).exactOptional(),
    get alternatives() {
      return z.array(datumSchema).exactOptional();
    },
  })
  .refine((datum) => (datum.lower ?? datum.value) <= datum.value && datum.value <= (datum.upper ?? datum.value), {
    message: 'lower <= value <= upper',
  })
  .refine((datum) => datum.sources.length > 0 || standingsWithoutSource.includes(datum.standing), {
    message: 'this standing needs a source',
  });

const severities = ['stop', 'caution', 'note'] as const satisfies readonly Severity[];

/** Schema of a {@link Finding}. */
export const findingSchema: z.ZodType<Finding> = z.strictObject({
  code: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  severity: z.enum(severities),
  message: z.string().min(1),
  values: z.record(z.string(), z.union([z.number(), z.string()])),
  sources: z.array(z.string()),
  path: z.string().exactOptional(),
});

/** Schema of a {@link Source} of the register. */
export const sourceSchema: z.ZodType<Source> = z.strictObject({
  id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  title: z.string().min(1),
  edition: z.string(),
  publisher: z.string(),
  locator: z.string().min(1),
  access: z.enum(['text', 'front-matter', 'quoted', 'memory', 'own']),
});

/** A JSON Schema (draft 2020-12) with its identity; further keywords by name. */
export interface JsonSchema {
  /** Address of the dialect. */
  $schema: string;
  /** `urn:spindlewright:schema:` and the name asked for. */
  $id: string;
  /** Every other keyword. */
  [keyword: string]: unknown;
}

/**
 * Derives the JSON Schema of a zod schema, under the name by which files and other programs refer to it.
 *
 * @remarks
 * Formula: none; `z.toJSONSchema` for the input side (a field with a default is optional), plus `$id`.
 *
 * Validity: schemas that JSON Schema can express; needs zod 4.3 or later, as every schema of the packages does. Rules
 * across fields, such as `lower <= nominal <= upper`, have no keyword there and are left to the zod schema and the
 * functions: what fails the JSON Schema is wrong, what passes it may still be refused.
 *
 * Accuracy: exact.
 *
 * @param schema - Any schema of a `./schema` entry.
 * @param id - Name in kebab case, such as `limits`.
 * @returns A new object; it equals its JSON round trip.
 * @throws {@link DomainError} when the name is not in kebab case or the schema holds something that JSON cannot.
 * @example
 * ```ts
 * import { jsonSchemaOf, limitsSchema } from '@spindlewright/quantity/schema';
 * const schema = jsonSchemaOf(limitsSchema, 'limits');
 * schema.$id; // => 'urn:spindlewright:schema:limits'
 * schema.required; // => ['lower', 'nominal', 'upper']
 * ```
 * @see JSON Schema, draft 2020-12, core 8.2.1 for `$id`; RFC 8141 for the form of a URN.
 */
export function jsonSchemaOf(schema: z.ZodType, id: string): JsonSchema {
  if (typeof id !== 'string' || !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id)) {
    const allowed = 'a name in kebab case, such as limits';
    throw new DomainError('jsonSchemaOf', [{ path: 'id', received: describeValue(id), allowed }]);
  }
  try {
    const { $schema, ...keywords } = z.toJSONSchema(schema, { target: 'draft-2020-12', io: 'input' });
    return { $schema: String($schema), $id: `urn:spindlewright:schema:${id}`, ...keywords };
  } catch (cause) {
    const reason = cause instanceof Error ? cause.message : describeValue(cause);
    const allowed = `a zod schema that JSON Schema can express (${reason})`;
    throw new DomainError('jsonSchemaOf', [{ path: 'schema', received: describeValue(schema), allowed }]);
  }
}

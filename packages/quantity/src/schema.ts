import { z } from 'zod/v4';
import type { Datum, Standing } from './datum.ts';
import type { Finding, Severity } from './finding.ts';
import type { Limits, LimitsInput } from './limits.ts';
import type { Measurand } from './measurand.ts';
import type { Source } from './sources.ts';

/** Schema of {@link Limits}: finite, `lower <= nominal <= upper`. */
export const limitsSchema: z.ZodType<Limits> = z
  .strictObject({ lower: z.number(), nominal: z.number(), upper: z.number() })
  .refine((value) => value.lower <= value.nominal && value.nominal <= value.upper, {
    message: 'lower <= nominal <= upper',
  });

/** Schema of a number or {@link Limits}. */
export const limitsInputSchema: z.ZodType<LimitsInput> = z.union([z.number(), limitsSchema]);

/** Schema of a {@link Measurand}: number, limits or reading with standard uncertainty. */
export const measurandSchema: z.ZodType<Measurand> = z.union([
  z.number(),
  limitsSchema,
  z.strictObject({ value: z.number(), standardUncertainty: z.number().min(0) }),
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

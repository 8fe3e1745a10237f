import { describe, expect, expectTypeOf, it } from 'vitest';
import { z } from 'zod/v4';
import type { Datum } from './datum.ts';
import { createFinding } from './finding.ts';
import { hardLimits } from './measurand.ts';
import {
  datumSchema,
  findingSchema,
  jsonSchemaOf,
  limitsInputSchema,
  limitsSchema,
  measurandSchema,
  sourceSchema,
  standingSchema,
  standingsWithoutSource,
} from './schema.ts';
import { getSource } from './sources.ts';

const datum: Datum = { value: 40, unit: 'Nm', standing: 'handbook', sources: ['shigley-9'] };
const passes = (schema: z.ZodType, value: unknown): boolean => schema.safeParse(value).success;

describe('limits and measurands', () => {
  it.each([
    { lower: 2, nominal: 1, upper: 0 },
    { value: 2, standardUncertainty: -1 },
    { value: 2, standardUncertainty: 1e308 },
  ])('asks no more of %j, which has no bounds', (value) => {
    const asked = measurandSchema.refine((measurand) => hardLimits(measurand).lower > 0);
    expect(asked.safeParse(value).success).toBe(false);
  });

  const limits = { lower: 1, nominal: 2, upper: 3 };

  it.each<[string, z.ZodType, unknown, boolean]>([
    ['limits', limitsSchema, limits, true],
    ['limits of one value', limitsSchema, { lower: 2, nominal: 2, upper: 2 }, true],
    ['crossed below', limitsSchema, { lower: 2.1, nominal: 2, upper: 3 }, false],
    ['crossed above', limitsSchema, { lower: 1, nominal: 3.1, upper: 3 }, false],
    ['one key more', limitsSchema, { ...limits, unit: 'mm' }, false],
    ['one key less', limitsSchema, { lower: 1, upper: 3 }, false],
    ['not a number', limitsSchema, { ...limits, upper: Number.NaN }, false],
    ['not finite', limitsSchema, { ...limits, upper: Number.POSITIVE_INFINITY }, false],
    ['a number as limits', limitsSchema, 2, false],
    ['a number as input', limitsInputSchema, 2, true],
    ['limits as input', limitsInputSchema, limits, true],
    ['a reading as input', limitsInputSchema, { value: 2, standardUncertainty: 1 }, false],
    ['a number as measurand', measurandSchema, 2, true],
    ['limits as measurand', measurandSchema, limits, true],
    ['a reading', measurandSchema, { value: 2, standardUncertainty: 0 }, true],
    ['a negative uncertainty', measurandSchema, { value: 2, standardUncertainty: -1 }, false],
    ['a reading without finite bounds', measurandSchema, { value: 2, standardUncertainty: 1e308 }, false],
    ['a text', measurandSchema, '2', false],
    ['not a number as measurand', measurandSchema, Number.NaN, false],
  ])('%s', (_name, schema, value, expected) => {
    expect(passes(schema, value)).toBe(expected);
  });
});

describe('datumSchema', () => {
  it.each<[string, object, boolean]>([
    ['the least', {}, true],
    ['bounds', { lower: 34, upper: 50 }, true],
    ['bounds at the value', { lower: 40, upper: 40 }, true],
    ['everything', { set: 'a', note: 'b', alternatives: [{ ...datum, value: 50 }] }, true],
    ['alternatives of alternatives', { alternatives: [{ ...datum, alternatives: [datum] }] }, true],
    ['a lower bound above', { lower: 41 }, false],
    ['an upper bound below', { upper: 39 }, false],
    ['a value that is no number', { value: Number.NaN }, false],
    ['a bound that is null', { lower: null }, false],
    ['a bound that is undefined', { lower: undefined }, false],
    ['no unit', { unit: '' }, false],
    ['an unknown standing', { standing: 'guess' }, false],
    ['an unknown key', { value2: 1 }, false],
    ['an alternative that is faulty', { alternatives: [{ ...datum, lower: 41 }] }, false],
    ['an empty note', { note: '' }, false],
    ['an empty set', { set: '' }, false],
    ['an empty source', { sources: [''] }, false],
    ['texts of one letter', { unit: 'N', set: 'a', note: 'b', sources: ['c'] }, true],
  ])('%s', (_name, parts, expected) => {
    expect(passes(datumSchema, { ...datum, ...parts })).toBe(expected);
  });

  it.each([
    ['standard', false],
    ['handbook', false],
    ['secondary', false],
    ['measured', false],
    ['derived', false],
    ['common-practice', true],
    ['judgement', true],
    ['from-memory', true],
    ['invented', true],
  ] as const)('a datum of standing %s without a source passes: %s', (standing, expected) => {
    expect(passes(standingSchema, standing)).toBe(true);
    expect(passes(datumSchema, { ...datum, standing, sources: [] })).toBe(expected);
    expect(standingsWithoutSource.includes(standing)).toBe(expected);
    expect(passes(datumSchema, { ...datum, standing })).toBe(true);
  });
});

describe('findingSchema and sourceSchema', () => {
  it('take what the package makes', () => {
    const finding = createFinding({ code: 'a-b', severity: 'stop', template: '{x}', values: { x: 1 }, path: 'a' });
    expect(findingSchema.parse(finding)).toEqual(finding);
    expect(passes(findingSchema, { ...finding, message: 'x' })).toBe(true);
    expect(passes(sourceSchema, { ...getSource('shigley-9'), title: 'x', locator: 'y', id: 'z' })).toBe(true);
    expect(passes(sourceSchema, getSource('shigley-9'))).toBe(true);
  });

  it.each<[object]>([
    [{ code: 'A' }],
    [{ severity: 'warning' }],
    [{ message: '' }],
    [{ values: { x: Number.NaN } }],
    [{ values: { x: null } }],
    [{ sources: [1] }],
    [{ path: undefined }],
    [{ extra: 1 }],
  ])('refuse a finding with %o', (change) => {
    const finding = createFinding({ code: 'a-b', severity: 'stop', template: 'x' });
    expect(passes(findingSchema, { ...finding, ...change })).toBe(false);
  });

  it.each<[object]>([[{ id: 'Shigley' }], [{ title: '' }], [{ locator: '' }], [{ access: 'seen' }], [{ extra: 1 }]])(
    'refuse a source with %o',
    (change) => {
      expect(passes(sourceSchema, { ...getSource('shigley-9'), ...change })).toBe(false);
    },
  );
});

describe('jsonSchemaOf', () => {
  it('writes limits as draft 2020-12 with the id of the project', () => {
    expect(jsonSchemaOf(limitsSchema, 'limits')).toEqual({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      $id: 'urn:spindlewright:schema:limits',
      type: 'object',
      properties: { lower: { type: 'number' }, nominal: { type: 'number' }, upper: { type: 'number' } },
      required: ['lower', 'nominal', 'upper'],
      additionalProperties: false,
    });
  });

  it('points from the alternatives of a datum to the datum', () => {
    expect(jsonSchemaOf(datumSchema, 'datum')).toMatchObject({
      properties: { alternatives: { type: 'array', items: { $ref: '#' } } },
      required: ['value', 'unit', 'standing', 'sources'],
    });
  });

  it('counts a field with a default as optional', () => {
    const schema = z.strictObject({ samples: z.number().default(1000) });
    expect(jsonSchemaOf(schema, 'sampling').required).toBeUndefined();
  });

  it.each([
    ['limits-input', limitsInputSchema],
    ['measurand', measurandSchema],
    ['datum', datumSchema],
    ['finding', findingSchema],
    ['source', sourceSchema],
    ['standing', standingSchema],
  ] as const)('%s equals its JSON round trip', (id, schema) => {
    const json = jsonSchemaOf(schema, id);
    expect(JSON.parse(JSON.stringify(json))).toEqual(json);
    expect(structuredClone(json)).toEqual(json);
    expect(Object.keys(json).slice(0, 2)).toEqual(['$schema', '$id']);
  });

  it.each<[unknown, string]>([
    ['', '""'],
    ['Limits', '"Limits"'],
    ['limits input', '"limits input"'],
    ['-limits', '"-limits"'],
    ['urn:spindlewright:schema:limits', '"urn:spindlewright:schema:limits"'],
    [undefined, 'nothing'],
  ])('refuses the name %o', (id, received) => {
    expect(() => jsonSchemaOf(limitsSchema, id as string)).toThrow(
      expect.objectContaining({
        name: 'DomainError',
        issues: [{ path: 'id', received, allowed: 'a name in kebab case, such as limits' }],
      }) as Error,
    );
  });

  it.each<[string, unknown]>([
    ['a date', z.date()],
    ['a bigint', z.bigint()],
    ['no schema', {}],
    ['nothing', undefined],
  ])('refuses %s', (_name, schema) => {
    expect(() => jsonSchemaOf(schema as z.ZodType, 'x')).toThrow(
      expect.objectContaining({ name: 'DomainError', path: 'schema' }) as Error,
    );
  });
});

describe('the types of the schemas', () => {
  it('are those of the interfaces', () => {
    expectTypeOf(datumSchema.parse(datum)).toEqualTypeOf<Datum>();
    expectTypeOf(jsonSchemaOf(limitsSchema, 'limits').$id).toBeString();
  });
});

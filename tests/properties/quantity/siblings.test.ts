// Every way to check a value has to say the same: the functions, checkInput and the zod schemas.
import { checkInput, createFinding, type Datum, hardLimits, isDomainError, limitsOf } from '@spindlewright/quantity';
import { datumSchema, findingSchema, limitsInputSchema, measurandSchema } from '@spindlewright/quantity/schema';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bounded } from './arbitraries.ts';

/** Numbers and things that are often taken for numbers, the faulty ones frequent. */
const part = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: -3, max: 3 }) },
  { weight: 2, arbitrary: bounded },
  {
    weight: 1,
    arbitrary: fc.constantFrom<unknown>(Number.NaN, Number.POSITIVE_INFINITY, -0, '1', null, true, [], {}, 1n),
  },
);

/** Objects with the keys of limits and readings, one missing, one too many or one misspelt now and then. */
const candidate: fc.Arbitrary<unknown> = fc.oneof(
  part,
  fc.record({ lower: part, nominal: part, upper: part }),
  fc.record({ value: part, standardUncertainty: part }),
  fc.record({ lower: part, nominal: part, upper: part, value: part }, { requiredKeys: [] }),
  fc.record({ value: part, standardUncertainty: part, unit: fc.constant('mm') }, { requiredKeys: ['value'] }),
  fc.anything(),
);

/** Whether a call accepts; anything thrown but a DomainError is a fault of its own. */
function accepts(call: () => unknown): boolean {
  try {
    call();
    return true;
  } catch (error) {
    if (isDomainError(error)) return false;
    throw error;
  }
}

const byFields = (type: 'limits' | 'measurand', field: unknown): boolean =>
  accepts(() => checkInput({ where: 'test', value: { field }, fields: { field: { type, unit: 'mm' } } }));

describe('checkInput and the schemas', () => {
  it('agree on limits', () => {
    fc.assert(
      fc.property(candidate, (value) => {
        expect(byFields('limits', value)).toBe(limitsInputSchema.safeParse(value).success);
      }),
      { numRuns: 1000 },
    );
  });

  it('agree on measurands, and hardLimits with both', () => {
    fc.assert(
      fc.property(candidate, (value) => {
        const expected = measurandSchema.safeParse(value).success;
        expect(byFields('measurand', value)).toBe(expected);
        expect(accepts(() => hardLimits(value as number))).toBe(expected);
      }),
      { numRuns: 1000 },
    );
  });

  it('agree on a reading whose bounds overflow', () => {
    const reading = { value: 0, standardUncertainty: 1e308 };
    expect(measurandSchema.safeParse(reading).success).toBe(false);
    expect(byFields('measurand', reading)).toBe(false);
    expect(accepts(() => hardLimits(reading))).toBe(false);
  });
});

describe('limitsOf and datumSchema', () => {
  it('agree on value and bounds', () => {
    const bounds = fc.record({ value: part, lower: part, upper: part }, { requiredKeys: ['value'] });
    fc.assert(
      fc.property(bounds, (numbers) => {
        const datum = { unit: 'mm', standing: 'invented', sources: [], ...numbers };
        expect(accepts(() => limitsOf(datum as unknown as Datum))).toBe(datumSchema.safeParse(datum).success);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('createFinding and findingSchema', () => {
  // zod leaves out a key of this name unread; a finding keeps it like any other.
  const name = fc.string().filter((key) => key !== '__proto__');
  const text = fc.oneof(fc.constantFrom<unknown>('', 'a', 'end-gap', 'End', 'a-', 5, null), fc.string());
  const parts = fc.record(
    {
      code: text,
      severity: fc.constantFrom<unknown>('stop', 'caution', 'note', 'warning', 1),
      template: fc.constantFrom<unknown>('Gap {endGapMm:1} mm.', '', 3),
      values: fc.oneof(fc.dictionary(name, part), fc.constantFrom<unknown>(null, 3)),
      sources: fc.oneof(fc.array(fc.constantFrom<unknown>('shigley-9', 'nist-sp-811')), fc.constant<unknown>('x')),
      path: text,
    },
    { requiredKeys: ['code', 'severity', 'template'] },
  );

  it('agree on what a finding may hold', () => {
    fc.assert(
      fc.property(parts, (input) => {
        const { template, ...rest } = input;
        // A finding as it would come out if nothing were checked.
        const unchecked = { values: {}, sources: [], ...rest, message: template };
        const expected = findingSchema.safeParse(unchecked).success;
        expect(accepts(() => createFinding(input as Parameters<typeof createFinding>[0]))).toBe(expected);
      }),
      { numRuns: 1000 },
    );
  });

  it('agree on what comes out', () => {
    fc.assert(
      fc.property(
        fc.dictionary(name, fc.oneof(bounded, fc.string())),
        fc.string({ minLength: 1 }),
        (values, template) => {
          const finding = createFinding({ code: 'x', severity: 'note', template, values });
          expect(findingSchema.parse(finding)).toEqual(finding);
        },
      ),
    );
  });
});

import { describe, expect, it } from 'vitest';
import type { DomainIssue } from './domain-error.ts';
import { describeNumeric, type NumericSpec, numericIssues } from './numeric-issues.ts';

const one = (value: unknown, spec: NumericSpec): DomainIssue[] => numericIssues(value, spec, 'field');

describe('a number', () => {
  it.each<[NumericSpec, number[], number[]]>([
    [{ type: 'number', unit: 'mm' }, [-1e300, 0, -0, 5e-324], []],
    [{ type: 'number', unit: 'mm', min: 1 }, [1, 1 + Number.EPSILON], [1 - Number.EPSILON, -1]],
    [{ type: 'number', unit: 'mm', above: 1 }, [1 + Number.EPSILON], [1, 0]],
    [{ type: 'number', unit: 'mm', max: 1 }, [1, -1e300], [1 + Number.EPSILON]],
    [{ type: 'number', unit: 'mm', above: 0, max: 1 }, [5e-324, 1], [0, -0, 1.1]],
  ])('of %o accepts %o and refuses %o', (spec, accepted, refused) => {
    for (const value of accepted) expect(one(value, spec), String(value)).toEqual([]);
    for (const value of refused) expect(one(value, spec), String(value)).toHaveLength(1);
  });

  it.each<[unknown, string]>([
    [Number.NaN, 'NaN'],
    [Number.POSITIVE_INFINITY, 'Infinity'],
    ['2', '"2"'],
    [2n, 'a bigint'],
    [null, 'null'],
    [new Number(2), 'an empty object'],
    [{ lower: 1, nominal: 1, upper: 1 }, 'an object with lower, nominal, upper'],
    [{ value: 1, standardUncertainty: 0 }, 'an object with value, standardUncertainty'],
  ])('is not %o', (value, received) => {
    expect(one(value, { type: 'number', unit: 'mm' })).toEqual([
      { path: 'field', received, allowed: 'a finite number mm' },
    ]);
  });

  it.each<[NumericSpec, string]>([
    [{ type: 'number', unit: '' }, 'a finite number'],
    [{ type: 'number', unit: 'mm', min: 0 }, 'a finite number from 0 mm'],
    [{ type: 'number', unit: 'mm', above: 0 }, 'a finite number above 0 mm'],
    [{ type: 'number', unit: 'mm', max: 5 }, 'a finite number of at most 5 mm'],
    [{ type: 'number', unit: '', min: 0, max: 1 }, 'a finite number from 0 to 1'],
    [{ type: 'limits', unit: 'mm', above: 0 }, 'a finite number above 0 mm or { lower, nominal, upper } of such'],
    [
      { type: 'measurand', unit: 'mm', max: 5 },
      'a finite number of at most 5 mm, { lower, nominal, upper } or { value, standardUncertainty } of such',
    ],
  ])('of %o reads in words', (spec, allowed) => {
    expect(one(Symbol('x'), spec)).toEqual([{ path: 'field', received: 'a symbol', allowed }]);
  });
});

describe('limits and measurands', () => {
  const limitsSpec = { type: 'limits', unit: 'mm', min: 0, max: 10 } as const;
  const measurandSpec = { type: 'measurand', unit: 'mm', min: 0, max: 10 } as const;

  it.each<[unknown]>([[0], [10], [{ lower: 0, nominal: 5, upper: 10 }], [{ lower: 3, nominal: 3, upper: 3 }]])(
    'accept %o',
    (value) => {
      expect(one(value, limitsSpec)).toEqual([]);
      expect(one(value, measurandSpec)).toEqual([]);
    },
  );

  it('take a reading as a measurand only', () => {
    const reading = { value: 5, standardUncertainty: 1 };
    expect(one(reading, measurandSpec)).toEqual([]);
    expect(one(reading, limitsSpec)).toEqual([
      {
        path: 'field',
        received: 'an object with value, standardUncertainty',
        allowed: 'a finite number from 0 to 10 mm or { lower, nominal, upper } of such',
      },
    ]);
  });

  it.each<[object, [string, string][]]>([
    [
      { lower: -1, nominal: 5, upper: 11 },
      [
        ['field.lower', '-1'],
        ['field.upper', '11'],
      ],
    ],
    [{ lower: 0, nominal: 5, upper: 10.1 }, [['field.upper', '10.1']]],
    [
      { lower: -5, nominal: -4, upper: -3 },
      [
        ['field.lower', '-5'],
        ['field.upper', '-3'],
      ],
    ],
  ])('refuse the bounds of %o that lie outside', (value, expected) => {
    const allowed = 'a finite number from 0 to 10 mm';
    expect(one(value, measurandSpec)).toEqual(expected.map(([path, received]) => ({ path, received, allowed })));
  });

  it('refuse bounds that are no numbers or crossed', () => {
    expect(one({ lower: '1', nominal: Number.NaN, upper: 2 }, limitsSpec)).toEqual([
      { path: 'field.lower', received: '"1"', allowed: 'a finite number' },
      { path: 'field.nominal', received: 'NaN', allowed: 'a finite number' },
    ]);
    expect(one({ lower: null, nominal: 5, upper: 11 }, limitsSpec)).toEqual([
      { path: 'field.lower', received: 'null', allowed: 'a finite number' },
    ]);
    expect(one({ lower: 2, nominal: 1, upper: 3 }, limitsSpec)).toEqual([
      { path: 'field', received: 'lower 2, nominal 1, upper 3', allowed: 'lower <= nominal <= upper' },
    ]);
  });

  it.each<[unknown]>([
    [{ lower: 1, upper: 2 }],
    [{ nominal: 1, plusMinus: 1 }],
    [{ lower: 1, nominal: 1, uper: 2 }],
    [{ lower: 1, nominal: 1, upper: 2, unit: 'mm' }],
    [{ value: 1 }],
    [{ value: 1, standardUncertainty: 1, k: 2 }],
    [[1, 2]],
    ['5'],
  ])('refuse the shape %o', (value) => {
    expect(one(value, measurandSpec).map(({ path }) => path)).toEqual(['field']);
  });

  it('ask a reading to stay inside out to three standard uncertainties', () => {
    expect(one({ value: 3, standardUncertainty: 1 }, measurandSpec)).toEqual([]);
    expect(one({ value: 7, standardUncertainty: 1 }, measurandSpec)).toEqual([]);
    const allowed = 'a finite number from 0 to 10 mm, out to 3 standard uncertainties on either side';
    expect(one({ value: 3, standardUncertainty: 1.001 }, measurandSpec)).toEqual([
      { path: 'field', received: '3 with standard uncertainty 1.001', allowed },
    ]);
    expect(one({ value: 7.001, standardUncertainty: 1 }, measurandSpec)).toHaveLength(1);
  });

  it('name the part of a reading that is wrong', () => {
    expect(one({ value: 11, standardUncertainty: -1 }, measurandSpec)).toEqual([
      { path: 'field.value', received: '11', allowed: 'a finite number from 0 to 10 mm' },
      { path: 'field.standardUncertainty', received: '-1', allowed: 'a number of at least 0' },
    ]);
    expect(one({ value: 5, standardUncertainty: Number.NaN }, measurandSpec).map(({ path }) => path)).toEqual([
      'field.standardUncertainty',
    ]);
  });
});

describe('the path', () => {
  it('begins with the field, or with nothing for the input itself', () => {
    const crossed = { lower: 2, nominal: 1, upper: 3 };
    const outside = { lower: -1, nominal: 1, upper: 3 };
    const spec = { type: 'limits', unit: 'mm', min: 0 } as const;
    expect(numericIssues(crossed, spec, '').map(({ path }) => path)).toEqual(['']);
    expect(numericIssues(outside, spec, '').map(({ path }) => path)).toEqual(['lower']);
    expect(numericIssues(outside, spec, 'a[0]').map(({ path }) => path)).toEqual(['a[0].lower']);
  });

  it('is no part of the description', () => {
    expect(describeNumeric({ type: 'limits', unit: 'mm' })).toBe(
      'a finite number mm or { lower, nominal, upper } of such',
    );
  });
});

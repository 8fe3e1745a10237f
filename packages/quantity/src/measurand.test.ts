import { describe, expect, it } from 'vitest';
import { hardLimits, type Measurand } from './measurand.ts';

const refusal = (...issues: object[]): Error => expect.objectContaining({ name: 'DomainError', issues }) as Error;
const SHAPES = 'a finite number, { lower, nominal, upper } or { value, standardUncertainty } of such';

describe('hardLimits', () => {
  it.each<[string, Measurand, [number, number, number]]>([
    ['a number', 2, [2, 2, 2]],
    ['limits', { lower: 1, nominal: 2, upper: 4 }, [1, 2, 4]],
    ['a reading', { value: 2, standardUncertainty: 0.5 }, [0.5, 2, 3.5]],
    ['a reading below zero', { value: -2, standardUncertainty: 1 }, [-5, -2, 1]],
    ['a reading without uncertainty', { value: 2, standardUncertainty: 0 }, [2, 2, 2]],
    ['a negative zero', { value: -0, standardUncertainty: 0 }, [0, 0, 0]],
  ])('takes %s', (_name, input, [lower, nominal, upper]) => {
    expect(hardLimits(input)).toEqual({ lower, nominal, upper });
  });

  it.each<[unknown, string]>([
    [Number.NaN, 'NaN'],
    ['2', '"2"'],
    [undefined, 'nothing'],
    [null, 'null'],
    [[2], 'a list of 1'],
    [{ lower: 1, upper: 2 }, 'an object with lower, upper'],
    [{ nominal: 1, plusMinus: 1 }, 'an object with nominal, plusMinus'],
    [{ standardUncertainty: 1 }, 'an object with standardUncertainty'],
    [{ value: 1, standardUncertainty: 1, unit: 'mm' }, 'an object with value, standardUncertainty, unit'],
    [{ value: 1, uncertainty: 1 }, 'an object with value, uncertainty'],
  ])('refuses the shape %o', (input, received) => {
    expect(() => hardLimits(input as number)).toThrow(refusal({ path: '', received, allowed: SHAPES }));
  });

  it.each<[unknown, string]>([
    [-0.1, '-0.1'],
    [Number.NaN, 'NaN'],
    [Number.POSITIVE_INFINITY, 'Infinity'],
    ['1', '"1"'],
    [null, 'null'],
    [1n, 'a bigint'],
  ])('refuses an uncertainty of %o', (standardUncertainty, received) => {
    expect(() => hardLimits({ value: 1, standardUncertainty } as Measurand)).toThrow(
      refusal({ path: 'standardUncertainty', received, allowed: 'a number of at least 0' }),
    );
  });

  it('names the reading that is no number', () => {
    expect(() => hardLimits({ value: '1', standardUncertainty: -1 } as unknown as Measurand)).toThrow(
      refusal(
        { path: 'value', received: '"1"', allowed: 'a finite number' },
        { path: 'standardUncertainty', received: '-1', allowed: 'a number of at least 0' },
      ),
    );
  });

  it('refuses an uncertainty that leaves no finite bounds', () => {
    expect(() => hardLimits({ value: 0, standardUncertainty: 1e308 })).toThrow(
      refusal({
        path: '',
        received: '0 with standard uncertainty 1e+308',
        allowed: 'a finite number, out to 3 standard uncertainties on either side',
      }),
    );
    expect(hardLimits({ value: 0, standardUncertainty: 1e307 }).upper).toBe(3e307);
  });

  it('refuses crossed limits', () => {
    expect(() => hardLimits({ lower: 2, nominal: 1, upper: 3 })).toThrow(
      refusal({ path: '', received: 'lower 2, nominal 1, upper 3', allowed: 'lower <= nominal <= upper' }),
    );
  });
});

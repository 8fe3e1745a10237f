import { describe, expect, it } from 'vitest';
import { type LimitsSpelling, limits } from './limits.ts';

const MAX = Number.MAX_VALUE;
const refusal = (...issues: object[]): Error => expect.objectContaining({ name: 'DomainError', issues }) as Error;
const SHAPES = 'a finite number, { lower, upper }, { lower, nominal, upper } or { nominal, plusMinus }';

describe('limits', () => {
  it.each<[string, LimitsSpelling, [number, number, number]]>([
    ['a number', 2, [2, 2, 2]],
    ['a negative number', -2, [-2, -2, -2]],
    ['two bounds', { lower: 1, upper: 4 }, [1, 2.5, 4]],
    ['two equal bounds', { lower: 3, upper: 3 }, [3, 3, 3]],
    ['bounds over zero', { upper: 2, lower: -1 }, [-1, 0.5, 2]],
    ['the widest bounds of all', { lower: -MAX, upper: MAX }, [-MAX, 0, MAX]],
    ['the smallest bounds of all', { lower: 5e-324, upper: 5e-324 }, [5e-324, 5e-324, 5e-324]],
    ['neighbouring bounds', { lower: 1, upper: 1 + Number.EPSILON }, [1, 1, 1 + Number.EPSILON]],
    ['a tolerance', { nominal: 12.5, plusMinus: 0.25 }, [12.25, 12.5, 12.75]],
    ['no tolerance', { nominal: 12.5, plusMinus: 0 }, [12.5, 12.5, 12.5]],
    ['limits', { lower: 1, nominal: 1, upper: 2 }, [1, 1, 2]],
    ['limits in another order of keys', { upper: 2, nominal: 2, lower: 1 }, [1, 2, 2]],
  ])('takes %s', (_name, input, [lower, nominal, upper]) => {
    expect(limits(input)).toEqual({ lower, nominal, upper });
  });

  it('turns negative zeros into 0', () => {
    const zero = { lower: 0, nominal: 0, upper: 0 };
    expect(limits(-0)).toEqual(zero);
    expect(limits({ lower: -0, upper: -0 })).toEqual(zero);
    expect(limits({ lower: -0, nominal: -0, upper: -0 })).toEqual(zero);
    expect(limits({ nominal: -0, plusMinus: 0 })).toEqual(zero);
  });

  it('gives a new object and leaves the input alone', () => {
    const input = Object.freeze({ lower: 1, nominal: 2, upper: 3 });
    const result = limits(input);
    expect(result).not.toBe(input);
    expect(result).toEqual(input);
  });

  it.each<[unknown, string]>([
    [Number.NaN, 'NaN'],
    [Number.POSITIVE_INFINITY, 'Infinity'],
    ['2', '"2"'],
    [undefined, 'nothing'],
    [null, 'null'],
    [2n, 'a bigint'],
    [true, 'true'],
    [[1, 2, 3], 'a list of 3'],
    [{}, 'an empty object'],
    [{ lower: 1 }, 'an object with lower'],
    [{ lower: 1, nominal: 2 }, 'an object with lower, nominal'],
    [{ lower: 1, upper: 2, unit: 'mm' }, 'an object with lower, upper, unit'],
    [{ nominal: 1, plusMinus: 1, lower: 0 }, 'an object with nominal, plusMinus, lower'],
    [{ value: 1, standardUncertainty: 1 }, 'an object with value, standardUncertainty'],
  ])('refuses the shape %o', (input, received) => {
    expect(() => limits(input as number)).toThrow(refusal({ path: '', received, allowed: SHAPES }));
  });

  it('is not taken in by one key that reads like two', () => {
    expect(() => limits({ 'lower,upper': 1 } as unknown as number)).toThrow(
      refusal(
        { path: 'lower', received: 'nothing', allowed: 'a finite number' },
        { path: 'upper', received: 'nothing', allowed: 'a finite number' },
      ),
    );
  });

  it.each<[unknown, string, string]>([
    [{ lower: Number.NaN, upper: 2 }, 'lower', 'NaN'],
    [{ lower: 1, upper: '2' }, 'upper', '"2"'],
    [{ lower: 1n, upper: 2 }, 'lower', 'a bigint'],
    [{ lower: 1, nominal: null, upper: 2 }, 'nominal', 'null'],
    [{ lower: 1, nominal: 1, upper: Number.POSITIVE_INFINITY }, 'upper', 'Infinity'],
    [{ nominal: '5', plusMinus: 1 }, 'nominal', '"5"'],
    [{ nominal: 5n, plusMinus: 1 }, 'nominal', 'a bigint'],
    [{ nominal: Symbol('x'), plusMinus: 1 }, 'nominal', 'a symbol'],
    [{ nominal: undefined, plusMinus: 1 }, 'nominal', 'nothing'],
  ])('refuses %o for %s', (input, path, received) => {
    expect(() => limits(input as number)).toThrow(refusal({ path, received, allowed: 'a finite number' }));
  });

  it('reports each bound that is no number', () => {
    expect(() => limits({ lower: Number.NaN, nominal: 1, upper: Number.NaN })).toThrow(
      refusal(
        { path: 'lower', received: 'NaN', allowed: 'a finite number' },
        { path: 'upper', received: 'NaN', allowed: 'a finite number' },
      ),
    );
  });

  it.each<[unknown, string]>([
    [-0.1, '-0.1'],
    [Number.NaN, 'NaN'],
    [Number.POSITIVE_INFINITY, 'Infinity'],
    ['1', '"1"'],
    [1n, 'a bigint'],
    [MAX, String(MAX)],
  ])('refuses a tolerance of %o', (plusMinus, received) => {
    expect(() => limits({ nominal: -MAX, plusMinus: plusMinus as number })).toThrow(
      refusal({ path: 'plusMinus', received, allowed: 'a number of at least 0 that keeps the bounds finite' }),
    );
  });

  it('refuses crossed bounds, by as little as one unit in the last place', () => {
    expect(() => limits({ lower: 1 + Number.EPSILON, upper: 1 })).toThrow(
      refusal({ path: '', received: 'lower 1.0000000000000002, upper 1', allowed: 'lower <= upper' }),
    );
    expect(() => limits({ lower: 1, nominal: 3, upper: 2 })).toThrow(
      refusal({ path: '', received: 'lower 1, nominal 3, upper 2', allowed: 'lower <= nominal <= upper' }),
    );
    expect(() => limits({ lower: 2, nominal: 1, upper: 3 })).toThrow('lower <= nominal <= upper');
  });
});

import { describe, expect, it } from 'vitest';
import { type Datum, limitsOf } from './datum.ts';

const datum = (parts: object): Datum => ({ value: 40, unit: 'Nm', standing: 'invented', sources: [], ...parts });
const refusal = (...issues: object[]): Error => expect.objectContaining({ name: 'DomainError', issues }) as Error;

describe('limitsOf', () => {
  it.each<[string, object, [number, number, number]]>([
    ['no bounds', {}, [40, 40, 40]],
    ['both bounds', { lower: 34, upper: 50 }, [34, 40, 50]],
    ['a lower bound alone', { lower: 34 }, [34, 40, 40]],
    ['an upper bound alone', { upper: 50 }, [40, 40, 50]],
    ['bounds at the value', { lower: 40, upper: 40 }, [40, 40, 40]],
    ['bounds that are undefined', { lower: undefined, upper: undefined }, [40, 40, 40]],
    ['a lower bound of 0', { lower: 0 }, [0, 40, 40]],
  ])('takes %s', (_name, parts, [lower, nominal, upper]) => {
    expect(limitsOf(datum(parts))).toEqual({ lower, nominal, upper });
  });

  it('never merges what other sources say', () => {
    const alternatives = [datum({ value: 20, lower: 10 }), datum({ value: 60 })];
    expect(limitsOf(datum({ lower: 38, upper: 42, alternatives }))).toEqual({ lower: 38, nominal: 40, upper: 42 });
  });

  it.each<[unknown, string]>([
    [undefined, 'nothing'],
    [null, 'null'],
    [40, '40'],
    ['40 Nm', '"40 Nm"'],
  ])('refuses %o', (input, received) => {
    expect(() => limitsOf(input as Datum)).toThrow(
      refusal({ path: '', received, allowed: 'a datum with value, unit and standing' }),
    );
  });

  it.each<[object, string, string]>([
    [{ value: Number.NaN }, 'value', 'NaN'],
    [{ value: undefined }, 'value', 'nothing'],
    [{ value: '40' }, 'value', '"40"'],
    [{ value: 40n }, 'value', 'a bigint'],
    [{ lower: null }, 'lower', 'null'],
    [{ upper: Number.POSITIVE_INFINITY }, 'upper', 'Infinity'],
  ])('refuses %o for its %s', (parts, path, received) => {
    expect(() => limitsOf(datum(parts))).toThrow(refusal({ path, received, allowed: 'a finite number' }));
  });

  it.each<[object, string, string]>([
    [{ lower: 41 }, 'lower 41, value 40', 'lower <= value'],
    [{ upper: 39 }, 'value 40, upper 39', 'value <= upper'],
    [{ lower: 30, upper: 39 }, 'lower 30, value 40, upper 39', 'lower <= value <= upper'],
  ])('refuses %o, which does not enclose the value', (parts, received, allowed) => {
    expect(() => limitsOf(datum(parts))).toThrow(refusal({ path: '', received, allowed }));
  });
});

import { describe, expect, expectTypeOf, it } from 'vitest';
import { convert } from './convert.ts';
import { isDomainError } from './domain-error.ts';
import type { Unit, UnitLike } from './units.ts';

const refusal = (issue: object): unknown => expect.objectContaining({ name: 'DomainError', issues: [issue] });
const ALL = 'mm, um, cm, m, in, N, kN, lbf, kgf, Nm, lbf.in, lbf.ft, kgf.cm, kgf.m, MPa, psi, deg, rad';

describe('convert', () => {
  // Definitions, so the doubles are met to the last bit.
  it.each<[number, Unit, Unit, number]>([
    [1, 'in', 'mm', 25.4],
    [25.4, 'mm', 'in', 1],
    [12.7, 'mm', 'in', 0.5],
    [9, 'um', 'mm', 0.009],
    [1, 'm', 'in', 5000 / 127],
    [9.80665, 'N', 'kgf', 1],
    [4.4482216152605, 'N', 'lbf', 1],
    [1, 'lbf.ft', 'lbf.in', 12],
    [60, 'lbf.in', 'lbf.ft', 5],
    [1, 'kgf.m', 'kgf.cm', 100],
    [0.5, 'kN', 'N', 500],
    [180, 'deg', 'rad', Math.PI],
    [-2, 'cm', 'mm', -20],
    [0, 'psi', 'MPa', 0],
  ])('takes %d %s to %s', (value, from, to, expected) => {
    expect(convert(value, from, to)).toBe(expected);
  });

  it.each<[Unit, number]>([
    ['lbf', 0.1],
    ['lbf.in', -123.456],
    ['psi', 1e-300],
    ['rad', 1.7e308],
    ['mm', 5e-324],
  ])('gives a number of %s back unchanged for the same unit', (unit, value) => {
    expect(convert(value, unit, unit)).toBe(value);
  });

  it('turns a negative zero into 0, for the same unit and by underflow too', () => {
    expect(convert(-0, 'mm', 'in')).toBe(0);
    expect(convert(-0, 'mm', 'mm')).toBe(0);
    expect(convert(-5e-324, 'um', 'm')).toBe(0);
  });

  it('reaches results that are finite although the product is not', () => {
    // 1e300 psi = 6.894757293168361e297 MPa, the factor as in the table of units.
    expect(convert(1e300, 'psi', 'MPa') / 6.894757293168361e297).toBeCloseTo(1, 14);
    expect(convert(-1e300, 'psi', 'MPa')).toBeLessThan(0);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('refuses %d', (value) => {
    expect(() => convert(value, 'in', 'mm')).toThrow(
      refusal({ path: 'value', received: String(value), allowed: 'a finite number' }) as Error,
    );
  });

  it.each<[unknown, string]>([
    ['25.4', '"25.4"'],
    [undefined, 'nothing'],
    [null, 'null'],
    [1n, 'a bigint'],
    [[1], 'a list of 1'],
  ])('refuses %o as a value', (value, received) => {
    expect(() => convert(value as number, 'in', 'mm')).toThrow(
      refusal({ path: 'value', received, allowed: 'a finite number' }) as Error,
    );
  });

  it('refuses a number that does not stay finite', () => {
    expect(() => convert(1e308, 'm', 'um')).toThrow(
      refusal({ path: 'value', received: '1e+308', allowed: 'a number that stays finite in um' }) as Error,
    );
    expect(convert(1e302, 'm', 'um')).toBe(1e308);
  });

  it('refuses unknown units with the nearest id', () => {
    expect(() => convert(1, 'lbf.inn' as 'lbf.in', 'Nm')).toThrow(
      refusal({ path: 'from', received: '"lbf.inn"', allowed: ALL, nearest: 'lbf.in' }) as Error,
    );
    expect(() => convert(1, 'Nm', 'kgfcm' as 'kgf.cm')).toThrow(
      refusal({ path: 'to', received: '"kgfcm"', allowed: ALL, nearest: 'kgf.cm' }) as Error,
    );
    expect(() => convert(1, 'Nm', 'MM' as 'Nm')).toThrow(
      refusal({ path: 'to', received: '"MM"', allowed: ALL, nearest: 'mm' }) as Error,
    );
  });

  it.each<[unknown, string]>([
    ['furlong', '"furlong"'],
    ['toString', '"toString"'],
    [['mm'], 'a list of 1'],
    [undefined, 'nothing'],
    [Symbol('mm'), 'a symbol'],
  ])('refuses %o as a unit', (unit, received) => {
    expect(() => convert(1, unit as 'mm', 'mm')).toThrow(refusal({ path: 'from', received, allowed: ALL }) as Error);
    expect(() => convert(1, 'mm', unit as 'mm')).toThrow(refusal({ path: 'to', received, allowed: ALL }) as Error);
  });

  it('gives no nearest unit where none is near, rather than an undefined one', () => {
    try {
      convert(1, 'furlong' as 'mm', 'mm');
      expect.unreachable();
    } catch (error) {
      expect(isDomainError(error) && error.issues).toStrictEqual([
        { path: 'from', received: '"furlong"', allowed: ALL },
      ]);
    }
  });

  it.each<[Unit, Unit, string]>([
    ['mm', 'N', 'a unit of length: mm, um, cm, m, in'],
    ['lbf', 'lbf.in', 'a unit of force: N, kN, lbf, kgf'],
    ['kgf.m', 'kgf', 'a unit of torque: Nm, lbf.in, lbf.ft, kgf.cm, kgf.m'],
    ['psi', 'lbf', 'a unit of pressure: MPa, psi'],
    ['rad', 'mm', 'a unit of angle: deg, rad'],
  ])('refuses %s to %s', (from, to, allowed) => {
    expect(() => convert(1, from, to)).toThrow(refusal({ path: 'to', received: `"${to}"`, allowed }) as Error);
  });
});

describe('the types of convert', () => {
  it('allow units of one dimension and no others', () => {
    expectTypeOf<UnitLike<'mm'>>().toEqualTypeOf<'mm' | 'um' | 'cm' | 'm' | 'in'>();
    expectTypeOf<UnitLike<'kgf'>>().toEqualTypeOf<'N' | 'kN' | 'lbf' | 'kgf'>();
    expectTypeOf<UnitLike<'Nm'>>().toEqualTypeOf<'Nm' | 'lbf.in' | 'lbf.ft' | 'kgf.cm' | 'kgf.m'>();
    expectTypeOf<UnitLike<'psi'>>().toEqualTypeOf<'MPa' | 'psi'>();
    expectTypeOf<UnitLike<'deg'>>().toEqualTypeOf<'deg' | 'rad'>();
    expectTypeOf(convert(1, 'in', 'mm')).toBeNumber();
  });

  it('make another dimension, an unknown unit and a text a compile error', () => {
    // @ts-expect-error a length is no force
    expect(() => convert(1, 'mm', 'N')).toThrow('a unit of length');
    // @ts-expect-error a force is no torque
    expect(() => convert(1, 'kgf', 'kgf.m')).toThrow('a unit of force');
    // @ts-expect-error no such unit
    expect(() => convert(1, 'ft', 'mm')).toThrow('from');
    // @ts-expect-error ids are case-sensitive
    expect(() => convert(1, 'Nm', 'nm')).toThrow('did you mean "Nm"');
    // @ts-expect-error a text is no number
    expect(() => convert('1', 'mm', 'in')).toThrow('value');
  });
});

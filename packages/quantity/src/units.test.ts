import { describe, expect, it } from 'vitest';
import { unitFactor, unitIds } from './units.ts';

// The chain of definitions, in whole numbers of ten-thousand-millionths and the like, so that nothing is rounded:
// pound 0.45359237 kg and standard gravity 9.80665 m/s2 (NIST SP 811, appendix B.8), inch 25.4 mm.
const POUND = 45359237n; // 1e-8 kg
const GRAVITY = 980665n; // 1e-5 m/s2
const INCH = 254n; // 1e-4 m
const exact: Readonly<Record<string, readonly [bigint, bigint]>> = {
  um: [1n, 1000n],
  cm: [10n, 1n],
  m: [1000n, 1n],
  in: [INCH, 10n],
  kN: [1000n, 1n],
  lbf: [POUND * GRAVITY, 10n ** 13n],
  kgf: [GRAVITY, 10n ** 5n],
  'lbf.in': [POUND * GRAVITY * INCH, 10n ** 17n],
  'lbf.ft': [POUND * GRAVITY * INCH * 12n, 10n ** 17n],
  'kgf.cm': [GRAVITY, 10n ** 7n],
  'kgf.m': [GRAVITY, 10n ** 5n],
  psi: [POUND * GRAVITY * 10n ** 8n, 10n ** 13n * INCH * INCH * 10n ** 6n],
};
const bases = ['mm', 'N', 'Nm', 'MPa', 'deg'];

describe('the table of units', () => {
  it('holds what the public list of ids promises', () => {
    expect([...unitIds()].sort()).toEqual([...bases, ...Object.keys(exact), 'rad'].sort());
  });

  it.each(Object.entries(exact))('%s is exactly the product of its definitions', (id, [numerator, denominator]) => {
    const factor = unitFactor(id);
    expect(factor).toBeDefined();
    if (factor === undefined) return;
    // Both halves of the table are whole numbers that a double holds without rounding.
    expect([factor.numerator, factor.denominator].every(Number.isInteger)).toBe(true);
    expect(BigInt(factor.numerator) * denominator).toBe(numerator * BigInt(factor.denominator));
  });

  it.each(bases)('%s is the base unit of its dimension', (id) => {
    expect(unitFactor(id)).toMatchObject({ numerator: 1, denominator: 1 });
  });

  it('takes the radian from the double nearest to pi', () => {
    expect(unitFactor('rad')).toEqual({ dimension: 'angle', numerator: 180, denominator: Math.PI });
  });

  it.each<[string, unknown]>([
    ['an unknown id', 'furlong'],
    ['a key of the prototype', 'constructor'],
    ['a list that reads like an id', ['mm']],
    ['a number', 1],
    ['nothing', undefined],
    ['an object without prototype', Object.create(null)],
  ])('has no factor for %s', (_name, id) => {
    expect(unitFactor(id)).toBeUndefined();
  });
});

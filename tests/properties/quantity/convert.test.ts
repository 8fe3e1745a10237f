import { convert, parseQuantity, type Unit } from '@spindlewright/quantity';
import fc from 'fast-check';
import { unit as otherUnit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { files, pairs } from '../../reference/quantity/mathjs-pairs.ts';
import { readText } from '../../workspace.ts';
import { bounded, relativeDifference, unitTriple } from './arbitraries.ts';

describe('convert', () => {
  it('comes back from a round trip', () => {
    fc.assert(
      fc.property(bounded, unitTriple, (value, [a, b]) => {
        // Two conversions of at most 4.4e-16 each.
        expect(relativeDifference(convert(convert(value, a, b), b, a), value)).toBeLessThan(1e-15);
      }),
    );
  });

  it('closes every chain: by way of a third unit is as good as straight', () => {
    fc.assert(
      fc.property(bounded, unitTriple, (value, [a, b, c]) => {
        // Three conversions of at most 4.4e-16 each.
        expect(relativeDifference(convert(convert(value, a, b), b, c), convert(value, a, c))).toBeLessThan(1.4e-15);
      }),
    );
  });

  it('leaves a value in its own unit as it is', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), unitTriple, (value, [a]) => {
        expect(convert(value, a, a) === value).toBe(true);
      }),
    );
  });

  it('is odd: the sign goes through, and nothing becomes a negative zero', () => {
    fc.assert(
      // Smaller numbers than these may vanish on the way to a larger unit.
      fc.property(
        bounded.filter((value) => value === 0 || Math.abs(value) > 1e-290),
        unitTriple,
        (value, [a, b]) => {
          const converted = convert(value, a, b);
          expect(convert(-value, a, b)).toBe(0 - converted);
          expect(Math.sign(converted)).toBe(value === 0 ? 0 : Math.sign(value));
        },
      ),
    );
  });

  it('never turns the order of two values round', () => {
    fc.assert(
      fc.property(bounded, bounded, unitTriple, (x, y, [a, b]) => {
        const [low, high] = x <= y ? [x, y] : [y, x];
        expect(convert(low, a, b)).toBeLessThanOrEqual(convert(high, a, b));
      }),
    );
  });

  it('doubles with its value, exactly, as a factor must', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-200, max: 1e200, noNaN: true }), unitTriple, (value, [a, b]) => {
        expect(convert(2 * value, a, b)).toBe(2 * convert(value, a, b));
      }),
    );
  });

  it('reads back what it is written as', () => {
    fc.assert(
      fc.property(bounded, unitTriple, (value, [unit]) => {
        const plain = value === 0 ? 0 : value;
        expect(parseQuantity(`${value} ${unit}`)).toEqual({ value: plain, unit });
        expect(parseQuantity(`${String(value).replace('.', ',')}${unit}`)).toEqual({ value: plain, unit });
      }),
    );
  });

  it('takes a fraction as the quotient of its numbers', () => {
    const part = fc.integer({ min: 1, max: 999 });
    fc.assert(
      fc.property(fc.nat(99), part, part, (whole, numerator, denominator) => {
        const value = whole + numerator / denominator;
        expect(parseQuantity(`${whole} ${numerator}/${denominator} in`).value).toBe(value);
        expect(parseQuantity(`-${whole}-${numerator}/${denominator}"`).value).toBe(-value);
      }),
    );
  });
});

describe('an independent library of units', () => {
  it.each(pairs)('agrees from %s (%s) to %s (%s)', (from, source, to, target) => {
    fc.assert(
      fc.property(bounded, (value) => {
        const expected = otherUnit(value, source).toNumber(target);
        // About ten roundings on both sides together.
        expect(relativeDifference(convert(value, from as Unit, to as Unit), expected)).toBeLessThan(2e-15);
      }),
      { numRuns: 25 },
    );
  });

  it('still says what the reference rows hold', () => {
    for (const [name, file] of Object.entries(files)) {
      expect(JSON.parse(readText(`tests/reference/quantity/${name}`))).toEqual(file);
    }
  });
});

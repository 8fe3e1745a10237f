import { type Datum, hardLimits, type Limits, limits, limitsOf } from '@spindlewright/quantity';
import fc from 'fast-check';
import { erf } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { bounded, limitsValue, measurandValue } from './arbitraries.ts';

const width = fc.double({ min: 0, max: 1e12, noNaN: true });

const inOrder = ({ lower, nominal, upper }: Limits): boolean =>
  [lower, nominal, upper].every(Number.isFinite) && lower <= nominal && nominal <= upper;

describe('limits', () => {
  it('are in order and finite, whatever way they are written', () => {
    fc.assert(
      fc.property(bounded, width, limitsValue, (nominal, plusMinus, { lower, upper }) => {
        for (const spelling of [nominal, { nominal, plusMinus }, { lower, upper }]) {
          expect(inOrder(limits(spelling))).toBe(true);
        }
      }),
    );
  });

  it('are in order over the whole range of doubles, down to the subnormal', () => {
    const any = fc.double({ noNaN: true, noDefaultInfinity: true });
    const tiny = fc.integer({ min: -9, max: 9 }).map((steps) => steps * 5e-324);
    fc.assert(
      fc.property(fc.oneof(fc.tuple(any, any), fc.tuple(tiny, tiny)), ([x, y]) => {
        const result = limits({ lower: Math.min(x, y), upper: Math.max(x, y) });
        expect(inOrder(result)).toBe(true);
        expect([result.lower === Math.min(x, y), result.upper === Math.max(x, y)]).toEqual([true, true]);
      }),
    );
  });

  it('put the nominal value half way between two bounds', () => {
    fc.assert(
      fc.property(limitsValue, ({ lower, upper }) => {
        const { nominal } = limits({ lower, upper });
        const size = Math.max(Math.abs(lower), Math.abs(upper), 1e-290);
        expect(Math.abs(nominal - lower - (upper - nominal)) / size).toBeLessThan(1e-15);
      }),
    );
  });

  it('of limits are the same limits, and change sign with them', () => {
    fc.assert(
      fc.property(limitsValue, ({ lower, nominal, upper }) => {
        const same = limits({ lower, nominal, upper });
        expect(limits(same)).toEqual(same);
        expect(same.lower === lower && same.nominal === nominal && same.upper === upper).toBe(true);
        const turned = limits({ lower: -upper, nominal: -nominal, upper: -lower });
        expect(turned).toEqual({ lower: 0 - same.upper, nominal: 0 - same.nominal, upper: 0 - same.lower });
      }),
    );
  });

  it('widen with the tolerance', () => {
    fc.assert(
      fc.property(bounded, width, width, (nominal, a, b) => {
        const narrow = limits({ nominal, plusMinus: Math.min(a, b) });
        const wide = limits({ nominal, plusMinus: Math.max(a, b) });
        expect(wide.lower <= narrow.lower && narrow.upper <= wide.upper).toBe(true);
      }),
    );
  });

  it('refuse two bounds exactly when they are crossed', () => {
    fc.assert(
      fc.property(bounded, bounded, (lower, upper) => {
        if (lower <= upper) expect(limits({ lower, upper }).lower).toBe(lower + 0);
        else expect(() => limits({ lower, upper })).toThrow('lower <= upper');
      }),
    );
  });
});

describe('hardLimits', () => {
  it('enclose the value of every measurand', () => {
    fc.assert(
      fc.property(measurandValue, (measurand) => {
        const result = hardLimits(measurand);
        expect(inOrder(result)).toBe(true);
        if (typeof measurand === 'object' && 'value' in measurand) {
          const { value, standardUncertainty: u } = measurand;
          expect(result).toEqual({ lower: value - 3 * u + 0, nominal: value + 0, upper: value + 3 * u + 0 });
        } else {
          expect(result).toEqual(limits(measurand));
        }
      }),
    );
  });

  it('of hard limits are the same', () => {
    fc.assert(
      fc.property(measurandValue, (measurand) => {
        const once = hardLimits(measurand);
        expect(hardLimits(once)).toEqual(once);
      }),
    );
  });

  it('keep 99.73 % of a normal distribution, as the docstring says', () => {
    const { upper } = hardLimits({ value: 0, standardUncertainty: 1 });
    // Mass of a normal distribution within k standard deviations: erf(k / sqrt 2).
    expect(erf(upper / Math.SQRT2)).toBeCloseTo(0.9973, 4);
  });
});

describe('limitsOf', () => {
  it('gives the bounds that the datum has, never those of its alternatives', () => {
    fc.assert(
      fc.property(limitsValue, fc.boolean(), fc.boolean(), bounded, (bounds, hasLower, hasUpper, other) => {
        const alternative: Datum = { value: other, unit: 'mm', standing: 'invented', sources: [] };
        const datum: Datum = {
          ...alternative,
          value: bounds.nominal,
          alternatives: [alternative],
          ...(hasLower ? { lower: bounds.lower } : {}),
          ...(hasUpper ? { upper: bounds.upper } : {}),
        };
        expect(limitsOf(datum)).toEqual({
          lower: (hasLower ? bounds.lower : bounds.nominal) + 0,
          nominal: bounds.nominal + 0,
          upper: (hasUpper ? bounds.upper : bounds.nominal) + 0,
        });
      }),
    );
  });
});

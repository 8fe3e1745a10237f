import fc from 'fast-check';
import { det, inv, multiply } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { logDensity } from './log-density.ts';

describe('logDensity', () => {
  it('agrees with determinant and inverse of a general-purpose library', () => {
    const entry = fc.double({ min: -2, max: 2, noNaN: true });
    const matrix = fc.array(fc.array(entry, { minLength: 3, maxLength: 3 }), { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(matrix, fc.array(entry, { minLength: 3, maxLength: 3 }), (a, residual) => {
        // A A' + I is symmetric and positive definite.
        const covariance = [0, 1, 2].map((i) =>
          [0, 1, 2].map(
            (j) => (i === j ? 1 : 0) + [0, 1, 2].reduce((sum, k) => sum + (a[i]?.[k] ?? 0) * (a[j]?.[k] ?? 0), 0),
          ),
        );
        const quadratic = multiply(multiply(residual, inv(covariance)), residual) as unknown as number;
        const expected = -0.5 * (quadratic + Math.log(det(covariance)) + 3 * Math.log(2 * Math.PI));
        expect(logDensity(residual, covariance)).toBeCloseTo(expected, 9);
      }),
    );
  });

  it('is the standard normal density in one dimension', () => {
    // Tables: density 0.398942 at 0, 0.241971 at 1.
    expect(Math.exp(logDensity([0], [[1]]))).toBeCloseTo(0.398942, 6);
    expect(Math.exp(logDensity([1], [[1]]))).toBeCloseTo(0.241971, 6);
  });

  it('is 0 without any residual', () => {
    expect(logDensity([], [])).toBeCloseTo(0, 12);
  });
});

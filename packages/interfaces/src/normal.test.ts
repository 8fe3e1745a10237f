import { expect, it } from 'vitest';
import { normalDensity, normalShare } from './normal.ts';

it.each([
  // Table of the normal distribution: Abramowitz and Stegun, table 26.1.
  [0, 0.5],
  [1, 0.8413447461],
  [1.96, 0.9750021049],
  [-1, 0.1586552539],
  [-3, 0.001349898],
])('puts the share below %d at %d', (z, share) => {
  // The approximation is said to be good to 1.5e-7 in the error function, half of that here.
  expect(Math.abs(normalShare(z) - share)).toBeLessThan(1e-7);
});

it('has a density of 0.3989 in the middle', () => {
  // 1/sqrt(2 pi); table 26.1 of the same gives 0.2419707245 at 1.
  expect(normalDensity(0)).toBeCloseTo(0.3989422804, 10);
  expect(normalDensity(-1)).toBeCloseTo(0.2419707245, 10);
});

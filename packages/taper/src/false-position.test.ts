import { describe, expect, it } from 'vitest';
import { falsePosition } from './false-position.ts';

describe('falsePosition', () => {
  it.each([
    ['a falling line', (x: number) => 3 - 2 * x, 0, 5, 1.5],
    ['a cube that stalls plain false position', (x: number) => x ** 3 - 2, 0, 10, Math.cbrt(2)],
    ['a steep exponential', (x: number) => Math.exp(x) - 1e3, 0, 50, Math.log(1e3)],
  ])('finds the root of %s', (_name, value, low, high, root) => {
    expect(falsePosition(value, low, high, 1e-12)).toBeCloseTo(root, 9);
  });

  it('gives the nearer end where nothing changes its sign', () => {
    expect(falsePosition((x) => x + 1, 0, 1, 1e-12)).toBe(0);
    expect(falsePosition((x) => x - 2, 0, 1, 1e-12)).toBe(1);
  });
});

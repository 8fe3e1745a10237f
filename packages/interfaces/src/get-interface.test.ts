import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { getInterface } from './get-interface.ts';

describe('getInterface', () => {
  it.each(['square-taper-jis', 'square-taper-iso', 'spline-10', 'through-spindle-24', 'cottered-metric'])(
    'finds %s',
    (id) => {
      expect(getInterface(id).id).toBe(id);
    },
  );

  it.each([
    ['square-tapr-jis', 'square-taper-jis'],
    ['Spline-10', 'spline-10'],
    ['toString', undefined],
    ['', undefined],
    [7, undefined],
  ])('refuses %s and names the nearest', (id, nearest) => {
    try {
      getInterface(id as string);
      expect.unreachable();
    } catch (error) {
      if (!isDomainError(error)) throw error;
      expect([error.path, error.nearest]).toEqual(['id', nearest]);
    }
  });
});

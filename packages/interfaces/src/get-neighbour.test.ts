import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { getNeighbour } from './get-neighbour.ts';
import { neighbourRecords } from './neighbours/registry.generated.ts';

describe('getNeighbour', () => {
  it('gives every record by its id', () => {
    for (const record of neighbourRecords) expect(getNeighbour(record.id)).toBe(record);
  });

  it.each([
    ['shell-bcs', 'shell-bsc'],
    ['toString', undefined],
    [7, undefined],
  ])('refuses %s', (id, nearest) => {
    try {
      getNeighbour(id as string);
      expect.unreachable();
    } catch (error) {
      if (!isDomainError(error)) throw error;
      expect([error.path, error.nearest]).toEqual(['id', nearest]);
    }
  });
});

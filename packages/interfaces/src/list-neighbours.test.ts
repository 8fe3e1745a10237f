import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { listNeighbours } from './list-neighbours.ts';

describe('listNeighbours', () => {
  it('lists all without a filter, sorted', () => {
    const ids = listNeighbours().map(({ id }) => id);
    expect(ids).toEqual([...new Set(ids)].sort());
    expect(ids).toHaveLength(62);
  });

  it('filters by kind and by topic', () => {
    expect(listNeighbours({ kind: 'shell-thread' })).toHaveLength(6);
    expect(listNeighbours({ topic: 'square-orientation' }).map(({ id }) => id)).toEqual([
      'square-corner-in-line',
      'square-flat-in-line',
    ]);
    expect(listNeighbours({ kind: 'fixing', topic: 'tread' })).toEqual([]);
  });

  it.each([[{ kind: 'shell' }], [{ kinds: 'fixing' }], [7]])('refuses %j', (filter) => {
    try {
      listNeighbours(filter as never);
      expect.unreachable();
    } catch (error) {
      expect(isDomainError(error)).toBe(true);
    }
  });
});

import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { listThreads } from './list-threads.ts';

describe('listThreads', () => {
  it('lists threads of joints and of what stands beside them, each row once', () => {
    const rows = listThreads();
    expect(new Set(rows.map(({ rowId }) => rowId)).size).toBe(rows.length);
    expect(rows.length).toBeGreaterThan(50);
    expect(new Set(rows.map(({ purpose }) => purpose))).toEqual(new Set(['fixing', 'puller', 'pedal', 'shell']));
  });

  it('filters by each of its keys', () => {
    expect(listThreads({ record: 'shell-italian' }).map(({ thread, side }) => [side, thread.hand])).toEqual([
      ['left', 'right'],
      ['right', 'right'],
    ]);
    expect(new Set(listThreads({ designation: 'M22x1' }).map(({ purpose }) => purpose))).toEqual(new Set(['puller']));
    expect(listThreads({ purpose: 'pedal', hand: 'left' }).map(({ side }) => side)).toEqual(['left', 'left', 'left']);
    expect(listThreads({ record: 'tread' })).toEqual([]);
  });

  it.each([[{ purpose: 'ring' }], [{ pitch: 1 }], [null]])('refuses %j', (filter) => {
    try {
      listThreads(filter as never);
      expect.unreachable();
    } catch (error) {
      expect(isDomainError(error)).toBe(true);
    }
  });
});

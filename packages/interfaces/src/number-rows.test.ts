import { describe, expect, it } from 'vitest';
import { numberRows } from './number-rows.ts';

const datum = { value: 1, unit: 'mm', standing: 'invented', sources: [] };

describe('numberRows', () => {
  it('names rows by ids, sets and sources, not by position', () => {
    const part = { id: 'a', sizeMm: { ...datum, lower: 0.5, upper: 2 } };
    const other = {
      id: 'b',
      sizeMm: {
        ...datum,
        alternatives: [
          { ...datum, value: 3, set: 's' },
          { ...datum, sources: ['x', 'y'] },
        ],
      },
    };
    const rows = numberRows({ name: 'r', data: { parts: [part, other] } });
    expect(rows.map(({ rowId }) => rowId)).toEqual([
      'r:parts[a].sizeMm',
      'r:parts[b].sizeMm',
      'r:parts[b].sizeMm.alternatives[s]',
      'r:parts[b].sizeMm.alternatives[x+y]',
    ]);
    expect(rows[0]).toEqual({
      rowId: 'r:parts[a].sizeMm',
      record: 'r',
      path: 'parts[a].sizeMm',
      value: 1,
      unit: 'mm',
      lower: 0.5,
      upper: 2,
      standing: 'invented',
      sources: [],
    });
    const turned = numberRows({ name: 'r', data: { parts: [other, part] } });
    expect(turned.map(({ rowId }) => rowId).sort()).toEqual(rows.map(({ rowId }) => rowId).sort());
  });

  it('finds nothing where there are no numbers', () => {
    expect(numberRows({ name: 'r', data: { words: ['one', null], more: {} } })).toEqual([]);
  });
});

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Atlas, diffAtlas, diffText } from '../scripts/diff-data.ts';

const atlas: Atlas = JSON.parse(readFileSync(new URL('../data/atlas.json', import.meta.url), 'utf8'));
type Row = Record<string, unknown>;
const changed = (table: string, row: string, change: Row): Atlas => ({
  ...atlas,
  [table]: (atlas[table] as Row[]).map((cells) => (Object.values(cells)[0] === row ? { ...cells, ...change } : cells)),
});
const NUMBER = 'bolt-circle-110x5:smallestRing';

describe('the difference between two editions', () => {
  it('is nothing between an edition and itself', () => {
    expect(diffAtlas(atlas, atlas)).toEqual({
      from: atlas.dataEdition,
      to: atlas.dataEdition,
      step: 'none',
      changes: [],
    });
  });

  it.each([
    ['a value', 'numbers', NUMBER, { value: 33 }, 'minor', 'value'],
    ['a unit', 'numbers', NUMBER, { unit: 'mm' }, 'major', 'unit'],
    ['a source', 'numbers', NUMBER, { sources: 'bolt-circle-list-second' }, 'patch', 'sources'],
    ['a bound where there was none', 'numbers', NUMBER, { upper: 35 }, 'minor', 'upper'],
    ['a title', 'records', 'tread', { title: 'Tread' }, 'patch', 'title'],
    ['the hand of a thread', 'threads', 'puller-m22x1:thread', { hand: 'left' }, 'major', 'hand'],
    ['a reading', 'observations', 'observations-any:arm-alignment-in-line', { reading: 'wrong' }, 'minor', 'reading'],
  ])('is a step for %s', (_what, table, row, change, step, column) => {
    const diff = diffAtlas(atlas, changed(table, row, change));
    expect(diff.step).toBe(step);
    expect(diff.changes.map((one) => [one.table, one.row, one.column])).toEqual([[table, row, column]]);
  });

  it('is major for a row that has gone and minor for a new one', () => {
    const less: Atlas = { ...atlas, dataEdition: '2099.01', numbers: (atlas.numbers as Row[]).slice(1) };
    expect(diffAtlas(atlas, less).step).toBe('major');
    expect(diffAtlas(less, atlas).step).toBe('minor');
    const text = diffText(diffAtlas(atlas, less));
    expect(text.split('\n')[0]).toBe(`edition ${atlas.dataEdition} -> 2099.01: 1 changes, step major`);
    expect(text).toContain('removed');
  });

  it('does not tell a count beside the rows that it counts', () => {
    expect(diffAtlas(atlas, changed('records', 'tread', { numbers: 99 })).step).toBe('none');
  });
});

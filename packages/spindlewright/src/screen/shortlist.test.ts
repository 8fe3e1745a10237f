import { describe, expect, it } from 'vitest';
import type { ScreenedPart } from './screened.ts';
import { shortlist } from './shortlist.ts';

const part = (partId: string, rest: Partial<ScreenedPart>): ScreenedPart => ({
  line: 1,
  partId,
  state: 'fits',
  reasons: [],
  ...rest,
});
const by = (mm: number) => ({ chainlineEffectMm: { lower: -mm, nominal: 0, upper: mm } });

// In the order in which they have to come out, by the stated rule.
const ORDER = [
  part('sizes', { basis: 'sizes', ...by(3) }),
  part('names, near', { basis: 'names', ...by(1) }),
  part('names, far', { basis: 'names', ...by(2) }),
  part('names, chainline not known', { basis: 'names' }),
  part('names, not known, later', { basis: 'names' }),
  part('open, near', { state: 'cannot-tell', ...by(0) }),
  part('open', { state: 'cannot-tell' }),
];

describe('shortlist', () => {
  it('puts the best first, whatever the order in which they come', () => {
    const names = ORDER.map(({ partId }) => partId);
    expect(shortlist({ parts: ORDER }).map(({ partId }) => partId)).toEqual(names);
    const shuffled = [6, 2, 3, 0, 5, 4, 1].flatMap((index) => ORDER[index] ?? []);
    expect(shortlist({ parts: shuffled }).map(({ partId }) => partId)).toEqual(names);
    expect(shortlist({ parts: shuffled, top: 2 }).map(({ partId }) => partId)).toEqual(names.slice(0, 2));
  });

  it('leaves out what does not fit or was refused', () => {
    const parts = [part('a', { state: 'does-not-fit' }), part('b', { state: 'refused' })];
    expect(shortlist({ parts })).toEqual([]);
    expect(shortlist({ parts: ORDER, top: 0 })).toEqual([]);
  });

  it.each([-1, Number.NaN, 20_000])('refuses a top of %s', (top) => {
    expect(() => shortlist({ parts: [], top })).toThrow('top');
  });
});

import { expect, it } from 'vitest';
import { idSet } from './id-set.ts';

it('holds what it was given and nothing else, as a set does', () => {
  const own = idSet();
  const plain = new Set<string>();
  for (let index = 0; index < 200_000; index++) {
    // Every fourth comes again; short, long and near ones.
    const id = index % 4 === 0 ? `P-${index >> 3}` : index % 4 === 1 ? String(index) : `${index}`.repeat(5);
    expect(own.add(id)).toBe(!plain.has(id));
    plain.add(id);
  }
  expect(own.add('')).toBe(true);
  expect(own.add('')).toBe(false);
});

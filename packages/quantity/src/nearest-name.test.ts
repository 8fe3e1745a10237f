import { describe, expect, it } from 'vitest';
import { nearestName } from './nearest-name.ts';

describe('nearestName', () => {
  // Distances counted by hand: insert, delete, replace and swap of neighbours cost one each.
  it.each<[string, string[], string | undefined]>([
    ['faceAngelDeg', ['faceAngleDeg', 'flatLengthMm'], 'faceAngleDeg'],
    ['FACEANGLEDEG', ['faceAngleDeg'], 'faceAngleDeg'],
    ['abcde', ['abcde'], 'abcde'],
    ['abcd', ['abcde'], 'abcde'],
    ['abcdef', ['abcde'], 'abcde'],
    ['abXde', ['abcde'], 'abcde'],
    ['bacde', ['abcde'], 'abcde'],
    ['badce', ['abcde'], 'abcde'],
    ['abXXe', ['abcde'], 'abcde'],
    ['aXXXe', ['abcde'], undefined],
    ['Xbc', ['abc'], 'abc'],
    ['XYc', ['abc'], undefined],
    ['Xb', ['ab'], undefined],
    ['ba', ['ab'], undefined],
    ['', ['a'], undefined],
    ['', [''], ''],
    ['abc', [], undefined],
    ['abcdX', ['abcdY', 'abcdZ'], 'abcdY'],
    ['cba', ['abc'], undefined],
    ['bcade', ['abcde'], 'abcde'],
    ['cabXe', ['abcde'], undefined],
    ['abcdX', ['abYYX', 'abcdZ'], 'abcdZ'],
  ])('of %j among %j is %j', (name, known, expected) => {
    expect(nearestName({ name, known })).toBe(expected);
  });

  it('dismisses a very long name quickly', () => {
    const known = Array.from({ length: 1000 }, (_, index) => `name-${index}`);
    const started = performance.now();
    expect(nearestName({ name: 'n'.repeat(1_000_000), known })).toBeUndefined();
    // Without the look at the lengths this is 9e9 steps, minutes; with it about a millisecond.
    expect(performance.now() - started).toBeLessThan(2000);
  });

  it.each<[object, string, string, string]>([
    [{ name: 5, known: ['a'] }, 'name', '5', 'a text'],
    [{ name: undefined, known: ['a'] }, 'name', 'nothing', 'a text'],
    [{ name: 'a', known: 'abc' }, 'known', '"abc"', 'a list of texts'],
    [{ name: 'a' }, 'known', 'nothing', 'a list of texts'],
  ])('refuses %o', (input, path, received, allowed) => {
    expect(() => nearestName(input as { name: string; known: string[] })).toThrow(
      expect.objectContaining({ name: 'DomainError', issues: [{ path, received, allowed }] }) as Error,
    );
  });
});

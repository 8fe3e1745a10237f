import { nearestName } from '@spindlewright/quantity';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

/**
 * The distance by its definition, as a recursion over the last letters: the cheapest of insert, delete, replace and, where
 * two neighbours stand the other way round, swap.
 */
function distance(a: string, b: string): number {
  if (a === '' || b === '') return a.length + b.length;
  const [restA, restB] = [a.slice(0, -1), b.slice(0, -1)];
  const steps = [
    distance(restA, b) + 1,
    distance(a, restB) + 1,
    distance(restA, restB) + (a.at(-1) === b.at(-1) ? 0 : 1),
  ];
  if (a.length > 1 && b.length > 1 && a.at(-1) === b.at(-2) && a.at(-2) === b.at(-1)) {
    steps.push(distance(a.slice(0, -2), b.slice(0, -2)) + 1);
  }
  return Math.min(...steps);
}

const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c', 'D'), maxLength: 6 });

describe('nearestName', () => {
  it('finds the first of the nearest by the definition of the distance', () => {
    fc.assert(
      fc.property(word, fc.array(word, { maxLength: 4 }), (name, known) => {
        const near = known
          .map((candidate) => ({ candidate, steps: distance(name.toLowerCase(), candidate.toLowerCase()) }))
          .filter(({ candidate, steps }) => steps <= 0.4 * Math.max(name.length, candidate.length));
        const least = Math.min(...near.map(({ steps }) => steps));
        expect(nearestName({ name, known })).toBe(near.find(({ steps }) => steps === least)?.candidate);
      }),
      { numRuns: 300 },
    );
  });

  it('finds a name itself, whatever its case, and itself only', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.stringMatching(/^[a-z]{3,12}$/), { minLength: 1 }), fc.nat(), (known, pick) => {
        const name = known[pick % known.length] ?? '';
        expect(nearestName({ name: name.toUpperCase(), known })).toBe(name);
      }),
    );
  });
});

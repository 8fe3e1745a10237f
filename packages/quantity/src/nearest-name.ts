import { describeValue } from './describe-value.ts';
import { DomainError } from './domain-error.ts';

/**
 * Finds the known name that a misspelt one most likely meant.
 *
 * @remarks
 * Formula: smallest edit distance (insert, delete, replace, swap of neighbours each count one; no letter is touched
 * twice), case ignored; the first of equals wins.
 *
 * Validity: any strings. Nothing is returned when more than 40 % of the longer name would have to change (judgement:
 * a worse guess misleads more than it helps), so nothing for names of one or two letters that are not the same but for
 * case.
 *
 * Accuracy: exact integer arithmetic.
 *
 * @param input - `name`: what came; `known`: the allowed names; none gives `undefined`.
 * @returns The nearest known name, or `undefined` when none is near.
 * @throws {@link DomainError} when the name is not a string or the known names are not a list.
 * @example
 * ```ts
 * import { nearestName } from '@spindlewright/quantity';
 * nearestName({ name: 'faceAngelDeg', known: ['faceAngleDeg', 'flatLengthMm'] }); // => 'faceAngleDeg'
 * nearestName({ name: 'zzz', known: ['faceAngleDeg'] }); // => undefined
 * ```
 * @see Optimal string alignment distance: common algorithm, no source needed.
 */
export function nearestName(input: { name: string; known: readonly string[] }): string | undefined {
  if (typeof input.name !== 'string') throw refuse('name', input.name, 'a text');
  if (!Array.isArray(input.known)) throw refuse('known', input.known, 'a list of texts');
  const name = input.name.toLowerCase();
  let best: string | undefined;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (const candidate of input.known) {
    const known = candidate.toLowerCase();
    const allowed = 0.4 * Math.max(name.length, known.length);
    // The lengths alone already cost this much: a very long name is dismissed without the work.
    if (Math.abs(name.length - known.length) > allowed) continue;
    const distance = editDistance(name, known);
    if (distance < bestDistance && distance <= allowed) {
      bestDistance = distance;
      best = candidate;
    }
  }
  return best;
}

const refuse = (path: string, came: unknown, allowed: string): DomainError =>
  new DomainError('nearestName', [{ path, received: describeValue(came), allowed }]);

function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        cost = Math.min(cost, (beforeLast[j - 2] ?? 0) + 1);
      }
      row[j] = cost;
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length] ?? 0;
}

/**
 * Finds the known name that a misspelt one most likely meant.
 *
 * @remarks
 * Formula: smallest edit distance (insert, delete, replace, swap of neighbours each count one), case ignored; the
 * first of equals wins.
 *
 * Validity: any strings. Nothing is returned when more than 40 % of the longer name would have to change (judgement:
 * a worse guess misleads more than it helps).
 *
 * Accuracy: exact integer arithmetic.
 *
 * @param input - `name`: what came; `known`: the allowed names, at least one.
 * @returns The nearest known name, or `undefined` when none is near.
 * @throws Nothing.
 * @example
 * ```ts
 * import { nearestName } from '@spindlewright/quantity';
 * nearestName({ name: 'faceAngelDeg', known: ['faceAngleDeg', 'flatLengthMm'] }); // => 'faceAngleDeg'
 * nearestName({ name: 'zzz', known: ['faceAngleDeg'] }); // => undefined
 * ```
 * @see Optimal string alignment distance: common algorithm, no source needed.
 */
export function nearestName(input: { name: string; known: readonly string[] }): string | undefined {
  let best: string | undefined;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (const candidate of input.known) {
    const distance = editDistance(input.name.toLowerCase(), candidate.toLowerCase());
    if (distance < bestDistance && distance <= 0.4 * Math.max(input.name.length, candidate.length)) {
      bestDistance = distance;
      best = candidate;
    }
  }
  return best;
}

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

import { checkInput } from '@spindlewright/quantity';
import type { ScreenedPart } from './screened.ts';

/** Keeps the best of many, never more than `top` at once. */
interface ShortlistKeeper {
  /** Looks at one more. */
  offer(part: ScreenedPart): void;
  /** True when a part of this kind could not get in any more. */
  full(part: Pick<ScreenedPart, 'state'>): boolean;
  /** The best, best first. */
  list(): ScreenedPart[];
}

/** Farther than any chainline moves; one that is not known comes after all that are. */
const MOST_MM = 400;

/** A part that fits by its sizes leads, then one by its names, then one of which one fact is missing; then the chainline. */
function rankOf({ state, basis, predictedSeat, chainlineEffectMm }: ScreenedPart): number {
  const ofState = state === 'fits' ? (basis === 'sizes' ? 0 : 1) : 2;
  const thin = predictedSeat?.basis === 'readings' && predictedSeat.verdict !== 'seats' ? 0.5 : 0;
  const off =
    chainlineEffectMm === undefined
      ? MOST_MM
      : Math.max(Math.abs(chainlineEffectMm.lower), Math.abs(chainlineEffectMm.upper));
  return 1000 * (ofState + thin) + Math.min(off, MOST_MM);
}

/** @internal */
export function shortlistKeeper(top: number): ShortlistKeeper {
  const kept: { rank: number; part: ScreenedPart }[] = [];
  return {
    offer(part) {
      if (top === 0 || part.state === 'does-not-fit' || part.state === 'refused') return;
      const rank = rankOf(part);
      if (kept.length === top && rank >= (kept[top - 1]?.rank ?? 0)) return;
      let at = kept.length;
      while (at > 0 && (kept[at - 1]?.rank ?? 0) > rank) at--;
      kept.splice(at, 0, { rank, part });
      if (kept.length > top) kept.pop();
    },
    full: ({ state }) =>
      state === 'does-not-fit' ||
      state === 'refused' ||
      (kept.length === top && (state === 'cannot-tell' ? 2000 : 0) > (kept[top - 1]?.rank ?? -1)),
    list: () => kept.map(({ part }) => part),
  };
}

/**
 * Picks the parts that are worth a look, best first.
 *
 * @remarks
 * Formula: parts that fit by their sizes, then parts that fit by their names, then parts of which one fact is missing;
 * within each those whose chainline moves least, at its worst bound, and is known; then in the order in which they came.
 *
 * Validity: any parts of {@link screenParts}; those that do not fit or were refused are left out.
 *
 * Accuracy: an order and no score.
 *
 * @param input - `parts`: screened parts; `top`: how many at most, 10 when absent.
 * @returns The best of them, best first.
 * @throws {@link DomainError} when `top` is no number from 0 to 10000 or there are no parts.
 * @example
 * ```ts
 * import { shortlist } from 'spindlewright';
 * const part = (partId: string, state: 'fits' | 'cannot-tell') => ({ line: 1, partId, state, reasons: [] });
 * shortlist({ parts: [part('A', 'cannot-tell'), part('B', 'fits')], top: 1 }).map(({ partId }) => partId); // => ['B']
 * ```
 * @see The project's own order.
 */
export function shortlist(input: { parts: Iterable<ScreenedPart>; top?: number }): ScreenedPart[] {
  const { parts, top = 10 } = input;
  checkInput({
    where: 'shortlist',
    value: { top },
    fields: { top: { type: 'number', unit: '', min: 0, max: 10_000 } },
  });
  const keeper = shortlistKeeper(Math.floor(top));
  for (const part of parts) keeper.offer(part);
  return keeper.list();
}

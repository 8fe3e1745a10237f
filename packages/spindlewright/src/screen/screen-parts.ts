import { checkMapping } from './check-mapping.ts';
import { checkNeed } from './check-need.ts';
import type { Mapping } from './mapping.ts';
import type { Need } from './need.ts';
import type { ScreenedPart, ScreenSummary } from './screened.ts';
import { screener } from './screener.ts';

/** A screening under way: parts as they come, and what has been counted so far. */
export interface Screening extends AsyncIterable<ScreenedPart> {
  /** The counts so far; of everything once the parts have run out. */
  summary(): ScreenSummary;
}

/**
 * Screens a catalogue against a need: says of each part whether it fits, does not fit, or cannot be told, and why.
 *
 * @remarks
 * Formula: none. Names are put together by `checkMate` of the interfaces package; for square tapers of which the sizes of
 * both parts are stated, the seat is predicted as for a job. One fact that rules a part out outweighs any that is missing;
 * of several missing facts the first in the order of asking is named: kind, joint or thread, side, length.
 * Chainline: a seat nearer to the frame moves it in one to one, half of a change in spindle length moves it out.
 *
 * Validity: parts under our own names ({@link Part}), or rows of any names with a mapping. A value that a spreadsheet
 * seems to have damaged, an unknown word or a size outside its range is reported and not used. A repeated part id is
 * judged again and counted. Rows without an id to order by are refused, counted and named.
 *
 * Accuracy: `fits` by names says that the standards agree, no more: published sizes of one square differ by 1.4 mm of seat.
 *
 * @param input - `need`: what is wanted ({@link Need}); `parts`: rows, as an iterable or an async iterable; `mapping`:
 * what the columns and words of the rows mean ({@link Mapping}).
 * @returns What to loop over with `for await`: one {@link ScreenedPart} a row, in order; `summary()` counts them, and rows =
 * fits + does not fit + cannot tell + refused.
 * @throws {@link DomainError} for a need or a mapping that is none; what the rows hold never throws.
 * @example
 * ```ts
 * import { screenParts } from 'spindlewright';
 * const screening = screenParts({
 *   need: { format: 'spindlewright-need-1', for: 'arm', interface: 'square-taper-jis', side: 'drive' },
 *   parts: [{ partId: 'A1', kind: 'arm', interface: 'square-taper-jis', side: 'drive' }, { partId: 'A2', kind: 'arm' }],
 * });
 * const told = [];
 * for await (const { partId, state, missingFact } of screening) told.push([partId, state, missingFact ?? '']);
 * told; // => [['A1', 'fits', ''], ['A2', 'cannot-tell', 'interface']]
 * ```
 * @see The records of the interfaces package; each reason names its sources.
 */
export function screenParts(input: {
  need: Need;
  parts: Iterable<unknown> | AsyncIterable<unknown>;
  mapping?: Mapping;
}): Screening {
  checkNeed('screenParts', input.need);
  if (input.mapping !== undefined) checkMapping('screenParts', input.mapping);
  const { parts } = input;
  const own = screener(input.need, input.mapping);
  async function* run(): AsyncGenerator<ScreenedPart> {
    let line = 0;
    if (Symbol.asyncIterator in parts) for await (const part of parts) yield own.judge(part, ++line);
    else for (const part of parts) yield own.judge(part, ++line);
  }
  return { [Symbol.asyncIterator]: run, summary: own.summary };
}

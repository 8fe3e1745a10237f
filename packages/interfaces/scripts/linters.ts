// The rules that the data keep, each a plain function that is tried on a seeded fault. Node only; not published.
import { dataEdition } from '../src/data-edition.ts';
import { idsUnique, observationsComplete, rulesOfMating } from './linters/ids.ts';
import type { Fault, Linter } from './linters/linter.ts';
import { plausibleRanges } from './linters/plausible-ranges.ts';
import {
  editionsNamed,
  noBareNumbers,
  noProperNames,
  oneEdition,
  sourcesKnown,
  standingSourced,
} from './linters/provenance.ts';
import { holeSpacing, innerBelowOuter, threadGeometry } from './linters/sizes.ts';
import type { RawData } from './raw-data.ts';

/** A fault that is known and let through until an edition. */
export interface LintException {
  linter: string;
  place: string;
  why: string;
  /** The first edition in which it is no longer let through, such as `2027.11`. */
  until: string;
}

export const linters: readonly Linter[] = [
  noBareNumbers,
  sourcesKnown,
  standingSourced,
  editionsNamed,
  idsUnique,
  noProperNames,
  plausibleRanges,
  innerBelowOuter,
  threadGeometry,
  holeSpacing,
  oneEdition,
  rulesOfMating,
  observationsComplete,
];

/**
 * Faults that no exception covers. An exception has an edition at which it ends: from then on it is a fault itself, and
 * so is one that covers nothing.
 */
export function lint(data: RawData, exceptions: readonly LintException[], edition = dataEdition): Fault[] {
  const faults = linters.flatMap(({ id, check }) => check(data).map((fault) => ({ linter: id, ...fault })));
  const covers = (exception: LintException, fault: Fault): boolean =>
    exception.linter === fault.linter && exception.place === fault.place;
  // Editions are years and months with a full stop between them, so their texts sort as they do.
  const alive = exceptions.filter(({ until }) => edition < until);
  return [
    ...faults.filter((fault) => !alive.some((exception) => covers(exception, fault))),
    ...exceptions
      .filter((exception) => !alive.includes(exception))
      .map(({ linter, place, until }) => ({ linter, place, message: `the exception ended with edition ${until}` })),
    ...alive
      .filter((exception) => !faults.some((fault) => covers(exception, fault)))
      .map(({ linter, place }) => ({ linter, place, message: 'the exception covers nothing' })),
  ];
}

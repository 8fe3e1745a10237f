import { describeValue } from './describe-value.ts';
import { DomainError, type DomainIssue } from './domain-error.ts';
import { type Limits, limits, risingIssues } from './limits.ts';

/** How much a number can be relied on, by where it comes from. */
export type Standing =
  | 'standard'
  | 'handbook'
  | 'secondary'
  | 'measured'
  | 'common-practice'
  | 'judgement'
  | 'from-memory'
  | 'derived'
  | 'invented';

/** A number with its unit, its standing and its sources; conflicting published values stay beside it, never merged. */
export interface Datum {
  /** The number, in `unit`. */
  value: number;
  /** Unit id, or a plain word for counts such as `splines`. */
  unit: string;
  /** Lower bound, when the source gives one. */
  lower?: number;
  /** Upper bound, when the source gives one. */
  upper?: number;
  /** Where it comes from. */
  standing: Standing;
  /** Ids in the register of sources; empty only for `common-practice`, `judgement`, `from-memory` and `invented`. */
  sources: readonly string[];
  /** Name of the set of values that were published together; values of different sets are never combined. */
  set?: string;
  /** What a reader has to know to use the number. */
  note?: string;
  /** What other sources say instead. */
  alternatives?: readonly Datum[];
}

/**
 * Gives the hard bounds of a datum, leaving its alternatives aside.
 *
 * @remarks
 * Formula: \{ lower or value, value, upper or value \}.
 *
 * Validity: any datum whose bounds enclose its value; only `value`, `lower` and `upper` are looked at, and a bound that
 * is `null` is refused, never read as absent. Alternatives are other people's values: they are never merged into the
 * bounds; compute once for each of them instead.
 *
 * Accuracy: exact.
 *
 * @param datum - Record with `value`, `unit` and optional `lower` and `upper`.
 * @returns Limits in the unit of the datum.
 * @throws {@link DomainError} when the value or a bound is not a finite number, or the value lies outside its own bounds.
 * @example
 * ```ts
 * import { limitsOf } from '@spindlewright/quantity';
 * limitsOf({ value: 40, lower: 34, upper: 50, unit: 'Nm', standing: 'common-practice', sources: [] });
 * // => { lower: 34, nominal: 40, upper: 50 }
 * ```
 * @see The project's data rules: a bound belongs to the source that gives it.
 */
export function limitsOf(datum: Datum): Limits {
  if (typeof datum !== 'object' || datum === null) {
    throw refuse([{ path: '', received: describeValue(datum), allowed: 'a datum with value, unit and standing' }]);
  }
  const keys = ['lower', 'value', 'upper'].filter((key) => key === 'value' || datum[key as 'lower'] !== undefined);
  const [first, ...rest] = risingIssues({ ...datum }, keys, '');
  if (first !== undefined) throw refuse([first, ...rest]);
  const { value, lower = value, upper = value } = datum;
  return limits({ lower, nominal: value, upper });
}

const refuse = (issues: readonly [DomainIssue, ...DomainIssue[]]): DomainError => new DomainError('limitsOf', issues);

import { describeValue } from './describe-value.ts';
import { DomainError, type DomainIssue } from './domain-error.ts';

/** A value with hard bounds: `lower <= nominal <= upper`, all finite, in the unit that the field's name carries. */
export interface Limits {
  /** Smallest value possible. */
  lower: number;
  /** Value to reckon with. */
  nominal: number;
  /** Largest value possible. */
  upper: number;
}

/** A number (exact) or a value with hard bounds. */
export type LimitsInput = number | Limits;

/** The ways to write limits down. */
export type LimitsSpelling = LimitsInput | { lower: number; upper: number } | { nominal: number; plusMinus: number };

/**
 * Makes {@link Limits} from a number, from two bounds or from a nominal value with a symmetric tolerance.
 *
 * @remarks
 * Formula: number x gives \{ x, x, x \}; bounds give the middle as nominal; `plusMinus` t gives nominal -+ t.
 *
 * Validity: finite numbers; `lower <= nominal <= upper`; `plusMinus >= 0` and small enough for finite bounds. Any other
 * key is refused. A negative zero comes back as 0.
 *
 * Accuracy: bounds that were given are kept; one rounding for each bound from `plusMinus`, two for a middle.
 *
 * @param input - A number, `{ lower, upper }`, `{ lower, nominal, upper }` or `{ nominal, plusMinus }`, all in one unit.
 * @returns Limits in the same unit.
 * @throws {@link DomainError} for non-finite numbers, crossed bounds, a negative tolerance or any other shape.
 * @example
 * ```ts
 * import { limits } from '@spindlewright/quantity';
 * limits({ nominal: 12.5, plusMinus: 0.25 }); // => { lower: 12.25, nominal: 12.5, upper: 12.75 }
 * limits(2); // => { lower: 2, nominal: 2, upper: 2 }
 * ```
 * @see JCGM 200:2012 (VIM), 2.16 for what a bound on a value is not: it is no uncertainty.
 */
export function limits(input: LimitsSpelling): Limits {
  if (typeof input === 'number' && Number.isFinite(input)) return made(input, input, input);
  if (typeof input !== 'object' || input === null) throw refuse(input);
  const keys = Object.keys(input).sort().join();
  // Every number is checked before any arithmetic, since a bigint or a symbol would throw an error of its own there.
  if (keys === 'nominal,plusMinus') {
    const { nominal, plusMinus } = input as { nominal: number; plusMinus: number };
    throwAny(risingIssues({ nominal }, ['nominal'], ''));
    if (!(isFiniteNumber(plusMinus) && plusMinus >= 0 && Number.isFinite(Math.abs(nominal) + plusMinus))) {
      const allowed = 'a number of at least 0 that keeps the bounds finite';
      throw new DomainError('limits', [{ path: 'plusMinus', received: describeValue(plusMinus), allowed }]);
    }
    return made(nominal - plusMinus, nominal, nominal + plusMinus);
  }
  if (keys === 'lower,upper') {
    const { lower, upper } = input as { lower: number; upper: number };
    throwAny(risingIssues({ lower, upper }, ['lower', 'upper'], ''));
    // Halved before they are subtracted, so that the width of very wide bounds does not overflow.
    return made(lower, lower + (upper / 2 - lower / 2), upper);
  }
  if (keys === 'lower,nominal,upper') {
    const { lower, nominal, upper } = input as Limits;
    throwAny(risingIssues({ lower, nominal, upper }, ['lower', 'nominal', 'upper'], ''));
    return made(lower, nominal, upper);
  }
  throw refuse(input);
}

// JSON has no negative zero, and a result has to equal its JSON round trip: adding 0 turns it into 0.
const made = (lower: number, nominal: number, upper: number): Limits => ({
  lower: lower + 0,
  nominal: nominal + 0,
  upper: upper + 0,
});

function throwAny([first, ...rest]: DomainIssue[]): void {
  if (first !== undefined) throw new DomainError('limits', [first, ...rest]);
}

function refuse(input: unknown): DomainError {
  const allowed = 'a finite number, { lower, upper }, { lower, nominal, upper } or { nominal, plusMinus }';
  return new DomainError('limits', [{ path: '', received: describeValue(input), allowed }]);
}

const isFiniteNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

/** What is wrong with numbers that have to be finite and to rise in the order of `keys`. @internal */
export function risingIssues(
  record: Readonly<Record<string, unknown>>,
  keys: readonly string[],
  path: string,
): DomainIssue[] {
  const issues = keys
    .filter((key) => !isFiniteNumber(record[key]))
    .map((key) => ({
      path: path === '' ? key : `${path}.${key}`,
      received: describeValue(record[key]),
      allowed: 'a finite number',
    }));
  if (issues.length > 0) return issues;
  const numbers = keys.map((key) => record[key] as number);
  if (numbers.every((value, index) => index === 0 || (numbers[index - 1] ?? value) <= value)) return [];
  const received = keys.map((key, index) => `${key} ${numbers[index]}`).join(', ');
  return [{ path, received, allowed: keys.join(' <= ') }];
}

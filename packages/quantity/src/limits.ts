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
 * Validity: finite numbers; `lower <= nominal <= upper`; `plusMinus >= 0`.
 *
 * Accuracy: one rounding a bound.
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
  if (typeof input === 'number') return checked({ lower: input, nominal: input, upper: input });
  if (typeof input !== 'object' || input === null) throw refuse(input);
  const keys = Object.keys(input).sort().join();
  if (keys === 'nominal,plusMinus') {
    const { nominal, plusMinus } = input as { nominal: number; plusMinus: number };
    if (typeof plusMinus !== 'number' || !(plusMinus >= 0)) {
      throw new DomainError('limits', [
        { path: 'plusMinus', received: describeValue(plusMinus), allowed: 'a finite number of at least 0' },
      ]);
    }
    return checked({ lower: nominal - plusMinus, nominal, upper: nominal + plusMinus });
  }
  if (keys === 'lower,upper') {
    const { lower, upper } = input as { lower: number; upper: number };
    return checked({ lower, nominal: lower + (upper - lower) / 2, upper });
  }
  if (keys === 'lower,nominal,upper') {
    const { lower, nominal, upper } = input as Limits;
    return checked({ lower, nominal, upper });
  }
  throw refuse(input);
}

function checked(candidate: Limits): Limits {
  const issues = limitsIssues(candidate, '');
  const [first, ...rest] = issues;
  if (first !== undefined) throw new DomainError('limits', [first, ...rest]);
  return candidate;
}

function refuse(input: unknown): DomainError {
  return new DomainError('limits', [
    {
      path: '',
      received: describeValue(input),
      allowed: 'a number, { lower, upper }, { lower, nominal, upper } or { nominal, plusMinus }',
    },
  ]);
}

/** What is wrong with a candidate for Limits; empty when nothing is. @internal */
export function limitsIssues(candidate: Limits, path: string): DomainIssue[] {
  const at = (key: string): string => (path === '' ? key : `${path}.${key}`);
  const issues: DomainIssue[] = [];
  for (const key of ['lower', 'nominal', 'upper'] as const) {
    const value = candidate[key];
    if (typeof value !== 'number' || !Number.isFinite(value)) {
      issues.push({ path: at(key), received: describeValue(value), allowed: 'a finite number' });
    }
  }
  if (issues.length === 0 && !(candidate.lower <= candidate.nominal && candidate.nominal <= candidate.upper)) {
    issues.push({
      path,
      received: `lower ${candidate.lower}, nominal ${candidate.nominal}, upper ${candidate.upper}`,
      allowed: 'lower <= nominal <= upper',
    });
  }
  return issues;
}

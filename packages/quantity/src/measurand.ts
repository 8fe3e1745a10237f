import { DomainError } from './domain-error.ts';
import { type Limits, type LimitsInput, limits } from './limits.ts';
import { numericIssues, TRUNCATION_UNCERTAINTIES } from './numeric-issues.ts';

/** A reading with its standard uncertainty: a normal distribution cut at three standard uncertainties. */
export interface UncertainValue {
  /** The reading. */
  value: number;
  /** Standard uncertainty in the unit of the reading, at least 0. */
  standardUncertainty: number;
}

/** A number (exact), hard limits (rectangular when sampled) or a reading with standard uncertainty. */
export type Measurand = LimitsInput | UncertainValue;

/**
 * Gives the hard bounds of a measurand, as worst-case arithmetic needs them.
 *
 * @remarks
 * Formula: a number is its own bound; limits are kept; a reading x with standard uncertainty u gives x -+ 3 u, where the
 * distribution used for sampling is cut as well, so that the worst case contains every sample.
 *
 * Validity: finite numbers, u at least 0 and small enough for finite bounds. Only the three spellings of the type are
 * accepted, each with exactly its own keys.
 *
 * Accuracy: one rounding a bound. A normal distribution cut at 3 u keeps 99.73 % of its mass.
 *
 * @param measurand - Number, limits or reading with uncertainty, in any one unit.
 * @returns Limits in the same unit.
 * @throws {@link DomainError} for non-finite numbers, crossed limits, a negative uncertainty or any other shape.
 * @example
 * ```ts
 * import { hardLimits } from '@spindlewright/quantity';
 * hardLimits({ value: 2, standardUncertainty: 0.5 }); // => { lower: 0.5, nominal: 2, upper: 3.5 }
 * ```
 * @see JCGM 100:2008 (GUM), 4.3.6 and table G.1: 3 u of a normal distribution.
 */
export function hardLimits(measurand: Measurand): Limits {
  const [first, ...rest] = numericIssues(measurand, { type: 'measurand', unit: '' }, '');
  if (first !== undefined) throw new DomainError('hardLimits', [first, ...rest]);
  if (typeof measurand === 'number' || 'lower' in measurand) return limits(measurand);
  const { value, standardUncertainty } = measurand;
  return limits({ nominal: value, plusMinus: TRUNCATION_UNCERTAINTIES * standardUncertainty });
}

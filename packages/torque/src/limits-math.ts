import type { Limits } from '@spindlewright/quantity';

/** Sum of two independent quantities. @internal */
export const plus = (a: Limits, b: Limits): Limits => ({
  lower: a.lower + b.lower,
  nominal: a.nominal + b.nominal,
  upper: a.upper + b.upper,
});

/** Difference of two independent quantities. @internal */
export const minus = (a: Limits, b: Limits): Limits => ({
  lower: a.lower - b.upper,
  nominal: a.nominal - b.nominal,
  upper: a.upper - b.lower,
});

/** The smaller of two quantities. @internal */
export const smaller = (a: Limits, b: Limits): Limits => ({
  lower: Math.min(a.lower, b.lower),
  nominal: Math.min(a.nominal, b.nominal),
  upper: Math.min(a.upper, b.upper),
});

/** The larger of two quantities. @internal */
export const larger = (a: Limits, b: Limits): Limits => ({
  lower: Math.max(a.lower, b.lower),
  nominal: Math.max(a.nominal, b.nominal),
  upper: Math.max(a.upper, b.upper),
});

/** A quantity over a number above 0. @internal */
export const over = (a: Limits, divisor: number): Limits => ({
  lower: a.lower / divisor,
  nominal: a.nominal / divisor,
  upper: a.upper / divisor,
});

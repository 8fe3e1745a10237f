import type { Limits } from '@spindlewright/quantity';

/**
 * Reads one number out of limits. `grows` tells whether the quantity under evaluation grows with it, so that one
 * expression, written once, gives the lower bound, the nominal value and the upper bound.
 * @internal
 */
export type Corner = (limits: Limits, grows?: boolean) => number;

/** Corner at which the quantity is largest. @internal */
export const highest: Corner = (limits, grows = true) => (grows ? limits.upper : limits.lower);

/** Corner at which the quantity is smallest. @internal */
export const lowest: Corner = (limits, grows = true) => (grows ? limits.lower : limits.upper);

/** Nominal value. @internal */
export const nominal: Corner = (limits) => limits.nominal;

/** The opposite corner, for a part of an expression in which the whole falls. @internal */
export const opposite = (corner: Corner): Corner =>
  corner === highest ? lowest : corner === lowest ? highest : nominal;

/** Evaluates a quantity as limits. @internal */
export type Span = (quantity: (corner: Corner) => number) => Limits;

/** Evaluates a quantity at its three corners; -0 becomes 0. @internal */
export const bounds: Span = (quantity) => ({
  lower: quantity(lowest) + 0,
  nominal: quantity(nominal) + 0,
  upper: quantity(highest) + 0,
});

/** Evaluates a quantity at nominal values alone. @internal */
export const middle: Span = (quantity) => exactly(quantity(nominal) + 0);

/** Limits of an exact number. @internal */
export const exactly = (value: number): Limits => ({ lower: value, nominal: value, upper: value });

/** Limits of what nothing bounds. @internal */
export const OPEN: Limits = /* @__PURE__ */ exactly(Number.POSITIVE_INFINITY);

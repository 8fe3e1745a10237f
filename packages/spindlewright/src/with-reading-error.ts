import { type Datum, type Limits, limits, type Measurand } from '@spindlewright/quantity';

/**
 * Gives a bare number the half-width of its instrument; a reading that came with its own bounds keeps them. A depth
 * cannot be negative, so the lower bound stops at `floor`.
 *
 * @internal
 */
export function withReadingError(reading: Measurand, halfWidth: Datum, floor = 0): Measurand {
  if (typeof reading !== 'number') return reading;
  const { lower, nominal, upper } = limits({ nominal: reading, plusMinus: halfWidth.value });
  return { lower: Math.min(nominal, Math.max(floor, lower)), nominal, upper } satisfies Limits;
}

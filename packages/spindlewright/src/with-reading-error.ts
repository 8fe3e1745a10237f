import { type Datum, type Limits, limits, type Measurand } from '@spindlewright/quantity';

/**
 * Gives a bare number the half-width of its instrument; a reading that came with its own bounds keeps them. The lower
 * bound of a length stops at half of the reading, that of a gap at 0, and that of a signed reading (`null`) nowhere.
 *
 * @internal
 */
export function withReadingError(
  reading: Measurand,
  halfWidth: Datum,
  floor: 'half' | 'zero' | null = 'half',
): Measurand {
  if (typeof reading !== 'number') return reading;
  const { lower, nominal, upper } = limits({ nominal: reading, plusMinus: halfWidth.value });
  const least = floor === null ? lower : Math.max(floor === 'zero' ? 0 : nominal / 2, lower);
  return { lower: Math.min(nominal, least), nominal, upper } satisfies Limits;
}

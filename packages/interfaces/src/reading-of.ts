import type { Measurand } from '@spindlewright/quantity';
import { identificationData } from './identification.generated.ts';
import type { Reading } from './square-hypotheses.ts';

/**
 * A measurand as a value with its standard uncertainty: a plain number gets the one assumed, limits count as rectangular,
 * and nothing counts as finer than the least of the data. @internal
 */
export function readingOf(measurand: Measurand, assumed: number): Reading {
  const finest = identificationData.assumedUncertainty.finestMm.value;
  if (typeof measurand === 'number') return { value: measurand, uncertainty: assumed };
  if ('standardUncertainty' in measurand) {
    return { value: measurand.value, uncertainty: Math.max(finest, measurand.standardUncertainty) };
  }
  const { lower, upper } = measurand;
  return { value: (lower + upper) / 2, uncertainty: Math.max(finest, (upper - lower) / Math.sqrt(12)) };
}

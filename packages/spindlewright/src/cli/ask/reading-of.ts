import type { Measurand, Unit } from '@spindlewright/quantity';
import { readMeasurand } from '../read-measurand.ts';
import { messageOf, Refusal } from '../refusal.ts';

const BARE = /^[+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)$/;

/** A line as a reading in the unit that is asked; a bare number has that unit, but for forces, where kN is as near. @internal */
export function readingOf(line: string, unit: Unit | undefined): { value: Measurand } | { fault: string } {
  const text = unit !== undefined && unit !== 'N' && BARE.test(line) ? `${line} ${unit}` : line;
  try {
    return { value: readMeasurand('', text, unit) };
  } catch (error) {
    if (error instanceof Refusal) return { fault: messageOf(error).trim() };
    throw error;
  }
}

import type { FieldSpec } from '@spindlewright/quantity';

/** A field that takes a number, limits or a reading with uncertainty. @internal */
export const measured = (unit: string, range: { min?: number; above?: number; max: number }): FieldSpec => ({
  type: 'measurand',
  unit,
  ...range,
});

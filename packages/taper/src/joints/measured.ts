import { DomainError, type FieldSpec } from '@spindlewright/quantity';

/** A field that takes a number, limits or a reading with uncertainty. @internal */
export const measured = (unit: string, range: { min?: number; above?: number; max: number }): FieldSpec => ({
  type: 'measurand',
  unit,
  ...range,
});

/** A gap or clearance of no more is none: a nanometre, far below any reading, in mm. @internal */
export const NO_GAP_MM = 1e-6;

/** Refuses a count that is not whole. @internal */
export function checkWhole(where: string, path: string, count: number): void {
  if (Number.isInteger(count)) return;
  throw new DomainError(where, [{ path, received: String(count), allowed: 'a whole number' }]);
}

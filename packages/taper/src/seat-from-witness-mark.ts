import { checkInput, type Finding, hardLimits, type Limits, type Measurand } from '@spindlewright/quantity';
import { find } from './find.ts';
import { bounds } from './interval.ts';
import { requireBothShapes, resolveJoint } from './joint.ts';
import { seatMessages as messages } from './messages/seat.ts';
import type { Seat } from './seat.ts';
import { seatByMark } from './seat-places.ts';
import { type ArmShape, armSpec, type SpindleShape, spindleSpec } from './shapes.ts';

/**
 * Reads from the mark on the flats where the arm that made it sat when it was last pressed on.
 *
 * @remarks
 * Formula: mouth = end of the mark + mouth chamfer, since the mark ends where the bearing part of the bore ends; gaps and
 * engaged length as in {@link predictSeat}.
 *
 * Validity: the place is that of the last pressing with creep and wear since then, not a hand fit, and it belongs to the
 * arm that made the mark. A mark to the inner end of the flats means that the arm went on until it was stopped.
 *
 * Accuracy: limits are hard; the reading counts with its bounds (3 u for an uncertainty).
 *
 * @param input - `markEndFromSpindleEndMm` 0 to 100 mm; `spindle` and `arm` (both or neither) for the rest of the seat.
 * @returns The pressed seat in mm; null where only the shapes could tell.
 * @throws {@link DomainError} for unknown keys, values outside the domain, or one shape without the other.
 * @example
 * ```ts
 * import { seatFromWitnessMark } from '@spindlewright/taper';
 * const { pressed } = seatFromWitnessMark({
 *   markEndFromSpindleEndMm: 14.2,
 *   spindle: { acrossFlatsAtEndMm: 12.63, faceAngleDeg: 2, flatLengthMm: 20 },
 *   arm: { acrossFlatsAtMouthMm: 13.6, faceAngleDeg: 2, boreLengthMm: 18, mouthChamferMm: 0.5 },
 * });
 * [pressed.mouthFromEndMm?.nominal, pressed.endGapMm?.nominal.toFixed(1)]; // => [14.7, '3.3']
 * ```
 * @see Source `service-manual-page-16` for the sign of a worn-out bore.
 */
export function seatFromWitnessMark(input: {
  markEndFromSpindleEndMm: Measurand;
  spindle?: SpindleShape<Measurand>;
  arm?: ArmShape<Measurand>;
}): { pressed: Seat<Limits | null>; findings: Finding[] } {
  checkInput({
    where: 'seatFromWitnessMark',
    value: input,
    fields: {
      markEndFromSpindleEndMm: { type: 'measurand', unit: 'mm', min: 0, max: 100 },
      spindle: { type: 'object', fields: spindleSpec('measurand'), optional: true },
      arm: { type: 'object', fields: armSpec('measurand'), optional: true },
    },
  });
  requireBothShapes('seatFromWitnessMark', input);
  const { spindle, arm } = input;
  const joint = spindle && arm ? resolveJoint(spindle, arm) : undefined;
  const mark = hardLimits(input.markEndFromSpindleEndMm);
  const findings = [find(messages, 'mark-of-old-arm', 'caution')];
  if (joint === undefined) {
    findings.push(find(messages, 'end-gap-unbounded', 'caution'), find(messages, 'shoulder-gap-unbounded', 'caution'));
    findings.push(find(messages, 'engaged-length-unbounded', 'note'));
  } else if (mark.nominal >= joint.spindle.flatLengthMm.nominal) {
    findings.unshift(find(messages, 'mark-covers-flat', 'stop', {}, { sources: ['service-manual-page-16'] }));
  }
  return { pressed: seatByMark(mark, joint, bounds), findings };
}

import {
  checkInput,
  DomainError,
  type Finding,
  hardLimits,
  type Limits,
  type Measurand,
} from '@spindlewright/quantity';
import { find } from './find.ts';
import { bounds, exactly } from './interval.ts';
import { chainlineMessages as messages } from './messages/chainline.ts';

/** How a change of seats or spindle moves chainline and tread. */
export interface ChainlineShift {
  /** Shift of the chainline in mm, positive outward. */
  chainlineShiftMm: Limits;
  /** Shift of the non-drive arm in mm, positive outward. */
  nonDriveArmShiftMm: Limits;
  /** Change of the tread (distance between the pedal faces of the arms) in mm, positive wider. */
  treadChangeMm: Limits;
  /** What was assumed. */
  findings: Finding[];
}

/**
 * Works out how chainline and tread move when the arms seat elsewhere or the spindle is another one.
 *
 * @remarks
 * Formula: each arm moves with its end of the spindle and against the depth of its seat: chainline shift = drive-end change
 * - change of the drive-side `mouthFromEndMm`; a symmetric spindle moves each end by half its change in length; tread
 * change = sum of both arms.
 *
 * Validity: the same arms and chainrings before and after; spacers under the cups count as a change of the drive end.
 *
 * Accuracy: interval arithmetic; bounds are exact for independent readings.
 *
 * @param input - Changes in mm, new less old, each -100 to 100: `driveSeatChangeMm` and `nonDriveSeatChangeMm` of
 * `mouthFromEndMm` (positive: the arm sits farther in), `spindleLengthChangeMm`, and for a spindle that is not symmetric
 * `driveEndChangeMm` (positive: the drive end stands farther out). At least one of them.
 * @returns Shifts in mm as limits, positive outward.
 * @throws {@link DomainError} for unknown keys, values outside those ranges, or nothing given.
 * @example
 * ```ts
 * import { chainlineShift } from '@spindlewright/taper';
 * const shift = chainlineShift({ spindleLengthChangeMm: 5 });
 * [shift.chainlineShiftMm.nominal, shift.treadChangeMm.nominal]; // => [2.5, 5]
 * ```
 * @see Source `chainline-pairs-jp`: 113 to 118 mm of spindle goes with 47.5 to 50 mm of chainline.
 */
export function chainlineShift(input: {
  driveSeatChangeMm?: Measurand;
  nonDriveSeatChangeMm?: Measurand;
  spindleLengthChangeMm?: Measurand;
  driveEndChangeMm?: Measurand;
}): ChainlineShift {
  const change = { type: 'measurand', unit: 'mm', min: -100, max: 100, optional: true } as const;
  checkInput({
    where: 'chainlineShift',
    value: input,
    fields: {
      driveSeatChangeMm: change,
      nonDriveSeatChangeMm: change,
      spindleLengthChangeMm: change,
      driveEndChangeMm: change,
    },
  });
  const { driveSeatChangeMm, nonDriveSeatChangeMm, spindleLengthChangeMm, driveEndChangeMm } = input;
  if (
    [driveSeatChangeMm, nonDriveSeatChangeMm, spindleLengthChangeMm, driveEndChangeMm].every((x) => x === undefined)
  ) {
    const allowed = 'at least one change';
    throw new DomainError('chainlineShift', [{ path: 'driveSeatChangeMm', received: 'nothing', allowed }]);
  }
  const orNone = (value: Measurand | undefined): Limits => (value === undefined ? exactly(0) : hardLimits(value));
  const driveSeat = orNone(driveSeatChangeMm);
  const otherSeat = orNone(nonDriveSeatChangeMm);
  const length = orNone(spindleLengthChangeMm);
  const driveEnd = driveEndChangeMm === undefined ? undefined : hardLimits(driveEndChangeMm);
  const findings: Finding[] = [];
  if (spindleLengthChangeMm !== undefined && driveEnd === undefined) {
    findings.push(find(messages, 'spindle-taken-as-symmetric', 'note', {}, { path: 'driveEndChangeMm' }));
  }
  if (spindleLengthChangeMm === undefined && driveEnd !== undefined) {
    findings.push(find(messages, 'length-taken-as-unchanged', 'note', {}, { path: 'spindleLengthChangeMm' }));
  }
  const sides = { 'drive-side': driveSeatChangeMm, 'non-drive': nonDriveSeatChangeMm };
  for (const [side, given] of Object.entries(sides)) {
    if (given === undefined) findings.push(find(messages, 'side-taken-as-unchanged', 'note', { side }));
  }
  return {
    chainlineShiftMm: bounds(
      (corner) => (driveEnd === undefined ? corner(length) / 2 : corner(driveEnd)) - corner(driveSeat, false),
    ),
    nonDriveArmShiftMm: bounds(
      (corner) =>
        (driveEnd === undefined ? corner(length) / 2 : corner(length) - corner(driveEnd, false)) -
        corner(otherSeat, false),
    ),
    treadChangeMm: bounds((corner) => corner(length) - corner(driveSeat, false) - corner(otherSeat, false)),
    findings,
  };
}

import { checkInput, type Finding, hardLimits, type Limits, type Measurand } from '@spindlewright/quantity';
import { find } from './find.ts';
import { bounds, exactly } from './interval.ts';
import { clearanceMessages as messages } from './messages/clearance.ts';

/** Room between an arm and the frame after it has moved. */
export interface ArmClearance {
  /** Room at the narrowest place in mm, standing still; negative when the arm would touch. */
  clearanceMm: Limits;
  /** What is left of it under a hard push, in mm: the flex taken off. */
  underLoadMm: Limits;
  /** `clear`: at the worst limits and under load; `close`: not at every one of them; `touches`: at nominal values. */
  verdict: 'clear' | 'close' | 'touches';
  /** What was assumed, and what to do when it is close. */
  findings: Finding[];
}

// Judgement: a rider out of the saddle bends spindle, arm and chainstay towards each other by this much together; no
// published figure was found.
const FLEX_MM = { lower: 1, nominal: 2, upper: 3 } as const;

/**
 * Tells whether an arm still clears the frame when it seats deeper, its spindle is another one or it is bent otherwise.
 *
 * @remarks
 * Formula: an arm that seats deeper by d, or whose end of the spindle stands in by d, comes nearer to the frame by d
 * everywhere along its length, since it moves along the axis; another arm adds the difference of their offsets at the
 * narrowest place. Room = room now - change of the seat + shift of the spindle end + difference of the offsets; under load
 * less the flex.
 *
 * Validity: chainstay, chainguard or front mechanism alike, measured at the narrowest place with the arm pressed on as it
 * is now. A bent arm or frame is measured, not reckoned. The flex is `flexMm`, 1 to 3 mm when absent (judgement).
 *
 * Accuracy: interval arithmetic; bounds are exact for independent readings.
 *
 * @param input - `clearanceMm`: room now, 0 to 200 mm; `seatChangeMm`: change of `mouthFromEndMm` (positive: the arm sits
 * farther in), `spindleEndChangeMm` (positive: its end stands farther out), `offsetDifferenceMm` of another arm (positive:
 * it is bent farther out there), each -100 to 100 mm, 0 when absent; `flexMm`: 0 to 20 mm.
 * @returns Room in mm as limits, still and under load, and a verdict.
 * @throws {@link DomainError} for unknown keys or values outside those ranges.
 * @example
 * ```ts
 * import { armClearance } from '@spindlewright/taper';
 * const { clearanceMm, verdict } = armClearance({ clearanceMm: 6, seatChangeMm: 2 });
 * clearanceMm.nominal; // => 4
 * verdict; // => 'clear'
 * armClearance({ clearanceMm: 4, seatChangeMm: 2 }).verdict; // => 'close'
 * ```
 * @see Geometry; the flex is judgement, no source was found.
 */
export function armClearance(input: {
  clearanceMm: Measurand;
  seatChangeMm?: Measurand;
  spindleEndChangeMm?: Measurand;
  offsetDifferenceMm?: Measurand;
  flexMm?: Measurand;
}): ArmClearance {
  const change = { type: 'measurand', unit: 'mm', min: -100, max: 100, optional: true } as const;
  checkInput({
    where: 'armClearance',
    value: input,
    fields: {
      clearanceMm: { type: 'measurand', unit: 'mm', min: 0, max: 200 },
      seatChangeMm: change,
      spindleEndChangeMm: change,
      offsetDifferenceMm: change,
      flexMm: { type: 'measurand', unit: 'mm', min: 0, max: 20, optional: true },
    },
  });
  const orNone = (value: Measurand | undefined): Limits => (value === undefined ? exactly(0) : hardLimits(value));
  const now = hardLimits(input.clearanceMm);
  const seat = orNone(input.seatChangeMm);
  const end = orNone(input.spindleEndChangeMm);
  const offset = orNone(input.offsetDifferenceMm);
  const flex = input.flexMm === undefined ? FLEX_MM : hardLimits(input.flexMm);
  const clearanceMm = bounds((corner) => corner(now) - corner(seat, false) + corner(end) + corner(offset));
  const underLoadMm = bounds((corner) => corner(clearanceMm) - corner(flex, false));
  const verdict = clearanceMm.nominal <= 0 ? 'touches' : underLoadMm.lower > 0 ? 'clear' : 'close';
  const findings: Finding[] = [];
  if (input.flexMm === undefined) {
    findings.push(find(messages, 'flex-assumed', 'note', { lowerMm: 1, upperMm: 3 }, { path: 'flexMm' }));
  }
  if (verdict === 'touches')
    findings.push(find(messages, 'arm-touches-frame', 'stop', { roomMm: clearanceMm.nominal }));
  if (verdict === 'close')
    findings.push(find(messages, 'arm-close-to-frame', 'caution', { roomMm: underLoadMm.lower }));
  return { clearanceMm, underLoadMm, verdict, findings };
}

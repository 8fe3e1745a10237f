import { checkInput, DomainError, hardLimits, type Limits, type Measurand } from '@spindlewright/quantity';
import { find } from './find.ts';
import { bounds, type Corner, exactly, highest, nominal } from './interval.ts';
import { requireBothShapes, requireYieldStrength, resolveJoint, resolvePressing } from './joint.ts';
import { pressMessages } from './messages/press.ts';
import { pressFindings } from './press-findings.ts';
import { type PressState, solvePress } from './press-model.ts';
import { pressStateAt } from './press-state.ts';
import type { SeatPrediction } from './seat.ts';
import { seatFindings } from './seat-findings.ts';
import { usableFlat } from './seat-geometry.ts';
import { seatSensitivity } from './seat-sensitivity.ts';
import { seatVerdicts } from './seat-verdict.ts';
import { type ArmShape, armSpec, type Pressing, pressingSpec, type SpindleShape, spindleSpec } from './shapes.ts';
import { jointOf, type KnownSeat, pressReached, solveSeat } from './solve-seat.ts';

/** Readings of a trial fit: the arm pushed on by hand, gaps taken with a depth rod. */
export interface TrialFit {
  /** From the face where the bolt seats down to the spindle end; -100 to 100 mm, negative when the end stands proud. */
  endGapMm?: Measurand;
  /** From the inner face of the arm to the run-out or shoulder; -100 to 100 mm. */
  shoulderGapMm?: Measurand;
}

/** The mark that an arm has left on the flats. */
export interface WitnessMark {
  /** Inner end of the mark, from the spindle end; 0 to 100 mm. */
  markEndFromSpindleEndMm: Measurand;
}

/** What is known of a joint; the best way of knowing wins: trial fit, then witness mark, then shapes. */
export interface SeatInput {
  /** Shape of the spindle end; together with `arm`. */
  spindle?: SpindleShape<Measurand>;
  /** Shape of the arm's bore; together with `spindle`. */
  arm?: ArmShape<Measurand>;
  /** Gaps of a trial fit, at least one. */
  trialFit?: TrialFit;
  /** Mark left by an arm. */
  witnessMark?: WitnessMark;
  /** What presses the arm on; needs both shapes. */
  pressing?: Pressing<Measurand>;
}

/**
 * Predicts where a square-taper arm seats, by hand and pressed on, what stops it, and whether that is good enough.
 *
 * @remarks
 * Formula: hand fit at first contact. With across flats A (bore, at its mouth) and S (spindle, at its end) and face angles
 * a and s, the gap per side at depth z is (A - S)/2 - m tan a + z (tan a - tan s); for equal angles, or without chamfers,
 * m = (A - S)/(2 max(tan a, tan s)). With unequal angles the first contact is at one end of the overlap, at the end chamfer
 * of the spindle when the bore is steeper and at the mouth chamfer of the bore when the spindle is, so the chamfer there
 * moves the seat. Pressed = hand fit + travel (see {@link pressFit}); pressed gap = hand gap - travel. A witness mark ends
 * where the edge of the bore stood when pressed, so there hand fit = pressed - travel, the travel taken for the length that
 * bears when pressed.
 * End gap = bolt seat - intrusion - m; shoulder gap = min(shoulder, flat length + mouth chamfer) - m.
 * `seats`: both gaps keep 0.5 mm at their lower limits and 0.75 of the shorter usable flat is engaged (judgement, see
 * `seatThresholds`); the smaller gap names what stops the arm.
 *
 * Validity: any geometry inside the domain. A negative pressed gap means that the arm is stopped that much before. Travel
 * without bound (bore fully plastic, nothing engaged) is taken up to the nearest stop, with a finding. Without `pressing`
 * the travel is 0 and the verdict is that of the hand fit. Without shapes, what only they can tell is null.
 *
 * Accuracy: limits are hard: each reading counts with its bounds (3 u for an uncertainty), the travel with the error of its
 * model too, dimensions and materials not given with the bounds of `assumedDimensions` and `assumedMaterials`. They
 * enclose every combination of readings; they are wider than the true extremes where one size enters twice.
 *
 * @param input - `spindle` and `arm` (both or neither), `trialFit`, `witnessMark`, at least one way of knowing;
 * `pressing` with `axialForceN` (N), `friction`, `materials`, `compliance`. Numbers are Measurands; plain ones are exact.
 * @returns Seats in mm as limits, travel, verdicts, sensitivities and findings; see {@link SeatPrediction}.
 * @throws {@link DomainError} for unknown keys, values outside the domain, one shape without the other, nothing to go by,
 * pressing without shapes, or a plastic model without the yield strength of the arm.
 * @example
 * ```ts
 * import { predictSeat } from '@spindlewright/taper';
 * const seat = predictSeat({
 *   spindle: { acrossFlatsAtEndMm: 12.63, faceAngleDeg: 2, flatLengthMm: 20, cornerDiameterMm: 16.5 },
 *   arm: { acrossFlatsAtMouthMm: { value: 13.6, standardUncertainty: 0.01 }, faceAngleDeg: 2, boreLengthMm: 18 },
 *   pressing: { axialForceN: 15000, friction: { lower: 0.1, nominal: 0.13, upper: 0.16 } },
 * });
 * [seat.handFit.mouthFromEndMm.nominal.toFixed(2), seat.pressed.endGapMm.lower.toFixed(1), seat.verdict];
 * // => ['13.89', '2.5', 'seats']
 * ```
 * @see Sources `fe-square-taper` and, for the gaps, `forum-mixed-signs` and `taper-fr-workshop-wiki`.
 */
export function predictSeat(
  input: SeatInput & { spindle: SpindleShape<Measurand>; arm: ArmShape<Measurand> },
): SeatPrediction;
export function predictSeat(input: SeatInput): SeatPrediction<Limits | null>;
export function predictSeat(input: SeatInput): SeatPrediction<Limits | null> {
  checkSeatInput(input);
  const { spindle, arm, trialFit, witnessMark, pressing } = input;
  const known: KnownSeat = {
    ...(spindle && arm ? resolveJoint(spindle, arm) : {}),
    ...(trialFit ? { trialFit: mapLimits(trialFit) } : {}),
    ...(witnessMark
      ? { witnessMark: { markEndFromSpindleEndMm: hardLimits(witnessMark.markEndFromSpindleEndMm) } }
      : {}),
    ...(pressing ? { pressing: resolvePressing(pressing) } : {}),
  };
  const solved = solveSeat(known);
  const joint = jointOf(known);
  const start = joint && solved.handFit.mouthFromEndMm;
  const judged = {
    basis: trialFit ? 'trial-fit' : witnessMark ? 'witness-mark' : 'shapes',
    ...seatVerdicts({
      startMm:
        joint && start
          ? bounds(
              (corner) =>
                corner(start) - corner(joint.arm.mouthChamferMm, false) - corner(joint.spindle.endChamferMm, false),
            )
          : null,
      usableFlatMm: joint ? usableFlat(joint) : null,
      pressed: solved.pressed,
    }),
    sensitivity: seatSensitivity(known),
  } as const;
  const findings = seatFindings({ known, trialFit, solved, judged });
  const resolved = known.pressing;
  if (spindle && arm && pressing && joint && resolved) {
    const place = judged.basis === 'witness-mark' ? 'pressed' : 'hand-fit';
    const mouth = solved[place === 'pressed' ? 'pressed' : 'handFit'].mouthFromEndMm ?? exactly(0);
    const stateAt = (corner: Corner): PressState => pressStateAt(joint, resolved, mouth, corner, place);
    const state = stateAt(nominal);
    const outcome = solvePress(state);
    findings.push(...pressFindings({ spindle, arm, pressing, at: 'pressing.', joint, state, outcome }));
    if (outcome?.bounded && !solvePress(stateAt(highest))?.bounded) {
      const reason = 'at the worst limits of the readings the boss gives way or nothing is engaged';
      findings.push(find(pressMessages, 'travel-unbounded', 'caution', { reason }));
    }
  }
  findings.push(find(pressMessages, 'instructions-first', 'caution'));
  return {
    basis: judged.basis,
    handFit: solved.handFit,
    pressed: solved.pressed,
    travelMm: solved.travelMm,
    pressReached: pressReached(solved),
    verdict: judged.verdict,
    worstVerdicts: judged.worstVerdicts,
    sensitivity: judged.sensitivity,
    findings,
  };
}

function checkSeatInput(input: SeatInput): void {
  const gap = { type: 'measurand', unit: 'mm', min: -100, max: 100, optional: true } as const;
  const mark = { type: 'measurand', unit: 'mm', min: 0, max: 100 } as const;
  checkInput({
    where: 'predictSeat',
    value: input,
    fields: {
      spindle: { type: 'object', fields: spindleSpec('measurand'), optional: true },
      arm: { type: 'object', fields: armSpec('measurand'), optional: true },
      trialFit: { type: 'object', fields: { endGapMm: gap, shoulderGapMm: gap }, optional: true },
      witnessMark: { type: 'object', fields: { markEndFromSpindleEndMm: mark }, optional: true },
      pressing: { type: 'object', fields: pressingSpec('measurand'), optional: true },
    },
  });
  const { spindle, trialFit, witnessMark, pressing } = input;
  const refuse = (path: string, allowed: string): DomainError =>
    new DomainError('predictSeat', [{ path, received: 'nothing', allowed }]);
  requireBothShapes('predictSeat', input);
  if (trialFit && trialFit.endGapMm === undefined && trialFit.shoulderGapMm === undefined) {
    throw refuse('trialFit.endGapMm', 'at least one of endGapMm and shoulderGapMm');
  }
  if (spindle !== undefined) {
    if (pressing) requireYieldStrength('predictSeat', 'pressing.', pressing);
    return;
  }
  if (pressing !== undefined)
    throw refuse('spindle', 'the shapes of both parts, on which the stiffness of the press rests');
  if (trialFit === undefined && witnessMark === undefined) {
    throw refuse('trialFit', 'something to go by: trialFit, witnessMark, or spindle and arm');
  }
}

const mapLimits = ({ endGapMm, shoulderGapMm }: TrialFit): NonNullable<KnownSeat['trialFit']> => ({
  ...(endGapMm === undefined ? {} : { endGapMm: hardLimits(endGapMm) }),
  ...(shoulderGapMm === undefined ? {} : { shoulderGapMm: hardLimits(shoulderGapMm) }),
});

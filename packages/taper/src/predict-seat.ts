import type { Limits, Measurand } from '@spindlewright/quantity';
import { find } from './find.ts';
import { exactly, highest, nominal } from './interval.ts';
import { pressMessages } from './messages/press.ts';
import { pressFindings } from './press-findings.ts';
import { pressStateAt } from './press-state.ts';
import type { SeatPrediction } from './seat.ts';
import { seatFindings } from './seat-findings.ts';
import { basisOf, checkSeatInput, knownSeat, type PredictSeatInput, waysOf } from './seat-input.ts';
import { jointOf, pressReached, worstCase } from './seat-places.ts';
import { seatSensitivity } from './seat-sensitivity.ts';
import { seatVerdicts } from './seat-verdict.ts';
import { mixOf } from './seat-ways.ts';
import type { ArmShape, SpindleShape } from './shapes.ts';
import { solveSeat } from './solve-seat.ts';

/**
 * Predicts where a square-taper arm seats, by hand and pressed on, what stops it, and whether that is good enough.
 *
 * @remarks
 * Formula: hand fit at first contact. With across flats A (bore, at its mouth) and S (spindle, at its end) and face
 * angles a and s, the gap per side at depth z is (A - S)/2 - m tan a + z (tan a - tan s); for equal angles, or without
 * chamfers, m = (A - S)/(2 max(tan a, tan s)). With unequal angles the first contact is at one end of the overlap, at
 * the end chamfer of the spindle when the bore is steeper and at the mouth chamfer of the bore when the spindle is, so
 * the chamfer there moves the seat. Pressed = hand fit + travel (see {@link pressFit}); pressed gap = hand gap - travel.
 * A witness mark ends where the edge of the bore stood when pressed, so there hand fit = pressed - travel, the travel
 * taken for the length that bears when pressed. The best way of knowing leads: trial fit (its end gap first), mark,
 * shapes. With `mixWays` several (each gap of a trial fit, a mark without one, the shapes) are put together: nominal =
 * sum of x_i/w_i^2 over sum of 1/w_i^2, w the width of the limits; limits = what all of them leave. A way stays out
 * (`ways`) that has no width, that does not meet the best, or that differs from it by more than sqrt(w1^2 + w2^2)/2. End
 * gap = bolt seat - intrusion - m; shoulder gap = min(shoulder, flat length + mouth chamfer) - m. `seats`: both gaps
 * keep 0.5 mm at their lower limits and 0.75 of the shorter usable flat is engaged (judgement, see `seatThresholds`);
 * the smaller gap names what stops the arm.
 *
 * Validity: any geometry inside the domain. A negative pressed gap means that the arm is stopped that much before. Travel
 * without bound (bore fully plastic, nothing engaged) is taken up to the nearest stop, with a finding. Without `pressing`
 * the travel is 0 and the verdict is that of the hand fit. Without shapes, what only they can tell is null.
 *
 * Accuracy: limits are hard: each reading counts with its bounds (3 u for an uncertainty), the travel with the error of its
 * model too, dimensions and materials not given with the bounds of `assumedDimensions` and `assumedMaterials`. They
 * enclose every combination of readings; they are wider than the true extremes where one size enters twice. Ways put
 * together enclose the truth where the limits of each of them do.
 *
 * @param input - `spindle` and `arm` (both or neither), `trialFit`, `witnessMark`, at least one way of knowing;
 * `pressing` with `axialForceN` (N), `friction`, `materials`, `compliance`. Numbers are Measurands; plain ones are exact.
 * `mixWays`: true puts the ways of knowing together (default false: the best alone tells the place), for shapes measured on
 * these parts; `sensitivities`: false leaves them out (default true).
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
 * @see Sources `jcgm-100` (weighted mean and difference of independent readings), `fe-square-taper` and, for the gaps,
 * `forum-mixed-signs` and `taper-fr-workshop-wiki`.
 */
export function predictSeat(
  input: PredictSeatInput & { spindle: SpindleShape<Measurand>; arm: ArmShape<Measurand> },
): SeatPrediction;
export function predictSeat(input: PredictSeatInput): SeatPrediction<Limits | null>;
export function predictSeat(input: PredictSeatInput): SeatPrediction<Limits | null> {
  checkSeatInput('predictSeat', input, { sensitivities: { type: 'flag', optional: true } });
  const { spindle, arm, trialFit, pressing } = input;
  const known = knownSeat(input);
  const mix = mixOf(known, input.mixWays === true);
  const solved = solveSeat(known, worstCase, mix);
  const joint = jointOf(known);
  const judged = {
    basis: basisOf(input),
    ways: mix?.names ?? waysOf(input),
    ...seatVerdicts(solved, joint),
    sensitivity: input.sensitivities === false ? [] : seatSensitivity(known, mix),
  };
  const findings = seatFindings({ known, trialFit, solved, strained: mix?.strained ?? null, judged });
  const resolved = known.pressing;
  if (spindle && arm && pressing && joint && resolved) {
    const isPressed = judged.basis === 'witness-mark';
    const mouthMm = solved[isPressed ? 'pressed' : 'handFit'].mouthFromEndMm ?? exactly(0);
    const place = { joint, mouthMm, corner: nominal };
    const state = pressStateAt(place, resolved, isPressed);
    const outcome = resolved.solve(state, place);
    findings.push(...pressFindings({ spindle, arm, pressing, at: 'pressing.', joint, state, outcome }));
    const worst = { ...place, corner: highest };
    if (outcome?.bounded && !resolved.solve(pressStateAt(worst, resolved, isPressed), worst)?.bounded) {
      const reason = 'at the worst limits of the readings the boss gives way or nothing is engaged';
      findings.push(find(pressMessages, 'travel-unbounded', 'caution', { reason }));
    }
  }
  findings.push(find(pressMessages, 'instructions-first', 'caution'));
  return {
    basis: judged.basis,
    ways: judged.ways,
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

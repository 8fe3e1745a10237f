import { checkInput, type Finding, hardLimits, type Limits, type Measurand } from '@spindlewright/quantity';
import { find } from './find.ts';
import { bounds } from './interval.ts';
import { keepingMessages as messages } from './messages/keeping.ts';
import { faceAngleSpec } from './shapes.ts';
import { CLEAR_GAP_MM } from './thresholds.ts';

/** Whether a worn bore has seat left. */
export interface SeatLeft {
  /** How much farther the arm goes on until the clearance is taken up, in mm, at least 0. */
  advanceMm: Limits;
  /** What it needs in all: that advance, the travel of the press and the clear gap of `seatThresholds`, in mm. */
  neededMm: Limits;
  /** What is there: the smaller of both gaps, in mm. */
  seatMm: Limits;
  /** `has-seat` and `beyond-use` hold at both limits; `cannot-tell` is what lies between. */
  state: 'has-seat' | 'beyond-use' | 'cannot-tell';
  /** Stops and cautions. */
  findings: Finding[];
}

/**
 * Tells whether a rounded bore has seat enough left to be pressed tight again, or is beyond use.
 *
 * @remarks
 * Formula: advance = c/tan a, c the clearance per side; needed = advance + travel + 0.5 mm (the clear gap of
 * `seatThresholds`, judgement); there: the smaller of end gap and shoulder gap at hand fit.
 *
 * Validity: gaps as the arm sat when its flats still bore; a bore rounded on its corners bears on what is left of the flats
 * and wears faster. A shim would have to be thinner than the clearance varies over the flat, bears on an edge, and creeps:
 * it saves nothing.
 *
 * Accuracy: hard limits of the readings; 0.01 mm of clearance is 0.29 mm of seat at 2 deg.
 *
 * @param input - `clearanceMm` per side 0 to 10 mm (see {@link clearanceFromPlay}); `faceAngleDeg` 0.2 to 10 deg; `travelMm`
 * of the press 0 to 50 mm; `endGapMm` and `shoulderGapMm` at hand fit, -100 to 100 mm.
 * @returns Lengths in mm as limits, and the state.
 * @throws {@link DomainError} for unknown keys and values outside those ranges.
 * @example
 * ```ts
 * import { seatLeft } from '@spindlewright/taper';
 * const worn = seatLeft({ clearanceMm: 0.1, faceAngleDeg: 2, travelMm: 0.8, endGapMm: 3, shoulderGapMm: 5 });
 * [worn.advanceMm.nominal.toFixed(2), worn.state]; // => ['2.86', 'beyond-use']
 * ```
 * @see Geometry of the wedge; the clear gap is judgement.
 */
export function seatLeft(input: {
  clearanceMm: Measurand;
  faceAngleDeg: Measurand;
  travelMm: Measurand;
  endGapMm: Measurand;
  shoulderGapMm: Measurand;
}): SeatLeft {
  const gap = { type: 'measurand', unit: 'mm', min: -100, max: 100 } as const;
  checkInput({
    where: 'seatLeft',
    value: input,
    fields: {
      clearanceMm: { type: 'measurand', unit: 'mm', min: 0, max: 10 },
      faceAngleDeg: faceAngleSpec('measurand'),
      travelMm: { type: 'measurand', unit: 'mm', min: 0, max: 50 },
      endGapMm: gap,
      shoulderGapMm: gap,
    },
  });
  const clearance = hardLimits(input.clearanceMm);
  const angle = hardLimits(input.faceAngleDeg);
  const travel = hardLimits(input.travelMm);
  const gaps = [hardLimits(input.endGapMm), hardLimits(input.shoulderGapMm)];
  const advanceMm = bounds((corner) => corner(clearance) / Math.tan((corner(angle, false) * Math.PI) / 180));
  const neededMm = bounds((corner) => corner(advanceMm) + corner(travel) + CLEAR_GAP_MM);
  const seatMm = bounds((corner) => Math.min(...gaps.map((limits) => corner(limits))));
  const state =
    seatMm.lower >= neededMm.upper ? 'has-seat' : seatMm.upper < neededMm.lower ? 'beyond-use' : 'cannot-tell';
  const findings: Finding[] = [];
  if (state === 'beyond-use') {
    const values = { neededMm: neededMm.nominal, seatMm: seatMm.nominal };
    findings.push(find(messages, 'bore-beyond-use', 'stop', values));
  }
  if (state === 'cannot-tell') {
    const path = advanceMm.upper - advanceMm.lower > seatMm.upper - seatMm.lower ? 'clearanceMm' : 'endGapMm';
    findings.push(find(messages, 'seat-left-cannot-be-told', 'stop', { path }, { path }));
  }
  if (clearance.upper > 0) findings.push(find(messages, 'worn-bore-replace', 'caution'));
  return { advanceMm, neededMm, seatMm, state, findings };
}

import { unequalAngles } from './angle-contact.ts';
import { readBare } from './bare-input.ts';
import { type BareSeat, type BareSeatInput, solveBare } from './bare-solve.ts';

/**
 * Predicts where an arm seats as bare numbers and verdicts, for pages that count every kilobyte.
 *
 * @remarks
 * Formula: that of `predictSeat` from shapes with the model `fitted-plastic` where the arm's yield strength is given, else
 * `fitted`, by the same code.
 *
 * Validity: as there, but nothing is assumed: every size and material has to be given (only the shoulder may be left
 * out). Left out, to be small: findings and their sentences, trial fit and witness mark, sensitivities, keys that are not
 * known (they are passed over), near names. Say the cautions yourself; `predictSeat` has them. A size that has to be above
 * 0 has to be at least a nanometre. Where both angles are equal and exact, {@link bareSeatOfEqualAngles} is smaller still.
 *
 * Accuracy: the same numbers as `predictSeat`, to the last digit.
 *
 * @param input - `spindle`, `arm` in mm and deg; `pressing` with the force in N, friction, materials (GPa, MPa); each a
 * number or limits.
 * @returns Gaps, travel and lengths in mm with their worst case, verdicts.
 * @throws {@link DomainError} for a number outside its range or limits that cross, by its path.
 * @example
 * ```ts
 * import { bareSeat } from '@spindlewright/taper/bare';
 * const { verdict, pressed } = bareSeat({
 *   spindle: {
 *     acrossFlatsAtEndMm: 12.63, faceAngleDeg: 2, flatLengthMm: 15, endChamferMm: 0.5, cornerDiameterMm: 16.5,
 *   },
 *   arm: {
 *     acrossFlatsAtMouthMm: 13.54, faceAngleDeg: 2, boreLengthMm: 13.5, boltSeatFromMouthMm: 13.5, seatIntrusionMm: 0,
 *     mouthChamferMm: 0.3, bossDiameterMm: 38, boreCornerRadiusMm: 1,
 *   },
 *   pressing: {
 *     axialForceN: 25_000,
 *     friction: 0.13,
 *     materials: {
 *       spindle: { youngsModulusGPa: 205, poissonsRatio: 0.29 },
 *       arm: { youngsModulusGPa: 70, poissonsRatio: 0.33 },
 *     },
 *   },
 * });
 * verdict; // => 'bottoms-on-end'
 * pressed.endGapMm.nominal < 0; // => true
 * ```
 * @see `predictSeat` and its sources.
 */
export function bareSeat(input: BareSeatInput): BareSeat {
  return solveBare(readBare('bareSeat', input), unequalAngles);
}

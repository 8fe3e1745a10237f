import { DomainError } from '@spindlewright/quantity';
import { readBare } from './bare-input.ts';
import { type BareSeat, type BareSeatInput, solveBare } from './bare-solve.ts';

/**
 * Predicts where an arm seats on a spindle of the same, exact face angle, for pages that count every byte.
 *
 * @remarks
 * Formula: that of {@link bareSeat}, by the same code; only what unequal angles would add to the travel is left out, which
 * is 0 here.
 *
 * Validity: that of {@link bareSeat}. An angle with limits, or another than that of the spindle, is refused.
 *
 * Accuracy: the same numbers as `bareSeat` and `predictSeat`, to the last digit.
 *
 * @param input - That of {@link bareSeat}, with `faceAngleDeg` of spindle and arm equal and exact, 0.2 to 10 deg.
 * @returns Gaps, travel and lengths in mm with their worst case, verdicts.
 * @throws {@link DomainError} for a number outside its range, limits that cross, or angles that may differ, by its path.
 * @example
 * ```ts
 * import { bareSeatOfEqualAngles } from '@spindlewright/taper/bare';
 * const { travelMm } = bareSeatOfEqualAngles({
 *   spindle: {
 *     acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 20, endChamferMm: 0, cornerDiameterMm: 16.5,
 *   },
 *   arm: {
 *     acrossFlatsAtMouthMm: 13.5777, faceAngleDeg: 2, boreLengthMm: 15.5, boltSeatFromMouthMm: 15.5, seatIntrusionMm: 0,
 *     mouthChamferMm: 0, bossDiameterMm: 34, boreCornerRadiusMm: 1,
 *   },
 *   pressing: {
 *     axialForceN: 12_000,
 *     friction: 0.1,
 *     materials: {
 *       spindle: { youngsModulusGPa: 205, poissonsRatio: 0.29 },
 *       arm: { youngsModulusGPa: 70, poissonsRatio: 0.33 },
 *     },
 *   },
 * });
 * travelMm.nominal.toFixed(2); // => '0.82'
 * ```
 * @see `predictSeat` and its sources.
 */
export function bareSeatOfEqualAngles(input: BareSeatInput): BareSeat {
  const where = 'bareSeatOfEqualAngles';
  const given = readBare(where, input);
  const { lower, upper } = given.arm.faceAngleDeg;
  if (lower !== given.spindle.faceAngleDeg.upper || upper !== given.spindle.faceAngleDeg.lower) {
    const allowed = 'the angle of the spindle, both exact; bareSeat takes others';
    throw new DomainError(where, [{ path: 'arm.faceAngleDeg', received: `${lower} to ${upper}`, allowed }]);
  }
  return solveBare(given);
}

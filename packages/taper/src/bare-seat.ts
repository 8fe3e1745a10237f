import type { Limits, LimitsInput } from '@spindlewright/quantity';
import { bareJoint, barePressing } from './bare-input.ts';
import type { Seat, SeatVerdict } from './seat.ts';
import { startOf, usableFlat } from './seat-geometry.ts';
import { seatVerdicts } from './seat-verdict.ts';
import type { ArmShape, Material, SpindleShape } from './shapes.ts';
import { pressedFrom, pressReached, seatFromShapes } from './solve-seat.ts';

/** A spindle of which nothing is left to be assumed: every size but the shoulder is given. */
export interface BareSpindle extends Required<Omit<SpindleShape<LimitsInput>, 'shoulderFromEndMm'>> {
  /** Where the shoulder stands, from the end face; above 0 to 200 mm, none when absent. */
  shoulderFromEndMm?: LimitsInput;
}

/** Materials of both parts. */
export interface BareMaterials {
  /** Material of the spindle. */
  spindle: Material<LimitsInput>;
  /** Material of the arm. */
  arm: Material<LimitsInput>;
}

/** What presses the arm on, with nothing left to be assumed. */
export interface BarePressing {
  /** Axial force between bolt and arm, 0 to 200000 N. */
  axialForceN: LimitsInput;
  /** Coefficient of friction of the flats, 0 to 1. */
  friction: LimitsInput;
  /** Materials of both parts. */
  materials: BareMaterials;
}

/** A joint of which nothing is left to be assumed. */
export interface BareSeatInput {
  /** Shape of the spindle end. */
  spindle: BareSpindle;
  /** Shape of the arm. */
  arm: Required<ArmShape<LimitsInput>>;
  /** What presses the arm on. */
  pressing: BarePressing;
}

/** Where the arm sits, without a word beside it. */
export interface BareSeat {
  /** Seat of the arm pushed on by hand. */
  handFit: Seat;
  /** Seat after pressing, as if nothing stopped the arm. */
  pressed: Seat;
  /** Travel from hand fit to pressed, in mm, at least 0. */
  travelMm: Limits;
  /** Share of the travel that the stops leave, 0 to 1. */
  pressReached: Limits;
  /** Verdict at nominal values, lowered to `marginal` when a worst case is not `seats`. */
  verdict: SeatVerdict;
  /** Verdicts with the seat farthest out (`lower`) and farthest in (`upper`). */
  worstVerdicts: { lower: SeatVerdict; upper: SeatVerdict };
}

/**
 * Predicts where an arm seats as bare numbers and verdicts, for pages that count every kilobyte.
 *
 * @remarks
 * Formula: that of `predictSeat` from shapes with the model `fitted-plastic` where the arm's yield strength is given, else
 * `fitted`, by the same code.
 *
 * Validity: as there, but nothing is assumed: every size and material has to be given (only the shoulder may be left
 * out). Left out, to be small: findings and their sentences, trial fit and witness mark, sensitivities, keys that are not
 * known (they are passed over), near names. Say the cautions yourself; `predictSeat` has them.
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
  const joint = bareJoint(input);
  const handFit = seatFromShapes(joint);
  const { pressed, travelMm } = pressedFrom(joint, barePressing(input), handFit);
  const startMm = startOf(joint, handFit.mouthFromEndMm);
  return {
    handFit,
    pressed,
    travelMm,
    pressReached: pressReached({ handFit, pressed, travelMm }),
    ...seatVerdicts({ startMm, usableFlatMm: usableFlat(joint), pressed }),
  };
}

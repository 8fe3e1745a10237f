import type { Limits, LimitsInput } from '@spindlewright/quantity';
import type { BareLimits } from './bare-input.ts';
import { bounds } from './interval.ts';
import { type AngleModel, fittedPlastic, type PressSolver, solvePress } from './press-model.ts';
import type { Seat, SeatVerdict } from './seat.ts';
import { pressReached, seatFromShapes, shifted, travelOf, worstCase } from './seat-places.ts';
import { seatVerdicts } from './seat-verdict.ts';
import type { ArmShape, Material, SpindleShape } from './shapes.ts';

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

/** Solves a seat of which everything is given; without a model of unequal angles they have to be equal. @internal */
export function solveBare({ pressing, ...joint }: BareLimits, unequal?: AngleModel): BareSeat {
  const handFit = seatFromShapes(joint, bounds);
  const solve: PressSolver = (state, place) => solvePress(state, place, fittedPlastic, unequal);
  const travelMm = travelOf(joint, { ...pressing, solve }, handFit, false, worstCase);
  const seat = { handFit, pressed: shifted(handFit, travelMm, 1, joint, bounds) as Seat, travelMm };
  return { ...seat, pressReached: pressReached(seat), ...seatVerdicts(seat, joint) };
}

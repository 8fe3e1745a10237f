import type { Limits } from '@spindlewright/quantity';
import { bounds, type Corner, exactly, highest, lowest, nominal, opposite } from './interval.ts';
import type { Joint, ResolvedPressing } from './joint.ts';
import { solvePress } from './press-model.ts';
import { pressStateAt } from './press-state.ts';
import type { Seat } from './seat.ts';
import { boltFaceAt, engagedAt, gapsAt, handFitAt, stopFromEndAt } from './seat-geometry.ts';

/** Everything that is known of a seat, as limits; the paths of its leaves are those of the input. @internal */
export interface KnownSeat extends Partial<Joint> {
  trialFit?: { endGapMm?: Limits; shoulderGapMm?: Limits };
  witnessMark?: { markEndFromSpindleEndMm: Limits };
  pressing?: ResolvedPressing;
}

/** A seat before and after pressing. @internal */
export interface SolvedSeat {
  handFit: Seat<Limits | null>;
  pressed: Seat<Limits | null>;
  travelMm: Limits;
}

/** Both shapes, when both are known. @internal */
export const jointOf = ({ spindle, arm }: KnownSeat): Joint | undefined =>
  spindle === undefined || arm === undefined ? undefined : { spindle, arm };

type WantedTravel = 'limits' | 'nominal' | number;

/**
 * Finds the seat from the best there is: trial fit, then witness mark, then shapes. `travel` asks for the limits of the
 * travel, for its nominal value alone, or for the one at that share (0 to 1) of the error of the model.
 * @internal
 */
export function solveSeat(known: KnownSeat, travel: WantedTravel = 'limits'): SolvedSeat {
  const joint = jointOf(known);
  if (known.trialFit === undefined && known.witnessMark !== undefined) {
    return fromWitnessMark(known, known.witnessMark.markEndFromSpindleEndMm, joint, travel);
  }
  const handFit = known.trialFit === undefined ? fromShapes(joint) : fromTrialFit(known.trialFit, joint);
  const travelMm = travelFrom(known, joint, handFit.mouthFromEndMm, handFit, 'hand-fit', travel);
  return { handFit, pressed: moved(handFit, travelMm, joint), travelMm };
}

const fromShapes = (joint: Joint | undefined): Seat<Limits | null> =>
  joint === undefined
    ? { mouthFromEndMm: null, endGapMm: null, shoulderGapMm: null, engagedLengthMm: null }
    : seatFromShapes(joint);

/** Seat of the arm pushed on by hand, by its shapes. @internal */
export const seatFromShapes = (joint: Joint): Seat =>
  seatAt(
    joint,
    bounds((corner) => handFitAt(joint, corner)),
  );

/** Seat of a joint pressed on from its hand fit. @internal */
export function pressedFrom(
  joint: Joint,
  pressing: ResolvedPressing,
  handFit: Seat,
): { pressed: Seat; travelMm: Limits } {
  const travelMm = travelFrom({ pressing }, joint, handFit.mouthFromEndMm, handFit, 'hand-fit', 'limits');
  return { pressed: moved(handFit, travelMm, joint) as Seat, travelMm };
}

/** Seat of a joint with the mouth at a position. @internal */
export const seatAt = (joint: Joint, mouthFromEndMm: Limits): Seat => ({
  mouthFromEndMm,
  ...gapsAt(joint, mouthFromEndMm),
  engagedLengthMm: bounds((corner) => engagedAt(joint, mouthFromEndMm, corner)),
});

function fromTrialFit(
  { endGapMm, shoulderGapMm }: NonNullable<KnownSeat['trialFit']>,
  joint: Joint | undefined,
): Seat<Limits | null> {
  if (joint === undefined) {
    return {
      mouthFromEndMm: null,
      endGapMm: endGapMm ?? null,
      shoulderGapMm: shoulderGapMm ?? null,
      engagedLengthMm: null,
    };
  }
  const [byEnd, byShoulder] = mouthsByTrialFit({ endGapMm, shoulderGapMm }, joint);
  const seat = seatAt(joint, byEnd ?? byShoulder ?? exactly(0));
  return { ...seat, endGapMm: endGapMm ?? seat.endGapMm, shoulderGapMm: shoulderGapMm ?? seat.shoulderGapMm };
}

/** Where the mouth is by each of the two gaps. @internal */
export const mouthsByTrialFit = (
  trialFit: { endGapMm?: Limits | undefined; shoulderGapMm?: Limits | undefined },
  joint: Joint,
): [Limits | undefined, Limits | undefined] => {
  const { endGapMm, shoulderGapMm } = trialFit;
  return [
    endGapMm && bounds((corner) => boltFaceAt(joint, corner) - corner(endGapMm, false)),
    shoulderGapMm && bounds((corner) => stopFromEndAt(joint, corner) - corner(shoulderGapMm, false)),
  ];
};

/** Pressed seat that a witness mark tells: its inner end is where the bore's edge stood. @internal */
export function seatByMark(markMm: Limits, joint: Joint | undefined): Seat<Limits | null> {
  if (joint === undefined) return { ...fromShapes(undefined), mouthFromEndMm: markMm };
  return seatAt(
    joint,
    bounds((corner) => corner(markMm) + corner(joint.arm.mouthChamferMm)),
  );
}

function fromWitnessMark(known: KnownSeat, markMm: Limits, joint: Joint | undefined, travel: WantedTravel): SolvedSeat {
  const pressed = seatByMark(markMm, joint);
  const mouth = pressed.mouthFromEndMm;
  const travelMm = travelFrom(known, joint, mouth, pressed, 'pressed', travel);
  const hand = mouth && bounds((corner) => corner(mouth) - corner(travelMm, false));
  const gap = (limits: Limits | null): Limits | null => limits && bounds((corner) => corner(limits) + corner(travelMm));
  const handFit = {
    mouthFromEndMm: hand,
    endGapMm: gap(pressed.endGapMm),
    shoulderGapMm: gap(pressed.shoulderGapMm),
    engagedLengthMm: joint && hand ? seatAt(joint, hand).engagedLengthMm : null,
  };
  return { handFit, pressed, travelMm };
}

/** Moves a seat in by the travel. */
function moved(seat: Seat<Limits | null>, travelMm: Limits, joint: Joint | undefined): Seat<Limits | null> {
  const less = (gap: Limits | null): Limits | null => gap && bounds((corner) => corner(gap) - corner(travelMm, false));
  const mouth = seat.mouthFromEndMm;
  const mouthFromEndMm = mouth && bounds((corner) => corner(mouth) + corner(travelMm));
  return {
    mouthFromEndMm,
    endGapMm: less(seat.endGapMm),
    shoulderGapMm: less(seat.shoulderGapMm),
    engagedLengthMm:
      joint && mouthFromEndMm ? bounds((corner) => engagedAt(joint, mouthFromEndMm, corner)) : seat.engagedLengthMm,
  };
}

/** The nearer of the two gaps, as far as they are known. @internal */
export const nearestStop = ({ endGapMm, shoulderGapMm }: Seat<Limits | null>, corner: Corner): number =>
  Math.min(
    endGapMm === null ? Number.POSITIVE_INFINITY : corner(endGapMm),
    shoulderGapMm === null ? Number.POSITIVE_INFINITY : corner(shoulderGapMm),
  );

function travelFrom(
  { pressing }: KnownSeat,
  joint: Joint | undefined,
  mouthMm: Limits | null,
  stops: Seat<Limits | null>,
  place: 'hand-fit' | 'pressed',
  travel: WantedTravel,
): Limits {
  if (pressing === undefined || joint === undefined || mouthMm === null) return exactly(0);
  const at = (corner: Corner, bound: keyof Limits): number => {
    if (corner(pressing.axialForceN) === 0) return 0;
    const outcome = solvePress(pressStateAt(joint, pressing, mouthMm, corner, place));
    // What gives way without bound runs until it is stopped.
    const stop = outcome?.bounded ? 0 : Math.max(0, nearestStop(stops, corner));
    return Math.max(stop, outcome?.travelMm[bound] ?? 0);
  };
  if (typeof travel === 'number') {
    const lower = at(nominal, 'lower');
    return exactly(lower + travel * (at(nominal, 'upper') - lower));
  }
  const middle = at(nominal, 'nominal');
  if (travel === 'nominal') return exactly(middle);
  return {
    lower: Math.min(at(lowest, 'lower'), middle),
    nominal: middle,
    upper: Math.max(at(highest, 'upper'), middle),
  };
}

// Nearer than a nanometre is touching: there the rounding of the travel, not the gap, would set the share.
const TOUCHING_MM = 1e-6;

/** Share of the travel that the stops leave. @internal */
export const pressReached = ({ handFit, travelMm }: SolvedSeat): Limits =>
  bounds((corner) => {
    const gap = nearestStop(handFit, corner);
    const travel = opposite(corner)(travelMm);
    if (gap <= TOUCHING_MM) return 0;
    return travel <= gap ? 1 : gap / travel;
  });

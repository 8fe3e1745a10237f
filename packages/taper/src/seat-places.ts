import type { Limits } from '@spindlewright/quantity';
import { bounds, type Corner, exactly, highest, lowest, middle, nominal, OPEN, type Span } from './interval.ts';
import type { Joint, PressLimits, ResolvedPressing } from './joint.ts';
import { pressStateAt } from './press-state.ts';
import type { Seat } from './seat.ts';
import { boltFaceAt, engagedAt, handFitAt, stopFromEndAt } from './seat-geometry.ts';

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

/** How much of a seat is worked out: its limits, or one value of everything. @internal */
export interface Extent {
  span: Span;
  /** Travel from the one at a corner, which has the bounds of the model. */
  travel: (at: (corner: Corner) => Limits) => Limits;
}

/** Everything as limits. @internal */
export const worstCase: Extent = {
  span: bounds,
  travel(at) {
    const middle = at(nominal).nominal;
    return { lower: Math.min(at(lowest).lower, middle), nominal: middle, upper: Math.max(at(highest).upper, middle) };
  },
};

/** Nominal values alone. @internal */
export const nominalValues: Extent = { span: middle, travel: (at) => exactly(at(nominal).nominal) };

/** Nominal values, with the travel at that share, 0 to 1, of the error of its model. @internal */
export const sampledAt = (share: number): Extent => ({
  span: middle,
  travel(at) {
    const { lower, upper } = at(nominal);
    return exactly(lower + share * (upper - lower));
  },
});

/** A seat of which nothing is told. @internal */
export const UNKNOWN_SEAT = {
  mouthFromEndMm: null,
  endGapMm: null,
  shoulderGapMm: null,
  engagedLengthMm: null,
} as const;

/** Seat of the arm pushed on by hand, by its shapes. @internal */
export const seatFromShapes = (joint: Joint, span: Span): Seat =>
  seatAt(
    joint,
    span((corner) => handFitAt(joint, corner)),
    span,
  );

/** Seat of a joint with the mouth at a position. */
const seatAt = (joint: Joint, mouthFromEndMm: Limits, span: Span): Seat => ({
  mouthFromEndMm,
  endGapMm: span((corner) => boltFaceAt(joint, corner) - corner(mouthFromEndMm, false)),
  shoulderGapMm: span((corner) => stopFromEndAt(joint, corner) - corner(mouthFromEndMm, false)),
  engagedLengthMm: span((corner) => engagedAt(joint, mouthFromEndMm, corner)),
});

/** Where the mouth is by each of the two gaps. @internal */
export const mouthsByTrialFit = (
  trialFit: { endGapMm?: Limits | undefined; shoulderGapMm?: Limits | undefined },
  joint: Joint,
  span: Span,
): [Limits | undefined, Limits | undefined] => {
  const { endGapMm, shoulderGapMm } = trialFit;
  return [
    endGapMm && span((corner) => boltFaceAt(joint, corner) - corner(endGapMm, false)),
    shoulderGapMm && span((corner) => stopFromEndAt(joint, corner) - corner(shoulderGapMm, false)),
  ];
};

/** Pressed seat that a witness mark tells: its inner end is where the bore's edge stood. @internal */
export function seatByMark(markMm: Limits, joint: Joint | undefined, span: Span): Seat<Limits | null> {
  if (joint === undefined) return { ...UNKNOWN_SEAT, mouthFromEndMm: markMm };
  return seatAt(
    joint,
    span((corner) => corner(markMm) + corner(joint.arm.mouthChamferMm)),
    span,
  );
}

/** Moves a seat in by the travel, or back out. @internal */
export function shifted(
  seat: Seat<Limits | null>,
  travelMm: Limits,
  way: 1 | -1,
  joint: Joint | undefined,
  span: Span,
): Seat<Limits | null> {
  const gap = (limits: Limits | null): Limits | null =>
    limits && span((corner) => corner(limits) - way * corner(travelMm, way < 0));
  const mouth = seat.mouthFromEndMm;
  const mouthFromEndMm = mouth && span((corner) => corner(mouth) + way * corner(travelMm, way > 0));
  return {
    mouthFromEndMm,
    endGapMm: gap(seat.endGapMm),
    shoulderGapMm: gap(seat.shoulderGapMm),
    engagedLengthMm:
      joint && mouthFromEndMm ? span((corner) => engagedAt(joint, mouthFromEndMm, corner)) : seat.engagedLengthMm,
  };
}

/** The nearer of the two gaps, as far as they are known. */
const nearestStop = ({ endGapMm, shoulderGapMm }: Seat<Limits | null>, corner: Corner): number =>
  Math.min(corner(endGapMm ?? OPEN), corner(shoulderGapMm ?? OPEN));

/** Travel of a joint whose mouth stands where it is by hand, or already pressed on. @internal */
export function travelOf(joint: Joint, pressing: PressLimits, seat: Seat, isPressed: boolean, extent: Extent): Limits {
  return extent.travel((corner) => {
    if (corner(pressing.axialForceN) === 0) return exactly(0);
    const place = { joint, mouthMm: seat.mouthFromEndMm, corner };
    const outcome = pressing.solve(pressStateAt(place, pressing, isPressed), place);
    // What gives way without bound runs until it is stopped.
    const stop = outcome?.bounded ? 0 : Math.max(0, nearestStop(seat, corner));
    const { lower, nominal, upper } = outcome?.travelMm ?? exactly(0);
    return { lower: Math.max(stop, lower), nominal: Math.max(stop, nominal), upper: Math.max(stop, upper) };
  });
}

// Nearer than a nanometre is touching: there the rounding of the travel, not the gap, would set the share.
const TOUCHING_MM = 1e-6;

/** Share of the travel that the stops leave. @internal */
export const pressReached = ({ handFit, travelMm }: SolvedSeat): Limits =>
  bounds((corner) => {
    const gap = nearestStop(handFit, corner);
    const travel = corner(travelMm, false);
    if (gap <= TOUCHING_MM) return 0;
    return travel <= gap ? 1 : gap / travel;
  });

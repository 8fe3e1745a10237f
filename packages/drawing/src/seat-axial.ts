import { hardLimits, type Limits, type Measurand } from '@spindlewright/quantity';
import type { PictureSeat, SeatPicture } from './seat-picture.ts';
import type { Gap, Place } from './seat-scene.ts';
import { STAND_IN } from './stand-in.ts';

/** Where everything lies along the axis, mm. @internal */
export interface SeatAxial {
  hand: Place;
  pressed: Place;
  /** Inner face of the arm by hand, if nothing stopped it. */
  freeHandMouthMm: number;
  boltSeatMm: number;
  boreLengthMm: number;
  intrusionMm: number;
  mouthChamferMm: number;
  flatEndMm: number;
  wallMm: number | null;
  stopPlaneMm: number;
  stopIsWall: boolean;
  disagree: boolean;
}

/** Least length of bore, and of spindle, besides the chamfer at the mouth: less cannot carry the gaps, mm. */
const LEAST_MM = 2;
/** Sizes and gaps closer than this agree: hundredths come from rounding somewhere on the way. */
const SAME_MM = 0.05;

type Known = Measurand | null | undefined;

const limitsOf = (value: Known): Limits | null => (value === null || value === undefined ? null : hardLimits(value));

/** Nominal value, when known. @internal */
export const nominal = (value: Known): number | undefined => limitsOf(value)?.nominal;

/** Places arm, bolt seat, end of the flats and shoulder so that both gaps come out as given. @internal */
export function seatAxial(picture: SeatPicture): SeatAxial {
  const { spindle, arm, handFit, pressed } = picture;
  const intrusionMm = nominal(arm?.seatIntrusionMm) ?? 0;
  const chamfer = nominal(arm?.mouthChamferMm) ?? (arm === undefined ? STAND_IN.mouthChamfer : 0);
  const seat = nominal(arm?.boltSeatFromMouthMm) ?? nominal(arm?.boreLengthMm);
  const flat = nominal(spindle?.flatLengthMm);
  const wall = nominal(spindle?.shoulderFromEndMm);
  const stop = flat === undefined ? undefined : Math.min(wall ?? flat + chamfer, flat + chamfer);
  const travelMm = travelOf(picture);
  const free = freeGaps(picture, travelMm);
  const { end, shoulder } = free.pressed;
  const endGap = end ?? STAND_IN.endGap;
  const shoulderGap = shoulder ?? STAND_IN.shoulderGap;

  const asked =
    nominal(pressed.mouthFromEndMm) ??
    sum(seat, negative(intrusionMm), negative(end)) ??
    sum(stop, negative(shoulder)) ??
    nominal(handFit.mouthFromEndMm);
  const least = LEAST_MM + chamfer;
  const mouth = Math.max(
    asked ?? (stop ?? STAND_IN.stopFromEnd) - shoulderGap,
    least - shoulderGap,
    least - endGap - intrusionMm,
  );
  // A gap that is not known follows from the sizes, where these leave one.
  const boltSeatMm =
    end === undefined && seat !== undefined ? Math.max(seat, mouth + intrusionMm, least) : mouth + endGap + intrusionMm;
  const stopPlaneMm = shoulder === undefined && stop !== undefined ? Math.max(stop, mouth, least) : mouth + shoulderGap;
  const freeHandMouthMm = mouth - travelMm;
  const differs = (given: number | undefined, drawn: number): boolean =>
    given !== undefined && Math.abs(given - drawn) > SAME_MM;
  return {
    hand: placeOf(handFit, free.hand, freeHandMouthMm),
    pressed: placeOf(pressed, free.pressed, mouth),
    freeHandMouthMm,
    boltSeatMm,
    boreLengthMm: Math.min(Math.max(nominal(arm?.boreLengthMm) ?? boltSeatMm, least), boltSeatMm),
    intrusionMm,
    mouthChamferMm: chamfer,
    stopPlaneMm,
    ...flatsOf({ flat, wall, stop, stopPlaneMm, chamfer }),
    disagree: differs(asked, mouth) || differs(seat, boltSeatMm) || differs(stop, stopPlaneMm),
  };
}

const negative = (value: number | undefined): number | undefined => (value === undefined ? undefined : -value);
const sum = (...terms: readonly (number | undefined)[]): number | undefined =>
  terms.reduce((total, term) => (total === undefined || term === undefined ? undefined : total + term), 0);

interface FreeGaps {
  end: number | undefined;
  shoulder: number | undefined;
}

/** Both gaps in both places if nothing stopped the arm; one that is not given follows from the travel. */
function freeGaps({ handFit, pressed }: SeatPicture, travelMm: number): { hand: FreeGaps; pressed: FreeGaps } {
  const both = (hand: Known, press: Known): [number | undefined, number | undefined] => [
    nominal(hand) ?? sum(nominal(press), travelMm),
    nominal(press) ?? sum(nominal(hand), -travelMm),
  ];
  const end = both(handFit.endGapMm, pressed.endGapMm);
  const shoulder = both(handFit.shoulderGapMm, pressed.shoulderGapMm);
  return { hand: { end: end[0], shoulder: shoulder[0] }, pressed: { end: end[1], shoulder: shoulder[1] } };
}

/** The arm where a seat says, or as far as it gets. */
function placeOf(seat: PictureSeat, free: FreeGaps, mouthMm: number): Place {
  const shortMm = Math.max(0, -(free.end ?? 0), -(free.shoulder ?? 0));
  const gap = (limits: Limits | null): Gap | null =>
    limits === null ? null : { limits, drawnMm: Math.max(0, limits.nominal + shortMm) };
  const touches = (gapMm: number | undefined): boolean => gapMm !== undefined && gapMm + shortMm === 0;
  return {
    mouthMm: mouthMm - shortMm,
    shortMm,
    end: gap(limitsOf(seat.endGapMm)),
    shoulder: gap(limitsOf(seat.shoulderGapMm)),
    touching: touches(free.end) ? 'end' : touches(free.shoulder) ? 'shoulder' : null,
  };
}

/** Way from hand fit to pressed, from whichever pair of numbers is known. */
function travelOf({ handFit, pressed }: SeatPicture): number {
  const pairs: readonly (readonly [Known, Known])[] = [
    [handFit.endGapMm, pressed.endGapMm],
    [handFit.shoulderGapMm, pressed.shoulderGapMm],
    [pressed.mouthFromEndMm, handFit.mouthFromEndMm],
  ];
  const known = pairs.map(([far, near]) => sum(nominal(far), negative(nominal(near))));
  return known.find((travel) => travel !== undefined) ?? 0;
}

/** End of the flats and the wall behind it, moved together so that the stop lies where the gap says. */
function flatsOf(input: {
  flat: number | undefined;
  wall: number | undefined;
  stop: number | undefined;
  stopPlaneMm: number;
  chamfer: number;
}): { flatEndMm: number; wallMm: number | null; stopIsWall: boolean } {
  const { flat, wall, stop, stopPlaneMm, chamfer } = input;
  if (flat === undefined || stop === undefined) {
    // No run-out reaches past the chamfer of the bore: the wall is what the gap is measured to.
    return { flatEndMm: stopPlaneMm - Math.min(0.8, chamfer), wallMm: stopPlaneMm, stopIsWall: true };
  }
  const moved = stopPlaneMm - stop;
  const wallMm = wall === undefined ? null : wall + moved;
  const flatEndMm = Math.min(flat + moved, wallMm ?? flat + moved);
  return { flatEndMm, wallMm, stopIsWall: wall !== undefined && wall <= flat + chamfer };
}

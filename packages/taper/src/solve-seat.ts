import { exactly } from './interval.ts';
import type { Seat } from './seat.ts';
import {
  type Extent,
  jointOf,
  type KnownSeat,
  type SolvedSeat,
  seatByMark,
  seatFromShapes,
  shifted,
  travelOf,
  UNKNOWN_SEAT,
} from './seat-places.ts';
import { type SeatMix, seatByWays } from './seat-ways.ts';

/** Finds the seat by its ways of knowing, as they go together; a trial fit or a mark without shapes stands alone. @internal */
export function solveSeat(known: KnownSeat, extent: Extent, mix: SeatMix | undefined): SolvedSeat {
  const joint = jointOf(known);
  const { pressing, trialFit, witnessMark } = known;
  const { span } = extent;
  const byWays = joint && mix && seatByWays(known, joint, extent, mix);
  if (trialFit === undefined && witnessMark !== undefined) {
    const pressed = byWays ?? seatByMark(witnessMark.markEndFromSpindleEndMm, undefined, span);
    const travelMm = joint && pressing ? travelOf(joint, pressing, pressed as Seat, true, extent) : exactly(0);
    return { handFit: shifted(pressed, travelMm, -1, joint, span), pressed, travelMm };
  }
  const handFit = byWays ?? (joint ? seatFromShapes(joint, span) : { ...UNKNOWN_SEAT, ...trialFit });
  const travelMm = joint && pressing ? travelOf(joint, pressing, handFit as Seat, false, extent) : exactly(0);
  return { handFit, pressed: shifted(handFit, travelMm, 1, joint, span), travelMm };
}

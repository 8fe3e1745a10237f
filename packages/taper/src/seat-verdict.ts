import type { Limits } from '@spindlewright/quantity';
import { seatThresholds } from './assumed.ts';
import { type Corner, highest, lowest, nominal, opposite } from './interval.ts';
import type { Seat, SeatVerdict } from './seat.ts';

/** What a verdict rests on. @internal */
export interface SeatCase {
  /** How far the mouth is past the chamfers at hand fit; null when the shapes are not known. */
  startMm: Limits | null;
  /** Length of flat that could bear. */
  usableFlatMm: Limits | null;
  pressed: Seat<Limits | null>;
}

/** Verdict with the seat at one place: `corner` of its depth, which is the opposite corner of its gaps. @internal */
export function verdictAt({ startMm, usableFlatMm, pressed }: SeatCase, corner: Corner): SeatVerdict {
  if (startMm !== null && corner(startMm) <= 0) return 'does-not-start';
  const out = opposite(corner);
  const gap = (limits: Limits | null): number => (limits === null ? Number.POSITIVE_INFINITY : out(limits));
  const endGapMm = gap(pressed.endGapMm);
  const shoulderGapMm = gap(pressed.shoulderGapMm);
  if (Math.min(endGapMm, shoulderGapMm) <= 0) return endGapMm <= shoulderGapMm ? 'bottoms-on-end' : 'hits-shoulder';
  const { engagedLengthMm } = pressed;
  if (engagedLengthMm !== null && usableFlatMm !== null) {
    if (corner(engagedLengthMm) < seatThresholds.usableFlatShare.value * out(usableFlatMm))
      return 'too-little-engagement';
  }
  if (pressed.endGapMm === null || pressed.shoulderGapMm === null) return 'marginal';
  return Math.min(endGapMm, shoulderGapMm) >= seatThresholds.clearGapMm.value ? 'seats' : 'marginal';
}

/** Verdict at nominal values and at both ends of the limits. @internal */
export function seatVerdicts(seat: SeatCase): {
  verdict: SeatVerdict;
  worstVerdicts: { lower: SeatVerdict; upper: SeatVerdict };
} {
  const worstVerdicts = { lower: verdictAt(seat, lowest), upper: verdictAt(seat, highest) };
  const certain = worstVerdicts.lower === 'seats' && worstVerdicts.upper === 'seats';
  const verdict = verdictAt(seat, nominal);
  return { verdict: verdict === 'seats' && !certain ? 'marginal' : verdict, worstVerdicts };
}

import { type Corner, highest, lowest, nominal, OPEN, opposite } from './interval.ts';
import type { Joint } from './joint.ts';
import type { SeatVerdict } from './seat.ts';
import { startAt, usableFlatAt } from './seat-geometry.ts';
import type { SolvedSeat } from './seat-places.ts';
import { CLEAR_GAP_MM, USABLE_FLAT_SHARE } from './thresholds.ts';

/** Verdict with the seat at one place: `corner` of its depth, which is the opposite corner of its gaps. @internal */
export function verdictAt(
  { handFit, pressed }: Pick<SolvedSeat, 'handFit' | 'pressed'>,
  joint: Joint | undefined,
  corner: Corner,
): SeatVerdict {
  const { endGapMm, shoulderGapMm, engagedLengthMm } = pressed;
  if (joint && handFit.mouthFromEndMm && startAt(joint, handFit.mouthFromEndMm, corner) <= 0) return 'does-not-start';
  const end = corner(endGapMm ?? OPEN, false);
  const shoulder = corner(shoulderGapMm ?? OPEN, false);
  const nearest = Math.min(end, shoulder);
  if (nearest <= 0) return end <= shoulder ? 'bottoms-on-end' : 'hits-shoulder';
  if (joint && engagedLengthMm) {
    const least = USABLE_FLAT_SHARE * usableFlatAt(joint, opposite(corner));
    if (corner(engagedLengthMm) < least) return 'too-little-engagement';
  }
  return endGapMm && shoulderGapMm && nearest >= CLEAR_GAP_MM ? 'seats' : 'marginal';
}

/** Verdict at nominal values and at both ends of the limits. @internal */
export function seatVerdicts(
  seat: Pick<SolvedSeat, 'handFit' | 'pressed'>,
  joint: Joint | undefined,
): {
  verdict: SeatVerdict;
  worstVerdicts: { lower: SeatVerdict; upper: SeatVerdict };
} {
  const at = (corner: Corner): SeatVerdict => verdictAt(seat, joint, corner);
  const [lower, verdict, upper] = [at(lowest), at(nominal), at(highest)];
  const doubtful = verdict === 'seats' && (lower !== verdict || upper !== verdict);
  return { verdict: doubtful ? 'marginal' : verdict, worstVerdicts: { lower, upper } };
}

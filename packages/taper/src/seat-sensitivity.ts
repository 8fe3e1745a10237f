import type { Limits } from '@spindlewright/quantity';
import { exactly } from './interval.ts';
import type { SeatSensitivity } from './seat.ts';
import { type KnownSeat, nominalValues } from './seat-places.ts';
import type { SeatMix } from './seat-ways.ts';
import { solveSeat } from './solve-seat.ts';

// Narrower limits, in whatever unit, count as exact: dividing by them would give rounding errors for a slope.
const SMALLEST_STEP = 1e-9;

/**
 * How each leaf of what is known moves the pressed mouth, by evaluating it at both its limits with the others nominal; an
 * exact number is varied by a ten-thousandth to find its slope.
 * @internal
 */
export function seatSensitivity(known: KnownSeat, mix: SeatMix | undefined): SeatSensitivity[] {
  const found: SeatSensitivity[] = [];
  const visit = (node: object, path: string, rebuild: (value: unknown) => KnownSeat): void => {
    if ('nominal' in node) {
      const leaf = node as Limits;
      if (!Number.isFinite(leaf.nominal)) return;
      const exact = leaf.upper - leaf.lower < SMALLEST_STEP;
      const step = exact ? Math.max(1e-4 * Math.abs(leaf.nominal), SMALLEST_STEP) : 0;
      const low = exact ? Math.max(leaf.nominal - step, Math.min(leaf.nominal, 0)) : leaf.lower;
      const high = leaf.upper + step;
      const shiftMm = pressedMouth(rebuild(exactly(high)), mix) - pressedMouth(rebuild(exactly(low)), mix);
      const effectMm = exact ? 0 : Math.abs(shiftMm) / 2;
      if (shiftMm !== 0) found.push({ path, mmPerUnit: shiftMm / (high - low), effectMm });
      return;
    }
    for (const [key, child] of Object.entries(node)) {
      if (typeof child !== 'object') continue;
      visit(child, path === '' ? key : `${path}.${key}`, (value) => rebuild({ ...node, [key]: value }));
    }
  };
  visit(known, '', (value) => value as KnownSeat);
  return found.sort((a, b) => b.effectMm - a.effectMm || Math.abs(b.mmPerUnit) - Math.abs(a.mmPerUnit));
}

// Without shapes the place of the mouth is not known, but a gap read larger still means a mouth farther out.
function pressedMouth(known: KnownSeat, mix: SeatMix | undefined): number {
  const { mouthFromEndMm, endGapMm, shoulderGapMm } = solveSeat(known, nominalValues, mix).pressed;
  return mouthFromEndMm?.nominal ?? -(endGapMm ?? shoulderGapMm ?? exactly(0)).nominal;
}

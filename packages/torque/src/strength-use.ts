import type { Limits } from '@spindlewright/quantity';
import { twistPerPull } from './assembly-limit.ts';
import { COS_HALF_PROFILE, type LeverArms, type TorqueMethod } from './joint.ts';
import type { PreloadCorner } from './preload-range.ts';
import type { Thread } from './thread.ts';

/** How far the bolt is used. */
export interface StrengthUse {
  /** Yield strength in MPa. */
  yieldStrengthMPa: number;
  /** Equivalent stress of pull and twist in MPa over the whole range. */
  equivalentStressMPa: Limits;
  /** The same as a share of the yield strength. */
  utilisation: Limits;
}

/** Works out the use of the bolt from the corners of its preload and the lever arms at any of them. @internal */
export function strengthUse(
  thread: Thread,
  method: TorqueMethod,
  yieldStrengthMPa: number,
  corners: { lower: PreloadCorner; nominal: PreloadCorner; upper: PreloadCorner },
  armsAt: (corner: PreloadCorner) => LeverArms,
): StrengthUse {
  const stressAt = (corner: PreloadCorner): number => {
    const preloadN = (corner.torqueNm * 1000) / armsAt(corner).tightenMm;
    return equivalentStress(thread, preloadN, corner.threadFriction);
  };
  // Stress rises with torque and falls with head friction; over thread friction it may turn.
  const over = (corner: PreloadCorner): number[] => {
    const [from, to] = [corners.upper.threadFriction, corners.lower.threadFriction];
    const at = (threadFriction: number): PreloadCorner => ({ ...corner, threadFriction });
    const turns = turningPoints(from, to, (friction) => stressSlope(thread, method, friction, armsAt(at(friction))));
    return [from, to, ...turns].map((friction) => stressAt(at(friction)));
  };
  const equivalentStressMPa = {
    lower: Math.min(...over(corners.lower)),
    nominal: stressAt(corners.nominal),
    upper: Math.max(...over(corners.upper)),
  };
  return {
    yieldStrengthMPa,
    equivalentStressMPa,
    utilisation: {
      lower: equivalentStressMPa.lower / yieldStrengthMPa,
      nominal: equivalentStressMPa.nominal / yieldStrengthMPa,
      upper: equivalentStressMPa.upper / yieldStrengthMPa,
    },
  };
}

/** Equivalent stress of pull and twist in MPa while the bolt is tightened. @internal */
export const equivalentStress = (thread: Thread, preloadN: number, threadFriction: number): number =>
  (preloadN / thread.stressAreaMm2) * Math.sqrt(1 + twistAt(thread, threadFriction) ** 2);

/** Root of 3 times shear over pull, which is linear in the thread friction. */
const twistAt = (thread: Thread, threadFriction: number): number =>
  Math.sqrt(3) * twistPerPull(thread, threadFriction, 'plastic');

/**
 * Slope of the stress sqrt(1 + x^2)/a over the thread friction, but for a factor above 0: x x' a - a' (1 + x^2), with x the
 * twist and a the lever arm; for the exact form times (1 - f t)^2, f friction of the flanks, t tangent of the lead angle.
 * For the linear forms that is linear in the friction: the stress has a lowest point at most. For the exact form it is
 * cubic. Its derivative falls as long as 1 - 2 t^2 - 3 f t > 0 and lies below 0 beyond (f up to 1.155, t up to 0.37), so it
 * rises and then falls at most, and the stress may fall, rise and fall again.
 */
function stressSlope(thread: Thread, method: TorqueMethod, threadFriction: number, arms: LeverArms): number {
  const twist = twistAt(thread, threadFriction);
  const twistSlope = twistAt(thread, 1) - twistAt(thread, 0);
  const slopeWith = (armSlope: number): number => twist * twistSlope * arms.tightenMm - armSlope * (1 + twist ** 2);
  if (method !== 'exact') return slopeWith(arms.threadMm / threadFriction);
  const tangent = thread.pitchMm / (Math.PI * thread.pitchDiameterMm);
  const rest = (1 - (threadFriction / COS_HALF_PROFILE) * tangent) ** 2;
  return rest * slopeWith(((thread.pitchDiameterMm / 2) * (1 + tangent ** 2)) / rest / COS_HALF_PROFILE);
}

/** Where a slope that rises and then falls, or does one of both, changes its sign. */
function turningPoints(from: number, to: number, slope: (x: number) => number): number[] {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [from, to];
  for (let i = 0; i < STEPS; i++) {
    const left = b - ratio * (b - a);
    const right = a + ratio * (b - a);
    if (slope(left) > slope(right)) b = right;
    else a = left;
  }
  // On a slope that only rises or falls the search ends beside the end itself.
  const top = [from, to, (a + b) / 2].reduce((best, x) => (slope(x) > slope(best) ? x : best));
  if (slope(top) <= 0) return [];
  return [from, to].filter((end) => slope(end) < 0).map((end) => rootBetween(end, top, slope));
}

/** Root between a place where the slope lies below 0 and one where it lies above. */
function rootBetween(below: number, above: number, slope: (x: number) => number): number {
  for (let i = 0; i < STEPS; i++) {
    const middle = (below + above) / 2;
    if (slope(middle) < 0) below = middle;
    else above = middle;
  }
  return (below + above) / 2;
}

// Halves an interval of frictions to the last digit.
const STEPS = 60;

import type { Limits } from '@spindlewright/quantity';
import { twistPerPull } from './assembly-limit.ts';
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

/** Works out the use of the bolt from the corners of its preload. @internal */
export function strengthUse(
  thread: Thread,
  yieldStrengthMPa: number,
  corners: { lower: PreloadCorner; nominal: PreloadCorner; upper: PreloadCorner },
  preloadAt: (corner: PreloadCorner) => number,
): StrengthUse {
  const stressAt = (corner: PreloadCorner): number => {
    const twist = twistPerPull(thread, corner.threadFriction, 'plastic');
    return (preloadAt(corner) / thread.stressAreaMm2) * Math.sqrt(1 + 3 * twist ** 2);
  };
  const { lower, upper } = corners;
  // At the highest head friction and the lowest torque the stress has at most one lowest point between the ends of the
  // thread friction; golden-section search finds it, the ends included.
  const lowest = minimumOver(upper.threadFriction, lower.threadFriction, (threadFriction) =>
    stressAt({ ...lower, threadFriction }),
  );
  const equivalentStressMPa = {
    lower: lowest,
    nominal: stressAt(corners.nominal),
    upper: Math.max(stressAt(upper), stressAt({ ...upper, threadFriction: lower.threadFriction })),
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

function minimumOver(from: number, to: number, f: (x: number) => number): number {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [from, to];
  for (let i = 0; i < 60; i++) {
    const left = b - ratio * (b - a);
    const right = a + ratio * (b - a);
    if (f(left) < f(right)) b = right;
    else a = left;
  }
  return Math.min(f(from), f(to), f((a + b) / 2));
}

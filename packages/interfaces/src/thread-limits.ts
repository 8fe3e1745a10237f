import { identificationData } from './identification.generated.ts';

/** Largest and smallest diameter of a part, in mm. */
interface DiameterLimits {
  lower: number;
  upper: number;
}

/**
 * Limits of the diameter that a caliper meets: over the crests of an external thread 6g, between the crests of an
 * internal thread 6H. Unrounded: the tables of the standard round the widths to a series of preferred numbers. @internal
 */
export function crestLimits(input: {
  nominalDiameterMm: number;
  pitchMm: number;
  kind: 'external' | 'internal';
}): DiameterLimits {
  const { nominalDiameterMm, pitchMm, kind } = input;
  const { limits } = identificationData.threads;
  if (kind === 'external') {
    const allowance = limits.allowanceUm.value + limits.allowancePerPitchUm.value * pitchMm;
    const width = limits.majorWidthUm.value * pitchMm ** (2 / 3) - limits.majorWidthFallUm.value / Math.sqrt(pitchMm);
    const upper = nominalDiameterMm - allowance / 1000;
    return { lower: upper - width / 1000, upper };
  }
  const width =
    pitchMm < 1
      ? limits.fineMinorWidthUm.value * pitchMm - limits.fineMinorWidthFallUm.value * pitchMm ** 1.22
      : limits.minorWidthUm.value * pitchMm ** 0.7;
  const lower = nominalDiameterMm - FLANK_DEPTH_RATIO * pitchMm;
  return { lower, upper: lower + width / 1000 };
}

/** Twice 5/8 of the height of the sharp triangle of 60 degrees: nominal less internal minor diameter, in pitches. @internal */
export const FLANK_DEPTH_RATIO = (5 / 8) * Math.sqrt(3);

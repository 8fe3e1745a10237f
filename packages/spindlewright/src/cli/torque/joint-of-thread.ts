import type { Thread } from '@spindlewright/torque';

// Judgement: the joint of a bicycle that a thread of that size usually belongs to. Sizes by what the rows of the trade
// torques name as their fastener; anything else has to be named.
const BY_DIAMETER_MM: readonly (readonly [number, string])[] = [
  [8, 'square-taper-bolt'],
  [10, 'square-taper-bolt'],
  [12, 'splined-bolt-m12'],
  [15, 'splined-bolt-m15'],
  [14, 'pedal'],
  // 9/16 in and 1/2 in.
  [14.2875, 'pedal'],
  [12.7, 'pedal'],
];

/** Joint whose trade torques go with a thread; undefined where no size tells. @internal */
export const jointOfThread = ({ majorDiameterMm, pitchMm }: Thread): string | undefined =>
  // The sleeve nut of a chainring has this pitch alone.
  pitchMm === 0.75 ? undefined : BY_DIAMETER_MM.find(([size]) => Math.abs(size - majorDiameterMm) < 1e-6)?.[1];

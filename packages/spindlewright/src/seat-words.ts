import type { Limits } from '@spindlewright/quantity';
import type { SeatPrediction } from '@spindlewright/taper';
import type { SeatBasis } from './seat-part.ts';

/** A verdict in plain words. @internal */
export const verdictWords: Readonly<Record<SeatPrediction['verdict'], string>> = {
  seats: 'seats',
  marginal: 'seats, but only just',
  'bottoms-on-end': 'bolt lands on the spindle end',
  'hits-shoulder': 'stopped by the wall',
  'too-little-engagement': 'too little of the flats in use',
  'does-not-start': 'does not go on',
};

/** A way of knowing in plain words. @internal */
export const basisWords: Readonly<Record<SeatBasis, string>> = {
  'trial-fit': 'trial fit',
  readings: 'readings of the flats',
  'published-set': 'published sizes alone',
};

/** `2.1 mm (1.4 to 2.9)`, or `not known`; a bare number when the limits do not differ at that precision. @internal */
export function limitsWords(value: Limits | null, unit: string, decimals = 1): string {
  if (value === null) return 'not known';
  const lower = plain(value.lower, decimals);
  const nominal = plain(value.nominal, decimals);
  const upper = plain(value.upper, decimals);
  return lower === upper ? `${nominal} ${unit}` : `${nominal} ${unit} (${lower} to ${upper})`;
}

/** A number with fixed decimals and no negative zero. @internal */
export const plain = (value: number, decimals: number): string => {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace('-', '') : text;
};

/** A gap in words: below zero the arm is stopped before it is pressed, and it says by how much. @internal */
export function gapWords(value: Limits | null): string {
  if (value === null) return 'not known';
  const side = (gap: number): string => (gap < 0 ? `${plain(-gap, 1)} short` : plain(gap, 1));
  const nominal = value.nominal > 0 ? `${plain(value.nominal, 1)} mm` : `none, ${plain(-value.nominal, 1)} mm short`;
  return side(value.lower) === side(value.upper)
    ? nominal
    : `${nominal} (${side(value.lower)} to ${side(value.upper)})`;
}

const PATH_WORDS: Readonly<Record<string, string>> = {
  'trialFit.endGapMm': 'the end gap, bolt seat to spindle end, with the arm pushed on by hand',
  'trialFit.shoulderGapMm': 'the shoulder gap, arm to wall or run-out, with the arm pushed on by hand',
  'pressing.axialForceN': 'the bolt force (torque and its friction)',
  'pressing.friction': 'the friction of the flats',
  'pressing.materials.arm.yieldStrengthMPa': 'the alloy of the arm (ask the part maker for its yield strength)',
  'arm.acrossFlatsAtMouthMm': 'the size of the square hole',
  'spindle.acrossFlatsAtEndMm': 'the size of the square of the spindle',
  'arm.faceAngleDeg': 'the face angle of the hole',
  'spindle.faceAngleDeg': 'the face angle of the spindle',
  'arm.boltSeatFromMouthMm': "the depth of the bolt's seat in the arm",
  'arm.boreLengthMm': 'the length of the square hole',
  'arm.bossDiameterMm': 'the diameter of the boss round the hole',
  'spindle.flatLengthMm': 'the length of the flats',
  'spindle.shoulderFromEndMm': 'the distance of the shoulder from the spindle end',
};

/** A path of the prediction in plain words; the path itself where it has none. @internal */
export const pathWords = (path: string): string =>
  (Object.hasOwn(PATH_WORDS, path) ? PATH_WORDS[path] : undefined) ?? path;

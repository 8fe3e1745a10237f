import type { Messages } from '@spindlewright/quantity';

/** Templates of what a seat may have to say. @internal */
export const seatMessages = {
  'bottoms-on-end':
    'Do not ride this pair: pressed on, the bolt seats on the spindle end (end gap {endGapMm} mm), clamps the spindle and leaves the taper without preload.',
  'hits-shoulder':
    'Do not ride this pair: the arm meets the shoulder or the run-out before it is pressed (shoulder gap {shoulderGapMm} mm).',
  'too-little-engagement':
    'Do not ride this pair: only {engagedLengthMm:1} mm of {usableFlatMm:1} mm of flat would carry, less than the share of {usableFlatShare} asked for (judgement).',
  'does-not-start': 'Do not ride this pair: the bore is too small to go over the end of the spindle.',
  marginal:
    'The seat is marginal: it holds at nominal sizes, but a gap is, or may be, under {clearGapMm:1} mm, or is not known. Measure before riding.',
  'worst-case-differs':
    'Within the limits of the readings the verdict runs from {lower} to {upper}; better knowledge of {path} would tell most.',
  'pressing-not-given':
    'No pressing force is given: the verdict is that of the hand fit, before the bolt is tightened.',
  'reading-taken-as-exact':
    'The reading {path} is a plain number and taken as exact; a depth rod reads to about 0.1 mm, so give it with its uncertainty.',
  'ways-strained':
    'The {second} puts the mouth of the arm {secondMm} mm from the spindle end, the {first} {firstMm} mm; their limits meet, but that is more than their errors together should make, so that they were not put together. Measure both again.',
  'readings-disagree':
    'The {first} puts the mouth of the arm {firstMm} mm from the spindle end, the {second} {secondMm} mm; they disagree beyond their limits, so one of them is wrong.',
  'mark-disagrees':
    'The witness mark puts the mouth of a pressed arm {markMm} mm from the spindle end, the trial fit {trialFitMm} mm; they disagree beyond their limits: another arm made the mark, the bore has worn since, or a reading is wrong.',
  'mark-of-old-arm':
    'The witness mark tells where the arm that made it sat, creep and wear included; for another arm it says nothing certain.',
  'mark-covers-flat':
    'Do not ride with the arm that made this mark: it reaches the inner end of the flats, the sign of a worn-out bore.',
  'mouth-from-end-unbounded': 'Where the arm sits on the spindle cannot be told without the shapes of both parts.',
  'end-gap-unbounded': 'The gap to the spindle end is not known: measure it with a depth rod.',
  'shoulder-gap-unbounded': 'The gap to the shoulder is not known: measure it.',
  'engaged-length-unbounded': 'The engaged length cannot be told without the shapes of both parts.',
} as const satisfies Messages;

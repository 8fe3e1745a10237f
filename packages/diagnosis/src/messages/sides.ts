import type { Messages } from '@spindlewright/quantity';

/** English templates of what {@link compareSides} says of both sides together. */
export const sides: Messages = {
  'contradiction-sides':
    '"{check}" belongs to both sides, but was given as "{drive}" on one and "{nonDrive}" on the other.',
  'arm-sits-deeper':
    'By {measurement} the {side} arm sits {byMm:1} mm deeper than the other: a worn hole, or parts of two kinds.',
  'answer-shared': '"{check}" was given for one side only and counts for both.',
};

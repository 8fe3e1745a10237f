import type { Messages } from '@spindlewright/quantity';

/** Templates of what a shift of the arms may have to say. @internal */
export const chainlineMessages = {
  'spindle-taken-as-symmetric':
    'The spindle is taken as symmetric: half of its change in length moves each arm. Give driveEndChangeMm for one that is not.',
  'length-taken-as-unchanged':
    'The spindle length is not given and taken as unchanged: the drive end moves and the other end follows.',
  'side-taken-as-unchanged': 'The {side} seat is not given and taken as unchanged.',
} as const satisfies Messages;

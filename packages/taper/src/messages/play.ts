import type { Messages } from '@spindlewright/quantity';

/** Templates of what a rounded bore may have to say. @internal */
export const playMessages = {
  'bore-is-open':
    'Do not ride an arm that turns on its spindle: the bore is open by {clearanceMm:3} mm per side, and no shim, glue or peening saves it.',
  'rotation-unbounded':
    'Do not ride: with {clearanceMm:3} mm per side the square turns right through the bore; {largestMm:3} mm is the most that still stops it.',
  'clearance-unbounded':
    'Do not ride: so much play lets the square turn right through the bore; it would stop at {largestDeg:1} deg either way at the latest.',
} as const satisfies Messages;

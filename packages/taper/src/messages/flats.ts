import type { Messages } from '@spindlewright/quantity';

/** Templates of what readings of flats may have to say. @internal */
export const flatsMessages = {
  'one-pair-measured': 'Only one pair of flats was measured; the other may be tighter and would decide.',
  'pairs-differ':
    'The two pairs of flats differ by {differenceMm:3} mm, more than their readings leave open: the square is uneven and the tighter pair bears alone.',
  'readings-scatter':
    'A reading of pair {pair} lies {residualMm:3} mm off the line through its pair: read again, or the flat is crowned or worn.',
  'angle-not-resolved':
    'The readings leave the face angle between {lowerDeg} and {upperDeg} deg; measure farther apart or give the angle.',
  'angle-outside-domain':
    'The readings leave a face angle of {lowerDeg} to {upperDeg} deg, not wholly inside the {leastDeg:1} to {mostDeg:0} deg that a seat is predicted for: read the planes again, farther apart.',
  'angle-disagrees':
    'The readings give a face angle of {fittedDeg} deg, the one given is {givenDeg} deg; they disagree beyond their limits.',
  'plane-counts':
    'An error of 1 mm in the plane of a reading is {acrossFlatsMm:3} mm across flats and about 1 mm of seat.',
} as const satisfies Messages;

import type { Messages } from '@spindlewright/quantity';

/** Templates of what the margins under load may have to say. @internal */
export const loadMessages = {
  'margin-compares-only':
    'These margins compare joints and preloads and explain which side frets first; they are no verdict and no leave to ride. How far bending opens an edge has not settled in the calculations behind it: their limits take 1 to 1.35 times what a rigid spindle would do.',
  'contact-opens-in-places':
    'Bending alone is {bendingPercent:0} % of what unloads the edge at the mouth; from {opensPercent:0} % on contact opens in places along it, where the flats fret first.',
  'edge-unloads':
    'On the {side} side an edge of the flats unloads at {firstEdgeUnloading} times this load at worst: the joint works, frets and beds in.',
  'left-before-right':
    'The left leg drives through both tapers, so the left one takes torque and bending at once and comes loose first.',
  'load-unbounded': 'The load on the {side} side may be nothing, so its margin has no bound.',
  'no-contact': 'Nothing bears at the worst limits of these sizes, so no margin can be given.',
  'preload-has-other-limits':
    'A preload from this rule has to be within what bolt, thread and boss stand; the instructions of the part makers come before it.',
} as const satisfies Messages;

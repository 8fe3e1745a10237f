import type { Messages } from '@spindlewright/quantity';

/** Templates of what only `pressFit` has to say. @internal */
export const pressFitMessages = {
  'never-ride-without-bolt':
    'Never ride without the bolt, and never with a loose one: friction holds the arm at rest only, pedalling shakes it out and the arm walks off.',
  'bore-corner-stress-unbounded':
    'The boss is too thin for the corner-stress fit (boss over across flats {bossRatio}, fitted from 1.85); no stress is given.',
  'slides-off':
    'Friction {releaseFriction} does not hold this angle: the arm pushes itself off as soon as the bolt is loose.',
} as const satisfies Messages;

import type { Messages } from '@spindlewright/quantity';

/** Templates of what turning the bolt may have to say. @internal */
export const boltMessages = {
  'stop-before-half-a-turn':
    'A sound press takes about {boltTurns:1} turns from snug, a bolt that has gone solid {solidTurns}; if it goes solid before half a turn, stop and look for a bolt on the spindle end or an arm on its shoulder.',
  'half-turn-tells-nothing':
    'A sound press is predicted to take {boltTurns} turns from snug and a bolt that has gone solid {solidTurns}, so the rule of half a turn does not tell them apart here: measure both gaps before and after tightening.',
  'preload-needs-recheck':
    'Riding shakes the friction out of the taper, so the bolt keeps about {preloadAfterShakedownN:0} N of {preloadN:0} N even without wear: check the torque after the first ride.',
  'no-lower-bound':
    'No lower bound is claimed for the preload: each micrometre of bedding or wear per flat may take up to {preloadLossPerMicrometreN:0} N more, so the bolt can go slack.',
} as const satisfies Messages;

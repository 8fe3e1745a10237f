import type { Messages } from '@spindlewright/quantity';

/** Templates of what a press fit of two rings may have to say. @internal */
export const ringsMessages = {
  'ring-yields':
    'The {part} ring yields at its bore or surface: {equivalentMPa:0} MPa (Tresca) against {yieldStrengthMPa:0} MPa; the elastic result overstates the pressure.',
  'yield-not-checked': 'The yield strength of the {part} ring is not given, so yielding is not checked.',
  'cone-slides-off':
    'Friction {releaseFriction} does not hold an angle of {faceAngleDeg} deg: the cone pushes itself off.',
} as const satisfies Messages;

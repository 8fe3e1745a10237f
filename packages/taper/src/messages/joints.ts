import type { Messages } from '@spindlewright/quantity';

/** Of the joints beside the square taper. @internal */
export const jointsMessages = {
  'cap-by-hand':
    'The cap only takes the play out of the bearings: by hand, until the arms no longer shift and the spindle still turns freely. Tighter, it wears them.',
  'cap-leaves-play':
    'The arm can still shift by {axialPlayMm:2} mm along its spindle: set the cap before the pinch bolts are tightened.',
  'clamp-rests-on-model':
    'How the pressure lies around the spindle is not known: the limits run from two lines of contact to an even pressure.',
  'closing-stiffness-unbounded':
    'The arm may grip without any closing of its slot, so that the stiffness of the slot has no bound.',
  'cotter-travel-not-reckoned':
    'The travel of the cotter needs the play across the flat and the stiffness there: what rests on the one that is missing is not given.',
  'cotter-works-out':
    'The cotter does not hold by itself at the lowest friction: it works out unless its nut keeps it, and a nut is no wedge.',
  'cotters-same-way-round':
    'Both cotters the same way round leave the arms {misalignmentDeg:1} degrees out of line: turn one of them round.',
  'face-teeth-open':
    'The axial force does not keep the teeth together under this load: {neededForceN:0} N are needed, {axialForceN:0} N are there. Do not ride.',
  'flat-lifts': 'This torque lifts one edge of the flat off the cotter: the joint rocks and wears from here on.',
  'joint-instructions-first':
    'This is a model of the joint: the instructions of the part makers and the eye of a qualified mechanic come before it.',
  'may-not-be-home':
    'At the worst of the readings the force does not bring the arm onto its stop: look whether a gap is left there.',
  'no-joint':
    'Arm and spindle are one piece: there is no seat to tighten, to mark or to wear. What can be looked at is whether it is bent or cracked, and its bearings.',
  'not-home':
    'The force does not bring the arm onto its stop: {leftShare:2} of the way is left. The chainline is not that of the part, and the press is not what it was made for.',
  'past-yield':
    'At this load the bar is stressed to {equivalentStressMPa:0} MPa and may bend for good; {yieldStrengthMPa:0} MPa were given for it.',
  'press-grows-evenly':
    'The force is taken to grow evenly from the fit by hand to the stop (a model): no measured press of such splines was found.',
  'press-stiffness-unbounded': 'The arm may stand on its stop by hand, so that force over travel has no bound.',
  'reserve-unbounded': 'The load may be as good as nothing, so that the reserve has no end.',
  'safety-catch':
    'Where the arm has a safety catch it lies in its hole before the pinch bolts are tightened; the clamp alone is no proof against walking off.',
  'share-of-flanks-assumed':
    'Three flanks of four are taken to carry (common handbook practice, from memory); no figure for these joints was found.',
  'share-of-ring-assumed':
    'Two thirds of the ring are taken to bear (judgement); new teeth bear on more, worn or dirty ones on less.',
  'slot-closed':
    'The slot is closed: the halves meet each other instead of the spindle, and no torque on the bolts clamps the arm. Do not ride.',
  'slot-may-be-closed':
    'At the worst of the readings the slot is closed, and then nothing is clamped: measure it again before the bicycle is ridden.',
  'stop-before-press':
    'Pushed on by hand the arm already stands on its stop: its splines do not press and will wear loose. Do not ride: arm or spindle is worn, or they are not of one kind.',
  'stop-may-come-first':
    'At the worst of the readings the arm stands on its stop before its splines press: measure the gap at the stop again.',
  'teeth-have-no-travel':
    'Face teeth have no travel to read a press from: they meet all at once, and only the force of the bolt keeps them together.',
  'travel-not-reckoned':
    'Travel and stiffness need the gap that the arm, pushed on by hand, leaves at its stop: it was not measured.',
} as const satisfies Messages;

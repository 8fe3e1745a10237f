import type { Messages } from '@spindlewright/quantity';

/** Templates of what a press may have to say, whichever function asks. @internal */
export const pressMessages = {
  'friction-is-a-range':
    'Friction {friction} is one value of a wide range: greased flats are taken as {greasedLower} to {greasedUpper}, dry ones as {dryLower} to {dryUpper} (judgement). Reckon with both ends.',
  'material-assumed':
    "The material of the {part} is not given; Young's modulus {youngsModulusGPa:0} GPa and Poisson's ratio {poissonsRatio} are taken.",
  'yield-unknown':
    'The yield strength of the arm is not given, so whether the bore yields is not known; past yield the arm travels further than this.',
  'flat-width-assumed':
    'The corner diameter of the spindle is not given; {cornerDiameterMm:1} mm is taken, which makes the flats {flatWidthMm:1} mm wide (judgement).',
  'boss-assumed': 'The boss diameter of the arm is not given; {bossDiameterMm:0} mm is taken (judgement).',
  'outside-fit-range':
    '{quantity} {value} lies outside {lower} to {upper}, where the press model was fitted to finite elements; the travel is less certain than its limits say.',
  'angles-differ':
    'The face angles differ, so first contact is at the {end} and the pressure is uneven; {closingMm} mm of the travel goes into closing the difference.',
  'first-yield-passed':
    'The mean pressure of {contactPressureMPa:0} MPa is past first yield of the ring ({firstYieldMPa:0} MPa): the bore stays wider after removal, and the next pressing goes further on.',
  'bore-fully-plastic':
    'Do not tighten to this force and do not ride: the pressure is {plasticityRatio} of what the boss could carry fully plastic, beyond {collapseRatio} it runs towards collapse.',
  'travel-unbounded': 'No bound can be given for the travel: {reason}.',
  'contact-pressure-unbounded': 'There is nothing to press on, so no pressure can be given: {reason}.',
  'instructions-first':
    'This is a prediction: the instructions of the part makers and the eye of a qualified mechanic come before it.',
} as const satisfies Messages;

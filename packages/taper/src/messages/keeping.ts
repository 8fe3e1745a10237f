import type { Messages } from '@spindlewright/quantity';

/** Templates of what re-tightening, pulling, heating and wear may have to say. @internal */
export const keepingMessages = {
  'retightening-uses-the-seat':
    'Re-tightening restores the clamp and presses the arm farther on each time, {advanceMm:2} mm in all here: it cures the first settling, not an arm that keeps coming loose.',
  'retightening-ends-on-end':
    'Do not tighten further and do not ride: by cycle {cycle:0} the end gap is used up, the bolt clamps the spindle and the taper keeps no preload.',
  'retightening-ends-the-boss':
    'Do not tighten further and do not ride: by cycle {cycle:0} the pressure reaches {pressureMPa:0} MPa of the {largestPressureMPa:0} MPa that the boss is trusted with.',
  'boss-not-checked':
    'No largest pressure is given, so whether the boss splits before the end gap is used up is not checked.',
  'puller-thread-strips':
    'Do not pull like this: the {part} thread gives way at {stripForceN:0} N with {engagedTurns:1} turns in, the arm may need {releaseForceN:0} N. Screw the puller in all the way, washer out first.',
  'puller-in-all-the-way':
    'Take bolt and washer out first and screw the puller in until it stops: at least {neededTurns:1} turns have to hold.',
  'heat-alone-does-not-free':
    'Heat takes {lostShare} of the interference: it eases the pull and does not free the arm by itself.',
  'heat-frees-and-may-harm':
    'Heat takes all the interference; an arm so hot may lose its temper or its finish. The instructions of the part maker come before this.',
  'cold-tightens': 'At these temperatures the fit is tighter than when it was pressed.',
  'bore-beyond-use':
    'Do not ride and do not repair: the worn bore needs {neededMm} mm of seat and only {seatMm} mm is left; no shim, glue or peening saves it.',
  'seat-left-cannot-be-told':
    'Within the limits of the readings the bore may or may not have seat enough; do not ride before {path} is known better.',
  'worn-bore-replace':
    'An arm that has turned on its spindle has lost its flats even where seat is left; a qualified mechanic decides whether it is used again.',
} as const satisfies Messages;

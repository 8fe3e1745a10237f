import {
  angleTooFine,
  beyondAssemblyLimit,
  beyondYield,
  beyondYieldIfSlippery,
  exactTorqueAssumed,
  failsUnderLoad,
  fitFromMemory,
  frictionUnbounded,
  frictionUnusual,
  frictionWithoutRange,
  handForceHigh,
  headMissesCorners,
  headPressureHigh,
  leftHandThread,
  lumpedFriction,
  memberYieldsUnknown,
  oneFrictionValue,
  outsideClassSizes,
  outsideStiffnessFit,
  partsComeApart,
  prevailingNotOvercome,
  pullAtTheGrip,
  selfLoosening,
  settledSlack,
  squareHoleUnderHead,
  stripsBeforeBoltBreaks,
  stripsUnderLoad,
  thermallySlack,
  torqueIsNoMeasureOfClamp,
  wrenchOutOfReach,
} from './lean.ts';

/** Codes of the findings that this package may raise. */
export type TorqueFindingCode =
  | 'angle-too-fine'
  | 'beyond-assembly-limit'
  | 'beyond-yield'
  | 'beyond-yield-if-slippery'
  | 'bolt-too-short'
  | 'bottoms-in-hole'
  | 'bottoms-when-pressed'
  | 'clamps-the-spindle'
  | 'exact-torque-assumed'
  | 'fails-under-load'
  | 'few-turns-at-start'
  | 'fit-from-memory'
  | 'friction-unbounded'
  | 'friction-unusual'
  | 'friction-without-range'
  | 'hand-force-high'
  | 'head-misses-corners'
  | 'head-pressure-high'
  | 'hole-depth-for-thread'
  | 'left-hand-thread'
  | 'lumped-friction'
  | 'may-be-short'
  | 'may-bottom'
  | 'may-clamp-the-spindle'
  | 'member-yields-unknown'
  | 'nearly-bottoms'
  | 'nut-not-filled'
  | 'nut-runs-out-of-thread'
  | 'one-friction-value'
  | 'outside-class-sizes'
  | 'outside-stiffness-fit'
  | 'parts-come-apart'
  | 'prevailing-not-overcome'
  | 'pull-at-the-grip'
  | 'runout-unknown'
  | 'self-loosening'
  | 'settled-slack'
  | 'shank-jams'
  | 'spindle-thread-assumed'
  | 'square-hole-under-head'
  | 'stop-unknown'
  | 'strips-before-bolt-breaks'
  | 'strips-under-load'
  | 'thermally-slack'
  | 'torque-is-no-measure-of-clamp'
  | 'washer-missing'
  | 'wrong-thread'
  | 'wrench-out-of-reach';

/** English templates of the finding codes that this package may raise. */
export const messages: Readonly<Record<TorqueFindingCode, string>> = {
  'bottoms-in-hole':
    'The bolt meets the end of the thread in the spindle at least {overlapMm:1} mm before its head can press: it feels tight and clamps nothing. Fit a shorter bolt or the right washer; do not ride.',
  'bottoms-when-pressed':
    'The bolt is free at hand fit, but the arm moves in by up to {travelMm:1} mm as it is pressed and then the bolt meets the end of the thread: it goes solid while the arm is still loose. Fit a shorter bolt or the right washer; do not ride.',
  'beyond-assembly-limit': beyondAssemblyLimit,
  'beyond-yield': beyondYield,
  'beyond-yield-if-slippery': beyondYieldIfSlippery,
  'bolt-too-short':
    'At most {engagementMm:1} mm of thread carries where {neededMm:1} mm is wanted ({neededDiameters:2} diameters): the thread can strip. Fit a longer bolt; do not ride.',
  'clamps-the-spindle':
    "The seat in the arm stands at most {endGapMm:1} mm proud of the spindle's end by hand (below 0: it lies within) and moves in by at least {travelMm:1} mm: bolt or nut then clamp the end of the spindle instead of the arm, and no preload reaches the taper. It feels tight and holds nothing; do not ride. The arm, the spindle or the depth of the seat is wrong, or the bore is worn: let a qualified mechanic look.",
  'exact-torque-assumed': exactTorqueAssumed,
  'few-turns-at-start': 'At hand fit the fixing holds by {turns:1} turns only: do not pull the arm on with so few.',
  'friction-unusual': frictionUnusual,
  'friction-without-range': frictionWithoutRange,
  'hand-force-high': handForceHigh,
  'head-misses-corners': headMissesCorners,
  'head-pressure-high': headPressureHigh,
  'hole-depth-for-thread':
    'The depth of the hole stands in for that of its thread, which ends before it: less way is left and less thread carries than was reckoned. Turn the bolt in by hand without the arm and measure how deep it goes.',
  'left-hand-thread': leftHandThread,
  'lumped-friction': lumpedFriction,
  'may-be-short':
    'Between {lowerMm:1} and {upperMm:1} mm of thread carries where {neededMm:1} mm is wanted: whether it is enough cannot be told from these measurements.',
  'may-bottom':
    'Between {lowerMm:1} and {upperMm:1} mm is left before the fixing meets the end of its thread (below 0: it meets it): measure closer before tightening.',
  'may-clamp-the-spindle':
    "Between {lowerMm:1} and {upperMm:1} mm is left between the seat in the arm and the spindle's end once the arm is pressed; at 0 or below bolt or nut clamp the spindle instead of the arm and no preload reaches the taper: measure closer, and do not ride before it is known.",
  'member-yields-unknown': memberYieldsUnknown,
  'nearly-bottoms':
    'Only {clearanceMm:1} mm is left before the fixing meets the end of its thread once the arm is pressed: less than one turn.',
  'nut-not-filled':
    'At most {engagementMm:1} mm of the stud stands in the nut where {neededMm:1} mm is wanted: the thread can strip. Look for a washer too many, another nut, or an arm that does not go far enough on; do not ride.',
  'nut-runs-out-of-thread':
    'Once the arm is pressed the nut reaches the end of the thread on the stud, {overlapMm:1} mm short: it feels tight and clamps nothing. Add the right washer; do not ride.',
  'one-friction-value': oneFrictionValue,
  'outside-class-sizes': outsideClassSizes,
  'pull-at-the-grip': pullAtTheGrip,
  'runout-unknown':
    'How far the foot of the stud is without full thread is not known: whether the nut meets its end cannot be told. Measure it.',
  'self-loosening': selfLoosening,
  'settled-slack': settledSlack,
  'shank-jams':
    'The plain shank of the bolt reaches the thread of the spindle {overlapMm:1} mm before the head can press: it feels tight and clamps nothing. Fit a bolt threaded far enough up; do not ride.',
  'spindle-thread-assumed':
    'The thread of the spindle was not given and is taken to be {fixingThread}: M8 and M10 come with fine and coarse pitch.',
  'square-hole-under-head': squareHoleUnderHead,
  'stop-unknown':
    'Neither the depth of the thread nor that of the hole is known: whether the bolt meets its end cannot be told. Measure it with a rod.',
  'strips-under-load': stripsUnderLoad,
  'torque-is-no-measure-of-clamp': torqueIsNoMeasureOfClamp,
  'washer-missing':
    'A plain head bears straight on the square hole: the washer is missing. It digs into four edges, the torque misleads and the preload fades. Fit the washer; do not ride without it.',
  'wrong-thread':
    'The fixing is {fixingThread}, the spindle {spindleThread}: they do not belong together. Do not force it.',
  'fit-from-memory': fitFromMemory,
  'outside-stiffness-fit': outsideStiffnessFit,
  'parts-come-apart': partsComeApart,
  'friction-unbounded': frictionUnbounded,
  'angle-too-fine': angleTooFine,
  'thermally-slack': thermallySlack,
  'fails-under-load': failsUnderLoad,
  'strips-before-bolt-breaks': stripsBeforeBoltBreaks,
  'prevailing-not-overcome': prevailingNotOvercome,
  'wrench-out-of-reach': wrenchOutOfReach,
};

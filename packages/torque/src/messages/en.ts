/** Codes of the findings that this package may raise. */
export type TorqueFindingCode =
  | 'angle-too-fine'
  | 'beyond-assembly-limit'
  | 'beyond-yield'
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
  | 'wrong-thread';

/** English templates of the finding codes that this package may raise. */
export const messages: Readonly<Record<TorqueFindingCode, string>> = {
  'bottoms-in-hole':
    'The bolt meets the end of the thread in the spindle at least {overlapMm:1} mm before its head can press: it feels tight and clamps nothing. Fit a shorter bolt or the right washer; do not ride.',
  'bottoms-when-pressed':
    'The bolt is free at hand fit, but the arm moves in by up to {travelMm:1} mm as it is pressed and then the bolt meets the end of the thread: it goes solid while the arm is still loose. Fit a shorter bolt or the right washer; do not ride.',
  'beyond-assembly-limit':
    'At the low end of friction the bolt is stressed to {utilisationPercent:0} % of its yield strength, beyond the usual {limitPercent:0} % for tightening.',
  'beyond-yield':
    'At the low end of friction the bolt reaches {utilisationPercent:0} % of its yield strength: it would stretch for good. Do not tighten this far.',
  'bolt-too-short':
    'At most {engagementMm:1} mm of thread carries where {neededMm:1} mm is wanted ({neededDiameters:2} diameters): the thread can strip. Fit a longer bolt; do not ride.',
  'clamps-the-spindle':
    "The seat in the arm stands at most {endGapMm:1} mm proud of the spindle's end by hand (below 0: it lies within) and moves in by at least {travelMm:1} mm: bolt or nut then clamp the end of the spindle instead of the arm, and no preload reaches the taper. It feels tight and holds nothing; do not ride. The arm, the spindle or the depth of the seat is wrong, or the bore is worn: let a qualified mechanic look.",
  'exact-torque-assumed':
    'The torque was given as one exact number: no hand tool sets it so. Name the tool, or give limits.',
  'few-turns-at-start': 'At hand fit the fixing holds by {turns:1} turns only: do not pull the arm on with so few.',
  'friction-unusual':
    'Friction {friction:2} lies outside {lowest:2} to {highest:2}, the span of the usual friction classes.',
  'friction-without-range':
    'Friction was given as one exact number; nobody knows it so well. The width shown is too small: give limits.',
  'hand-force-high':
    'The lever asks for {forceN:0} N at the hand, more than one arm gives with care: use a longer lever.',
  'head-misses-corners':
    'The head ({outerDiameterMm:1} mm) does not reach over the corners of the square under it and their reliefs ({cornerMm:1} mm): it bears on four separate patches.',
  'head-pressure-high':
    'The pressure under the head is {pressureMPa:0} MPa, beyond the limiting {limitMPa:0} MPa: the head sinks in and the preload fades. Put a larger or thicker washer under it.',
  'hole-depth-for-thread':
    'The depth of the hole stands in for that of its thread, which ends before it: less way is left and less thread carries than was reckoned. Turn the bolt in by hand without the arm and measure how deep it goes.',
  'left-hand-thread': 'The thread is left-handed: it tightens anticlockwise.',
  'lumped-friction': 'One nut factor holds all friction: what part the thread and the head take cannot be told.',
  'may-be-short':
    'Between {lowerMm:1} and {upperMm:1} mm of thread carries where {neededMm:1} mm is wanted: whether it is enough cannot be told from these measurements.',
  'may-bottom':
    'Between {lowerMm:1} and {upperMm:1} mm is left before the fixing meets the end of its thread (below 0: it meets it): measure closer before tightening.',
  'may-clamp-the-spindle':
    "Between {lowerMm:1} and {upperMm:1} mm is left between the seat in the arm and the spindle's end once the arm is pressed; at 0 or below bolt or nut clamp the spindle instead of the arm and no preload reaches the taper: measure closer, and do not ride before it is known.",
  'member-yields-unknown':
    'Without the limiting pressure of the part under the head it cannot be told whether the head sinks in.',
  'nearly-bottoms':
    'Only {clearanceMm:1} mm is left before the fixing meets the end of its thread once the arm is pressed: less than one turn.',
  'nut-not-filled':
    'At most {engagementMm:1} mm of the stud stands in the nut where {neededMm:1} mm is wanted: the thread can strip. Look for a washer too many, another nut, or an arm that does not go far enough on; do not ride.',
  'nut-runs-out-of-thread':
    'Once the arm is pressed the nut reaches the end of the thread on the stud, {overlapMm:1} mm short: it feels tight and clamps nothing. Add the right washer; do not ride.',
  'one-friction-value':
    'The limit holds at this friction only. With less friction the same torque stretches the bolt further: choose the torque for the lowest friction to be expected.',
  'outside-class-sizes': 'The property classes are defined for M1.6 to M39; {diameterMm:1} mm lies outside.',
  'pull-at-the-grip':
    'The setting holds only if the hand pulls at the mark on the grip, {wrenchLengthMm:0} mm from the square, at right angles.',
  'runout-unknown':
    'How far the foot of the stud is without full thread is not known: whether the nut meets its end cannot be told. Measure it.',
  'self-loosening': 'Friction is too low to hold the thread: it would unwind by itself at {looseningTorqueNm:1} Nm.',
  'settled-slack': 'Settling takes up the whole preload: the joint is slack.',
  'shank-jams':
    'The plain shank of the bolt reaches the thread of the spindle {overlapMm:1} mm before the head can press: it feels tight and clamps nothing. Fit a bolt threaded far enough up; do not ride.',
  'spindle-thread-assumed':
    'The thread of the spindle was not given and is taken to be {fixingThread}: M8 and M10 come with fine and coarse pitch.',
  'square-hole-under-head':
    'The hole under the head is square: the friction radius assumes even pressure on the ring that remains.',
  'stop-unknown':
    'Neither the depth of the thread nor that of the hole is known: whether the bolt meets its end cannot be told. Measure it with a rod.',
  'strips-under-load': 'The thread strips at {strippingForceN:0} N, below the load of {loadN:0} N.',
  'torque-is-no-measure-of-clamp':
    "Torque is a poor measure of preload: the part maker's instructions come first, and a bolt that turns on without getting firmer, or goes solid at once, needs a look by a qualified mechanic before anybody rides.",
  'washer-missing':
    'A plain head bears straight on the square hole: the washer is missing. It digs into four edges, the torque misleads and the preload fades. Fit the washer; do not ride without it.',
  'wrong-thread':
    'The fixing is {fixingThread}, the spindle {spindleThread}: they do not belong together. Do not force it.',
  'fit-from-memory':
    'The constants of this material were written down from memory: check them before relying on the third figure.',
  'outside-stiffness-fit': 'The diameter is {slenderRatio:2} of the grip; the fit is meant for 0.1 to 2.',
  'parts-come-apart':
    'The load of {externalLoadN:0} N parts the joint, which holds together up to {separationLoadN:0} N: nothing is clamped any more. Do not ride.',
  'friction-unbounded':
    'The source gives no upper bound for this friction, {minFriction:2} or more: measure a pair of torque and force, or clean and grease the parts.',
  'angle-too-fine':
    'Five degrees more or less are {sharePercent:0} % of the rise from snug: this bolt is too short and stiff to be tightened by angle.',
  'thermally-slack': 'The change of temperature takes up the whole preload: the joint is slack. Do not ride.',
  'fails-under-load': 'The joint gives at {forceN:0} N, below the load of {loadN:0} N. Do not ride.',
  'strips-before-bolt-breaks':
    'The thread strips at {strippingForceN:0} N, before the bolt breaks at {breakingForceN:0} N: it fails inside the part and gives little warning.',
  'prevailing-not-overcome':
    'The torque of {torqueNm:1} Nm does not overcome the {prevailingTorqueNm:1} Nm of the locking element: nothing is clamped. Do not ride.',
};

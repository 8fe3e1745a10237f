// Sentences of the functions that are bundled alone: each by itself, so that a conversion does not carry all the others.

/** Template of `left-hand-thread`. @internal */
export const leftHandThread = 'The thread is left-handed: it tightens anticlockwise.';

/** Template of `self-loosening`. @internal */
export const selfLoosening =
  'Friction is too low to hold the thread: it would unwind by itself at {looseningTorqueNm:1} Nm.';

/** Template of `lumped-friction`. @internal */
export const lumpedFriction =
  'One nut factor holds all friction: what part the thread and the head take cannot be told.';

/** Template of `friction-unusual`. @internal */
export const frictionUnusual =
  'Friction {friction:2} lies outside {lowest:2} to {highest:2}, the span of the usual friction classes.';

/** Template of `square-hole-under-head`. @internal */
export const squareHoleUnderHead =
  'The hole under the head is square: the friction radius assumes even pressure on the ring that remains.';

/** Template of `head-misses-corners`. @internal */
export const headMissesCorners =
  'The head ({outerDiameterMm:1} mm) does not reach over the corners of the square under it and their reliefs ({cornerMm:1} mm): it bears on four separate patches.';

/** Template of `prevailing-not-overcome`. @internal */
export const prevailingNotOvercome =
  'The torque of {torqueNm:1} Nm does not overcome the {prevailingTorqueNm:1} Nm of the locking element: nothing is clamped. Do not ride.';

/** Template of `pull-at-the-grip`. @internal */
export const pullAtTheGrip =
  'The setting holds only if the hand pulls at the mark on the grip, {wrenchLengthMm:0} mm from the square, at right angles.';

/** Template of `hand-force-high`. @internal */
export const handForceHigh =
  'The lever asks for {forceN:0} N at the hand, more than one arm gives with care: use a longer lever.';

/** Template of `angle-too-fine`. @internal */
export const angleTooFine =
  'Five degrees more or less are {sharePercent:0} % of the rise from snug: this bolt is too short and stiff to be tightened by angle.';

/** Template of `beyond-assembly-limit`. @internal */
export const beyondAssemblyLimit =
  'At the low end of friction the bolt is stressed to {utilisationPercent:0} % of its yield strength, beyond the usual {limitPercent:0} % for tightening.';

/** Template of `beyond-yield`. @internal */
export const beyondYield =
  'At the middle of the friction the bolt is past its yield strength, at the low end it would reach {utilisationPercent:0} % of it: it stretches for good. Do not tighten this far.';

/** Template of `beyond-yield-if-slippery`. @internal */
export const beyondYieldIfSlippery =
  'Where friction is lowest the bolt would reach {utilisationPercent:0} % of its yield strength and stretch for good; at the middle of the range it does not. Make sure of what is on thread and head, or tighten less.';

/** Template of `exact-torque-assumed`. @internal */
export const exactTorqueAssumed =
  'The torque was given as one exact number: no hand tool sets it so. Name the tool, or give limits.';

/** Template of `fails-under-load`. @internal */
export const failsUnderLoad = 'The joint gives at {forceN:0} N, below the load of {loadN:0} N. Do not ride.';

/** Template of `fit-from-memory`. @internal */
export const fitFromMemory =
  'The constants of this material were written down from memory: check them before relying on the third figure.';

/** Template of `friction-unbounded`. @internal */
export const frictionUnbounded =
  'The source gives no upper bound for this friction, {minFriction:2} or more: measure a pair of torque and force, or clean and grease the parts.';

/** Template of `friction-without-range`. @internal */
export const frictionWithoutRange =
  'Friction was given as one exact number; nobody knows it so well. The width shown is too small: give limits.';

/** Template of `head-pressure-high`. @internal */
export const headPressureHigh =
  'The pressure under the head is {pressureMPa:0} MPa, beyond the limiting {limitMPa:0} MPa: the head sinks in and the preload fades. Put a larger or thicker washer under it.';

/** Template of `member-yields-unknown`. @internal */
export const memberYieldsUnknown =
  'Without the limiting pressure of the part under the head it cannot be told whether the head sinks in.';

/** Template of `one-friction-value`. @internal */
export const oneFrictionValue =
  'The limit holds at this friction only. With less friction the same torque stretches the bolt further: choose the torque for the lowest friction to be expected.';

/** Template of `outside-class-sizes`. @internal */
export const outsideClassSizes = 'The property classes are defined for M1.6 to M39; {diameterMm:1} mm lies outside.';

/** Template of `outside-stiffness-fit`. @internal */
export const outsideStiffnessFit = 'The diameter is {slenderRatio:2} of the grip; the fit is meant for 0.1 to 2.';

/** Template of `parts-come-apart`. @internal */
export const partsComeApart =
  'The load of {externalLoadN:0} N parts the joint, which holds together up to {separationLoadN:0} N: nothing is clamped any more. Do not ride.';

/** Template of `settled-slack`. @internal */
export const settledSlack = 'Settling takes up the whole preload: the joint is slack.';

/** Template of `strips-before-bolt-breaks`. @internal */
export const stripsBeforeBoltBreaks =
  'The thread strips at {strippingForceN:0} N, before the bolt breaks at {breakingForceN:0} N: it fails inside the part and gives little warning.';

/** Template of `strips-under-load`. @internal */
export const stripsUnderLoad = 'The thread strips at {strippingForceN:0} N, below the load of {loadN:0} N.';

/** Template of `thermally-slack`. @internal */
export const thermallySlack = 'The change of temperature takes up the whole preload: the joint is slack. Do not ride.';

/** Template of `torque-is-no-measure-of-clamp`. @internal */
export const torqueIsNoMeasureOfClamp =
  "Torque is a poor measure of preload: the part maker's instructions come first, and a bolt that turns on without getting firmer, or goes solid at once, needs a look by a qualified mechanic before anybody rides.";

/** Template of `wrench-out-of-reach`. @internal */
export const wrenchOutOfReach =
  'The wrench reads {lowestSettingNm:1} to {highestSettingNm:1} Nm, and no extension in line up to half its length brings it to {targetTorqueNm:1} Nm: take another wrench.';

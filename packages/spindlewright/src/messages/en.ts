import type { Messages } from '@spindlewright/quantity';
import { screenMessages } from '../screen/messages.ts';

/** English templates of the finding codes that this package raises itself. */
export const messages = {
  ...screenMessages,
  'arm-not-home':
    'With the bolt at torque {gapMm:1} mm are left between the arm and its stop: it is not home. Do not ride; take it off and look, and do not pull it home with more torque.',
  'bolt-class-near-its-limit':
    'A bolt of class {propertyClass} stands {targetNm:0} Nm only if its friction is not low: with the least friction {lowestLimitNm:0} Nm are its limit.',
  'bolt-class-too-weak':
    'A bolt of class {propertyClass} stands {limitNm:0} Nm here, less than the target of {targetNm:0} Nm: fit a stronger bolt before tightening.',
  'head-mark-needed':
    'The class of the bolt was not read. One of class {propertyClass} would stand {limitNm:0} Nm ({lowestLimitNm:0} with the least friction), and the target is {targetNm:0} Nm: read the mark on the head first.',
  'cotters-one-way-round':
    'Both cotters are in the same way round, so that the arms stand out of line: turn one of them round before riding.',
  'mixed-tapers':
    'Spindle {spindle} and arm {arm} belong to two standards that look alike. Mixing them shifts the arm; only gaps measured on these two parts say whether it seats.',
  'other-side-says': 'On the other side ({side}): {text}.',
  'published-sets-disagree':
    '{sets:0} published sets of sizes were worked apart and lead to {verdicts:0} different verdicts. They differ by up to 0.1 mm across flats, which is 1.4 mm of seat: a trial fit outweighs them all.',
  'safety-catch-open':
    'The safety catch does not lie in its hole: the arm can walk off. Do not ride; set the catch before the bolts are tightened.',
  'torque-not-known':
    'No torque was found in print for this joint and none was given: ask the part maker before it is tightened.',
  'torque-not-used': 'A torque was given, but no bolt of this joint is tightened to one: it is not used on this sheet.',
  'taper-not-identified':
    'It is not known which square taper the spindle has, and the name would not decide anyway: measure across its flats, or try the arm on it.',
  'torque-from-trade-range':
    "No part maker's torque was given. The trade is found to use {lowerNm:1} to {upperNm:1} Nm for this joint; {chosenNm:1} Nm was taken. Look the part maker's value up before tightening.",
  'washer-not-read':
    'Whether there is a washer under the head was not said: a plain head without one presses the edges of the square hole and not the arm. Look before tightening.',
  'beyond-any-bolt':
    'Even a bolt of class {propertyClass}, the strongest of its standard, would be drawn to {utilisationPercent:0} % of its yield strength or more, whatever the friction. Do not tighten this far; look whether number and unit are right.',
  'head-mark-decides':
    'The class of the bolt was not told: one of class {propertyClass} would be drawn to {utilisationPercent:0} % of its yield strength, up to {highestPercent:0} % where friction is low. Read the mark on its head before tightening this far.',
  'wrench-needs-extension':
    'The wrench ends at {highestSetting:0} {unit} and the target is {target:0} {unit}. An in-line extension of at least {neededMm:0} mm on its {lengthMm:0} mm reaches it: with {extensionLengthMm:0} mm set {setting:0} {unit}.',
  'wrench-too-large':
    'The wrench begins at {lowestSetting:0} {unit}, above the target of {target:0} {unit}; use a smaller one, since an extension only makes the torque larger.',
  'wrench-too-small':
    'The wrench ends at {highestSetting:0} {unit} and the target is {target:0} {unit}; use one that reaches it.',
  'fixing-not-checked': 'Whether the bolt can press the arm was not checked: {missing} was not read.',
  'left-hand-fixing': 'The fixing thread {thread} is left-hand: it tightens anticlockwise.',
  'no-washer-under-plain-head':
    'There is no washer under a plain head: the head would go into the square hole instead of pressing the arm. Do not ride; fit the washer.',
  'one-standard-assumed':
    'Which taper the {part} has is not known; it is taken to be a {standard}, like the other part. Only gaps measured on these two parts say whether it seats.',
  'spindle-thread-differs':
    'The bolt has the thread {thread} and the spindle {spindleThread}: do not force it and do not ride; fit the bolt that belongs to the spindle.',
  'thread-assumed': 'The thread of the fixing was not read and is taken as {thread}; gauge it before tightening.',
  'torque-far-from-trade':
    "The part maker's torque of {torqueNm:1} Nm is far from what the trade uses for this joint, {lowerNm:1} to {upperNm:1} Nm: is the unit right? Every figure below rests on it.",
  'unusual-fixing-thread':
    'A fixing thread {thread} is not among those known for this joint ({known}): gauge it again.',
} as const satisfies Messages;

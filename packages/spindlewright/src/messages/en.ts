import type { Messages } from '@spindlewright/quantity';

/** English templates of the finding codes that this package raises itself. */
export const messages: Messages = {
  'mixed-tapers':
    'Spindle {spindle} and arm {arm} belong to two standards that look alike. Mixing them shifts the arm; only gaps measured on these two parts say whether it seats.',
  'published-sets-disagree':
    '{sets:0} published sets of sizes were worked apart and lead to {verdicts:0} kinds of verdict. They differ by up to 0.1 mm across flats, which is 1.4 mm of seat: a trial fit outweighs them all.',
  'torque-from-trade-range':
    "No part maker's torque was given. The trade is found to use {lowerNm:1} to {upperNm:1} Nm for this joint; {chosenNm:0} Nm was taken. Look the part maker's value up before tightening.",
};

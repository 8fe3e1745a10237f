import type { Messages } from '@spindlewright/quantity';

/** English templates of what {@link diagnose} may say. */
export const messages: Messages = {
  'likelihoods-are-judgement': 'The weights behind this answer are judgement put into numbers, not counted cases.',
  'joint-not-identified': 'Which of the two taper standards the parts belong to is not known; measure them.',
  'check-not-applicable':
    '"{check}" does not apply to this joint and was left out; is the joint what it was taken for?',
  'says-nothing': '"{what}" says nothing about this joint and was left out.',
  'uncertainty-assumed': '{measurement} came without an uncertainty; {standardUncertainty} {unit} was taken.',
  'reading-outside-bands': '{measurement} lies outside all that "{check}" can show; read it again.',
  undecided:
    'No condition has more than an even chance: {first} ({firstProbability}) before {second} ({secondProbability}).',
  'contradiction-reading-against-word':
    '"{check}" was given as "{outcome}", but {measurement} speaks for "{nearest}"; the reading was believed. Look again.',
  'contradiction-incompatible':
    '"{check}: {outcome}" and "{otherCheck}: {otherOutcome}" exclude each other; look again.',
  'contradiction-unexplained':
    'Nothing plausible explains "{check}: {outcome}"; look again, or something rare is the matter.',
  'caution-maker-first': "The part maker's instructions and a qualified mechanic stand above this answer.",
  'caution-do-not-ride':
    'Do not ride until "{action}" is done and the joint has been checked: an arm that lets go throws the rider.',
  'caution-bolt-needed':
    'Never ride without the bolt, not even a little way: the arm walks off under the pedal and ruins its hole.',
  'caution-no-shim': 'A deformed hole cannot be saved: no shim, glue, peening or higher torque makes it hold again.',
  'caution-safety-catch': 'Ask for the safety catch: it has to lie in its hole before the pinch bolts are tightened.',
  'caution-look-for-cracks':
    'A crack has a chance of {probability}: clean and look at hole, arm root, pedal eye and spindle where it leaves the arm. A cracked part is finished.',
  'caution-tighten-once':
    'Tighten to the value of the part maker and check once after the first rides; an arm that loosens again is to be taken off, since each further tightening opens its hole.',
  'caution-spindle-thread':
    'If a new bolt of the right thread does not draw up smoothly, the thread in the spindle is gone: replace the spindle.',
  'caution-other-arm': 'Parts that do not belong together may be on both sides: look at the other arm too.',
  'caution-contradiction': 'Some answers contradict each other: no riding until they are cleared up.',
};

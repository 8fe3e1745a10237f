import type { Messages } from '@spindlewright/quantity';

/** English templates of what {@link diagnose} may say. */
export const messages: Messages = {
  'likelihoods-are-judgement': 'The weights of this answer are judgement, not counted cases.',
  'joint-not-identified': 'Which taper standard the parts have is not known; measure them.',
  'check-not-applicable': '"{check}" does not apply to this joint and was left out; is it the right joint?',
  'says-nothing': '"{what}" says nothing about this joint and was left out.',
  'uncertainty-assumed': '{measurement} came without an uncertainty; {standardUncertainty} {unit} was taken.',
  'reading-outside-bands': '{measurement} lies outside all that "{check}" can show; read it again.',
  undecided:
    'No condition has more than an even chance: {first} ({firstProbability}) before {second} ({secondProbability}).',
  'contradiction-reading-against-word':
    '"{check}" was given as "{outcome}", but {measurement} speaks for "{nearest}"; the reading was believed. Look again.',
  'contradiction-incompatible':
    '"{check}: {outcome}" and "{otherCheck}: {otherOutcome}" exclude each other; look again.',
  'contradiction-unexplained': 'Nothing usual explains "{check}: {outcome}"; look again, or it is something rare.',
  'caution-maker-first': "The part maker's instructions and a qualified mechanic stand above this answer.",
  'caution-do-not-ride':
    'Do not ride until "{action}" is done and the joint checked: an arm that lets go throws the rider.',
  'caution-doubt-left': 'A chance of {probability} is left that it is unsafe: look before each ride.',
  'caution-bolt-needed': 'Never ride without the bolt, not even a little way: the arm walks off and ruins its hole.',
  'caution-no-shim': 'A deformed hole cannot be saved: no shim, glue, peening or higher torque makes it hold.',
  'caution-safety-catch': 'Ask for the safety catch: it lies in its hole before the pinch bolts are tightened.',
  'caution-look-for-cracks':
    'A crack has a chance of {probability}: clean and look at hole, arm root, pedal eye and the spindle beside the arm. A cracked part is finished.',
  'caution-tighten-once':
    "Tighten to the part maker's value and check after the first rides; an arm that loosens again comes off: each further tightening opens its hole.",
  'caution-spindle-thread':
    'If a new bolt of the right thread does not draw up smoothly, replace the spindle: its thread is gone.',
  'caution-other-arm': 'Mixed parts may be on both sides: look at the other arm.',
  'caution-contradiction': 'Answers contradict each other: no riding until that is cleared up.',
};

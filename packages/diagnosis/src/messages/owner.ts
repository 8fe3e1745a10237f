import type { Messages } from '@spindlewright/quantity';

/** English sentences for the owner, for what to keep, and for when to send to a qualified workshop. */
export const owner: Messages = {
  'owner-sound': 'Nothing wrong was found at the crank: {text}.',
  'owner-found': 'What we found: {text}.',
  'owner-suspected': 'What we suspect so far: {text} ({percent:0} in 100).',
  'owner-ride': 'The bicycle can be ridden.',
  'owner-do-not-ride': 'Please do not ride it until this is done: {text}.',
  'owner-do-soon': 'It can be ridden with care until this is done: {text}.',
  'owner-cause': 'How it came about, most likely: {cause}; so that it does not come back: {need}.',
  'owner-cause-open': 'How it came about cannot be told yet; so that it does not come back: {need}.',
  'owner-keep-well': 'So that it stays so: {need}.',
  'keep-old-parts': 'Keep the old parts together, bolt and washer too, unwashed and unfiled.',
  'keep-pictures':
    'Take pictures before cleaning: the marks in the hole, those on the spindle, and where the arm stood.',
  'keep-readings':
    'Write down what was measured: gaps, the torque at which the bolt first moved, and with which wrench.',
  'keep-papers': 'Keep the receipt, and who fitted the part when and to what torque.',
  'keep-no-promise': 'Whether a claim is met is decided by the maker and the law of the place, not here.',
  'workshop-cracked':
    'A crack, or the chance of one: have it looked at by a qualified workshop before anything is used again.',
  'workshop-spindle': 'The spindle may be damaged: it takes tools and an eye that a qualified workshop has.',
  'workshop-thread':
    'A damaged thread in a part that carries the rider is repaired by a qualified workshop or not at all.',
  'workshop-unclear': 'It is not clear what is wrong: a qualified workshop should see the bicycle.',
  'workshop-impact': 'After a fall frame and fork are looked at as well: that is work for a qualified workshop.',
  'need-same-interface': 'the new part has the same interface, read and not guessed',
  'need-measure-first': 'the part that stays is measured first, since the two never belonged together',
  'need-right-fixing': 'bolt and washer are the right ones for this spindle',
  'need-full-torque': 'it is tightened with a torque wrench to the value of the part maker',
  'need-cotter-pressed-in': 'the cotter is pressed in, and its nut only keeps it',
  'need-bolts-in-turn': 'the pinch bolts are tightened in turn, the cap set and the safety catch down before',
  'need-recheck-once': 'the torque is checked once after the first rides',
  'need-torque-limit': 'it is tightened no harder than the part maker says',
  'need-clean-and-in-step': 'the seats are clean and the arms opposite each other',
  'need-look-at-the-rest': 'pedal, arm, spindle and frame are looked at after the blow',
  'need-stop-when-loose': 'the first knock is the moment to stop',
  'need-refit-seldom': 'the arm comes off only when it has to',
  'need-look-at-times': 'bolt and joint are looked at from time to time',
  'need-parts-of-that-age': 'the other parts of that age are looked at too',
};

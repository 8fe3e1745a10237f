import type { Messages } from '@spindlewright/quantity';

/** English templates of what screening says itself. @internal */
export const screenMessages = {
  'another-kind': 'This is a part of the kind {kind}; wanted is {wanted}.',
  'fact-missing': 'The catalogue does not tell {fact}, which decides.',
  'value-suspicious': 'The value "{received}" for {fact} looks damaged by a spreadsheet and was not used.',
  'value-out-of-range':
    'The value "{received}" for {fact} is no size of such a part and was not used: is the unit right?',
  'word-not-mapped': 'The word "{received}" for {fact} is in no mapping: say what it means.',
  'facts-contradict': 'The row contradicts itself on {fact}: {received}.',
  'several-values': 'The row names several for {fact}, and they come to different answers: {received}.',
  'another-side': 'This part is made for the {side} side; wanted is the {wanted} side.',
  'another-arm-length': 'This arm is {armLengthMm:1} mm long; wanted is {wantedMm:1} mm.',
  'another-bolt-circle': 'The ring has {received}; the arm has {wantedMm:1} mm x {wantedCount:0}.',
  'same-bolt-circle': 'Ring and arm have the same bolt circle: {wantedMm:1} mm x {wantedCount:0}.',
  'ring-too-small':
    'A ring of {toothCount:0} teeth does not go on this bolt circle; the smallest has {smallestRing:0}.',
  'seat-by-readings': 'By the stated sizes of both parts: {verdict}.',
  'named-alike-only':
    'The two are named alike, and the published sizes of one name differ by more than a press: try the arm on by hand, measure both gaps, and only then press it.',
  'duplicate-part-id': 'An earlier row has the same part id; both are judged, each by itself.',
  'row-not-json': 'The line is no JSON: {fault}.',
  'row-too-long': 'The line is longer than {longest:0} characters and was not read.',
  'row-columns-differ': 'The row has {found:0} fields and the header {wanted:0}; none of them can be trusted.',
  'row-quotes-broken': 'The quotation marks of the row do not match: {fault}.',
  'row-not-text': 'The row holds bytes that are no text.',
  'row-not-an-object': 'The row is no record of fields.',
  'part-id-missing': 'The row has no part id.',
  'part-id-damaged': 'The part id "{received}" looks damaged by a spreadsheet: the part cannot be ordered by it.',
  'screen-names-first':
    "A part that fits by name is a part to try, not a part to ride: the part maker's instructions and a qualified mechanic come first.",
  'screen-not-ridden-untried':
    'Never ride a joint before the arm was tried on by hand, both gaps were measured and the bolt was set to its torque.',
} as const satisfies Messages;

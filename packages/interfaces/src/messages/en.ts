import type { Messages } from '@spindlewright/quantity';

/** English templates of the finding codes that this package may raise. */
export const messages: Messages = {
  'families-differ':
    'The spindle is of the kind "{spindleFamily}" and the arm of the kind "{armFamily}": they are different joints, and forcing one onto the other ruins both.',
  'maker-specific': '{statement} Only the part number, or a trial with the parts of one maker, settles it.',
  'no-rule': 'Nothing is recorded about an arm "{arm}" on a spindle "{spindle}", though they are of one kind.',
  'meant-to-interchange': '{statement} So the arm goes on the spindle, as far as the name tells.',
  'mating-rule': '{statement} So much is recorded of this pair.',
  'goes-deeper':
    'The arm goes {lowestMm:1} to {highestMm:1} mm deeper than on a spindle of its own standard, by {setCount:0} published sets: its bolt seat may pass the spindle end, and then the bolt no longer presses the arm.',
  'sits-farther-out':
    'The arm sits {lowestMm:1} to {highestMm:1} mm farther out than on a spindle of its own standard, by {setCount:0} published sets: chainline and tread grow, less of the flats carries, and the arm may meet the shoulder before it is pressed.',
  'shift-claims-disagree':
    'Claims in print about this shift reach from {lowestMm:1} to {highestMm:1} mm; they are kept apart in the record, and none is a measurement of the seat.',
  'steepness-unsupported': '{comment} It is often said all the same that the two tapers differ in steepness.',
  'sets-without-counterpart': 'Left out, since they give a size for one of the two standards only: {sets}.',
  'trial-fit-settles':
    'What settles it is a trial fit: push the arm on by hand and measure from the bolt seat to the spindle end and from the inner face of the arm to the inner end of the flats. The first gap has to outlast the press, and so has the second.',
  'end-gap-at-stake':
    'By judgement an arm pushed on by hand keeps {ownGapMm:1} mm to the end of its own spindle; the shift takes {lowestMm:1} to {highestMm:1} mm of it, and pressing takes more.',
  'sets-differ':
    'Sizes published for this one standard differ by {spreadMm} mm across flats, which is {seatMm:1} mm of seat: the name alone does not say where the arm will stop.',
  'orientation-of-square':
    'A left and a right arm have to carry the square in the same orientation, corner or flat in line with the arm.',
  'follow-maker': 'The instructions of the part makers and a qualified mechanic stand above this answer.',
  'do-not-force': 'Do not force these parts together and do not ride on them.',
  'do-not-ride-untried': 'Do not ride until the fit has been checked on the parts themselves.',
  'uncertainty-assumed':
    'A reading came without an uncertainty; {acrossFlatsMm} mm across flats, {planeMm} mm for its plane and {flatLengthMm} mm for a length are assumed as standard uncertainties.',
  'cannot-tell-apart':
    'These readings do not tell the squares apart: the likeliest has a probability of {probability}.',
  'probably-unlisted':
    'These readings fit neither listed square well. Treat it as another one, and rely on a trial fit alone.',
  'readings-contradict':
    'These readings contradict each other or any square known: a slip of the jaws or of the plane is likelier than any answer. Read again.',
  'name-is-no-seat':
    'The name of a square does not say where an arm seats: sizes under one name differ. Check the fit of the arm itself before it is ridden.',
  'next-across-flats':
    'Next: read across the flats {atMm:0} mm from the end, with the plane set to {planeMm:1} mm and the size to {sizeMm} mm (standard uncertainties). The chance of naming the right square rises from {now} to {afterwards}.',
  'next-flat-length':
    'Next: measure the length of the flats to {sizeMm:1} mm (standard uncertainty). The chance of naming the right square rises from {now} to {afterwards}.',
  'next-trial-fit':
    'No further reading of the spindle tells the squares apart much better. Push the arm that is to go on by hand and measure its two gaps: they say whether it seats, whatever the spindle is called.',
};

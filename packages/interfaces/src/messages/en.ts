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
  'no-separate-arm': '{statement} The whole crank is replaced.',
  'spline-counts-differ':
    'The spindle has {spindleSplines:0} splines and the arm {armSplines:0}: they do not go together.',
  'arm-bore-too-small': 'The spindle measures {spindleMm} mm and the arm is made for {armMm} mm: it does not go on.',
  'arm-bore-too-large':
    'The spindle measures {spindleMm} mm and the arm is made for {armMm} mm: it hangs on the spindle and nothing can draw it tight.',
  'clamp-closes-first':
    'The spindle measures {spindleMm} mm and the arm is made for {armMm} mm: it goes on, and its slot closes before it grips. It comes off in riding.',
  'hands-differ':
    'The male thread {male} is {maleHand}-hand and the female one {female} is {femaleHand}-hand: forced in, it cuts across.',
  'thread-agrees': 'The male thread {male} goes into the female thread {female}, by hand over its whole length.',
  'thread-too-large':
    'The male thread {male} is {differenceMm} mm larger in nominal diameter than the female thread {female}: it does not start, and forced it cuts a thread of its own.',
  'thread-drops-in':
    'The male thread {male} is {differenceMm} mm smaller than the female thread {female}: it drops in and holds nothing.',
  'thread-strips':
    'The male thread {male} is {differenceMm} mm smaller than the female thread {female}: it goes in by hand, only {overlapPercent:0} per cent of the flanks meets, and under load it strips.',
  'thread-binds':
    'The male thread {male} starts in the female thread {female} and binds: the pitches are {malePitchMm} and {femalePitchMm} mm. Turned on with a wrench it ruins both.',
  'pitches-too-different':
    'The pitches of {male} and {female} are {malePitchMm} and {femalePitchMm} mm: the one does not start in the other.',
  'pitch-not-known':
    'The pitch of {male} or of {female} is in no source: try the parts by hand, over the whole length.',
  'threads-vary': 'Parts of this record are met with several threads ({threads}): measure the one at hand.',
  'of-one-side': 'So much for the {side} side.',
  'width-decides': 'The shell has to be of a width that the cups and the spindle are made for as well.',
  'bore-agrees': 'Cups or bearings for {maleSizes} mm sit in a bore of {femaleSizes} mm.',
  'bore-agrees-only':
    'The bores agree ({maleSizes} and {femaleSizes} mm), but the two are made for different frames: compare width and depth on the parts.',
  'bores-differ': 'The one is made for a bore of {maleSizes} mm, the other has {femaleSizes} mm.',
  'seats-differ':
    'The bores agree, but the one takes a {maleSeat} and the other a {femaleSeat}: they do not go together.',
  'bolt-circles-agree':
    'Ring and arm have {armArms:0} bolts on a circle of {armMm:0} mm; the smallest ring that clears it has {teeth:0} teeth.',
  'bolt-circles-differ':
    'The ring has {ringArms:0} bolts on a circle of {ringMm:0} mm, the arm {armArms:0} on {armMm:0} mm: it does not go on, and no hole may be filed.',
  'kinds-differ': 'A {male} and a {female} are different things: no part of the one goes into the other.',
  'forms-differ': 'A {male} and a {female} are different fixings.',
  'no-such-fixing': 'The joint "{joint}" has no place for a {form}.',
  'fixing-thread-not-known': 'The thread of the fixing of "{joint}" is in no source: measure it.',
  'no-puller-thread': '{statement} Arms of "{joint}" have no thread for a puller.',
  'puller-tip': '{statement} The tip of the puller is chosen by that.',
  'interface-does-not-tell':
    'The joint "{joint}" does not say which {kind} its arm or frame has: give the record of that instead.',
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
  'bore-sizes-derived':
    'No size of an arm bore is published: the candidates are arms derived from the published spindles by a judged hand fit, and the answer is as wide as that.',
  'bore-diameters-derived':
    'The candidates are derived from the diameters of spindles, with a judged clearance for a plain bore and a judged depth of teeth for a toothed one.',
  'bore-uncertainty-assumed':
    'A reading came without an uncertainty; {acrossFlatsMm} mm across flats, {planeMm} mm for its plane, {boreLengthMm} mm for the bore length and {diameterMm} mm for a diameter are assumed as standard uncertainties.',
  'cannot-tell-bores-apart':
    'These readings do not tell the bores apart: the likeliest has a probability of {probability}.',
  'probably-unlisted-bore':
    'These readings fit no listed bore well. Treat it as another one, and rely on a trial fit alone.',
  'next-across-bore-flats':
    'Next: read across the flats of the bore {atMm:0} mm from its inner mouth, with the plane set to {planeMm:1} mm and the size to {sizeMm} mm (standard uncertainties). The chance of naming the right bore rises from {now} to {afterwards}.',
  'next-bore-length':
    'Next: measure with a depth rod from the inner mouth to the seat of the bolt, to {sizeMm:1} mm (standard uncertainty). The chance of naming the right bore rises from {now} to {afterwards}.',
  'next-trial-fit-arm':
    'No further reading of the bore tells the squares apart much better. Push the arm by hand onto the spindle that it is to go on and measure its two gaps: they say whether it seats, whatever the bore is called.',
  'next-trial-fit-round':
    'No further look at the bore tells the interfaces apart much better. Measure the spindle that belongs to it, and slide the arm on by hand: it has to go to its stop without force.',
  'next-teeth':
    'Next: look whether the bore is toothed or plain. The chance of naming the right bore rises from {now} to {afterwards}.',
  'next-bore-diameter': 'Next: measure the diameter of the bore, across the crests where it is toothed.',
  'probably-unlisted-thread': 'These readings fit no listed thread well. Do not cut or force anything by them.',
  'cannot-tell-threads-apart':
    'These readings do not tell the threads apart: the likeliest has a probability of {probability}.',
  'starts-then-strips':
    'A male thread {male} starts in a female thread {female}, but too little of the flanks meets: under load it strips. That it goes in by hand proves nothing.',
  'starts-then-binds':
    'A male thread {male} starts in a female thread {female} and binds as the pitches run apart: turned on with a wrench it strips it.',
  'thread-uncertainty-assumed':
    'A reading came without an uncertainty or a plane; {externalDiameterMm} mm for an external and {internalDiameterMm} mm for an internal diameter, {atMm:0} mm from the end within {planeMm:1} mm for its plane, {pitchMm} mm for a pitch and {threadsPerInch:1} for a count of threads per inch are assumed as standard uncertainties.',
  'next-hand':
    'Next: tell the hand. Held upright, a right-hand thread rises to the right. The chance of naming the right thread rises from {now} to {afterwards}.',
  'next-pitch':
    'Next: measure the pitch over ten threads, to {sizeMm:3} mm each (standard uncertainty). The chance of naming the right thread rises from {now} to {afterwards}.',
  'next-diameter':
    'Next: measure the diameter with a micrometer to {sizeMm} mm (standard uncertainty), at least {planeRatio:0} pitches from the end of the thread. The chance of naming the right thread rises from {now} to {afterwards}.',
  'next-thread-trial':
    'No further reading tells the threads apart much better. Turn a part of known thread on by hand: it has to go on freely over its whole length, and without play.',
  'try-by-hand':
    'Turn the part in by hand over its whole length before a tool is used; what binds or wobbles is another thread.',
};

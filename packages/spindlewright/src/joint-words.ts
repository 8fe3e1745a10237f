import { type FamilyId, type JointId, listJoints } from '@spindlewright/diagnosis';
import { messages as english } from '@spindlewright/diagnosis/messages/en';
import { getInterface, listInterfaces } from '@spindlewright/interfaces';
import type { Messages } from '@spindlewright/quantity';

/** The words of the diagnosis as they read at one joint: a cotter is no bolt, a spline has no flats. @internal */
export function jointWords(joint: JointId): Messages {
  const family = listJoints().find(({ id }) => id === joint)?.family ?? 'square-taper';
  const pinched =
    family === 'through-spindle' &&
    listInterfaces().some(({ id }) => id === joint) &&
    getInterface(joint).drawnTight.by === 'pinch-bolts';
  const splined = family.startsWith('spline-') || family === 'through-spindle';
  return { ...english, ...(splined ? SPLINES : {}), ...OWN[family], ...(pinched ? PINCHED : {}) };
}

const SPLINES: Messages = {
  'check-bore-flats': 'Arm off and wiped: how are the splines in the arm? Tell the worst.',
  'check-spindle-flats': 'Arm off and wiped: how are the splines of the spindle?',
  'check-shoulder-gap': 'Behind the arm: does it touch its stop all round?',
  'outcome-bore-flats-straight': 'The splines of the arm are straight and even',
  'outcome-bore-flats-galled': 'The splines of the arm are torn or shaved, but straight',
  'outcome-bore-flats-rounded': 'The splines of the arm are flattened, shaved to a point or widened',
  'outcome-spindle-flats-sound': 'The splines of the spindle are sound',
  'outcome-spindle-flats-scored-or-rounded': 'The splines of the spindle are scored or rounded',
  'outcome-shoulder-gap-clear': 'There is a gap between the arm and its stop',
  'outcome-shoulder-gap-touching': 'The arm touches its stop',
  'outcome-arm-alignment-one-step-off': 'One arm sits a step of the splines off',
  'condition-bore-deformed': 'the splines of the arm are worn or deformed',
  'condition-too-little-engagement': 'the arm is not home: too little of the splines is inside it',
  'action-remove-and-inspect': 'take the arm off and look at the splines of both parts, the bolt and the stop',
  'action-clean-and-refit': 'take the arm off, clean the splines, refit it in step and home, and tighten to torque',
};

const OWN: Readonly<Partial<Record<FamilyId, Messages>>> = {
  'through-spindle': {
    'outcome-shoulder-gap-clear': 'There is a gap between the arm and the bearing',
    'outcome-shoulder-gap-touching': 'The arm lies against the bearing',
    'condition-too-little-engagement': 'the arm is not far enough on its spindle',
    'part-spindle': 'the spindle with the arm that it is fixed in',
    'action-replace-spindle': 'replace the spindle with the arm that it is fixed in',
  },
  'face-spline': {
    'check-bore-flats': 'Halves apart and wiped: are arm and carrier sound? Tell the worst.',
    'check-spindle-flats': 'Halves apart and wiped: how are the teeth of both?',
    'check-shoulder-gap': 'Are the halves closed all round?',
    'outcome-spindle-flats-sound': 'The teeth are sound',
    'outcome-spindle-flats-scored-or-rounded': 'The teeth are burnished, chipped or rounded',
    'condition-spindle-damaged': 'the teeth or a half spindle are worn, bent or cracked',
    'condition-too-little-engagement': 'the teeth do not go all the way together',
    'action-remove-and-inspect': 'take the halves apart and look at the teeth of both, and at the bolt',
    'action-clean-and-refit': 'take the halves apart, clean the teeth, put them together in step and tighten to torque',
    'part-spindle': 'both halves of the spindle, each with its arm where they are one',
  },
  cottered: {
    'check-bore-flats': 'Cotter out, arm off and wiped: how is the hole of the arm? Tell the worst.',
    'check-spindle-flats': 'Arm off and wiped: how is the flat of the spindle, and is there a crack opposite it?',
    'outcome-bolt-on-arrival-tight': 'The nut of the cotter is tight',
    'outcome-bolt-on-arrival-finger-loose': 'The nut of the cotter can be turned by hand',
    'outcome-bolt-on-arrival-missing': 'The nut of the cotter is missing',
    'outcome-bolt-on-arrival-turns-before-torque': 'The nut of the cotter turns on',
    'outcome-bolt-on-arrival-turns-without-end': 'The nut of the cotter turns and turns',
    'outcome-bolt-on-arrival-broken': 'The thread of the cotter is broken',
    'condition-loose-but-sound': 'the cotter has lost its wedge, but its seat is still true',
    'condition-bolt-not-clamping': 'the cotter does not hold the arm',
    'condition-fixing-thread-damaged': 'the thread of the cotter is damaged',
    'condition-wrong-clocking': 'the cotters are in the same way round, so that the arms are out of line',
    'cause-under-tightened': 'the cotter was never pressed in far enough',
    'cause-wrong-fixing': 'the wrong cotter was used',
    'action-tighten-and-recheck': 'press the cotter in again, tighten its nut and check it once after the first rides',
    'action-remove-and-inspect': 'press the cotter out and look at it, at its flat, at the hole and at the spindle',
    'action-clean-and-refit': 'press the cotter out, clean everything, and press it in again the right way round',
    'action-replace-fixing': 'fit a new cotter of the same diameter and flat, pressed in',
    'part-fixing': 'the cotter and its nut',
    'access-bolt-out': 'with the cotter out',
  },
  'one-piece': {
    'check-bore-flats': 'Wiped all over: is there a crack in the crank?',
    'condition-arm-cracked': 'the crank is cracked',
    'condition-arm-bent': 'the crank is bent at an arm',
    'condition-spindle-damaged': 'the crank is bent or cracked at its axle',
    'condition-sound': 'the crank is sound',
    'action-replace-arm': 'replace the crank, which is one piece',
    'action-replace-spindle': 'replace the crank, which is one piece',
    'action-replace-both': 'replace the crank, which is one piece',
    'action-remove-and-inspect': 'take the crank out of the shell and look at it all over',
    'part-arm': 'the whole crank',
    'part-spindle': 'the whole crank',
    'part-arm-and-spindle': 'the whole crank',
    'part-arm-or-spindle': 'the whole crank',
  },
};

const PINCHED: Messages = {
  'outcome-bolt-on-arrival-tight': 'The pinch bolts are tight: the wrench gives its signal before they turn',
  'outcome-bolt-on-arrival-turns-before-torque': 'A pinch bolt turns on before the torque is reached',
  'outcome-bolt-on-arrival-turns-without-end': 'A pinch bolt turns and turns',
  'outcome-bolt-on-arrival-finger-loose': 'A pinch bolt can be turned by hand',
  'outcome-bolt-on-arrival-missing': 'A pinch bolt is missing',
  'outcome-bolt-on-arrival-broken': 'A pinch bolt is broken',
  'condition-loose-but-sound': 'the pinch bolts have lost their clamp, but bore and splines are still true',
  'condition-bolt-not-clamping': 'the pinch bolts do not clamp the arm',
  'condition-fixing-thread-damaged': 'the thread of a pinch bolt is damaged',
  'condition-bore-deformed': 'the bore of the arm or its splines are worn or deformed',
  'cause-under-tightened': 'the pinch bolts were never tight enough',
  'cause-wrong-fixing': 'the wrong bolts were used',
  'action-tighten-and-recheck':
    'set the cap by hand, tighten the pinch bolts in turn to torque and check them once after the first rides',
  'action-remove-and-inspect': 'take the arm off and look at its bore, the splines, the slot and the bolts',
  'action-clean-and-refit':
    'take the arm off, clean splines and bore, set the cap by hand, engage the catch and tighten the bolts in turn',
  'action-replace-fixing': 'fit the right pinch bolts',
  'part-fixing': 'the pinch bolts',
  'access-bolt-out': 'with the pinch bolts out',
};

import { getInterface, listInterfaces } from '@spindlewright/interfaces';
import type { Unit } from '@spindlewright/quantity';
import type { Job } from '../../job.ts';
import { isTaperJob } from '../../joint-kind.ts';

/** A reading that a job takes: its path in the file, and how it is asked. @internal */
export interface ReadingQuestion {
  path: string;
  question: string;
  /** With what, and where. */
  how: string;
  /** Unit of the number; without it one of the choices is asked. */
  unit?: Unit;
  choices?: readonly { value: string | number | boolean; label: string }[];
}

const mm = (path: string, question: string, how: string): ReadingQuestion => ({ path, question, how, unit: 'mm' });

const TORQUE: ReadingQuestion = {
  path: 'partMakerTorqueNm',
  question: 'Which torque does the part maker ask for?',
  how: 'printed beside the bolt or in the instructions of the part',
  unit: 'Nm',
};

const TAPER: readonly ReadingQuestion[] = [
  mm(
    'trialFit.endGapMm',
    'How large is the end gap?',
    'arm pushed on by hand; depth rod, seat of the bolt to spindle end',
  ),
  mm(
    'trialFit.shoulderGapMm',
    'How large is the shoulder gap?',
    'arm pushed on by hand; arm to wall or run-out of the flats',
  ),
  {
    path: 'flats',
    question: 'How are the flats when the arm is pressed on?',
    how: 'of spindle and bore',
    choices: [
      { value: 'greased', label: 'greased' },
      { value: 'dry', label: 'dry' },
    ],
  },
  TORQUE,
];

const CLAMP: readonly ReadingQuestion[] = [
  TORQUE,
  {
    path: 'clamp.safetyCatch',
    question: 'Does the safety catch lie in its hole?',
    how: 'the small plate in the slot',
    choices: [
      { value: 'engaged', label: 'yes, in its hole' },
      { value: 'not-engaged', label: 'no, it stands up' },
      { value: 'none', label: 'the arm has none' },
    ],
  },
  mm('clamp.slotGapMm', 'How wide is the slot with the bolts tight?', 'feeler; 0 when it is closed'),
  mm(
    'clamp.axialPlayMm',
    'How far do the arms shift along the axis?',
    'cap set by hand, both arms pushed at once; 0 when not at all',
  ),
  {
    path: 'clamp.boltCount',
    question: 'How many pinch bolts are there?',
    how: 'in this arm',
    choices: [1, 2, 3, 4].map((value) => ({ value, label: value === 1 ? 'one bolt' : `${value} bolts` })),
  },
  mm('clamp.clampWidthMm', 'How wide is the clamp?', 'caliper, along the spindle'),
  mm(
    'clamp.hingeToBoltMm',
    'How far are the bolts from the hinge?',
    'caliper; the hinge is the solid part behind the spindle',
  ),
  mm('clamp.hingeToAxisMm', 'How far is the axis from the hinge?', 'caliper; less than to the bolts'),
];

const GAP_AT_TORQUE = mm(
  'spline.gapAtTorqueMm',
  'How large is the gap at the stop with the bolt at torque?',
  'feeler, all round; 0 when the arm is home',
);

const TAPERED_SPLINES: readonly ReadingQuestion[] = [
  TORQUE,
  GAP_AT_TORQUE,
  mm('spline.gapByHandMm', 'How large is the gap at the stop with the arm pushed on by hand?', 'feeler or depth rod'),
  {
    path: 'spline.forceToStopN',
    question: 'Which force brings the arm onto its stop?',
    how: 'as the part maker states it; with a unit, such as 12 kN',
    unit: 'N',
  },
];

const COTTER: readonly ReadingQuestion[] = [
  {
    path: 'cotter.sameWayRound',
    question: 'Arms level: where are the nuts of the two cotters?',
    how: 'looked at from either side',
    choices: [
      { value: false, label: 'one above, the other below' },
      { value: true, label: 'both above or both below' },
    ],
  },
  {
    path: 'cotter.pressForceN',
    question: 'With which force was the cotter pressed?',
    how: 'gauge of the press, or as its maker states it; with a unit, such as 12 kN',
    unit: 'N',
  },
  { path: 'cotter.flatAngleDeg', question: "How steep is the cotter's flat?", how: 'against its axis', unit: 'deg' },
  mm('cotter.flatLengthMm', 'How long is the flat across the spindle?', 'caliper'),
  mm('cotter.flatWidthMm', 'How wide is the flat along the spindle?', 'caliper'),
  mm(
    'cotter.axisToFlatMm',
    'How far is the flat from the axis of the spindle?',
    'caliper: over the flat, less half of the diameter',
  ),
];

const TEETH: readonly ReadingQuestion[] = [
  TORQUE,
  {
    path: 'faceTeeth.flankAngleDeg',
    question: 'How steep is a flank of the teeth?',
    how: 'against the axis',
    unit: 'deg',
  },
  mm('faceTeeth.outerDiameterMm', 'What is the outer diameter of the teeth?', 'caliper'),
  mm('faceTeeth.innerDiameterMm', 'What is the inner diameter of the teeth?', 'caliper'),
];

const BAR: readonly ReadingQuestion[] = [
  mm('bar.crankLengthMm', 'How long is the crank?', 'middle of the axle to middle of the pedal eye'),
  mm(
    'bar.overhangMm',
    'How far out does the pedal stand?',
    'middle of the pedal to the section looked at, along the axis',
  ),
  mm('bar.barDiameterMm', 'How thick is the bar there?', 'caliper'),
  {
    path: 'bar.yieldStrengthMPa',
    question: 'What is its yield strength?',
    how: 'as the part maker states it',
    unit: 'MPa',
  },
];

/**
 * The readings that a job of this joint takes, those first that decide most for their trouble; those of a section stand
 * together, as in the file.
 * @internal
 */
export function readingQuestions(job: Job): readonly ReadingQuestion[] {
  if (isTaperJob(job)) return TAPER;
  const ids = listInterfaces().map(({ id }) => id);
  const id = [job.interface.spindle, job.interface.arm].find((name) => ids.includes(name));
  if (id === undefined) return [];
  const record = getInterface(id);
  switch (record.family) {
    case 'square-taper':
      return [TORQUE];
    case 'through-spindle':
      return record.drawnTight.by === 'pinch-bolts' ? CLAMP : [TORQUE];
    case 'spline':
      return record.geometry.taperPerSideDeg === undefined ? [TORQUE, GAP_AT_TORQUE] : TAPERED_SPLINES;
    case 'cottered':
      return COTTER;
    case 'face-spline':
      return TEETH;
    case 'one-piece':
      return BAR;
  }
}

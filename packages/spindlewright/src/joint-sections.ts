import type { InterfaceRecord, MateResult } from '@spindlewright/interfaces';
import { hardLimits, type Limits } from '@spindlewright/quantity';
import type { Job, Reading } from './job.ts';
import type { JointPart } from './joint-part.ts';
import { mateState, mateWords } from './mate-decision.ts';
import type { PlanMode } from './plan-mode.ts';
import { forceWords, limitsWords, torqueWords } from './seat-words.ts';
import { type Block, type Section, STATE_WORDS } from './sheet.ts';
import { PLAN_LEADS, PLAN_TITLES, preloadDrawing } from './tighten-section.ts';

/** The section on whether arm and spindle belong together, by their interfaces. @internal */
export function mateSection(job: Job, mate: MateResult | undefined): Section[] {
  if (mate === undefined) return [];
  const { state, missingFact } = mateState(mate);
  const rest = mate.findings.slice(1).map(({ message }) => message);
  return [
    {
      id: 'mate',
      title: 'Do arm and spindle belong together',
      blocks: [
        {
          kind: 'table',
          caption: 'By the records of both interfaces; a name is never the last word',
          head: ['spindle', 'arm', 'answer', 'by the interfaces', 'why'],
          rows: [
            [
              job.interface.spindle.replaceAll('-', ' '),
              job.interface.arm.replaceAll('-', ' '),
              STATE_WORDS[state],
              mateWords[mate.verdict],
              mate.consequence,
            ],
          ],
        },
        ...(missingFact === undefined
          ? []
          : [{ kind: 'paragraph' as const, text: 'What would decide: what the part maker says of these two parts.' }]),
        ...(rest.length === 0 ? [] : [{ kind: 'list' as const, ordered: false, items: rest }]),
      ],
    },
  ];
}

/** The section with what the mechanics of the joint give. @internal */
export function holdsSection(part: JointPart): Section[] {
  const rows = figureRows(part);
  if (rows.length === 0) return [];
  return [
    {
      id: 'holds',
      title: 'What the joint holds, by its mechanics',
      blocks: [
        {
          kind: 'table',
          caption: 'Nominal (lower to upper limit); a model of the joint, to compare with, never a verdict alone',
          head: ['what', 'figure'],
          rows,
        },
      ],
    },
  ];
}

const moment = (value: Limits): string => limitsWords(value, 'Nm', 0);
const pressure = (value: Limits): string => limitsWords(value, 'MPa', 0);
const yes = (flag: boolean): string => (flag ? 'yes, at its worst too' : 'not surely');

function figureRows({ clamp, spline, cotter, faceTeeth, bar }: JointPart): string[][] {
  if (clamp !== undefined) {
    return [
      ['force with which the clamp presses', forceWords(clamp.clampForceN)],
      ['torque that a smooth clamp holds; the splines carry the rest', moment(clamp.slipTorqueNm)],
      ['force along the spindle that the clamp holds', forceWords(clamp.axialHoldN)],
      ...(clamp.slotOpen === null ? [] : [['slot open', yes(clamp.slotOpen)]]),
    ];
  }
  if (spline !== undefined) {
    return [
      ['home on its stop', yes(spline.home)],
      ...(spline.travelMm === null ? [] : [['travel from the fit by hand', limitsWords(spline.travelMm, 'mm')]]),
      ['force that the stop takes', forceWords(spline.stopForceN)],
      ['pressure on a flank from the press', pressure(spline.contactPressureMPa)],
      ['torque that the splines bear', moment(spline.torqueCapacityNm)],
      ['force that takes the arm off', forceWords(spline.releaseForceN)],
    ];
  }
  if (cotter !== undefined) {
    return [
      ['force of the cotter on its flat', forceWords(cotter.normalForceN)],
      ['force that drives the cotter out again', forceWords(cotter.releaseForceN)],
      ['holds at rest without its nut', yes(cotter.holdsAtRestWithoutNut)],
      ['torque that lifts one edge of the flat', moment(cotter.firstEdgeUnloadingNm)],
      ['torque at which the flat rocks', moment(cotter.rockingLimitNm)],
      ['shear in the cotter under a rider', pressure(cotter.shearStressMPa)],
    ];
  }
  if (faceTeeth !== undefined) {
    return [
      ['torque at which the teeth climb', moment(faceTeeth.torqueCapacityNm)],
      ['force that a rider needs', forceWords(faceTeeth.neededForceN)],
      ['stays together under a rider', yes(faceTeeth.staysTogether)],
      ['pressure on the flanks', pressure(faceTeeth.contactPressureMPa)],
    ];
  }
  if (bar !== undefined) {
    return [
      ['torque in the bar under a rider', moment(bar.torqueNm)],
      ['bending in the bar', moment(bar.bendingNm)],
      ['equivalent stress at its surface', pressure(bar.equivalentStressMPa)],
    ];
  }
  return [];
}

/** How it is fastened, and when to look again. @internal */
export function fastenSections(
  { fastening }: JointPart,
  record: InterfaceRecord,
  mode: PlanMode,
  forceToStopN: Reading | undefined,
): Section[] {
  const lead =
    fastening.by === 'none'
      ? undefined
      : mode === 'later'
        ? 'Only after what stands above is done, with the right parts.'
        : PLAN_LEADS[mode];
  const { preloadN, torqueNm } = fastening;
  const drawing: Block[] =
    preloadN === undefined || torqueNm === undefined
      ? []
      : [
          preloadDrawing({
            preloadN,
            title: `Preload of ${fastening.by === 'pinch-bolts' ? 'one pinch bolt' : 'the bolt'} at ${torqueWords(Math.round(torqueNm.nominal * 10) / 10)} Nm`,
            marks:
              forceToStopN === undefined
                ? []
                : [{ label: 'brings the arm onto its stop, at most', forceN: hardLimits(forceToStopN).upper }],
          }),
        ];
  return [
    {
      id: 'tighten',
      title: titleOf(fastening.by, mode),
      blocks: [
        ...(lead === undefined ? [] : [{ kind: 'paragraph' as const, text: lead }]),
        { kind: 'list', ordered: mode !== 'reckoned', items: fastening.steps },
        ...drawing,
      ],
    },
    ...(mode === 'reckoned' ? [] : [recheck(fastening, record)]),
  ];
}

function titleOf(by: JointPart['fastening']['by'], mode: PlanMode): string {
  if (by === 'none') return 'What is set instead of a joint';
  return mode === 're-tighten' ? 'How it is fastened again' : PLAN_TITLES[mode];
}

function recheck({ by, torqueNm }: JointPart['fastening'], record: InterfaceRecord): Section {
  const positions = record.retightening.map(({ statement, sources }) => `${statement} [${sources.join(', ')}]`);
  const target = torqueNm === undefined ? 'its torque' : `${torqueWords(Math.round(torqueNm.nominal * 10) / 10)} Nm`;
  return {
    id: 're-check',
    title: 'When to check again',
    blocks: [
      { kind: 'list', ordered: false, items: [...RECHECKS[by](target), AT_ONCE[by]] },
      ...(positions.length === 0
        ? [
            {
              kind: 'paragraph' as const,
              text: 'For this joint nothing was found in print on tightening again; the above is common practice.',
            },
          ]
        : [
            { kind: 'paragraph' as const, text: 'In print on tightening again, each apart:' },
            { kind: 'list' as const, ordered: false, items: positions },
          ]),
    ],
  };
}

const RECHECKS: Readonly<Record<JointPart['fastening']['by'], (target: string) => string[]>> = {
  'pinch-bolts': (target) => [
    `After the first ride, once: set the wrench to ${target} and pull on each bolt in turn. Why: bolts that are tightened in turn settle against each other, and the first one loses what the last one adds.`,
    'Then push both arms along the axis: nothing may shift, or the cap was not set before the bolts.',
    'If a bolt turns again at a second check, take the arm off and look at bore, splines and slot.',
  ],
  'centre-bolt-or-nut': (target) => [
    `After the first ride, once: set the wrench to ${target} and see whether the bolt turns. Why: fresh faces bed in, and what they give comes off the preload.`,
    'If it turns again at a second check, take the arm off and look at the joint: tightening again and again hides what is wrong.',
  ],
  cotters: () => [
    'After the first ride, once: press the cotter again, then its nut, snug. Why: the flat beds in, and a nut that stays tight says nothing of the wedge.',
    'If the cotter goes in farther at a second check, take it out and look at its flat and at the spindle.',
  ],
  none: () => [
    'After the first ride, once: play and free turning of the bearings, and whether cone and lock nut have stayed where they were. Why: new bearings bed in.',
  ],
};

const AT_ONCE: Readonly<Record<JointPart['fastening']['by'], string>> = {
  'pinch-bolts': 'At once, at any time: play of the left arm, a cap that backs out, a drive side that drifts outward.',
  'centre-bolt-or-nut': 'At once, at any time: a creak at each stroke, play at the pedal, or dark powder at the joint.',
  cotters: 'At once, at any time: a knock at each turn, or a pedal that drops before it bites.',
  none: 'At once, at any time: an arm or the axle that no longer runs true, or a crack.',
};

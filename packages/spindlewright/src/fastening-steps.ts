import type { Claim, InterfaceRecord, LubricationClaim } from '@spindlewright/interfaces';
import { convert } from '@spindlewright/quantity';
import { jobDefaults } from './defaults.ts';
import { extrasAfter, extrasBefore } from './fixing-extras.ts';
import type { Job } from './job.ts';
import type { FasteningPlan } from './joint-part.ts';
import { plain, torqueWords } from './seat-words.ts';
import { wrenchWords } from './wrench-plan.ts';

type Plan = Omit<FasteningPlan, 'steps'>;

/** What to do at a joint without a taper seat, in the order in which it is done. @internal */
export function fasteningSteps(job: Job, record: InterfaceRecord, plan: Plan): string[] {
  switch (plan.by) {
    case 'none':
      return onePieceSteps();
    case 'cotters':
      return cotterSteps(job);
    case 'pinch-bolts':
      return pinchSteps(job, record, plan);
    case 'centre-bolt-or-nut':
      return centreSteps(job, record, plan);
  }
}

const onePieceSteps = (): string[] => [
  'There is no arm joint to tighten: arms and axle are one piece. What is set is the play of the bearings.',
  'Drive-side cone up to its shoulder, then the crank through the shell from the right.',
  'Cone of the left side: left-hand thread, so it goes on anticlockwise; by hand until the play is gone, then back until the crank still turns freely.',
  'Lock nut of the left side: left-hand thread too. Hold the cone while it is tightened; a torque for it was not found in print.',
  'Turn the crank: free and without play, or set the cone once more.',
];

const cotterSteps = ({ cotter }: Job): string[] => [
  'Wipe hole, flat and cotter; no burr, no step on the flat of the cotter.',
  `Both cotters go in from opposite directions: with the arms level, one with its nut above, the other with its nut below${
    cotter?.sameWayRound === true ? '. They are the same way round now: turn one of them round' : ''
  }.`,
  'Press the cotter in with a cotter press, its force in line with the cotter: not by pulling with the nut, and no hammer without a support under the arm.',
  'Then the nut with its washer, snug only: it keeps the cotter and is no wedge, and its small thread strips. No torque for it was found in print.',
  'The thread stands out far enough for the whole nut; a cotter that goes in too far is the wrong one.',
  'Look at the arms from the side: they stand exactly opposite each other.',
];

function pinchSteps({ clamp }: Job, record: InterfaceRecord, plan: Plan): string[] {
  const count = clamp?.boltCount ?? jobDefaults.pinchBolts.value;
  return [
    `Pinch bolts loose, cap out. Wipe spindle, splines and bore. ${greaseWords(record, 'spline')}`,
    'Slide the arm on opposite the other one: a wider or a blind spline lets it on one way only. By hand; no hammer.',
    'Preload cap first, and light: by hand until the arms no longer shift along the axis and the spindle still turns freely. It takes up play and carries no load.',
    ...(clamp?.safetyCatch === 'none'
      ? []
      : ['Safety catch, where there is one: down into its hole before the bolts are touched.']),
    threadLine(plan, 'under the heads'),
    ...torqueLines(
      plan,
      count > 1
        ? 'each pinch bolt, in turn and in small steps, a quarter of a turn at a time, until none of them moves any more'
        : 'the pinch bolt',
    ),
    ...(plan.torqueNm === undefined
      ? []
      : ['A short key does not get there: about 8 Nm are reached with one [pinch-torque-note].']),
    'The slot is still open when the bolts are tight: a closed one clamps nothing.',
    'Cap: not turned again now. Both arms together may not shift, and the spindle turns freely.',
  ];
}

function centreSteps(job: Job, record: InterfaceRecord, plan: Plan): string[] {
  const extras = job.fixing?.extras ?? [];
  return [
    ...extrasBefore(extras),
    ...onTheSpindle(record),
    threadLine(plan, 'under the head, with the washer that belongs to it'),
    ...torqueLines(plan, 'the bolt, in one go'),
    ...atTorque(record),
    ...extrasAfter(extras),
  ];
}

function onTheSpindle(record: InterfaceRecord): string[] {
  switch (record.family) {
    case 'spline':
      return [
        `Wipe the splines of both parts. ${greaseWords(record, 'spline')}`,
        record.id === 'spline-48'
          ? 'Arm on by hand, opposite the other: one step is 7.5 degrees and hardly shows, so look along both from the side.'
          : record.id === 'spline-10'
            ? 'Arm on by hand, opposite the other: one step is 36 degrees and shows at once.'
            : 'Arm on by hand in its one position: one of the eight splines is the index. Never force it on in another.',
        ...(record.id === 'spline-48'
          ? []
          : ['Before the bolt goes in: the end of the spindle lies clear below the seat of the bolt.']),
      ];
    case 'face-spline':
      return [
        'Brush the teeth of both halves clean, down to the ground: what lies between them keeps them apart.',
        'Put the halves together by hand, arms opposite, until the teeth are in all round; then the bolt.',
      ];
    case 'through-spindle':
      return [
        `Wipe spindle, splines and bore. ${greaseWords(record, 'spline')}`,
        'Slide the arm on opposite the other one: a wider or a blind spline lets it on one way only.',
      ];
    default:
      return [
        'Flats: clean them, decide greased or dry before pressing, and write it down; the trade disagrees.',
        'Push the arm on by hand, opposite the other, and see that its bolt or nut has room left to press.',
      ];
  }
}

function atTorque(record: InterfaceRecord): string[] {
  switch (record.family) {
    case 'spline':
      return [
        record.id === 'spline-48'
          ? 'Home: the arm lies against its spacer all round; straight splines have no press of their own.'
          : 'Home on its stop: no gap between arm and stop, tried all round with a feeler. A gap at full torque means: off again and look, not more torque.',
      ];
    case 'face-spline':
      return ['Closed: no gap between the halves all round, and the bearings turn freely without play.'];
    case 'through-spindle':
      return [
        'The arm lies against the inner ring of its bearing; the adjuster, where there is one, takes up the rest of the play by hand and is then pinched.',
      ];
    default:
      return [
        'If it goes solid before half a turn, stop and look: the bolt is on the spindle end or the arm on the wall.',
      ];
  }
}

/** What is advised on grease for a surface, in few words, with the sources. */
function greaseWords(record: InterfaceRecord, surface: LubricationClaim['surface']): string {
  const claims: readonly Claim[] = record.lubrication.filter((claim) => claim.surface === surface);
  if (claims.length === 0) return 'Grease or dry: as the part maker says; nothing in print was found.';
  return claims
    .map(({ statement, sources }) => `${statement}${sources.length === 0 ? '' : ` [${sources.join(', ')}]`}`)
    .join(' ');
}

function threadLine({ thread, lubrication }: Plan, where: string): string {
  const named = thread === undefined ? 'Thread' : `Thread ${thread}`;
  return lubrication === 'unknown'
    ? `${named}: the job does not say what is on it; grease or oil it, and ${where}.`
    : `${named}, and ${where}: ${lubrication}, as the job says.`;
}

function torqueLines(plan: Plan, what: string): string[] {
  const { torqueNm, tradeTorques, torqueFrom, preloadN, wrench } = plan;
  const trade = tradeTorques
    .map(
      ({ lowerNm, upperNm, sources }) =>
        `${torqueWords(round(lowerNm))}${lowerNm === upperNm ? '' : ` to ${torqueWords(round(upperNm))}`} Nm [${sources.join(', ')}]`,
    )
    .join('; ');
  if (torqueNm === undefined) {
    return [
      `Torque of ${what}: look the part maker's value up first. For this joint none was found in print, and none is guessed here.`,
    ];
  }
  const target = round(torqueNm.nominal);
  return [
    `Torque: ${torqueWords(target)} Nm (${plain(convert(torqueNm.nominal, 'Nm', 'lbf.in'), 0)} lbf.in), ${
      torqueFrom === 'part-maker'
        ? "the part maker's value"
        : "the lowest that most of the trade's ranges contain; the part maker's value goes first if you have it"
    }: ${what}.`,
    ...(trade === '' ? [] : [`In the trade, each source apart (secondary, no rule): ${trade}.`]),
    ...(wrench === undefined ? [] : wrenchWords(wrench)),
    ...(preloadN === undefined
      ? []
      : [
          `Preload of ${plan.by === 'pinch-bolts' ? 'one bolt' : 'the bolt'} to reckon with: ${plain(preloadN.nominal / 1000, 1)} kN (${plain(
            Math.floor(preloadN.lower / 100) / 10,
            1,
          )} to ${plain(Math.ceil(preloadN.upper / 100) / 10, 1)} kN): friction decides, not the wrench.`,
        ]),
  ];
}

const round = (torqueNm: number): number => Math.round(torqueNm * 10) / 10;

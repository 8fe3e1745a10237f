import type { Finding } from '@spindlewright/quantity';
import type { Job } from './job.ts';
import { pairFindings } from './pair-findings.ts';
import type { Problem } from './problem.ts';
import type { SeatFacts } from './seat-part.ts';
import { basisWords, gapWords, pathWords, shareWords } from './seat-words.ts';
import type { FitState } from './sheet.ts';

/** What to make of a seat. */
export interface SeatDecision {
  state: FitState;
  missingFact?: string;
  /** For the mechanic. */
  headline: string;
  /** For the owner, when nothing else is the matter. */
  forOwner: readonly string[];
  /** The same as a problem, for when it does not fit. */
  problem: Problem;
  findings: readonly Finding[];
}

/** Turns a predicted seat into an answer a shop can act on. @internal */
export function decideSeat(job: Job, seat: SeatFacts): SeatDecision {
  const { lead } = seat;
  const { verdict, worstVerdicts, pressed } = lead.prediction;
  const findings = pairFindings(job, seat);
  const told = (state: FitState, headline: string, forOwner: string[], missingFact?: string): SeatDecision => ({
    state,
    ...(missingFact === undefined ? {} : { missingFact }),
    headline,
    forOwner,
    problem: {
      headline,
      owner: forOwner[0] ?? '',
      remedy: forOwner[1]?.replace(/\.$/, '') ?? '',
      ...(Object.hasOwn(SAME_AS, verdict) ? { sameAs: SAME_AS[verdict as keyof typeof SAME_AS] } : {}),
    },
    findings,
  });

  if (readingsDisagree(seat)) {
    return told(
      'cannot-tell',
      'The readings of the two parts contradict each other: one of them is wrong. Measure again, and do not press the arm before.',
      ['What was measured on the two parts cannot all be true.', 'What is done: it is measured again.'],
      'trialFit.shoulderGapMm',
    );
  }
  const missing = missingReading(job, seat);
  if (lead.prediction.findings.some(({ code }) => code === 'bore-fully-plastic')) {
    return told(
      'cannot-tell',
      'At this torque and friction the boss round the hole would give way: find out the right torque and the alloy first. Do not press it before; do not ride it.',
      [
        `The torque that was ${job.partMakerTorqueNm === undefined ? 'taken' : 'named'} may be more than this arm stands.`,
        'What is done: the right torque is found out first.',
      ],
      job.partMakerTorqueNm === undefined ? 'partMakerTorqueNm' : 'arm.yieldStrengthMPa',
    );
  }
  if (verdict !== 'seats' && verdict !== 'marginal') {
    const why = FAILURES[verdict];
    const stopped = verdict === 'bottoms-on-end' || verdict === 'hits-shoulder';
    const share = stopped ? `, with ${shareWords(lead.prediction.pressReached)} of the press done` : '';
    // Published sizes of the arm are derived by judgement: they can warn, they cannot condemn a part unseen. Nor can
    // readings whose best case is a good seat.
    const surely = lead.basis !== 'published-set' && worstVerdicts.lower !== 'seats' && worstVerdicts.upper !== 'seats';
    if (surely) {
      return told('does-not-fit', `Do not press this arm on this spindle: ${why.headline}${share}. Do not ride it.`, [
        why.forOwner,
        'What is replaced: the arm or the spindle, so that they match.',
      ]);
    }
    const cause = lead.basis === 'published-set' ? 'By published sizes alone' : 'By the readings, if not for certain,';
    return told(
      'cannot-tell',
      `${cause} ${why.headline}${share}. What decides: ${pathWords(missing)}. Do not press the arm before that is known; do not ride it.`,
      ['Whether this arm fits cannot be told yet, and it may well not.', 'What is done: it is measured further.'],
      missing,
    );
  }
  const worst = [worstVerdicts.lower, worstVerdicts.upper];
  const sure = worst.every((candidate) => candidate === 'seats' || candidate === 'marginal');
  const room = `end gap ${gapWords(pressed.endGapMm)}, shoulder gap ${gapWords(pressed.shoulderGapMm)} when pressed`;
  if (sure && lead.basis !== 'published-set') {
    return told(
      'fits',
      `By the ${basisWords[lead.basis]} the arm seats: ${room}.${verdict === 'marginal' ? ' The room is thin: measure both gaps again when it is tight.' : ''}`,
      [
        'The arm fits the spindle and has room to be pressed home.',
        'It is tightened to the stated torque and measured again before the bike goes out.',
        'Come back after the first ride: a new arm settles and the bolt is checked once.',
      ],
    );
  }
  return told(
    'cannot-tell',
    `By the ${basisWords[lead.basis]}: ${room}, too wide to decide. What decides: ${pathWords(missing)}. Do not press the arm before that is known.`,
    ['Whether this arm fits cannot be told from what is known.', 'What is done: one more fact is found out first.'],
    missing,
  );
}

/** True when two readings of the job disagree; a reading that disagrees with a published size is no contradiction. */
function readingsDisagree({ lead }: SeatFacts): boolean {
  const assumed = new Set(lead.assumed);
  const read = (...paths: string[]): boolean => paths.every((path) => !assumed.has(path));
  return lead.prediction.findings.some(({ code, values }) => {
    if (code !== 'readings-disagree') return false;
    return values.second === 'sizes of the parts'
      ? read('spindle.acrossFlatsAtEndMm', 'arm.acrossFlatsAtMouthMm')
      : read('spindle.flatLengthMm', 'arm.boltSeatFromMouthMm');
  });
}

/** What the leading way has to say; that a reading is not what was published is no fault of the reading. @internal */
export const seatFindings = (seat: SeatFacts): readonly Finding[] =>
  seat.lead.prediction.findings.filter(({ code }) => code !== 'readings-disagree' || readingsDisagree(seat));

/** The fact that narrows the prediction most and that somebody can find out: the trial fit first. */
function missingReading(job: Job, { lead }: SeatFacts): string {
  const { pressed } = lead.prediction;
  const tighter = pressed.endGapMm.lower <= pressed.shoulderGapMm.lower ? 'endGapMm' : 'shoulderGapMm';
  if (job.trialFit?.[tighter] === undefined) return `trialFit.${tighter}`;
  if (job.arm?.yieldStrengthMPa === undefined) return 'arm.yieldStrengthMPa';
  if (job.partMakerTorqueNm === undefined) return 'partMakerTorqueNm';
  const top = lead.prediction.sensitivity.find(({ effectMm }) => Math.abs(effectMm) > 0);
  return top?.path ?? `trialFit.${tighter}`;
}

/** Conditions of the diagnosis that name the same thing. */
const SAME_AS = {
  'bottoms-on-end': 'bottomed-on-end',
  'hits-shoulder': 'stopped-at-shoulder',
  'too-little-engagement': 'too-little-engagement',
} as const;

const FAILURES = {
  'bottoms-on-end': {
    headline: 'the bolt would land on the spindle end and clamp the spindle, not the arm',
    forOwner: 'This arm goes so far onto the spindle that the bolt cannot press it tight.',
  },
  'hits-shoulder': {
    headline: 'the wall at the end of the flats would stop it before it is pressed home',
    forOwner: 'This arm runs against the wall of the spindle before it is tight.',
  },
  'too-little-engagement': {
    headline: 'too little of the flats would carry the load',
    forOwner: 'This arm stays too far out on the spindle: too little of it holds.',
  },
  'does-not-start': {
    headline: 'the square hole is too small to go on',
    forOwner: 'This arm does not go onto the spindle.',
  },
} as const;

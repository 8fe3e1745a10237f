import { createFinding, type Finding } from '@spindlewright/quantity';
import type { Job } from './job.ts';
import { messages } from './messages/en.ts';
import type { SeatPart } from './seat-part.ts';
import { basisWords, gapWords, pathWords } from './seat-words.ts';
import type { FitState } from './sheet.ts';

/** What to make of a seat. */
export interface SeatDecision {
  state: FitState;
  missingFact?: string;
  headline: string;
  forOwner: readonly string[];
  findings: readonly Finding[];
}

/** Turns a predicted seat into an answer a shop can act on. @internal */
export function decideSeat(job: Job, seat: SeatPart): SeatDecision {
  const { lead } = seat;
  const { verdict, worstVerdicts, pressed } = lead.prediction;
  const stops = verdict === 'bottoms-on-end' || verdict === 'hits-shoulder';
  const reached = Math.floor(lead.prediction.pressReached.nominal * 100 + 1e-9);
  const findings = findingsOf(job, seat);

  if (stops || verdict === 'does-not-start' || verdict === 'too-little-engagement') {
    const why = FAILURES[verdict];
    // Published sizes of the arm are derived by judgement: they can warn, they cannot condemn a part unseen.
    const surely = lead.basis !== 'published-set';
    return {
      state: surely ? 'does-not-fit' : 'cannot-tell',
      ...(surely ? {} : { missingFact: 'trialFit.endGapMm' }),
      headline: surely
        ? `Do not press this arm on this spindle: ${why.headline}${stops ? `, with ${reached} % of the press done` : ''}. Do not ride it.`
        : `By published sizes alone ${why.headline}; push the arm on by hand and measure both gaps before deciding. Do not ride it.`,
      forOwner: [why.forOwner, 'The bike is not to be ridden like this.', why.wayOut],
      findings,
    };
  }
  const worst = [worstVerdicts.lower, worstVerdicts.upper];
  const sure = worst.every((candidate) => candidate === 'seats' || candidate === 'marginal');
  const room = `end gap ${gapWords(pressed.endGapMm)}, shoulder gap ${gapWords(pressed.shoulderGapMm)} when pressed`;
  if (sure && lead.basis !== 'published-set') {
    return {
      state: 'fits',
      headline: `By the ${basisWords[lead.basis]} the arm seats: ${room}.${verdict === 'marginal' ? ' The room is thin: measure both gaps again when it is tight.' : ''}`,
      forOwner: [
        'The arm fits the spindle and has room to be pressed home.',
        'It is tightened to the stated torque and measured again before the bike goes out.',
        'Come back after the first ride: a new arm settles and the bolt is checked once.',
      ],
      findings,
    };
  }
  const missing = missingReading(job, seat);
  return {
    state: 'cannot-tell',
    missingFact: missing,
    headline: `By the ${basisWords[lead.basis]}: ${room}, too wide to decide. What decides: ${pathWords(missing)}. Do not press before.`,
    forOwner: [
      'Whether this arm fits cannot be told from what is known.',
      'One more measurement at the stand settles it.',
      'Until then the bike is not to be ridden.',
    ],
    findings,
  };
}

/** The reading that narrows the prediction most: the trial fit first, then whatever weighs most in the limits. */
function missingReading(job: Job, { lead }: SeatPart): string {
  const { pressed } = lead.prediction;
  const tighter = pressed.endGapMm.lower <= pressed.shoulderGapMm.lower ? 'endGapMm' : 'shoulderGapMm';
  if (job.trialFit?.[tighter] === undefined) return `trialFit.${tighter}`;
  const top = lead.prediction.sensitivity.find(({ effectMm }) => Math.abs(effectMm) > 0);
  return top?.path ?? `trialFit.${tighter}`;
}

const FAILURES = {
  'bottoms-on-end': {
    headline: 'the bolt would land on the spindle end and clamp the spindle, not the arm',
    forOwner: 'This arm goes so far onto the spindle that the bolt cannot press it tight.',
    wayOut: 'It needs an arm whose square hole matches the spindle, or a spindle that matches the arm.',
  },
  'hits-shoulder': {
    headline: 'the wall at the end of the flats would stop it before it is pressed home',
    forOwner: 'This arm runs against the shoulder of the spindle before it is tight.',
    wayOut: 'It needs an arm whose square hole matches the spindle, or a spindle that matches the arm.',
  },
  'too-little-engagement': {
    headline: 'too little of the flats would carry the load',
    forOwner: 'This arm stays too far out on the spindle: too little of it holds.',
    wayOut: 'It needs an arm whose square hole matches the spindle, or a spindle that matches the arm.',
  },
  'does-not-start': {
    headline: 'the square hole is too small to go on',
    forOwner: 'This arm does not go onto the spindle.',
    wayOut: 'It needs an arm for this spindle.',
  },
} as const;

function findingsOf(job: Job, seat: SeatPart): Finding[] {
  const published = [seat.lead, ...seat.others].filter((way) => way.basis === 'published-set');
  const verdicts = new Set(published.map((way) => way.prediction.verdict));
  const readable = job.trialFit === undefined ? 'caution' : 'note';
  return [
    ...(verdicts.size > 1 || seat.lead.basis !== 'published-set'
      ? [
          createFinding({
            code: 'published-sets-disagree',
            severity: readable,
            template: messages['published-sets-disagree'] ?? '',
            values: { sets: published.length, verdicts: verdicts.size },
            sources: [...new Set(published.flatMap((way) => way.sources))].sort(),
          }),
        ]
      : []),
    ...(job.interface.spindle === job.interface.arm
      ? []
      : [
          createFinding({
            code: 'mixed-tapers',
            severity: 'caution',
            template: messages['mixed-tapers'] ?? '',
            values: { spindle: job.interface.spindle, arm: job.interface.arm },
            sources: seat.mate.sources,
            path: 'interface',
          }),
        ]),
  ];
}

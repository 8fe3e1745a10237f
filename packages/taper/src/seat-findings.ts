import type { Finding, Limits, Measurand, Severity } from '@spindlewright/quantity';
import { find } from './find.ts';
import { bounds, nominal } from './interval.ts';
import { seatMessages } from './messages/seat.ts';
import type { SeatPrediction, SeatWay } from './seat.ts';
import { handFitAt, usableFlatAt } from './seat-geometry.ts';
import { jointOf, type KnownSeat, mouthsByTrialFit, type SolvedSeat, seatByMark } from './seat-places.ts';
import type { SeatMix } from './seat-ways.ts';
import { CLEAR_GAP_MM, USABLE_FLAT_SHARE } from './thresholds.ts';

type Say = (code: keyof typeof seatMessages, severity: Severity, values?: Record<string, number | string>) => void;

const WAY_NAMES: Record<SeatWay, string> = {
  'end-gap': 'gap to the spindle end',
  'shoulder-gap': 'gap to the shoulder',
  'witness-mark': 'witness mark',
  shapes: 'sizes of the parts',
};

const SOURCES: Partial<Record<keyof typeof seatMessages, readonly string[]>> = {
  'bottoms-on-end': ['forum-mixed-signs', 'taper-jp-sizes-2014'],
  'hits-shoulder': ['taper-fr-workshop-wiki'],
  'mark-covers-flat': ['service-manual-page-16'],
};

/** Why the verdict is what it is, what is not known and what contradicts what. @internal */
export function seatFindings(input: {
  known: KnownSeat;
  trialFit: { endGapMm?: Measurand; shoulderGapMm?: Measurand } | undefined;
  solved: SolvedSeat;
  strained: SeatMix['strained'];
  judged: Pick<SeatPrediction, 'verdict' | 'worstVerdicts' | 'sensitivity' | 'basis'>;
}): Finding[] {
  const { known, solved, judged } = input;
  const findings: Finding[] = [];
  const say: Say = (code, severity, values = {}) => {
    findings.push(find(seatMessages, code, severity, values, { sources: SOURCES[code] ?? [] }));
  };
  sayVerdict(say, known, solved, judged);
  const { spindle, arm } = known;
  if (judged.basis === 'witness-mark') {
    say('mark-of-old-arm', 'caution');
    const mark = known.witnessMark?.markEndFromSpindleEndMm;
    if (mark && spindle && mark.upper >= spindle.flatLengthMm.lower) {
      say('mark-covers-flat', mark.nominal >= spindle.flatLengthMm.nominal ? 'stop' : 'caution');
    }
  }
  if (input.strained !== null) {
    const { best, bestMm, way, wayMm } = input.strained;
    const values = { first: WAY_NAMES[best], firstMm: bestMm.nominal, second: WAY_NAMES[way], secondMm: wayMm.nominal };
    say('ways-strained', 'caution', values);
  }
  sayDisagreement(say, known, solved, judged.basis);
  if (known.pressing === undefined) say('pressing-not-given', 'caution');
  for (const key of ['endGapMm', 'shoulderGapMm'] as const) {
    if (typeof input.trialFit?.[key] === 'number') {
      const path = `trialFit.${key}`;
      findings.push(find(seatMessages, 'reading-taken-as-exact', 'note', { path }, { path }));
    }
    if (solved.pressed[key] === null)
      say(key === 'endGapMm' ? 'end-gap-unbounded' : 'shoulder-gap-unbounded', 'caution');
  }
  if (solved.pressed.mouthFromEndMm === null) say('mouth-from-end-unbounded', 'note');
  if (spindle === undefined || arm === undefined) say('engaged-length-unbounded', 'note');
  return findings;
}

function sayVerdict(
  say: Say,
  known: KnownSeat,
  { pressed }: SolvedSeat,
  { verdict, worstVerdicts, sensitivity }: Pick<SeatPrediction, 'verdict' | 'worstVerdicts' | 'sensitivity'>,
): void {
  const joint = jointOf(known);
  const value = (limits: Limits | null | undefined): number => limits?.nominal ?? 0;
  if (verdict === 'marginal') say('marginal', 'caution', { clearGapMm: CLEAR_GAP_MM });
  else if (verdict !== 'seats') {
    say(verdict, 'stop', {
      endGapMm: value(pressed.endGapMm),
      shoulderGapMm: value(pressed.shoulderGapMm),
      engagedLengthMm: value(pressed.engagedLengthMm),
      usableFlatMm: joint ? usableFlatAt(joint, nominal) + 0 : 0,
      usableFlatShare: USABLE_FLAT_SHARE,
    });
  }
  const { lower, upper } = worstVerdicts;
  if (lower !== upper) {
    say('worst-case-differs', 'caution', { lower, upper, path: sensitivity[0]?.path ?? 'the readings' });
  }
}

// Each way to know the hand fit that was not used is held against the one that was.
function sayDisagreement(say: Say, known: KnownSeat, solved: SolvedSeat, basis: SeatPrediction['basis']): void {
  const joint = jointOf(known);
  const { handFit, pressed } = solved;
  const mark = known.witnessMark && seatByMark(known.witnessMark.markEndFromSpindleEndMm, joint, bounds).mouthFromEndMm;
  const trial = pressed.mouthFromEndMm;
  if (basis === 'trial-fit' && joint && mark && trial) {
    // Without a pressing force the arm may yet travel, so that only a mark farther out than the hand fit tells.
    const farther = known.pressing !== undefined && mark.lower > trial.upper;
    if (farther || mark.upper < trial.lower) {
      say('mark-disagrees', 'caution', { markMm: mark.nominal, trialFitMm: trial.nominal });
    }
  }
  const used = handFit.mouthFromEndMm;
  if (joint === undefined || used === null || basis === 'shapes') return;
  const others: [string, Limits | undefined][] = [[WAY_NAMES.shapes, bounds((corner) => handFitAt(joint, corner))]];
  if (known.trialFit) others.push([WAY_NAMES['shoulder-gap'], mouthsByTrialFit(known.trialFit, joint, bounds)[1]]);
  for (const [second, other] of others) {
    if (other === undefined || (other.lower <= used.upper && other.upper >= used.lower)) continue;
    const first = basis === 'trial-fit' ? 'trial fit' : 'witness mark';
    say('readings-disagree', 'caution', { first, firstMm: used.nominal, second, secondMm: other.nominal });
  }
}

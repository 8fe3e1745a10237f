import type { MateResult } from '@spindlewright/interfaces';
import type { Limits } from '@spindlewright/quantity';
import type { SeatPrediction } from '@spindlewright/taper';
import { decideJob } from './decide-job.ts';
import { decideSeat } from './decide-seat.ts';
import type { Job, JobChange } from './job.ts';
import { isTaperJob } from './joint-kind.ts';
import { mateWords } from './mate-decision.ts';
import { pressPlan } from './press-plan.ts';
import { recordsOf } from './records-of.ts';
import { knowSeat } from './seat.ts';
import type { SeatFacts } from './seat-part.ts';
import { forceWords, gapWords, torqueWords, verdictWords } from './seat-words.ts';
import { type FitState, type Section, STATE_WORDS } from './sheet.ts';
import { tighteningOf } from './tightening.ts';
import { workJoint } from './work-joint.ts';

const AS_IT_IS: JobChange = {};

/** What a job comes to as it is, or with one thing changed. */
export interface WhatIfRow {
  /** `the parts as they are`, or the name of the change. */
  name: string;
  /** Fields of the job that were replaced. */
  changed: readonly string[];
  /** Whether arm and spindle fit then. */
  state: FitState;
  /** True when it would not be ridden by that alone; false clears nothing that was found at the joint. */
  doNotRide: boolean;
  /** Verdict of the seat, on a square taper. */
  verdict?: SeatPrediction['verdict'];
  /** Pressed end gap, mm, on a square taper. */
  endGapMm?: Limits | null;
  /** Pressed shoulder gap, mm, on a square taper. */
  shoulderGapMm?: Limits | null;
  /** Whether the interfaces go together, at any other joint. */
  mate?: MateResult['verdict'];
  /** Torque to set, Nm. */
  torqueNm?: Limits;
  /** Preload of a bolt, N. */
  preloadN?: Limits;
}

/**
 * Works the parts of a job again for each change, beside the job as it is. What was observed of the old parts is left out:
 * it says nothing of others.
 *
 * @internal
 */
export function whatIfRows(job: Job, seat?: SeatFacts): WhatIfRow[] {
  if (job.whatIf === undefined) return [];
  const rows: { name: string; change: JobChange }[] = [
    { name: 'the parts as they are', change: AS_IT_IS },
    ...job.whatIf,
  ];
  return rows.map(({ name, change }) => {
    const changed = changedJob(job, change);
    return {
      name,
      changed: Object.keys(change),
      // The seat of the job as it is has been worked already.
      ...(isTaperJob(changed) ? taperRow(changed, change === AS_IT_IS ? seat : undefined) : jointRow(changed)),
    };
  });
}

/** The job with the fields of a change in place of its own, and only what concerns the parts. @internal */
export function changedJob(job: Job, change: JobChange): Job {
  const {
    whatIf: _whatIf,
    observations: _observations,
    measurements: _measurements,
    otherSide: _otherSide,
    candidates: _candidates,
    rates: _rates,
    ...rest
  } = job;
  return { ...rest, ...change };
}

type RowFigures = Omit<WhatIfRow, 'name' | 'changed'>;

/** Only what a row shows is worked: no drawing, no chances, no sheet. */
function taperRow(job: Job, known: SeatFacts | undefined): RowFigures {
  const { spindle, arm } = recordsOf(job);
  const press = pressPlan(job);
  const facts = known ?? knowSeat(job, press, spindle, arm, { sensitivities: false }).facts;
  const tightening = tighteningOf(job, press, facts, spindle);
  const seat = decideSeat(job, facts);
  const { state, doNotRide } = decideJob({ job, diagnosis: undefined, seat, tightening, candidates: [] });
  const { verdict, pressed } = facts.lead.prediction;
  return {
    state,
    doNotRide,
    verdict,
    endGapMm: pressed.endGapMm,
    shoulderGapMm: pressed.shoulderGapMm,
    torqueNm: press.torqueNm,
    preloadN: press.preloadN,
  };
}

function jointRow(job: Job): RowFigures {
  const { state, doNotRide, joint } = workJoint(job);
  const { torqueNm, preloadN } = joint?.fastening ?? {};
  return {
    state,
    doNotRide,
    ...(joint?.mate === undefined ? {} : { mate: joint.mate.verdict }),
    ...(torqueNm === undefined ? {} : { torqueNm }),
    ...(preloadN === undefined ? {} : { preloadN }),
  };
}

/** The section that sets the changes side by side. @internal */
export function whatIfSection(rows: readonly WhatIfRow[]): Section[] {
  if (rows.length === 0) return [];
  const taper = rows.some(({ verdict }) => verdict !== undefined);
  return [
    {
      id: 'what-if',
      title: 'What if',
      blocks: [
        {
          kind: 'table',
          caption: 'The parts alone, each row with one thing changed; what was observed of the old ones is left aside',
          head: ['what', 'answer', 'verdict', ...(taper ? ['end gap', 'shoulder gap'] : []), 'torque', 'preload'],
          rows: rows.map((row) => [
            row.name,
            STATE_WORDS[row.state],
            verdictOf(row),
            ...(taper ? [gapOf(row.endGapMm), gapOf(row.shoulderGapMm)] : []),
            row.torqueNm === undefined ? 'none' : `${torqueWords(Math.round(row.torqueNm.nominal * 10) / 10)} Nm`,
            row.preloadN === undefined ? 'not known' : forceWords(row.preloadN, 0),
          ]),
        },
      ],
    },
  ];
}

const gapOf = (gap: Limits | null | undefined): string => (gap === undefined ? 'none' : gapWords(gap));

const verdictOf = ({ verdict, mate }: WhatIfRow): string => {
  if (verdict !== undefined) return verdictWords[verdict];
  return mate === undefined ? 'not told' : mateWords[mate];
};

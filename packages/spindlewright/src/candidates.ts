import type { InterfaceRecord } from '@spindlewright/interfaces';
import { decideSeat } from './decide-seat.ts';
import type { CandidateArm, Job } from './job.ts';
import { squareTaper } from './records-of.ts';
import { seatOf } from './seat.ts';
import type { PressPlan, SeatPart } from './seat-part.ts';
import { basisWords, gapWords, pathWords, verdictWords } from './seat-words.ts';
import { type FitState, type Section, STATE_WORDS } from './sheet.ts';

/** What a candidate arm comes to on this spindle. */
export interface JudgedCandidate {
  /** What the mechanic calls it. */
  name: string;
  /** Id of its interface. */
  interface: string;
  /** What a shop can act on. */
  state: FitState;
  /** The one fact that would decide, when the state is `cannot-tell`. */
  missingFact?: string;
  /** Its predicted seat. */
  seat: SeatPart;
}

/** Judges each candidate by itself, in the order given. @internal */
export function judgeCandidates(job: Job, press: PressPlan, spindle: InterfaceRecord): JudgedCandidate[] {
  return (job.candidates ?? []).map((candidate, index) => {
    const asJob = jobFor(job, candidate, spindle);
    const seat = seatOf(asJob, press, spindle, squareTaper(`candidates[${index}].interface`, candidate.interface));
    const { state, missingFact } = decideSeat(asJob, seat);
    return {
      name: candidate.name,
      interface: candidate.interface,
      state,
      ...(missingFact === undefined ? {} : { missingFact }),
      seat,
    };
  });
}

function jobFor(job: Job, candidate: CandidateArm, spindle: InterfaceRecord): Job {
  const { arm: _arm, trialFit: _trialFit, ...rest } = job;
  return {
    ...rest,
    interface: { spindle: spindle.id, arm: candidate.interface },
    ...(candidate.arm === undefined ? {} : { arm: candidate.arm }),
    ...(candidate.trialFit === undefined ? {} : { trialFit: candidate.trialFit }),
  };
}

/** The section that sets the candidates side by side; the best is drawn where the sheet has no other seat. @internal */
export function candidatesSection(candidates: readonly JudgedCandidate[], drawBest: boolean): Section[] {
  const [first] = candidates;
  if (first === undefined) return [];
  const best = candidates.find(({ state }) => state === 'fits') ?? first;
  return [
    {
      id: 'candidates',
      title: 'Arms that might be fitted',
      blocks: [
        {
          kind: 'table',
          caption: 'Each on this spindle, pressed, by its best way of knowing',
          head: ['arm', 'answer', 'end gap', 'shoulder gap', 'verdict', 'known by', 'what would decide'],
          rows: candidates.map(({ name, state, missingFact, seat: { lead } }) => [
            name,
            STATE_WORDS[state],
            gapWords(lead.prediction.pressed.endGapMm),
            gapWords(lead.prediction.pressed.shoulderGapMm),
            verdictWords[lead.prediction.verdict],
            basisWords[lead.basis],
            missingFact === undefined ? 'nothing more' : pathWords(missingFact),
          ]),
        },
        ...(drawBest
          ? [
              {
                kind: 'paragraph' as const,
                text: `Drawn: ${best.name}, as it would sit${best.state === 'fits' ? '' : '; it is not to be fitted'}.`,
              },
              { kind: 'drawing' as const, ...best.seat.drawing },
            ]
          : []),
      ],
    },
  ];
}

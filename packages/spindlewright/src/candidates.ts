import { checkMate, type InterfaceRecord, type MateResult } from '@spindlewright/interfaces';
import { decideSeat } from './decide-seat.ts';
import type { CandidateArm, Job } from './job.ts';
import { hasTaperSeat, recordAt } from './joint-kind.ts';
import { mateState, mateWords } from './mate-decision.ts';
import { seatOf } from './seat.ts';
import type { PressPlan, SeatPart } from './seat-part.ts';
import { basisWords, gapWords, pathWords, verdictWords } from './seat-words.ts';
import { type Block, type FitState, type Section, STATE_WORDS } from './sheet.ts';

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
  /** Its predicted seat, on a square taper. */
  seat?: SeatPart;
  /** Whether it goes on this spindle by its interface, where no seat can be predicted. */
  mate?: MateResult;
}

/** Judges each candidate by itself, in the order given. @internal */
export function judgeCandidates(job: Job, press: PressPlan, spindle: InterfaceRecord): JudgedCandidate[] {
  return (job.candidates ?? []).map((candidate, index) => {
    const path = `candidates[${index}].interface`;
    if (!hasTaperSeat(spindle.id) || !hasTaperSeat(candidate.interface)) {
      const mate = checkMate({ spindle, arm: recordAt(path, candidate.interface) });
      return { name: candidate.name, interface: candidate.interface, ...mateState(mate), mate };
    }
    const asJob = jobFor(job, candidate, spindle);
    const seat = seatOf(asJob, press, spindle, recordAt(path, candidate.interface));
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
  const best = candidates.find(({ state, seat }) => state === 'fits' && seat !== undefined) ?? first;
  const seats = candidates.some(({ seat }) => seat !== undefined);
  return [
    {
      id: 'candidates',
      title: 'Arms that might be fitted',
      blocks: [
        seats ? seatTable(candidates) : mateTable(candidates),
        ...(drawBest && best.seat !== undefined
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

const decides = ({ missingFact }: JudgedCandidate): string =>
  missingFact === undefined ? 'nothing more' : pathWords(missingFact);

const seatTable = (candidates: readonly JudgedCandidate[]): Block => ({
  kind: 'table',
  caption: 'Each on this spindle, pressed, by its best way of knowing',
  head: ['arm', 'answer', 'end gap', 'shoulder gap', 'verdict', 'known by', 'what would decide'],
  rows: candidates.map((candidate) => {
    const { name, state, seat, mate } = candidate;
    if (seat === undefined) {
      const verdict = mate === undefined ? '' : mateWords[mate.verdict];
      return [name, STATE_WORDS[state], 'none', 'none', verdict, 'interfaces', decides(candidate)];
    }
    const { pressed, verdict } = seat.lead.prediction;
    return [
      name,
      STATE_WORDS[state],
      gapWords(pressed.endGapMm),
      gapWords(pressed.shoulderGapMm),
      verdictWords[verdict],
      basisWords[seat.lead.basis],
      decides(candidate),
    ];
  }),
});

const mateTable = (candidates: readonly JudgedCandidate[]): Block => ({
  kind: 'table',
  caption: 'Each on this spindle, by the interfaces of both; a name is never the last word',
  head: ['arm', 'answer', 'by its interface', 'why', 'what would decide'],
  rows: candidates.map((candidate) => {
    const { name, state, mate } = candidate;
    if (mate === undefined) return [name, STATE_WORDS[state], '', '', decides(candidate)];
    return [name, STATE_WORDS[state], mateWords[mate.verdict], mate.consequence, decides(candidate)];
  }),
});

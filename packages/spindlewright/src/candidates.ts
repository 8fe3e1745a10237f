import { checkMate, type InterfaceRecord, type MateResult } from '@spindlewright/interfaces';
import { decideSeat } from './decide-seat.ts';
import type { CandidateArm, Job } from './job.ts';
import { hasTaperSeat, recordAt } from './joint-kind.ts';
import { mateState, mateWords } from './mate-decision.ts';
import { type KnownSeat, knowSeat, seatDrawing } from './seat.ts';
import type { PressPlan, SeatFacts, SheetDrawing } from './seat-part.ts';
import { basisWords, gapWords, pathWords, verdictWords } from './seat-words.ts';
import { type Block, type FitState, type Section, STATE_WORDS } from './sheet.ts';

/** The seat of a candidate; the section is drawn for the one that the sheet shows. */
export interface CandidateSeat extends SeatFacts {
  /** The section drawing to scale. */
  drawing?: SheetDrawing;
}

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
  /** Its predicted seat, on a square taper; drawn where the sheet draws it. */
  seat?: CandidateSeat;
  /** Whether it goes on this spindle by its interface, where no seat can be predicted. */
  mate?: MateResult;
}

/** Judges each candidate by itself, in the order given; the best is drawn where the sheet has no other seat. @internal */
export function judgeCandidates(
  job: Job,
  press: PressPlan,
  spindle: InterfaceRecord,
  drawBest: boolean,
): JudgedCandidate[] {
  const seats = new Map<JudgedCandidate, KnownSeat>();
  const judged = (job.candidates ?? []).map((candidate, index): JudgedCandidate => {
    const path = `candidates[${index}].interface`;
    if (!hasTaperSeat(spindle.id) || !hasTaperSeat(candidate.interface)) {
      const mate = checkMate({ spindle, arm: recordAt(path, candidate.interface) });
      return { name: candidate.name, interface: candidate.interface, ...mateState(mate), mate };
    }
    const asJob = jobFor(job, candidate, spindle);
    const known = knowSeat(asJob, press, spindle, recordAt(path, candidate.interface), { sensitivities: true });
    const { state, missingFact } = decideSeat(asJob, known.facts);
    const one = {
      name: candidate.name,
      interface: candidate.interface,
      state,
      ...(missingFact === undefined ? {} : { missingFact }),
      seat: known.facts,
    };
    seats.set(one, known);
    return one;
  });
  const best = drawBest ? bestOf(judged) : undefined;
  const known = best === undefined ? undefined : seats.get(best);
  return known === undefined
    ? judged
    : judged.map((one) => (one === best ? { ...one, seat: { ...known.facts, drawing: seatDrawing(known) } } : one));
}

/** The first that fits, else the first. */
const bestOf = (candidates: readonly JudgedCandidate[]): JudgedCandidate | undefined =>
  candidates.find(({ state, seat }) => state === 'fits' && seat !== undefined) ?? candidates[0];

function jobFor(job: Job, candidate: CandidateArm, spindle: InterfaceRecord): Job {
  const { arm: _arm, trialFit: _trialFit, ...rest } = job;
  return {
    ...rest,
    interface: { spindle: spindle.id, arm: candidate.interface },
    ...(candidate.arm === undefined ? {} : { arm: candidate.arm }),
    ...(candidate.trialFit === undefined ? {} : { trialFit: candidate.trialFit }),
  };
}

/** The section that sets the candidates side by side, with the drawing of the best where there is one. @internal */
export function candidatesSection(candidates: readonly JudgedCandidate[]): Section[] {
  const best = bestOf(candidates);
  if (best === undefined) return [];
  const seats = candidates.some(({ seat }) => seat !== undefined);
  return [
    {
      id: 'candidates',
      title: 'Arms that might be fitted',
      blocks: [
        seats ? seatTable(candidates) : mateTable(candidates),
        ...(best.seat?.drawing !== undefined
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

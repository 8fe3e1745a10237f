import { listActions } from '@spindlewright/diagnosis';
import { messages as words } from '@spindlewright/diagnosis/messages/en';
import type { SeatDecision } from './decide-seat.ts';
import type { DiagnosisPart } from './diagnosis-part.ts';
import { type FitState, STATE_WORDS } from './sheet.ts';
import type { TighteningPart } from './tightening-part.ts';

/** The answer of a whole job. */
export interface JobDecision {
  state: FitState;
  missingFact?: string;
  doNotRide: boolean;
  answer: string;
  headline: string;
  forOwner: readonly string[];
}

/** Joins diagnosis, seat and fixing into one answer; the gravest of them leads, and none is left out. @internal */
export function decideJob(
  diagnosis: DiagnosisPart | undefined,
  seat: SeatDecision | undefined,
  tightening: TighteningPart,
): JobDecision {
  const fixingFails = tightening.fixing?.state === 'does-not-fit';
  const state = fixingFails ? 'does-not-fit' : (seat?.state ?? 'cannot-tell');
  const missing = seat?.missingFact ?? (seat === undefined ? 'trialFit.endGapMm' : undefined);
  const missingFact = state === 'cannot-tell' && missing !== undefined ? { missingFact: missing } : {};
  const fixingWords = fixingFails ? 'The bolt as it is cannot press this arm.' : '';
  if (diagnosis === undefined) {
    return {
      state,
      ...missingFact,
      doNotRide: state !== 'fits',
      answer: STATE_WORDS[state],
      headline: [seat?.headline, fixingWords].filter(Boolean).join(' '),
      forOwner: seat?.forOwner ?? [],
    };
  }
  const { result, comparison } = diagnosis;
  const [condition] = result.conditions;
  const [cause] = result.causes.filter(({ id }) => id !== 'none');
  const beside = result.besides.filter(({ probability }) => probability >= 0.5).map(({ id }) => words[`beside-${id}`]);
  const elsewhere = result.action === 'service-bearing' || result.action === 'look-elsewhere';
  const what = elsewhere && beside.length > 0 ? beside.join(' and ') : words[`condition-${condition?.id}`];
  const action = words[`action-${result.action}`] ?? result.action;
  const doNotRide = result.doNotRide || comparison?.doNotRide === true || fixingFails || seat?.state === 'does-not-fit';
  const part = listActions().find(({ id }) => id === result.action)?.part ?? 'none';
  const why =
    cause !== undefined && cause.probability >= 0.4
      ? `How it came about, most likely: ${words[`cause-${cause.id}`]}.`
      : 'How it came about cannot be told from what was found.';
  return {
    state,
    ...missingFact,
    doNotRide,
    // Whether it may be ridden comes before whether it fits: an arm that fits is no answer while the joint is unsafe.
    answer: state === 'does-not-fit' ? STATE_WORDS[state] : doNotRide ? 'Do not ride yet' : 'May be ridden',
    headline: [
      `${capital(what ?? '')}. What to do: ${action}.`,
      seat?.state === 'does-not-fit' ? seat.headline : '',
      fixingWords,
      seat?.state === 'does-not-fit'
        ? ''
        : doNotRide
          ? 'Not to be ridden until this is done and checked.'
          : 'Nothing that was told speaks against riding.',
    ]
      .filter(Boolean)
      .join(' '),
    forOwner: [
      `${capital(what ?? '')}.`,
      `${part === 'none' || part === 'seat' ? `What is done: ${action}` : `What is replaced: ${words[`part-${part}`]}`}; ${
        doNotRide ? 'until that is done the bike is not to be ridden' : 'the bike may be ridden meanwhile'
      }.`,
      why,
    ],
  };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

import { checkMate, type InterfaceRecord, type MateResult } from '@spindlewright/interfaces';
import type { SeatDecision } from './decide-seat.ts';
import type { FitState } from './sheet.ts';

/** What a verdict by interfaces means for a shop. @internal */
export const MATE_STATES: Readonly<Record<MateResult['verdict'], FitState>> = {
  mates: 'fits',
  'mates-with-shift': 'cannot-tell',
  unknown: 'cannot-tell',
  'starts-then-fails': 'does-not-fit',
  'does-not-mate': 'does-not-fit',
};

/** A verdict on a pair in plain words. @internal */
export const mateWords: Readonly<Record<MateResult['verdict'], string>> = {
  mates: 'made to go together',
  'mates-with-shift': 'goes on, but sits elsewhere',
  unknown: 'not told by the interfaces',
  'starts-then-fails': 'starts to go on and then fails',
  'does-not-mate': 'does not go together',
};

/** The state of a pair by its interfaces, with what would decide. @internal */
export function mateState({ verdict }: MateResult): { state: FitState; missingFact?: string } {
  const state = MATE_STATES[verdict];
  return state === 'cannot-tell' ? { state, missingFact: 'partMakerStatement' } : { state };
}

/** What to make of arm and spindle by their interfaces, as a seat would be decided. @internal */
export function mateDecision(mate: MateResult): SeatDecision {
  const { state, missingFact } = mateState(mate);
  const reason = mate.consequence;
  if (state === 'fits') {
    const headline = `By their interfaces arm and spindle are made to go together. ${reason}`;
    return {
      state,
      headline,
      forOwner: [
        'Arm and spindle are of kinds that are made to go together.',
        'It is fastened as stated and looked at again before the bike goes out.',
      ],
      problem: { headline, owner: '', remedy: '' },
      findings: [],
    };
  }
  const fails = state === 'does-not-fit';
  const headline = fails
    ? `Do not fit this arm to this spindle: ${mateWords[mate.verdict]}. Do not ride it. ${reason}`
    : `Whether this arm belongs on this spindle is not told by the names of their interfaces. ${reason} Not to be ridden on a guess: ask the part maker, and try it by hand.`;
  const forOwner = fails
    ? [
        'This arm and this spindle do not belong together.',
        'What is replaced: the arm or the spindle, so that they match.',
      ]
    : [
        'Whether these two parts belong together is not certain yet.',
        'What is done: the part maker is asked, and they are tried by hand.',
      ];
  return {
    state,
    ...(missingFact === undefined ? {} : { missingFact }),
    headline,
    forOwner,
    problem: { headline, owner: forOwner[0] ?? '', remedy: (forOwner[1] ?? '').replace(/\.$/, '') },
    findings: [],
  };
}

/** The pair of a job, when both are known. @internal */
export const mateOf = (spindle: InterfaceRecord, arm: InterfaceRecord | undefined): MateResult | undefined =>
  arm === undefined ? undefined : checkMate({ spindle, arm });

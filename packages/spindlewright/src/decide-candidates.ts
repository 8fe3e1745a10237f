import type { JudgedCandidate } from './candidates.ts';

/** The answer of a job that only asks about arms that might be fitted. @internal */
export function candidatesDecision(
  candidates: readonly JudgedCandidate[],
): { headline: string; forOwner: string[] } | undefined {
  if (candidates.length === 0) return undefined;
  const names = (state: JudgedCandidate['state']): string =>
    candidates
      .filter((candidate) => candidate.state === state)
      .map(({ name }) => name)
      .join(', ');
  const fitting = names('fits');
  const open = names('cannot-tell');
  const byNames = candidates.every(({ state, seat }) => state !== 'fits' || seat === undefined);
  if (fitting !== '') {
    return {
      headline: `Fits this spindle ${byNames ? 'by its interface' : 'by its trial fit'}: ${fitting}.`,
      forOwner: [
        'An arm that fits the spindle is at hand.',
        'It is tightened to the stated torque, measured again, and only then ridden.',
      ],
    };
  }
  return {
    headline: `None of the arms at hand is known to fit.${open === '' ? '' : ` Still open: ${open}.`} Do not fit any of them before that is known.`,
    forOwner: ['No arm at hand is known to fit this spindle yet.', 'Until one is found the bike is not to be ridden.'],
  };
}

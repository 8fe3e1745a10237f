// The trial of identification: forecasts of the package on foreign readings, and what they have to come up to.
import { identifySpindle, identifyThread } from '@spindlewright/interfaces';
import { seededRandom } from '../../seed.ts';
import { foreignSpindle, foreignThread } from './foreign-readings.ts';
import type { Forecast, Score } from './scores.ts';

/** How many readings of each kind are tried, and the seed: one that was not used while the models were being made. */
export const CASES = 4000;
export const SEED = 7_031_977;

/** What is tried. */
export const SUBJECTS = ['spindle', 'thread'] as const;
export type Subject = (typeof SUBJECTS)[number];

/** Forecasts on a number of foreign readings. */
export function trial(subject: Subject, cases: number, seed: number): Forecast[] {
  const random = seededRandom(seed);
  return Array.from({ length: cases }, () => {
    const { candidates, truth } =
      subject === 'spindle'
        ? answered(foreignSpindle(random), identifySpindle)
        : answered(foreignThread(random), identifyThread);
    return { probabilities: Object.fromEntries(candidates.map(({ id, probability }) => [id, probability])), truth };
  });
}

const answered = <Input>(
  { input, truth }: { input: Input; truth: string },
  identify: (input: Input) => { candidates: readonly { id: string; probability: number }[] },
) => ({ candidates: identify(input).candidates, truth });

/** One demand on a score. */
interface Demand {
  what: string;
  why: string;
  met: (score: Score) => boolean;
  value: (score: Score) => number;
  bound: number;
}

/** What forecasts have to come up to before anyone may act on them. */
const BOUNDS: readonly Omit<Demand, 'met'>[] = [
  {
    what: 'calibration error at most',
    bound: 0.1,
    value: (score) => score.calibrationError,
    why: 'A claim of 80 % may be true in 70 to 90 % of the cases: nobody at a bench acts otherwise on a tenth.',
  },
  {
    what: 'share of claims of 0.99 and more that are wrong, at most',
    bound: 0.02,
    value: ({ nearCertain: { count, wrong } }) => (count === 0 ? 0 : wrong / count),
    why: 'The generator makes slips in 2 readings of 100 that no single reading can show; claims of 0.99 may pay for those and no more.',
  },
  {
    what: 'Brier score over that of the climatology, at most',
    bound: 0.8,
    value: ({ brier, climatology }) => brier / climatology.brier,
    why: 'Readings have to tell more than the frequencies of the parts do, or they need not be taken.',
  },
  {
    what: 'log score over that of the climatology, at most',
    bound: 0.8,
    value: ({ logScore, climatology }) => logScore / climatology.logScore,
    why: 'The same, with a heavy fine on a truth that was all but ruled out.',
  },
];

/** The same, each with its judge. */
export const DEMANDS: readonly Demand[] = BOUNDS.map((demand) => ({
  ...demand,
  met: (score) => demand.value(score) <= demand.bound,
}));

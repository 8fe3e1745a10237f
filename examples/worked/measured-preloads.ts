import { frictionRange, preloadRange, threadFor } from '@spindlewright/torque';
import { steps, type Worked } from './worked.ts';

/** Preloads in kN of 1/2-20 bolts at 800 lbf.in, given as M12x1.25 at 90 Nm: tables 8-13 and 8-14. */
export const DRY_KN = [
  ...[23.6, 27.6, 28.0, 29.4, 30.3, 30.7, 32.9, 33.8, 33.8, 33.8],
  ...[34.7, 35.6, 35.6, 37.4, 37.8, 37.8, 39.2, 40.0, 40.5, 42.7],
];
/** The same, lubricated. */
export const LUBRICATED_KN = [30.3, 32.5, 32.5, 32.9, 32.9, 33.8, 34.3, 34.7, 37.4, 40.5];

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const deviation = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + (value - mean(values)) ** 2, 0) / (values.length - 1));

/** Range that friction from class B up to a class leaves at 90 Nm, to be set against the bolts. */
export const rangeUpToClass = (last: 'C' | 'D') => {
  const lower = frictionRange({ of: 'B' }).minFriction;
  const upper = frictionRange({ of: last }).maxFriction ?? lower;
  const friction = { lower, nominal: (lower + upper) / 2, upper };
  return preloadRange({
    torqueNm: 90,
    tool: 'click-wrench-iso-6789',
    thread: threadFor('M12x1.25'),
    threadFriction: friction,
    bearingFriction: friction,
    bearing: { outerDiameterMm: 16.63, holeDiameterMm: 13.5 },
  });
};

/** Thirty bolts tightened to one torque. */
export function measuredPreloads(): Worked {
  return {
    title: 'Thirty bolts at one torque: mean and spread',
    source: 'shigley-9',
    citation: 'tables 8-13 and 8-14',
    steps: steps(0.0015, 'three figures', [
      ['mean, not lubricated', 34.3, mean(DRY_KN), 'kN'],
      ['standard deviation, not lubricated', 4.91, deviation(DRY_KN), 'kN'],
      ['mean, lubricated', 34.18, mean(LUBRICATED_KN), 'kN'],
      ['standard deviation, lubricated', 2.88, deviation(LUBRICATED_KN), 'kN'],
    ]),
  };
}

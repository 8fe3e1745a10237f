// Simulated cases: what is said to have a probability of p has to be so in a share p of them. This proves the code only:
// the cases come from the same judgement that the answers rest on. The judgement is tried by the vignettes.
import type { LikelihoodRecord } from '@spindlewright/diagnosis/data';
import { describe, expect, it } from 'vitest';
import { seededRandom, seedOfRun } from '../../seed.ts';
import { BINS, everyWordMoved, simulate, spread, worst } from './calibrate.ts';
import { FAMILY_JOINTS } from './generators.ts';
import type { Change } from './simulate.ts';

const CASES = 52_000;
// About six hundred sums are looked at; five standard deviations are passed by chance once in three thousand runs.
const BOUND = 5;
/** Greatest expected calibration error, by common use: mean distance of claim and share over the bins, by their counts. */
const ERROR_BOUND = 0.03;

const each = Math.ceil(CASES / FAMILY_JOINTS.length);

describe('simulated cases', () => {
  const seed = seedOfRun();
  const errors: number[] = [];

  it.each(FAMILY_JOINTS)(
    `%s: they meet the probabilities they are given (SEED=${seed})`,
    (joint) => {
      const outcome = simulate(joint, each, seed);
      const [key, z] = worst(outcome);
      errors.push(outcome.error);
      console.log(
        `${joint}: ${each} cases, error over ${BINS} bins ${outcome.error.toFixed(4)}; of ${outcome.tallies.size} sums "${key}" is off by ${z.toFixed(2)} standard deviations`,
      );
      expect(Math.abs(z), key).toBeLessThan(BOUND);
      expect(outcome.error).toBeLessThanOrEqual(ERROR_BOUND);
    },
    120_000,
  );

  it(`over all ${CASES} of them too`, () => {
    expect(errors).toHaveLength(FAMILY_JOINTS.length);
    expect(errors.reduce((sum, error) => sum + error, 0) / errors.length).toBeLessThanOrEqual(ERROR_BOUND);
  });

  // One row of some hundred answers otherwise than the data say: half of the sound joints show their most telling fault.
  const wrong: Record<(typeof FAMILY_JOINTS)[number], string> = {
    'square-taper-jis': 'bolt-on-arrival',
    'spline-10': 'shoulder-gap',
    'spline-8-long': 'shoulder-gap',
    'spline-48': 'shoulder-gap',
    'face-spline': 'shoulder-gap',
    'through-spindle-24': 'clamp-slot',
    'cottered-inch': 'cotter',
    'one-piece': 'spindle-runout',
  };
  it.each(FAMILY_JOINTS)(
    '%s: a joint that answers otherwise than one row of the data says is found out',
    (joint) => {
      const change: Change = ({ check, condition, probability, outcome }: LikelihoodRecord) => {
        if (check !== wrong[joint] || condition !== 'sound') return probability;
        return [
          'tight',
          'turns-before-torque',
          'touching',
          'clear',
          'open',
          'closed',
          'sound',
          'deformed',
          'true',
          'bent',
        ].includes(outcome)
          ? 0.49
          : probability;
      };
      const [key, z] = worst(simulate(joint, each, seed, { change }));
      expect(Math.abs(z), key).toBeGreaterThan(BOUND);
    },
    120_000,
  );

  it('how calibration degrades when every word of the truth is one step off', { timeout: 120_000 }, () => {
    const change = everyWordMoved(seededRandom(seed));
    // Nearly everything is answered, in words: the more is asked, the more a wrong word counts.
    // Three times the cases of the others: the distance grows with their root, the noise does not.
    const right = simulate('square-taper-jis', 3 * each, seed, { asked: 0.7, read: 0 });
    const moved = simulate('square-taper-jis', 3 * each, seed, { asked: 0.7, read: 0, change });
    console.log(
      `sums are off by ${spread(right).toFixed(2)} standard deviations (root of the mean square) with the words of the data, by ${spread(moved).toFixed(2)} with every word a step off; error over the bins ${right.error.toFixed(3)} and ${moved.error.toFixed(3)}`,
    );
    // Right words: 1 by definition, 0.9 to 1.2 in runs; a step off: 2 and more.
    expect(spread(right)).toBeLessThan(1.6);
    expect(spread(moved)).toBeGreaterThan(1.6);
  });
});

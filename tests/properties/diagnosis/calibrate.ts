// Calibration on simulated cases: how often what is said with a probability of p is so.
import { type Diagnosis, diagnose, type JointId } from '@spindlewright/diagnosis';
import { listFrequencyWords } from '@spindlewright/diagnosis/data';
import { seededRandom } from '../../seed.ts';

import { type Change, createSampler, type Simulated, type Source } from './simulate.ts';

/** Bins of the leading probability. */
export const BINS = 15;

interface Tally {
  expected: number;
  variance: number;
  seen: number;
  count: number;
}

/** Everything that a result claims with a probability, and whether it is so. */
function* statements(result: Diagnosis, truth: Simulated) {
  for (const { id, probability } of result.conditions) {
    yield { kind: 'condition', id, probability, hit: id === truth.condition };
  }
  for (const { id, probability } of result.causes) yield { kind: 'cause', id, probability, hit: id === truth.cause };
  for (const { id, probability } of result.besides) {
    const hit = id === 'bearing-worn' ? truth.bearingWorn : truth.noiseElsewhere;
    yield { kind: 'beside', id, probability, hit };
  }
}

/** What simulated cases show. */
export interface Outcome {
  /** Sums by bin, id and kind. */
  tallies: Map<string, Tally>;
  /** Mean distance between what the leading condition is said to have and how often it is so, over the bins. */
  error: number;
}

/** Diagnoses cases drawn from the data of a joint, or from data changed by `source.change`. */
export function simulate(joint: JointId, cases: number, seed: number, source: Omit<Source, 'joint'> = {}): Outcome {
  const sample = createSampler(seededRandom(seed), { joint, ...source });
  const tallies = new Map<string, Tally>();
  const leading = Array.from({ length: BINS }, () => ({ expected: 0, seen: 0 }));
  const count = (key: string, probability: number, hit: boolean): void => {
    const tally = tallies.get(key) ?? { expected: 0, variance: 0, seen: 0, count: 0 };
    tally.expected += probability;
    tally.variance += probability * (1 - probability);
    tally.seen += hit ? 1 : 0;
    tally.count += 1;
    tallies.set(key, tally);
  };
  for (let index = 0; index < cases; index++) {
    const truth = sample();
    const result = diagnose(truth.input);
    for (const { kind, id, probability, hit } of statements(result, truth)) {
      count(`${kind} in bin ${Math.min(BINS - 1, Math.floor(BINS * probability))}`, probability, hit);
      count(`${kind} ${id}`, probability, hit);
    }
    const [first] = result.conditions;
    const bin = leading[Math.min(BINS - 1, Math.floor(BINS * (first?.probability ?? 0)))];
    if (first === undefined || bin === undefined) continue;
    bin.expected += first.probability;
    bin.seen += first.id === truth.condition ? 1 : 0;
  }
  const error = leading.reduce((sum, { expected, seen }) => sum + Math.abs(expected - seen), 0) / cases;
  return { tallies, error };
}

/** The sum that is farthest off, in standard deviations. */
export function worst({ tallies }: Outcome): [string, number] {
  const found = [...tallies]
    .filter(([, { variance }]) => variance > 5)
    .map(([key, { expected, variance, seen }]): [string, number] => [key, (seen - expected) / Math.sqrt(variance)]);
  return found.reduce((a, b) => (Math.abs(b[1]) > Math.abs(a[1]) ? b : a), ['none', 0]);
}

/** Root of the mean square of all sums that say something, in standard deviations: 1 where the words are right. */
export function spread({ tallies }: Outcome): number {
  const sums = [...tallies.values()].filter(({ variance }) => variance > 5);
  const squares = sums.reduce((sum, { expected, variance, seen }) => sum + (seen - expected) ** 2 / variance, 0);
  return Math.sqrt(squares / sums.length);
}

/** Every word one step up or down, by the toss of a coin for each record; only words that are said at all. */
export function everyWordMoved(random: () => number): Change {
  const scale = listFrequencyWords().map(({ probability }) => probability);
  const places = new Map(listFrequencyWords().map(({ word }, index) => [word, index]));
  const steps = new Map<string, number>();
  return ({ id, word, probability }) => {
    const place = places.get(word) ?? 0;
    if (place < 1) return probability;
    const step = steps.get(id) ?? (random() < 0.5 ? -1 : 1);
    steps.set(id, step);
    const moved = Math.min(scale.length - 1, Math.max(1, place + step));
    return ((scale[moved] ?? 0) / (scale[place] ?? 1)) * probability;
  };
}

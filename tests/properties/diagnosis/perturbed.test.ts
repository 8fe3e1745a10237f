// Every likelihood is judgement: how much would another judge's word change? One record that a case rests on is moved by
// one step of the scale, up or down, and the action asked for again. Drawn at random from all such moves over all cases;
// `PERTURBED=10000` draws more of them and prints the share for the guide.
import { readdirSync, readFileSync } from 'node:fs';
import { type DiagnoseInput, diagnose } from '@spindlewright/diagnosis';
import {
  diagnoseWith,
  type LikelihoodRecord,
  listFrequencyWords,
  listLikelihoods,
} from '@spindlewright/diagnosis/data';
import { expect, it } from 'vitest';
import { seededRandom } from './generators.ts';

const DRAWS = Number(process.env.PERTURBED ?? 400);
const SEED = 20261127;
// Wilson bound of a share of 3 in 100 at 400 draws and three standard deviations: beyond it single words decide too much.
const GREATEST_SHARE = 0.067;

const folder = new URL('./vignettes/', import.meta.url);
const cases = ['tuned', 'kept-out'].flatMap((kind) =>
  readdirSync(new URL(`${kind}/`, folder)).map((name): DiagnoseInput => {
    const { joint, side, observations, measurements } = JSON.parse(
      readFileSync(new URL(`${kind}/${name}`, folder), 'utf8'),
    ) as DiagnoseInput;
    return { joint, observations, ...(side ? { side } : {}), ...(measurements ? { measurements } : {}) };
  }),
);

const words = listFrequencyWords().map(({ word }) => word);

/** The records that a case rests on: those of the checks that were answered. */
const recordsOf = ({ joint, observations }: DiagnoseInput): LikelihoodRecord[] =>
  listLikelihoods(joint).filter(({ check }) => Object.hasOwn(observations, check));

it(`one word a step off seldom changes what to do (${DRAWS} draws)`, { timeout: 3_600_000 }, () => {
  const random = seededRandom(SEED);
  const pick = <T>(items: readonly T[]): T => items[Math.floor(random() * items.length)] as T;
  let actions = 0;
  let riding = 0;
  let drawn = 0;
  while (drawn < DRAWS) {
    const input = pick(cases);
    const record = pick(recordsOf(input));
    const word = words[words.indexOf(record.word) + (random() < 0.5 ? -1 : 1)];
    if (word === undefined) continue;
    drawn++;
    const before = diagnose(input);
    const after = diagnoseWith({ input, likelihoods: { [record.id]: word } });
    if (after.action !== before.action) actions++;
    if (before.doNotRide && !after.doNotRide) riding++;
  }
  const percent = (count: number): string => `${((100 * count) / drawn).toFixed(2)} %`;
  console.log(
    `${drawn} words moved by one step over ${cases.length} cases: another action in ${percent(actions)}, "may ride" for "do not ride" in ${percent(riding)}`,
  );
  expect(actions / drawn).toBeLessThan(GREATEST_SHARE);
  expect(riding / drawn).toBeLessThan(0.01);
});

it('a word moved across the whole scale does change what to do', () => {
  const input = { joint: 'square-taper-jis', observations: { 'bore-flats': 'rounded' } } as const;
  const rows = listLikelihoods(input.joint).filter(
    ({ check, outcome, condition }) => check === 'bore-flats' && outcome === 'rounded' && condition === 'bore-deformed',
  );
  const likelihoods = Object.fromEntries(rows.map(({ id }) => [id, 'never-say-never'] as const));
  expect(diagnoseWith({ input, likelihoods }).conditions[0]?.id).not.toBe(diagnose(input).conditions[0]?.id);
});

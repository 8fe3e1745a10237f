// Every likelihood that a case rests on moved by one step of the scale, up and down, and the case diagnosed again. The
// changed rows are summed up here from the published records and put into the compiled model, since putting a whole model
// together for each of forty thousand moves takes a quarter of an hour; the test compares them with `diagnoseWith`.
import {
  type CheckId,
  type DiagnoseInput,
  type Diagnosis,
  diagnose,
  type FrequencyWord,
  type JointId,
} from '@spindlewright/diagnosis';
import {
  diagnoseWith,
  type LikelihoodRecord,
  listBesideSigns,
  listFrequencyWords,
  listLikelihoods,
  listReadingRules,
} from '@spindlewright/diagnosis/data';
import { diagnoseBy } from '../../../packages/diagnosis/src/diagnose.ts';
import { CAUSES, KINDS } from '../../../packages/diagnosis/src/ids.ts';
import { type Model, modelFor } from '../../../packages/diagnosis/src/model.ts';

/** One word of one record moved by one step. */
interface Move {
  record: LikelihoodRecord;
  word: FrequencyWord;
}

const scale = listFrequencyWords();
const numberOf = new Map(scale.map(({ word, probability }) => [word, probability]));
const placeOf = new Map(scale.map(({ word }, index) => [word, index]));
const known = new Map<JointId, LikelihoodRecord[]>();

function recordsFor(joint: JointId): LikelihoodRecord[] {
  const records = known.get(joint) ?? listLikelihoods(joint);
  known.set(joint, records);
  return records;
}

/** The moves of every record of the checks that a case answers, by word or by reading. */
export function movesOf({ joint, observations, measurements = {} }: DiagnoseInput): Move[] {
  const read = listReadingRules(joint).filter(({ measurement }) => Object.hasOwn(measurements, measurement));
  const answered = new Set<string>([...Object.keys(observations), ...read.map(({ check }) => check)]);
  return recordsFor(joint)
    .filter(({ check }) => answered.has(check))
    .flatMap((record) =>
      [-1, 1].flatMap((step) => {
        const word = scale[(placeOf.get(record.word) ?? 0) + step]?.word;
        return word === undefined ? [] : [{ record, word }];
      }),
    );
}

/** Probability of each outcome of a check by kind and cause, one record moved; what holds beside it is left out. */
function rowsWith(joint: JointId, { record: moved, word }: Move): (kind: string, cause: string) => number[] {
  const { check } = moved;
  const records = recordsFor(joint).filter((record) => record.check === check);
  const kindOf = ({ condition, spindleToo }: LikelihoodRecord): string =>
    spindleToo ? `${condition}/spindle-too` : condition;
  const value = (record: LikelihoodRecord): number => numberOf.get(record.id === moved.id ? word : record.word) ?? 0;
  const outcomes = [...new Set(records.map(({ outcome }) => outcome))];
  const by = new Map(records.map((record) => [`${record.outcome} ${kindOf(record)} ${record.cause}`, value(record)]));
  return (kind, cause) => {
    const numbers = outcomes.map((outcome) => {
      if (check !== 'history') return by.get(`${outcome} ${kind} ${cause}`) ?? by.get(`${outcome} ${kind} any`) ?? 0;
      const told = Math.max(by.get(`${outcome} any ${cause}`) ?? 0, by.get(`${outcome} ${kind} any`) ?? 0);
      return told / (1 - told);
    });
    const sum = numbers.reduce((total, number) => total + number, 0);
    return numbers.map((number) => number / sum);
  };
}

function movedModel(input: DiagnoseInput, move: Move): Model {
  const { joint, side } = input;
  const model = modelFor(joint, side);
  const check: CheckId = move.record.check;
  const outcomes = Object.keys(model.likelihood[check] ?? {});
  const columns = outcomes.map((outcome) => Float64Array.from(model.likelihood[check]?.[outcome] ?? []));
  const row = rowsWith(joint, move);
  const signs = listBesideSigns(joint).filter((sign) => sign.check === check);
  model.prior.forEach((_, state) => {
    const kind = KINDS[model.kind[state] ?? 0] ?? 'sound';
    const cause = CAUSES[model.cause[state] ?? 0] ?? 'none';
    const { condition, spindleToo, cause: of } = move.record;
    const own = spindleToo ? `${condition}/spindle-too` : condition;
    if (own !== 'any' && own !== kind) return;
    if (of !== 'any' && of !== cause) return;
    const chances = row(kind, cause);
    for (const { beside, from, to, probability } of signs) {
      const present = beside === 'bearing-worn' ? model.bearing[state] : model.noise[state];
      const [source, target] = [outcomes.indexOf(from), outcomes.indexOf(to)];
      const part = present === 1 ? probability * (chances[source] ?? 0) : 0;
      chances[source] = (chances[source] ?? 0) - part;
      chances[target] = (chances[target] ?? 0) + part;
    }
    chances.forEach((chance, outcome) => {
      const column = columns[outcome];
      if (column !== undefined) column[state] = chance;
    });
  });
  const moved = Object.fromEntries(outcomes.map((outcome, index) => [outcome, columns[index] ?? new Float64Array(0)]));
  return { ...model, likelihood: { ...model.likelihood, [check]: moved } };
}

/** The diagnosis with one record moved. */
export const diagnoseMoved = (input: DiagnoseInput, move: Move): Diagnosis =>
  diagnoseBy('diagnoseMoved', input, () => movedModel(input, move));

/** What all single moves over a list of cases do. */
export interface MoveTally {
  cases: number;
  moves: number;
  /** Moves after which there is another action. */
  action: number;
  /** Cases in which at least one single move gives another action. */
  touched: number;
  /** Moves after which riding is allowed where it was not. */
  unsafe: number;
}

/** Makes every single move of every case. */
export function tallyMoves(cases: readonly DiagnoseInput[]): MoveTally {
  const tally = { cases: cases.length, moves: 0, action: 0, touched: 0, unsafe: 0 };
  for (const input of cases) {
    const before = diagnose(input);
    const after = movesOf(input).map((move) => diagnoseMoved(input, move));
    const other = after.filter(({ action }) => action !== before.action).length;
    tally.moves += after.length;
    tally.action += other;
    tally.touched += other > 0 ? 1 : 0;
    tally.unsafe += after.filter(({ doNotRide }) => before.doNotRide && !doNotRide).length;
  }
  return tally;
}

/** Every word of the data one step off at once, each up or down by a toss: another judge, drawn anew for each case. */
export function tallyOtherJudges(cases: readonly DiagnoseInput[], judges: number, random: () => number) {
  const tally = { answers: 0, action: 0, unsafe: 0 };
  for (const input of cases) {
    const before = diagnose(input);
    for (let judge = 0; judge < judges; judge++) {
      const likelihoods = Object.fromEntries(
        recordsFor(input.joint).flatMap(({ id, word }): [string, FrequencyWord][] => {
          const place = placeOf.get(word) ?? 0;
          const other = scale[place + (random() < 0.5 ? -1 : 1)]?.word;
          // The lowest word stands for what is not said at all.
          return place === 0 || other === undefined || other === scale[0]?.word ? [] : [[id, other]];
        }),
      );
      const after = diagnoseWith({ input, likelihoods });
      tally.answers++;
      tally.action += after.action === before.action ? 0 : 1;
      tally.unsafe += before.doNotRide && !after.doNotRide ? 1 : 0;
    }
  }
  return tally;
}

import { familyOf } from './family-of.ts';
import { ACCESSES, ACTIONS, CHECK_OUTCOMES, CONDITIONS, KINDS } from './ids.ts';
import { FAMILY_CODES, GATES, LOSSES, SCALE } from './model.generated.ts';
import { answersIn, CHECKS, checkOf, type FamilyCode, letterOf, placeOf, rowsIn } from './model-data.ts';
import type { Access, ActionId, CheckId, ConditionId, FamilyId, JointId, KindId, Side } from './types.ts';

/** The joint distribution over (cause, condition, bearing, noise) with the likelihood of every outcome in each state. */
export interface Model {
  /** The family that it is of. */
  family: FamilyId;
  code: FamilyCode;
  /** Index into CAUSES, by state. */
  cause: Uint8Array;
  /** Index into KINDS, by state. */
  kind: Uint8Array;
  /** Index into CONDITIONS, by state. */
  condition: Uint8Array;
  /** 1 where the bearing is worn, by state. */
  bearing: Uint8Array;
  /** 1 where there is noise from elsewhere, by state. */
  noise: Uint8Array;
  /** Prior probability, by state. */
  prior: Float64Array;
  /** Checks that apply to this family. */
  checks: readonly CheckId[];
  /** Effort of every check. */
  effort: readonly Effort[];
  /** Actions that make sense at this family, in the order of the data. */
  actions: readonly ActionId[];
  /** Signs of danger, as `check/outcome`. */
  stop: ReadonlySet<string>;
  /** By action: loss by index into KINDS; answers that rule it out, answers of which one is wanted, if any is. */
  rules: Readonly<Record<ActionId, ActionRule>>;
  /** Probability of each outcome, by state; for the history: of each word, if one is told. */
  likelihood: Readonly<Partial<Record<CheckId, Readonly<Record<string, Float64Array>>>>>;
}

/** What a check takes: minutes of its own, minutes and wear of getting at the place, and the checks that spoils. */
interface Effort {
  id: CheckId;
  minutes: number;
  access: Access;
  opening: number;
  wear: number;
  destroys: readonly CheckId[];
}

/** What an action costs and when it can be one at all. */
interface ActionRule {
  losses: readonly number[];
  bars: ReadonlySet<string>;
  wants: ReadonlySet<string>;
}

/** Puts other words into the row of a kind and cause, both by their place; words are digits of the scale. */
export type Patch = (row: { check: CheckId; kind: number; cause: number }) => string;

const compiled: Partial<Record<string, Model>> = {};

/** The model of a joint, compiled once a family and side. */
export function modelFor(joint: JointId, side: Side | undefined): Model {
  const family = familyOf(joint);
  const key = `${family} ${side}`;
  const found = compiled[key] ?? compileModel(family, side);
  compiled[key] = found;
  return found;
}

/** Turns the data into arrays over states; only pairs of cause and condition that the data name exist. */
export function compileModel(family: FamilyId, side: Side | undefined, patch?: Patch): Model {
  const code = FAMILY_CODES[family];
  const rows = code.rows.split('|');
  const pairs = pairsOf(code, side);
  const [bearings, noises] = code.besides;
  const states = pairs.flatMap((pair) =>
    [0, 1].flatMap((bearing) =>
      [0, 1].map((noise) => ({
        ...pair,
        bearing,
        noise,
        prior: pair.prior * share(bearings?.[0], bearing) * share(noises?.[0], noise),
      })),
    ),
  );
  const checks = CHECKS.filter((check, index) => check === 'history' || rows[index]);
  const likelihood: Partial<Record<CheckId, Record<string, Float64Array>>> = {};
  for (const check of checks) {
    const outcomes = CHECK_OUTCOMES[check];
    const columns = outcomes.map(() => new Float64Array(states.length));
    const row =
      check === 'history' ? toldRow(code, patch) : seenRow(code, rows[CHECKS.indexOf(check)] ?? '', check, patch);
    states.forEach(({ kind, cause, bearing, noise }, state) => {
      row(kind, cause, [bearing, noise]).forEach((p, outcome) => {
        const column = columns[outcome];
        if (column !== undefined) column[state] = p;
      });
    });
    likelihood[check] = Object.fromEntries(
      columns.map((column, index): [string, Float64Array] => [outcomes[index] ?? '', column]),
    );
  }
  const bytes = (of: (state: (typeof states)[number]) => number): Uint8Array => Uint8Array.from(states, of);
  const set = (text = ''): ReadonlySet<string> => new Set(answersIn(text));
  const actions = ACTIONS.filter((_, index) => !code.lacks.includes(letterOf(index)));
  return {
    family,
    code,
    cause: bytes((state) => state.cause),
    kind: bytes((state) => state.kind),
    condition: bytes((state) => CONDITIONS.indexOf(conditionOf(KINDS[state.kind] ?? 'sound'))),
    bearing: bytes((state) => state.bearing),
    noise: bytes((state) => state.noise),
    prior: Float64Array.from(states, (state) => state.prior),
    checks,
    effort: Array.from(code.checks.matchAll(/(\d+)(.)/g), ([, minutes, letter = ''], index) => {
      const [opening, wear, destroys] = code.opening[placeOf(letter)] ?? [0, 0, ''];
      return {
        id: checkOf(letterOf(index)),
        minutes: Number(minutes),
        access: ACCESSES[placeOf(letter)] ?? 'any',
        opening,
        wear,
        destroys: Array.from(destroys, checkOf),
      };
    }),
    actions,
    stop: set(code.stop),
    rules: Object.fromEntries(
      ACTIONS.map((action, place) => {
        const letter = letterOf(place);
        const [bars, wants] = code.gates[letter] ?? GATES[letter] ?? [];
        const losses = LOSSES[place]?.map((loss, kind) => code.losses[letter]?.[letterOf(kind)] ?? loss) ?? [];
        return [action, { losses, bars: set(bars), wants: set(wants) }];
      }),
    ) as Readonly<Record<string, ActionRule>> as Model['rules'],
    likelihood,
  };
}

const share = (prior = 0, present: number): number => (present === 1 ? prior : 1 - prior);

// Digits at the end of a row that are left out stand for the lowest word.
const numberOf = (digit = '0'): number => SCALE[Number(digit)] ?? 0;

/** Probability of each named pair of cause and kind; they sum to 1. */
function pairsOf(code: FamilyCode, side: Side | undefined): { cause: number; kind: number; prior: number }[] {
  const tilt = side === undefined ? {} : code.sides[side];
  const pairs: { cause: number; kind: number; prior: number }[] = [];
  for (const [, cause = '', prior, kinds = ''] of code.causes.matchAll(/([A-Z])(\d+)([a-z\d]+)/g)) {
    const words = Array.from(kinds.matchAll(/(.)(.)/g), ([, kind = '', word = '']) => ({ kind, word }));
    const sum = words.reduce((total, { word }) => total + numberOf(word), 0);
    for (const { kind, word } of words) {
      const factor = (tilt[cause] ?? 1) * (tilt[kind] ?? 1);
      pairs.push({
        cause: placeOf(cause),
        kind: placeOf(kind),
        prior: ((Number(prior) / 1000) * factor * numberOf(word)) / sum,
      });
    }
  }
  const total = pairs.reduce((sum, { prior }) => sum + prior, 0);
  return pairs.map((pair) => ({ ...pair, prior: pair.prior / total }));
}

type Row = (kind: number, cause: number, present: readonly number[]) => number[];

/**
 * Probability of each outcome of a check: the numbers of the words of its row divided by their sum. The most special row
 * counts: kind with cause, kind, condition with cause, condition, default. Where the joint itself shows nothing, what
 * holds beside it is noticed in the stated share of the cases.
 */
function seenRow(code: FamilyCode, text: string, check: CheckId, patch: Patch | undefined): Row {
  const rows = rowsIn(text);
  const signs = code.besides.map(([, text]) =>
    Array.from(text.matchAll(/(.)(\d)(\d)(\d)/g)).filter(([, letter = '']) => checkOf(letter) === check),
  );
  return (kind, cause, present) => {
    const condition = CONDITIONS.indexOf(conditionOf(KINDS[kind] ?? 'sound'));
    const capital = letterOf(cause).toUpperCase();
    let words = '';
    let highest = 0;
    for (const row of rows) {
      const { kinds, causes } = row;
      const byKind =
        kinds === '' ? 1 : kinds.includes(letterOf(kind)) ? 4 : kinds.includes(letterOf(condition)) ? 2 : -9;
      const rank = byKind + (causes === '' ? 0 : causes.includes(capital) ? 1 : -9);
      if (rank > highest) [highest, words] = [rank, row.words];
    }
    const put = patch?.({ check, kind, cause }) ?? words;
    const numbers = CHECK_OUTCOMES[check].map((_, outcome) => numberOf(put[outcome]));
    const sum = numbers.reduce((total, number) => total + number, 0);
    const chances = numbers.map((number) => number / sum);
    signs.forEach((list, beside) => {
      for (const [, , from, to, word = ''] of present[beside] === 1 ? list : []) {
        const moved = numberOf(word) * (chances[Number(from)] ?? 0);
        chances[Number(from)] = (chances[Number(from)] ?? 0) - moved;
        chances[Number(to)] = (chances[Number(to)] ?? 0) + moved;
      }
    });
    return chances;
  };
}

/**
 * Probability of each word of the history, if one is told: in proportion to the odds of the word, for which the larger of
 * what cause and condition say counts, else the default.
 */
function toldRow(code: FamilyCode, patch: Patch | undefined): Row {
  const rows = rowsIn(code.history);
  return (kind, cause) => {
    const byCause = rows.find(({ causes }) => causes === letterOf(cause).toUpperCase()) ?? rows[0];
    const byKind = rows.find(({ kinds }) => kinds === letterOf(kind))?.words ?? '';
    const words = Array.from(byCause?.words ?? '', (word, index) =>
      (byKind[index] ?? '.') > word ? byKind[index] : word,
    );
    const put = patch?.({ check: 'history', kind, cause }) ?? words;
    const odds = Array.from(put, (word) => numberOf(word) / (1 - numberOf(word)));
    const sum = odds.reduce((total, value) => total + value, 0);
    return odds.map((value) => value / sum);
  };
}

/** The condition that a kind is reported as. */
export const conditionOf = (kind: KindId): ConditionId =>
  kind === 'bore-deformed/spindle-too' ? 'bore-deformed' : kind;

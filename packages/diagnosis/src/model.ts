import { CAUSES, CHECK_OUTCOMES, CONDITIONS, KINDS } from './ids.ts';
import { type FamilyData, type KindId, SCALE, SQUARE_TAPER } from './model-data.ts';
import type { BesideId, CauseId, CheckId, ConditionId, FrequencyWord, Side } from './types.ts';

/** The joint distribution over (cause, condition, bearing, noise) with the likelihood of every outcome in each state. */
export interface Model {
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
  /** Probability of each outcome, by state; for the history: of each word, if one is told. */
  likelihood: Readonly<Partial<Record<CheckId, Readonly<Record<string, Float64Array>>>>>;
}

const compiled: Partial<Record<Side | 'either', Model>> = {};

/** The square-taper model, compiled once a side. */
export function modelFor(side: Side | undefined): Model {
  const key = side ?? 'either';
  const found = compiled[key];
  if (found !== undefined) return found;
  const built = compileModel(SQUARE_TAPER, side);
  compiled[key] = built;
  return built;
}

/** Turns the data into arrays over states; only pairs of cause and condition that the data name exist. */
export function compileModel(data: FamilyData, side: Side | undefined): Model {
  const prior: number[] = [];
  const cause: number[] = [];
  const kind: number[] = [];
  const bearing: number[] = [];
  const noise: number[] = [];
  for (const { causeId, kindId, probability } of causePairs(data, side)) {
    for (const worn of [0, 1]) {
      for (const loud of [0, 1]) {
        cause.push(CAUSES.indexOf(causeId));
        kind.push(KINDS.indexOf(kindId));
        bearing.push(worn);
        noise.push(loud);
        prior.push(probability * share(data, 'bearing-worn', worn) * share(data, 'noise-elsewhere', loud));
      }
    }
  }
  const states = {
    cause: Uint8Array.from(cause),
    kind: Uint8Array.from(kind),
    condition: Uint8Array.from(kind, (index) => CONDITIONS.indexOf(conditionOf(KINDS[index] ?? 'sound'))),
    bearing: Uint8Array.from(bearing),
    noise: Uint8Array.from(noise),
    prior: Float64Array.from(prior),
  };
  const checks = (Object.keys(CHECK_OUTCOMES) as CheckId[]).filter(
    (check) => check === 'history' || data.rows[check] !== undefined,
  );
  const likelihood: Partial<Record<CheckId, Record<string, Float64Array>>> = {};
  for (const check of checks) {
    const table: Record<string, Float64Array> = {};
    for (const outcome of CHECK_OUTCOMES[check]) table[outcome] = new Float64Array(prior.length);
    for (let state = 0; state < prior.length; state++) {
      const causeId = CAUSES[cause[state] ?? 0] ?? 'none';
      const kindId = KINDS[kind[state] ?? 0] ?? 'sound';
      const row =
        check === 'history'
          ? historyRow(data, causeId, kindId)
          : withBesides(data, check, outcomeRow(data, check, causeId, kindId), {
              'bearing-worn': bearing[state] === 1,
              'noise-elsewhere': noise[state] === 1,
            });
      for (const outcome of CHECK_OUTCOMES[check]) {
        const column = table[outcome];
        if (column !== undefined) column[state] = row[outcome] ?? 0;
      }
    }
    likelihood[check] = table;
  }
  return { ...states, checks, likelihood };
}

/** Probability of each named pair of cause and condition; they sum to 1. */
export function causePairs(
  data: FamilyData,
  side: Side | undefined,
): { causeId: CauseId; kindId: KindId; probability: number }[] {
  const tilt = side === undefined ? { causes: {}, conditions: {} } : data.sides[side];
  const pairs: { causeId: CauseId; kindId: KindId; probability: number }[] = [];
  for (const causeId of CAUSES) {
    const entry = data.causes[causeId];
    const words = Object.entries(entry.conditions) as [KindId, FrequencyWord][];
    const sum = words.reduce((total, [, word]) => total + SCALE[word], 0);
    for (const [kindId, word] of words) {
      const factor = (tilt.causes[causeId] ?? 1) * (tilt.conditions[kindId] ?? 1);
      pairs.push({ causeId, kindId, probability: (entry.prior * factor * SCALE[word]) / sum });
    }
  }
  const total = pairs.reduce((sum, pair) => sum + pair.probability, 0);
  return pairs.map((pair) => ({ ...pair, probability: pair.probability / total }));
}

/**
 * Key of the row that counts, the most special first: kind with cause, kind, condition with cause, condition, default.
 * `any` asks for the row of all causes that have none of their own.
 */
export function rowKey(data: FamilyData, check: CheckId, causeId: CauseId | 'any', kindId: KindId): string {
  const keys = Object.keys(data.rows[check] ?? {}).map((key) => {
    const [conditions = '', causes] = key.split(' @ ');
    return { key, conditions: conditions.split(' '), causes: causes?.split(' ') };
  });
  for (const id of [kindId, conditionOf(kindId)]) {
    const own = keys.filter(({ conditions }) => conditions.includes(id));
    const found = own.find(({ causes }) => causes?.includes(causeId)) ?? own.find(({ causes }) => causes === undefined);
    if (found !== undefined) return found.key;
  }
  return 'default';
}

/**
 * Probability of each outcome of a check, without what holds beside the joint: the numbers of the words of its row
 * divided by their sum.
 */
export function outcomeRow(
  data: FamilyData,
  check: CheckId,
  causeId: CauseId | 'any',
  kindId: KindId,
): Record<string, number> {
  const words = data.rows[check]?.[rowKey(data, check, causeId, kindId)] ?? {};
  const numbers = CHECK_OUTCOMES[check].map((outcome) => SCALE[words[outcome] ?? 'never-say-never']);
  const sum = numbers.reduce((total, number) => total + number, 0);
  return Object.fromEntries(CHECK_OUTCOMES[check].map((outcome, index) => [outcome, (numbers[index] ?? 0) / sum]));
}

/** Where the joint itself shows nothing, what holds beside it is noticed in the stated share of the cases. */
export function withBesides(
  data: FamilyData,
  check: CheckId,
  row: Record<string, number>,
  present: Readonly<Record<BesideId, boolean>>,
): Record<string, number> {
  const mixed = { ...row };
  for (const [beside, { signs }] of Object.entries(data.besides) as [BesideId, FamilyData['besides'][BesideId]][]) {
    const sign = present[beside] ? signs.find((entry) => entry.check === check) : undefined;
    if (sign === undefined) continue;
    const moved = SCALE[sign.share] * (mixed[sign.from] ?? 0);
    mixed[sign.from] = (mixed[sign.from] ?? 0) - moved;
    mixed[sign.to] = (mixed[sign.to] ?? 0) + moved;
  }
  return mixed;
}

/**
 * Probability of each word of the history, if one is told: in proportion to the odds of the word, for which the larger of
 * what cause and condition say counts, else the default.
 */
export function historyRow(data: FamilyData, causeId: CauseId, kindId: KindId): Record<string, number> {
  const { history } = data;
  const odds = CHECK_OUTCOMES.history.map((outcome) => {
    const byCause = SCALE[history.causes[causeId]?.[outcome] ?? history.default[outcome]];
    const special = history.conditions[kindId]?.[outcome];
    const p = special === undefined ? byCause : Math.max(byCause, SCALE[special]);
    return p / (1 - p);
  });
  const sum = odds.reduce((total, value) => total + value, 0);
  return Object.fromEntries(CHECK_OUTCOMES.history.map((outcome, index) => [outcome, (odds[index] ?? 0) / sum]));
}

/** The condition that a kind is reported as. */
export const conditionOf = (kind: KindId): ConditionId =>
  kind === 'bore-deformed/spindle-too' ? 'bore-deformed' : kind;

const share = (data: FamilyData, beside: BesideId, present: number): number =>
  present === 1 ? data.besides[beside].prior : 1 - data.besides[beside].prior;

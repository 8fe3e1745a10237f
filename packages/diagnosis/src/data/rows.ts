import scaleFile from '../../data/scale.json' with { type: 'json' };
import { familyOf } from '../family-of.ts';
import { CAUSES, CHECK_OUTCOMES, KINDS } from '../ids.ts';
import type { CauseId, CheckId, ConditionId, FrequencyWord, JointId, KindId } from '../types.ts';
import { type ResolvedFamily, type ResolvedRow, resolveFamily } from './families.ts';

/** Numbers of the words. */
export const SCALE = scaleFile as Readonly<Record<FrequencyWord, number>>;

const resolved: Partial<Record<string, ResolvedFamily>> = {};

/** The family of a joint with all that it takes over. */
export function familyFor(joint: JointId): ResolvedFamily {
  const id = familyOf(joint);
  const family = resolved[id] ?? resolveFamily(id);
  resolved[id] = family;
  return family;
}

/** Kinds that some cause of the family leads to, in the order of the ids. */
export const kindsOf = (family: ResolvedFamily): KindId[] =>
  KINDS.filter((kind) => CAUSES.some((cause) => family.causes[cause]?.conditions[kind] !== undefined));

/** The condition that a kind is reported as. */
export const conditionOf = (kind: KindId): ConditionId =>
  kind === 'bore-deformed/spindle-too' ? 'bore-deformed' : kind;

/**
 * Key of the row that counts, the most special first: kind with cause, kind, condition with cause, condition, default.
 * `any` asks for the row of all causes that have none of their own.
 */
export function rowKey(family: ResolvedFamily, check: CheckId, causeId: CauseId | 'any', kindId: KindId): string {
  const keys = Object.keys(family.rows[check] ?? {}).map((key) => {
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

/** The row itself. */
export function rowFor(family: ResolvedFamily, check: CheckId, causeId: CauseId | 'any', kindId: KindId): ResolvedRow {
  const row = family.rows[check]?.[rowKey(family, check, causeId, kindId)];
  if (row === undefined) throw new Error(`${family.id} has no row for ${check}`);
  return row;
}

/** Probability of each outcome: the numbers of the words of its row divided by their sum. */
export function outcomeRow(check: CheckId, { words }: Pick<ResolvedRow, 'words'>): Record<string, number> {
  const numbers = CHECK_OUTCOMES[check].map((outcome) => SCALE[words[outcome] ?? 'never-say-never']);
  const sum = numbers.reduce((total, number) => total + number, 0);
  return Object.fromEntries(CHECK_OUTCOMES[check].map((outcome, index) => [outcome, (numbers[index] ?? 0) / sum]));
}

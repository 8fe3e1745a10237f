import { CAUSES, CHECK_OUTCOMES, KINDS } from '../ids.ts';
import { conditionOf, outcomeRow, rowKey } from '../model.ts';
import { type KindId, SCALE, SQUARE_TAPER } from '../model-data.ts';
import type { CauseId, CheckId, ConditionId, FrequencyWord, OutcomeId } from '../types.ts';
import { REASONS } from './reasons.ts';

/** How often one outcome is seen under one condition. */
export interface LikelihoodRecord {
  /** Stable id: check, outcome, condition and cause joined by slashes. */
  id: string;
  /** The check. */
  check: CheckId;
  /** The outcome. */
  outcome: OutcomeId;
  /** The condition; for the history also `any`. */
  condition: ConditionId | 'any';
  /** True for the kind of `bore-deformed` in which the spindle is worn too. */
  spindleToo: boolean;
  /** The cause, where it matters; `any` for all others. */
  cause: CauseId | 'any';
  /** How often, in a word of the scale. */
  word: FrequencyWord;
  /** How often, 0 to 1: the word's number over the sum of its row; for the history the word's number itself. */
  probability: number;
  /** Always `judgement`. */
  standing: 'judgement';
  /** Why. */
  reason: string;
  /** Ids in the register of sources that point the same way. */
  sources: readonly string[];
}

/**
 * Lists every likelihood of the model, complete: each outcome of each check under each condition.
 *
 * @remarks
 * Formula: P(outcome) = number of its word / sum over the outcomes of the row. An outcome that a row does not name has
 * the word `never-say-never`, so no likelihood is 0. A row of condition and cause goes before one of the condition alone,
 * that before the default of the check. History: each word is told independently with its number; of cause and condition
 * the larger counts; the number of words told says nothing.
 *
 * Validity: the square taper, without what holds beside the joint (see `listBesideSigns`).
 *
 * Accuracy: judgement throughout; sources give the direction, never the number.
 *
 * @returns The records in the order of checks, conditions, causes and outcomes.
 * @throws Nothing.
 * @example
 * ```ts
 * import { listLikelihoods } from '@spindlewright/diagnosis/data';
 * const record = listLikelihoods().find(({ id }) => id === 'bore-flats/rounded/bore-deformed/any');
 * record?.word; // => 'almost-always'
 * record?.sources[0]; // => 'service-manual-page-16'
 * ```
 * @see The raw files `square-taper.json`, `square-taper-reasons.json` and `likelihoods.csv` of this package.
 */
export function listLikelihoods(): LikelihoodRecord[] {
  const checks = (Object.keys(CHECK_OUTCOMES) as CheckId[]).filter((check) => Object.hasOwn(SQUARE_TAPER.rows, check));
  return [
    ...checks.flatMap((check) =>
      KINDS.flatMap((kind) => causesOf(check, kind).flatMap((cause) => rowRecords(check, kind, cause))),
    ),
    ...historyRecords(),
  ];
}

/** `any`, then each cause that has a row of its own and can lead to the condition. */
function causesOf(check: CheckId, kind: KindId): (CauseId | 'any')[] {
  const plain = rowKey(SQUARE_TAPER, check, 'any', kind);
  const own = CAUSES.filter(
    (cause) =>
      rowKey(SQUARE_TAPER, check, cause, kind) !== plain && SQUARE_TAPER.causes[cause].conditions[kind] !== undefined,
  );
  return ['any', ...own];
}

function rowRecords(check: CheckId, kind: KindId, cause: CauseId | 'any'): LikelihoodRecord[] {
  const key = rowKey(SQUARE_TAPER, check, cause, kind);
  const probabilities = outcomeRow(SQUARE_TAPER, check, cause, kind);
  return CHECK_OUTCOMES[check].map((outcome) => ({
    id: `${check}/${outcome}/${kind}/${cause}`,
    check,
    outcome,
    condition: conditionOf(kind),
    spindleToo: conditionOf(kind) !== kind,
    cause,
    word: SQUARE_TAPER.rows[check]?.[key]?.[outcome] ?? 'never-say-never',
    probability: probabilities[outcome] ?? 0,
    standing: 'judgement',
    ...reasonOf(`${check}: ${key}`),
  }));
}

function historyRecords(): LikelihoodRecord[] {
  const { history } = SQUARE_TAPER;
  const record = (
    outcome: OutcomeId,
    kind: KindId | 'any',
    cause: CauseId | 'any',
    word: FrequencyWord,
    reasonId: string,
  ): LikelihoodRecord => ({
    id: `history/${outcome}/${kind}/${cause}`,
    check: 'history',
    outcome,
    condition: kind === 'any' ? kind : conditionOf(kind),
    spindleToo: kind !== 'any' && conditionOf(kind) !== kind,
    cause,
    word,
    probability: SCALE[word],
    standing: 'judgement',
    ...reasonOf(reasonId),
  });
  return [
    ...CAUSES.flatMap((cause) =>
      CHECK_OUTCOMES.history.map((outcome) => {
        const own = history.causes[cause]?.[outcome];
        const reasonId = own === undefined ? 'history/default' : `history/${cause}`;
        return record(outcome, 'any', cause, own ?? history.default[outcome], reasonId);
      }),
    ),
    ...KINDS.flatMap((kind) =>
      CHECK_OUTCOMES.history.flatMap((outcome) => {
        const word = history.conditions[kind]?.[outcome];
        return word === undefined ? [] : [record(outcome, kind, 'any', word, `history/${kind}`)];
      }),
    ),
  ];
}

const reasonOf = (id: string): { reason: string; sources: readonly string[] } => ({
  reason: REASONS[id]?.reason ?? '',
  sources: REASONS[id]?.sources ?? [],
});

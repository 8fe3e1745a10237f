import { checkJoint } from '../check-case.ts';
import { CAUSES, CHECK_OUTCOMES } from '../ids.ts';
import type { CauseId, CheckId, ConditionId, FamilyId, FrequencyWord, JointId, KindId, OutcomeId } from '../types.ts';
import type { Reasoned, ResolvedFamily } from './families.ts';
import { conditionOf, familyFor, kindsOf, outcomeRow, rowFor, rowKey, SCALE } from './rows.ts';

/** How often one outcome is seen under one condition. */
export interface LikelihoodRecord {
  /** Stable id within the family of the joint: check, outcome, condition and cause joined by slashes. */
  id: string;
  /** The family that the row is written down for: that of the joint, or one that it takes the row over from. */
  family: FamilyId;
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
 * Lists every likelihood of one joint, complete: each outcome of each check under each condition.
 *
 * @remarks
 * Formula: P(outcome) = number of its word / sum over the outcomes of the row. An outcome that a row does not name has
 * the word `never-say-never`, so no likelihood is 0. A row of condition and cause goes before one of the condition alone,
 * that before the default of the check. History: each word is told independently with its number; of cause and condition
 * the larger counts; the number of words told says nothing.
 *
 * Validity: joints that can be diagnosed, without what holds beside the joint (see `listBesideSigns`). What a family takes
 * over from another one says so in `family`.
 *
 * Accuracy: judgement throughout; sources give the direction, never the number.
 *
 * @param joint - Id of a joint that can be diagnosed; the square taper when left out.
 * @returns The records in the order of checks, conditions, causes and outcomes.
 * @throws {@link DomainError} for a joint that is unknown or not modelled.
 * @example
 * ```ts
 * import { listLikelihoods } from '@spindlewright/diagnosis/data';
 * const record = listLikelihoods().find(({ id }) => id === 'bore-flats/rounded/bore-deformed/any');
 * record?.word; // => 'almost-always'
 * record?.sources[0]; // => 'service-manual-page-16'
 * ```
 * @see The raw files `families/*.json` and `likelihoods/*.csv` of this package.
 */
export function listLikelihoods(joint: JointId = 'square-taper'): LikelihoodRecord[] {
  checkJoint('listLikelihoods', joint);
  const family = familyFor(joint);
  const checks = (Object.keys(CHECK_OUTCOMES) as CheckId[]).filter((check) => Object.hasOwn(family.rows, check));
  return [
    ...checks.flatMap((check) =>
      kindsOf(family).flatMap((kind) =>
        causesOf(family, check, kind).flatMap((cause) => rowRecords(family, check, kind, cause)),
      ),
    ),
    ...historyRecords(family),
  ];
}

/** `any`, then each cause that has a row of its own and can lead to the condition. */
function causesOf(family: ResolvedFamily, check: CheckId, kind: KindId): (CauseId | 'any')[] {
  const plain = rowKey(family, check, 'any', kind);
  const own = CAUSES.filter(
    (cause) => rowKey(family, check, cause, kind) !== plain && family.causes[cause]?.conditions[kind] !== undefined,
  );
  return ['any', ...own];
}

function rowRecords(family: ResolvedFamily, check: CheckId, kind: KindId, cause: CauseId | 'any'): LikelihoodRecord[] {
  const row = rowFor(family, check, cause, kind);
  const probabilities = outcomeRow(check, row);
  return CHECK_OUTCOMES[check].map((outcome) => ({
    id: `${check}/${outcome}/${kind}/${cause}`,
    family: row.from,
    check,
    outcome,
    condition: conditionOf(kind),
    spindleToo: conditionOf(kind) !== kind,
    cause,
    word: row.words[outcome] ?? 'never-say-never',
    probability: probabilities[outcome] ?? 0,
    standing: 'judgement',
    ...reasonOf(row),
  }));
}

function historyRecords(family: ResolvedFamily): LikelihoodRecord[] {
  const { history } = family;
  const record = (
    outcome: OutcomeId,
    kind: KindId | 'any',
    cause: CauseId | 'any',
    word: FrequencyWord,
    why: Reasoned,
  ): LikelihoodRecord => ({
    id: `history/${outcome}/${kind}/${cause}`,
    // Told in the same words whatever the joint: every family takes the history over from the base.
    family: 'square-taper',
    check: 'history',
    outcome,
    condition: kind === 'any' ? kind : conditionOf(kind),
    spindleToo: kind !== 'any' && conditionOf(kind) !== kind,
    cause,
    word,
    probability: SCALE[word],
    standing: 'judgement',
    ...reasonOf(why),
  });
  return [
    ...CAUSES.filter((cause) => family.causes[cause] !== undefined).flatMap((cause) =>
      CHECK_OUTCOMES.history.map((outcome) => {
        const own = history.causes[cause];
        const word = own?.words[outcome];
        const why = own === undefined || word === undefined ? history.default : own;
        return record(outcome, 'any', cause, word ?? history.default.words[outcome], why);
      }),
    ),
    ...kindsOf(family).flatMap((kind) => {
      const special = history.conditions[kind];
      return CHECK_OUTCOMES.history.flatMap((outcome) => {
        const word = special?.words[outcome];
        return special === undefined || word === undefined ? [] : [record(outcome, kind, 'any', word, special)];
      });
    }),
  ];
}

const reasonOf = ({ reason, sources = [] }: Reasoned): { reason: string; sources: readonly string[] } => ({
  reason,
  sources,
});

import { CHECK_OUTCOMES, FAMILIES } from '../ids.ts';
import type { CheckId, ConditionId, FamilyId, JointId, KindId } from '../types.ts';
import { FAMILY_FILES, resolveFamily } from './families.ts';
import { conditionOf, kindsOf } from './rows.ts';

/** A family of joints by what differs from the one that it is built on. */
export interface FamilyRecord {
  /** Id of the family. */
  id: FamilyId;
  /** What it is, in English. */
  title: string;
  /** The family that it takes over what it does not say itself; none for the square taper. */
  base?: FamilyId;
  /** Ids of its joints. */
  joints: readonly JointId[];
  /** What the answers mean here that they do not mean elsewhere, in English. */
  summary: string;
  /** Conditions that can be at it. */
  conditions: readonly ConditionId[];
  /** Checks that apply to it. */
  checks: readonly CheckId[];
  /** Checks with rows of its own. */
  changedChecks: readonly CheckId[];
}

/**
 * Lists the families of joints: what applies to each and what each says otherwise than the one it is built on.
 *
 * @remarks
 * Formula: none.
 *
 * Validity: the families of this edition of the data.
 *
 * Accuracy: judgement, as every likelihood.
 *
 * @returns One record a family, the square taper first.
 * @throws Nothing.
 * @example
 * ```ts
 * import { listFamilies } from '@spindlewright/diagnosis/data';
 * const cottered = listFamilies().find(({ id }) => id === 'cottered');
 * cottered?.base; // => 'square-taper'
 * cottered?.checks.includes('end-gap'); // => false
 * ```
 * @see The raw files `families/*.json` of this package.
 */
export function listFamilies(): FamilyRecord[] {
  return FAMILIES.map((id) => {
    const { title, base, joints, summary, rows } = FAMILY_FILES[id];
    const resolved = resolveFamily(id);
    const kinds: KindId[] = kindsOf(resolved);
    const checks = (Object.keys(CHECK_OUTCOMES) as CheckId[]).filter(
      (check) => check === 'history' || resolved.rows[check] !== undefined,
    );
    return {
      id,
      title,
      ...(base === undefined ? {} : { base }),
      joints,
      summary,
      conditions: [...new Set(kinds.map(conditionOf))],
      checks,
      changedChecks: checks.filter((check) => rows[check] !== undefined),
    };
  });
}

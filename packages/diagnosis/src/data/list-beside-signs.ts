import { checkJoint } from '../check-case.ts';
import { BESIDES } from '../ids.ts';
import type { BesideId, CheckId, FrequencyWord, JointId } from '../types.ts';
import { familyFor, SCALE } from './rows.ts';

/** How something beside the joint shows at a check. */
export interface BesideSignRecord {
  /** Stable id: what it is and the check, joined by a slash. */
  id: string;
  /** What holds beside the joint. */
  beside: BesideId;
  /** How often it holds before anything is looked at, 0 to 1. */
  priorProbability: number;
  /** The check. */
  check: CheckId;
  /** The outcome that the joint alone would have shown. */
  from: string;
  /** What is noticed instead. */
  to: string;
  /** In what share of those cases, in a word of the scale. */
  word: FrequencyWord;
  /** In what share of those cases, 0 to 1. */
  probability: number;
  /** Always `judgement`. */
  standing: 'judgement';
  /** Why. */
  reason: string;
  /** Ids in the register of sources that point the same way. */
  sources: readonly string[];
}

/**
 * Lists how a worn bearing and noise from elsewhere show at the checks.
 *
 * @remarks
 * Formula: P(to) = P0(to) + share P0(from), P(from) = (1 - share) P0(from), where P0 is the row of the joint's condition:
 * they are noticed where the joint itself shows nothing.
 *
 * Validity: either may hold beside any condition; both are independent of it and of each other.
 *
 * Accuracy: judgement.
 *
 * @param joint - Id of a joint that can be diagnosed; the square taper when left out.
 * @returns One record a sign.
 * @throws {@link DomainError} for a joint that is unknown or not modelled.
 * @example
 * ```ts
 * import { listBesideSigns } from '@spindlewright/diagnosis/data';
 * listBesideSigns()[0]?.id; // => 'bearing-worn/bearing-turning'
 * ```
 * @see The raw files `families/*.json` of this package.
 */
export function listBesideSigns(joint: JointId = 'square-taper'): BesideSignRecord[] {
  checkJoint('listBesideSigns', joint);
  const { besides, rows } = familyFor(joint);
  return BESIDES.flatMap((beside) => {
    const { prior, signs, reason, sources = [] } = besides[beside];
    return signs
      .filter(({ check }) => Object.hasOwn(rows, check))
      .map(({ check, from, to, share }) => ({
        id: `${beside}/${check}`,
        beside,
        priorProbability: prior,
        check,
        from,
        to,
        word: share,
        probability: SCALE[share],
        standing: 'judgement' as const,
        reason,
        sources,
      }));
  });
}

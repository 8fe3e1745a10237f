import { diagnose } from './diagnose.ts';
import { listChecks } from './list-checks.ts';
import type { ActionId, CheckId, ConditionId, DiagnoseInput, Observations, OutcomeId } from './types.ts';

/** What one answer to a check would make of the diagnosis. */
export interface AnswerOutlook {
  /** The answer. */
  outcome: OutcomeId;
  /** What would then be most probable. */
  condition: ConditionId;
  /** Its probability, 0 to 1. */
  probability: number;
  /** What would then be the thing to do. */
  action: ActionId;
  /** True when that is another action than now. */
  changesAction: boolean;
  /** Whether the bicycle would then have to stand. */
  doNotRide: boolean;
}

/** A check with what each of its answers would do. */
export interface CheckOutlook {
  /** The check. */
  check: CheckId;
  /** Its answers, in the order of the check. */
  answers: readonly AnswerOutlook[];
}

/**
 * Shows for each check worth making what every answer to it would do: what would change the mind, and what would not.
 *
 * @remarks
 * Formula: `diagnose` once for each answer, with everything else as it was given.
 *
 * Validity: that of `diagnose`. Checks that would not change the action are not among those worth making; when none is
 * left the list is empty.
 *
 * Accuracy: exact for the model; the weights are judgement.
 *
 * @param input - What `diagnose` takes.
 * @returns The checks worth making, best first, each with its answers; probabilities from 0 to 1.
 * @throws {@link DomainError} as `diagnose`.
 * @example
 * ```ts
 * import { outlook } from '@spindlewright/diagnosis';
 * const checks = outlook({ joint: 'square-taper-jis', observations: { 'play-at-arm': 'arm-moves-on-spindle' } });
 * checks.some(({ answers }) => answers.some((answer) => answer.changesAction)); // => true
 * ```
 * @see `diagnose`.
 */
export function outlook(input: DiagnoseInput): CheckOutlook[] {
  const now = diagnose(input);
  const checks = listChecks(input.joint);
  return now.nextChecks.flatMap(({ check }): CheckOutlook[] => {
    const described = checks.find(({ id }) => id === check);
    if (described === undefined) return [];
    return [{ check, answers: described.outcomes.map(({ id }) => answerOutlook(input, check, id, now.action)) }];
  });
}

function answerOutlook(input: DiagnoseInput, check: CheckId, outcome: OutcomeId, before: ActionId): AnswerOutlook {
  const observations = { ...input.observations, [check]: outcome } as Observations;
  const { conditions, action, doNotRide } = diagnose({ ...input, observations });
  const [first] = conditions;
  return {
    outcome,
    condition: first?.id ?? 'sound',
    probability: first?.probability ?? 0,
    action,
    changesAction: action !== before,
    doNotRide,
  };
}

import type { ActionId } from '@spindlewright/diagnosis';

/** Whether the plan is to be carried out: now, after something else, or only to show what was reckoned with. */
export type PlanMode = 'now' | 're-tighten' | 'later' | 'reckoned';

/** Actions whose plan is that of the arm as it sits. */
const AS_IT_SITS: readonly (ActionId | undefined)[] = ['tighten-and-recheck'];

/** Without a diagnosis, or with one that finds nothing to do at the joint, a fitting arm is tightened as it stands. */
const LETS_RIDE: readonly (ActionId | undefined)[] = [undefined, 'ride', 'look-elsewhere'];

/** Decides how the plan is to be read. @internal */
export function planMode(input: {
  action: ActionId | undefined;
  seatState: string | undefined;
  candidateFits: boolean;
  problems: boolean;
}): PlanMode {
  const { action, seatState, candidateFits, problems } = input;
  if (seatState === 'does-not-fit' || seatState === 'cannot-tell') return 'reckoned';
  if (seatState === 'fits') return LETS_RIDE.includes(action) && !problems ? 'now' : 'later';
  if (AS_IT_SITS.includes(action)) return problems ? 'later' : 're-tighten';
  if (action === undefined) return candidateFits && !problems ? 'now' : 'reckoned';
  return 'later';
}

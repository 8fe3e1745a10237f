import { ACTIONS } from './ids.ts';
import { LOSSES, SQUARE_TAPER } from './model-data.ts';
import type { ActionId, CheckId } from './types.ts';

/** One answer, observed or read. */
export interface Answer {
  check: CheckId;
  outcome: string;
}

/**
 * Actions that the answers rule out: riding, by a sign of danger; tightening, by a bolt that is tight; looking elsewhere,
 * where no noise was heard; the bearing, where nothing was felt of it.
 */
export function exclusionsOf(answers: readonly Answer[]): Set<ActionId> {
  const has = (wanted: Readonly<Partial<Record<CheckId, readonly string[]>>>): boolean =>
    answers.some(({ check, outcome }) => wanted[check]?.includes(outcome));
  return new Set(
    ACTIONS.filter((action) => {
      const { ruledOutBy, onlyAfter } = LOSSES.actions[action];
      return (
        (action === 'ride' && has(SQUARE_TAPER.stopSigns)) ||
        (ruledOutBy !== undefined && has(ruledOutBy)) ||
        (onlyAfter !== undefined && !has(onlyAfter))
      );
    }),
  );
}

import { ACTIONS } from './ids.ts';
import { LOSSES, SQUARE_TAPER } from './model-data.ts';
import type { ActionId, CheckId } from './types.ts';

/** Actions that one outcome alone rules out: riding, by a sign of danger; tightening, by a bolt that is tight. */
export const exclusionsOf = (check: CheckId, outcome: string): ActionId[] =>
  ACTIONS.filter(
    (action) =>
      (action === 'ride' && SQUARE_TAPER.stopSigns[check]?.includes(outcome)) ||
      LOSSES.actions[action].ruledOutBy?.[check]?.includes(outcome),
  );

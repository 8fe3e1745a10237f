import type { Model } from './model.ts';
import type { ActionId } from './types.ts';

/** One answer, observed or read, as `check/outcome`. */
export type Answer = string;

/**
 * Actions that the answers rule out: riding, by a sign of danger; tightening, by a bolt that is tight; looking elsewhere,
 * where no noise was heard; the bearing, where nothing was felt of it.
 */
export function exclusionsOf(model: Model, answers: readonly Answer[]): Set<ActionId> {
  const has = (wanted: ReadonlySet<string>): boolean => answers.some((answer) => wanted.has(answer));
  return new Set(
    model.actions.filter((action) => {
      const { bars, wants } = model.rules[action];
      return (action === 'ride' && has(model.stop)) || has(bars) || (wants.size > 0 && !has(wants));
    }),
  );
}

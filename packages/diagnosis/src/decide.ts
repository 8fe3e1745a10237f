import { ACTIONS, KINDS } from './ids.ts';
import { BESIDE_LOSSES, DO_NOT_RIDE_ABOVE, IN_USE, LESS_URGENT } from './model.generated.ts';
import type { Model } from './model.ts';
import { letterOf } from './model-data.ts';
import type { Marginals } from './posterior.ts';
import type { ActionId, PricedAction } from './types.ts';

/**
 * Probability of a condition that can let the arm or the foot go: all but a sound joint and those that the data call less
 * urgent, which are heard long before they are felt. Those still cost enough to keep riding from being the action.
 */
export const unsafeProbability = (at: Marginals): number =>
  at.kind.reduce((sum, p, index) => (index > 0 && !LESS_URGENT.includes(letterOf(index)) ? sum + p : sum), 0);

/** Actions after which the bicycle is, or stays, in use. */
export const leavesInUse = (action: ActionId): boolean => IN_USE.includes(letterOf(ACTIONS.indexOf(action)));

/** Expected loss of an action in workshop minutes. */
export function expectedLoss(model: Model, action: ActionId, at: Marginals): number {
  const place = ACTIONS.indexOf(action);
  let loss = 0;
  for (const [beside, p] of [at.bearing, at.noise].entries()) {
    const [holds = 0, needless = 0] = BESIDE_LOSSES[beside]?.[place] ?? [];
    loss += p * holds + (1 - p) * needless;
  }
  const byKind = model.rules[action].losses;
  for (let index = 0; index < KINDS.length; index++) loss += (at.kind[index] ?? 0) * (byKind[index] ?? 0);
  return loss;
}

/** Riding is never weighed against money: more than a tiny doubt rules it out, whatever it would save. */
const isAdmissible = (action: ActionId, at: Marginals, excluded: ReadonlySet<ActionId>): boolean =>
  !excluded.has(action) && (action !== 'ride' || unsafeProbability(at) <= DO_NOT_RIDE_ABOVE);

/** Every action of the family with its expected loss, cheapest first; equal ones in the order of the data. */
export const priceActions = (model: Model, at: Marginals, excluded: ReadonlySet<ActionId>): PricedAction[] =>
  model.actions
    .map((id) => ({
      id,
      expectedLossMinutes: expectedLoss(model, id, at),
      admissible: isAdmissible(id, at, excluded),
    }))
    .sort((a, b) => a.expectedLossMinutes - b.expectedLossMinutes);

/**
 * Least expected loss of a decision that ends the search. Taking the arm off to look is none: it is a way of making more
 * checks, and were it counted, it would make every cheaper check look needless.
 */
export function decisionLoss(model: Model, at: Marginals, excluded: ReadonlySet<ActionId>): number {
  let least = Number.POSITIVE_INFINITY;
  for (const action of model.actions) {
    if (action === 'remove-and-inspect' || !isAdmissible(action, at, excluded)) continue;
    least = Math.min(least, expectedLoss(model, action, at));
  }
  return least;
}

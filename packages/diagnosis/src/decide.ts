import { ACTIONS, KINDS } from './ids.ts';
import { jointLoss, type KindId, LOSSES } from './model-data.ts';
import type { Marginals } from './posterior.ts';
import type { ActionId, BesideId, PricedAction } from './types.ts';

/**
 * Probability of a condition that can let the arm or the foot go: all but a sound joint and those that the data call less
 * urgent, which are heard long before they are felt. Those still cost enough to keep riding from being the action.
 */
export const unsafeProbability = (at: Marginals): number =>
  at.kind.reduce((sum, p, index) => (isUnsafe(KINDS[index] ?? 'sound') ? sum + p : sum), 0);

const isUnsafe = (kind: KindId): boolean => kind !== 'sound' && !LOSSES.lessUrgent.includes(kind);

/** Actions after which the bicycle is, or stays, in use. */
export const leavesInUse = (action: ActionId): boolean =>
  action === 'ride' || action === 'service-bearing' || action === 'look-elsewhere';

interface LossRow {
  byKind: Float64Array;
  /** Added when it holds beside the joint, and when it does not. */
  bearing: readonly [holds: number, needless: number];
  noise: readonly [holds: number, needless: number];
}

let compiled: Readonly<Record<ActionId, LossRow>> | undefined;

/** The loss table as arrays: it is read a thousand times for one list of next checks. */
function lossRows(): Readonly<Record<ActionId, LossRow>> {
  compiled ??= Object.fromEntries(
    ACTIONS.map((action): [ActionId, LossRow] => [
      action,
      {
        byKind: Float64Array.from(KINDS, (kind) => jointLoss(action, kind)),
        bearing: besideLoss('bearing-worn', action),
        noise: besideLoss('noise-elsewhere', action),
      },
    ]),
  ) as Record<ActionId, LossRow>;
  return compiled;
}

function besideLoss(beside: BesideId, action: ActionId): [number, number] {
  const { left, cured, needless } = LOSSES.besides[beside];
  return [cured.includes(action) ? 0 : left, needless[action] ?? 0];
}

/** Expected loss of an action in workshop minutes. */
function expectedLoss(action: ActionId, at: Marginals): number {
  const { byKind, bearing, noise } = lossRows()[action];
  let loss = at.bearing * bearing[0] + (1 - at.bearing) * bearing[1];
  loss += at.noise * noise[0] + (1 - at.noise) * noise[1];
  for (let index = 0; index < byKind.length; index++) loss += (at.kind[index] ?? 0) * (byKind[index] ?? 0);
  return loss;
}

/** Riding is never weighed against money: more than a tiny doubt rules it out, whatever it would save. */
const isAdmissible = (action: ActionId, at: Marginals, excluded: ReadonlySet<ActionId>): boolean =>
  !excluded.has(action) && (action !== 'ride' || unsafeProbability(at) <= LOSSES.doNotRideAbove);

/** Every action with its expected loss, cheapest first; equal ones in the order of the data. */
export const priceActions = (at: Marginals, excluded: ReadonlySet<ActionId>): PricedAction[] =>
  ACTIONS.map((id) => ({
    id,
    expectedLossMinutes: expectedLoss(id, at),
    admissible: isAdmissible(id, at, excluded),
  })).sort((a, b) => a.expectedLossMinutes - b.expectedLossMinutes);

/**
 * Least expected loss of a decision that ends the search. Taking the arm off to look is none: it is a way of making more
 * checks, and were it counted, it would make every cheaper check look needless.
 */
export function decisionLoss(at: Marginals, excluded: ReadonlySet<ActionId>): number {
  let least = Number.POSITIVE_INFINITY;
  for (const action of ACTIONS) {
    if (action === 'remove-and-inspect' || !isAdmissible(action, at, excluded)) continue;
    least = Math.min(least, expectedLoss(action, at));
  }
  return least;
}

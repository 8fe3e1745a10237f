import { decisionLoss, expectedLoss } from './decide.ts';
import type { Answer } from './exclusions.ts';
import { ACTIONS, CHECK_OUTCOMES } from './ids.ts';
import { factorOf } from './items.ts';
import { ARM_OFF, POINTLESS, REFIT_MINUTES } from './model.generated.ts';
import type { Model } from './model.ts';
import { answersIn, CHECKS, letterOf } from './model-data.ts';
import { type Marginals, marginalsOf } from './posterior.ts';
import type { Access, ActionId, CheckId, NextCheck } from './types.ts';

// A gain below this many minutes is rounding, not a reason to look.
const NO_GAIN_MINUTES = 1e-3;

/**
 * Checks that could change what to do, best gain per minute first. While the answer is only to take the arm off and look,
 * every such check is named; once another action is best, a check has to earn the minutes and the wear it costs. A check
 * that would destroy evidence gives way to the one that has to come first and hands its gain on to it. The history is
 * reckoned as one word told.
 *
 * Where nothing is decided and no check alone could decide, those are named that bring a decision nearer: their gain is
 * what they are expected to take off the loss of riding when they turn out well.
 */
export function nextChecksOf(
  model: Model,
  weights: Float64Array,
  asked: ReadonlySet<CheckId>,
  answers: readonly Answer[],
  excludedWith: (more: readonly Answer[]) => ReadonlySet<ActionId>,
  action: ActionId,
): NextCheck[] {
  const made = model.effort.filter(({ id }) => asked.has(id));
  const isDone = (wanted: Access): boolean => made.some(({ access }) => access === wanted);
  const lost = made.flatMap(({ destroys }) => destroys);
  const pointless = (id: CheckId): boolean =>
    answersIn(POINTLESS[letterOf(CHECKS.indexOf(id))] ?? '').some((answer) => answers.includes(answer));
  const open = model.effort.filter(
    ({ id }) => model.checks.includes(id) && !asked.has(id) && !lost.includes(id) && !pointless(id),
  );
  const comesOff = ARM_OFF.includes(letterOf(ACTIONS.indexOf(action)));
  const undecided = action === 'remove-and-inspect';
  /** Checks by what they gain, given a value of what is known after an answer. */
  const by = (isFree: boolean, worth: (at: Marginals, answer: Answer) => number): NextCheck[] => {
    const found: NextCheck[] = [];
    for (const { id, access, minutes: own, opening, wear, destroys } of open) {
      // Getting at the place takes minutes and wears the joint, unless it is open already or the action opens it anyway.
      const armOff = isDone('arm-off');
      const isOpen =
        (access === 'arm-off' && (armOff || comesOff)) || (access === 'bolt-out' && (armOff || isDone('bolt-out')));
      const refit = armOff && (access === 'assembled' || access === 'tightening') ? REFIT_MINUTES : 0;
      const minutes = own + (isOpen ? 0 : opening + refit);
      const gain = meanAfter(model, weights, id, worth);
      if (gain <= (isFree ? NO_GAIN_MINUTES : minutes + (isOpen ? 0 : wear))) continue;
      const first = open.filter((other) => other.id !== id && destroys.includes(other.id));
      if (first.length === 0) found.push({ check: id, gain, minutes, gainPerMinute: gain / minutes });
      for (const other of first) {
        const gainPerMinute = gain / (minutes + other.minutes);
        found.push({ check: other.id, gain, minutes: other.minutes, gainPerMinute });
      }
    }
    found.sort((a, b) => b.gainPerMinute - a.gainPerMinute);
    return found.filter(({ check }, index) => found.findIndex((other) => other.check === check) === index);
  };
  const at = marginalsOf(model, weights);
  const now = decisionLoss(model, at, excludedWith([]));
  const deciding = by(undecided, (after, answer) => now - decisionLoss(model, after, excludedWith([answer])));
  if (!undecided || deciding.length > 0) return deciding;
  const riding = expectedLoss(model, 'ride', at);
  return by(false, (after) => Math.max(0, riding - expectedLoss(model, 'ride', after)));
}

/** Mean of a value over the outcomes of a check. */
function meanAfter(
  model: Model,
  weights: Float64Array,
  check: CheckId,
  worth: (at: Marginals, answer: Answer) => number,
): number {
  let total = 0;
  let value = 0;
  for (const outcome of CHECK_OUTCOMES[check]) {
    const after = marginalsOf(model, weights, factorOf(model, check, [outcome]));
    total += after.sum;
    value += after.sum * worth(after, `${check}/${outcome}`);
  }
  return value / total;
}

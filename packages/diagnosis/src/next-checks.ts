import type { Case } from './check-case.ts';
import { decisionLoss } from './decide.ts';
import type { Answer } from './exclusions.ts';
import { CHECK_OUTCOMES } from './ids.ts';
import { factorOf } from './items.ts';
import type { Model } from './model.ts';
import { type Access, CHECK_DATA, LOSSES } from './model-data.ts';
import { marginalsOf } from './posterior.ts';
import type { ActionId, CheckId, NextCheck } from './types.ts';

interface Candidate extends NextCheck {
  /** Gain per minute, by which the list is sorted. */
  rate: number;
}

// A gain below this many minutes is rounding, not a reason to look.
const NO_GAIN_MINUTES = 1e-3;

/**
 * Checks that could change what to do, best gain per minute first. While the answer is only to take the arm off and look,
 * every such check is named; once another action is best, a check has to earn the minutes and the wear it costs. A check
 * that would destroy evidence gives way to the one that has to come first and hands its gain on to it. The history is
 * reckoned as one word told.
 */
export function nextChecksOf(
  model: Model,
  weights: Float64Array,
  { asked, answers }: Case,
  excludedWith: (more: readonly Answer[]) => ReadonlySet<ActionId>,
  action: ActionId,
): NextCheck[] {
  const now = decisionLoss(marginalsOf(model, weights), excludedWith([]));
  const done = new Set(CHECK_DATA.checks.filter(({ id }) => asked.has(id)).map(({ access }) => access));
  const lost = new Set([...done].flatMap((access) => CHECK_DATA.access[access].destroys));
  const pointless = ({ pointlessAfter = {} }: (typeof CHECK_DATA.checks)[number]): boolean =>
    (Object.entries(pointlessAfter) as [CheckId, readonly string[]][]).some(([other, outcomes]) =>
      answers[other]?.some((outcome) => outcomes.includes(outcome)),
    );
  const open = CHECK_DATA.checks.filter(
    (check) => model.checks.includes(check.id) && !asked.has(check.id) && !lost.has(check.id) && !pointless(check),
  );
  const found = new Map<CheckId, Candidate>();
  const offer = (candidate: Candidate): void => {
    const before = found.get(candidate.check);
    if (before === undefined || before.rate < candidate.rate) found.set(candidate.check, candidate);
  };
  for (const { id, access, minutes: own } of open) {
    const effort = effortOf(access, done, LOSSES.actions[action].takesArmOff === true);
    const minutes = own + effort.minutes;
    const gain = now - lossAfter(model, weights, id, excludedWith);
    if (gain <= (action === 'remove-and-inspect' ? NO_GAIN_MINUTES : minutes + effort.wearMinutes)) continue;
    const first = open.filter((other) => CHECK_DATA.access[access].destroys.includes(other.id));
    if (first.length === 0) offer({ check: id, gain, minutes, rate: gain / minutes });
    for (const other of first) {
      offer({ check: other.id, gain, minutes: other.minutes, rate: gain / (minutes + other.minutes) });
    }
  }
  return [...found.values()]
    .sort((a, b) => b.rate - a.rate)
    .map(({ check, gain, minutes }) => ({ check, gain, minutes }));
}

/** Minutes and wear for getting at the place, over the check itself; nothing if the action takes the arm off anyway. */
function effortOf(
  access: Access,
  done: ReadonlySet<Access>,
  comesOff: boolean,
): { minutes: number; wearMinutes: number } {
  const armOff = done.has('arm-off');
  if (access === 'arm-off' && (armOff || comesOff)) return { minutes: 0, wearMinutes: 0 };
  if (access === 'bolt-out' && (armOff || done.has('bolt-out'))) return { minutes: 0, wearMinutes: 0 };
  const { minutes, wearMinutes } = CHECK_DATA.access[access];
  const refit = armOff && (access === 'assembled' || access === 'tightening') ? CHECK_DATA.refitMinutes : 0;
  return { minutes: minutes + refit, wearMinutes };
}

/** Expected loss of the best action once the check has been made, over its outcomes. */
function lossAfter(
  model: Model,
  weights: Float64Array,
  check: CheckId,
  excludedWith: (more: readonly Answer[]) => ReadonlySet<ActionId>,
): number {
  let total = 0;
  let loss = 0;
  for (const outcome of CHECK_OUTCOMES[check]) {
    const after = marginalsOf(model, weights, factorOf(model, check, [outcome]));
    total += after.sum;
    loss += after.sum * decisionLoss(after, excludedWith([{ check, outcome }]));
  }
  return loss / total;
}

import { createFinding, type Finding } from '@spindlewright/quantity';
import { cautionsOf } from './cautions.ts';
import { type Case, checkCase } from './check-case.ts';
import { contradictionsOf } from './contradictions.ts';
import { leavesInUse, priceActions, unsafeProbability } from './decide.ts';
import { evidenceOf } from './evidence.ts';
import { type Answer, exclusionsOf } from './exclusions.ts';
import { BESIDES, CAUSES, CONDITIONS } from './ids.ts';
import { type Item, itemsOf } from './items.ts';
import { messages } from './messages/findings.ts';
import { type Model, modelFor } from './model.ts';
import { LOSSES, SQUARE_TAPER } from './model-data.ts';
import { nextChecksOf } from './next-checks.ts';
import { causesOf, conditionsOf, marginalsOf, weightsOf } from './posterior.ts';

import type { ActionId, CheckId, DiagnoseInput, Diagnosis, Probable } from './types.ts';

/**
 * Says what is probably wrong with a crank joint, why, what to check next, what to do and whether it may be ridden.
 *
 * @remarks
 * Formula: exact inference by enumeration, P(state | answers) = P(state) prod P(answer | state) / sum, over every state =
 * (cause, condition, bearing worn or not, noise elsewhere or not). Action = the admissible one of least expected loss;
 * gain of a check = that loss now minus its expectation over the outcomes of the check.
 *
 * Validity: square-taper joints. A joint that is known but not modelled is refused by name. Answers to checks of other
 * joints are left out with the finding `check-not-applicable`. The answers are taken as independent once the state is
 * known.
 *
 * Accuracy: the arithmetic is exact to rounding. The likelihoods are judgement: simulated cases prove the code, not the
 * judgement; hand-written vignettes of common practice are the only check on that.
 *
 * @param input - `joint`, `observations` by check, optional `side` and `measurements` (units in their names); order never
 * matters.
 * @returns Probabilities (0 to 1), causes, action with the losses in minutes, `doNotRide`, next checks with gain and
 * minutes, evidence in natural log-odds, contradictions, cautions and findings.
 * @throws {@link DomainError} for an unknown or not modelled joint, an unknown check or outcome (with the nearest name)
 * and readings that are not finite or have the wrong sign.
 * @example
 * ```ts
 * import { diagnose } from '@spindlewright/diagnosis';
 * const result = diagnose({
 *   joint: 'square-taper-jis',
 *   observations: { 'bolt-on-arrival': 'tight', 'play-after-tightening': 'remains', 'bore-flats': 'rounded' },
 * });
 * result.conditions[0]?.id; // => 'bore-deformed'
 * result.action; // => 'replace-arm'
 * result.doNotRide; // => true
 * ```
 * @see The data entry, `@spindlewright/diagnosis/data`, for every likelihood with its reason.
 */
export function diagnose(input: DiagnoseInput): Diagnosis {
  const subject = checkCase('diagnose', input);
  const model = modelFor(input.side);
  const items = itemsOf(model, subject);
  const weights = weightsOf(model, items);
  const at = marginalsOf(model, weights);
  const causes = ranked(CAUSES, causesOf(model, weights));
  const byCondition = conditionsOf(at);
  const conditions = ranked(CONDITIONS, byCondition);
  const contradictions = contradictionsOf(model, items, (check) => subject.answers[check], byCondition);
  const answers = answersOf(subject, items);
  // A contradiction means that something was misread, so nothing that was read may send anybody riding.
  const excludedWith = (more: readonly Answer[]): ReadonlySet<ActionId> => {
    const found = exclusionsOf([...answers, ...more]);
    return contradictions.length > 0 ? found.add('ride') : found;
  };
  const excluded = excludedWith([]);
  const actions = priceActions(at, excluded);
  const action = actions.find((entry) => entry.admissible)?.id ?? 'remove-and-inspect';
  const doNotRide = excluded.has('ride') || !leavesInUse(action) || unsafeProbability(at) > LOSSES.doNotRideAbove;
  const leading = CONDITIONS.indexOf(conditions[0]?.id ?? 'sound');
  return {
    joint: input.joint,
    ...(input.side === undefined ? {} : { side: input.side }),
    conditions,
    besides: ranked(BESIDES, [at.bearing, at.noise]),
    causes,
    action,
    actions,
    doNotRide,
    nextChecks: nextChecksOf(model, weights, subject, excludedWith, action),
    evidence: evidenceOf(model, items, leading),
    contradictions,
    cautions: cautionsOf({
      conditions: byCondition,
      action,
      doNotRide,
      mixedInterface: causes.find(({ id }) => id === 'mixed-interface')?.probability ?? 0,
      contradicted: contradictions.length > 0,
    }),
    findings: findingsOf(subject, model, items, conditions),
    dataEdition: SQUARE_TAPER.edition,
  };
}

const ranked = <Id extends string>(ids: readonly Id[], probabilities: ArrayLike<number>): Probable<Id>[] =>
  ids
    .map((id, index) => ({ id, probability: probabilities[index] ?? 0 }))
    .sort((a, b) => b.probability - a.probability);

/** Every answer, what readings stand for included. */
function answersOf(subject: Case, items: readonly Item[]): Answer[] {
  const said = Object.entries(subject.answers) as [CheckId, readonly string[]][];
  const read = items.map(({ check, outcomes }): [CheckId, readonly string[]] => [check, outcomes]);
  return [...said, ...read].flatMap(([check, outcomes]) => outcomes.map((outcome) => ({ check, outcome })));
}

function findingsOf(
  subject: Case,
  model: Model,
  items: readonly Item[],
  conditions: Diagnosis['conditions'],
): Finding[] {
  const found: Finding[] = [];
  const add = (
    code: string,
    severity: 'caution' | 'note',
    values: Record<string, string | number> = {},
    path?: string,
  ): void => {
    const template = messages[code] ?? '';
    found.push(createFinding({ code, severity, template, values, ...(path === undefined ? {} : { path }) }));
  };
  for (const check of Object.keys(subject.answers) as CheckId[]) {
    if (!model.checks.includes(check)) add('check-not-applicable', 'caution', { check }, `observations.${check}`);
  }
  for (const { check, measurement, reading } of items) {
    const rule = SQUARE_TAPER.readings.find((entry) => entry.measurement === measurement);
    if (measurement === undefined || reading === undefined || rule === undefined) continue;
    const path = `measurements.${measurement}`;
    if (reading.outside) add('reading-outside-bands', 'caution', { measurement, check }, path);
    if (reading.assumed) {
      const { usualUncertainty: standardUncertainty, unit } = rule;
      add('uncertainty-assumed', 'note', { measurement, standardUncertainty, unit }, path);
    }
  }
  const [first, second] = conditions;
  if (first !== undefined && second !== undefined && first.probability <= 0.5) {
    add('undecided', 'note', {
      first: first.id,
      firstProbability: first.probability,
      second: second.id,
      secondProbability: second.probability,
    });
  }
  if (subject.joint === 'square-taper') add('joint-not-identified', 'note');
  add('likelihoods-are-judgement', 'note');
  return found;
}

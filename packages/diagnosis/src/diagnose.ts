import type { Finding } from '@spindlewright/quantity';
import { cautionsOf } from './cautions.ts';
import { applies, type Case, checkCase } from './check-case.ts';
import { contradictionsOf } from './contradictions.ts';
import { leavesInUse, priceActions, unsafeProbability } from './decide.ts';
import { evidenceOf } from './evidence.ts';
import { type Answer, exclusionsOf } from './exclusions.ts';
import { BESIDES, CAUSES, CHECK_OUTCOMES, CONDITIONS } from './ids.ts';
import { type Item, itemsOf } from './items.ts';
import { DO_NOT_RIDE_ABOVE, EDITION } from './model.generated.ts';
import { type Model, modelFor } from './model.ts';
import { CHECKS, letterOf } from './model-data.ts';
import { nextChecksOf } from './next-checks.ts';
import { causesOf, conditionsOf, marginalsOf, weightsOf } from './posterior.ts';
import { repairNeedsOf } from './repair-needs.ts';
import { say } from './say.ts';
import { spindleVerdictOf } from './spindle-verdict.ts';
import type { ActionId, CheckId, DiagnoseInput, Diagnosis, Probable } from './types.ts';

/**
 * Says what is probably wrong with a crank joint, why, what to check next, what to do and whether it may be ridden.
 *
 * @remarks
 * Formula: exact inference by enumeration, P(state | answers) = P(state) prod P(answer | state) / sum, over every state =
 * (cause, condition, bearing worn or not, noise elsewhere or not). Action = the admissible one of least expected loss;
 * gain of a check = that loss now minus its expectation over the outcomes of the check.
 *
 * Validity: every joint of `listJoints` that is modelled; one that is known but not modelled is refused by name. Answers
 * and readings that say nothing at the joint are left out with a finding. The answers are taken as independent once the
 * state is known.
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
  return diagnoseBy('diagnose', input, modelFor);
}

/** Diagnoses with a model of the caller's choice. */
export function diagnoseBy(where: string, input: DiagnoseInput, modelOf: typeof modelFor): Diagnosis {
  const subject = checkCase(where, input);
  const model = modelOf(input.joint, input.side);
  const items = itemsOf(model, subject);
  const weights = weightsOf(model, items);
  const at = marginalsOf(model, weights);
  const causes = ranked(CAUSES, causesOf(model, weights), model.cause);
  const byCondition = conditionsOf(at);
  const conditions = ranked(CONDITIONS, byCondition, model.condition);
  const contradictions = contradictionsOf(model, items, (check) => subject.answers[check], byCondition);
  const contradicted = contradictions.length > 0;
  const answers = answersOf(subject, items);
  const strange = foreignChecks(subject, model).some(
    (check) => !isSilent(model, check) && subject.answers[check]?.[0] !== CHECK_OUTCOMES[check][0],
  );
  // A contradiction means that something was misread, and a fault seen where this joint has nothing to look at that it is
  // another joint, so nothing that was read may send anybody riding.
  const excludedWith = (more: readonly Answer[]): ReadonlySet<ActionId> => {
    const found = exclusionsOf(model, [...answers, ...more]);
    return contradicted || strange ? found.add('ride') : found;
  };
  const excluded = excludedWith([]);
  const actions = priceActions(model, at, excluded);
  const action = actions.find((entry) => entry.admissible)?.id ?? 'remove-and-inspect';
  const unsafe = unsafeProbability(at);
  const doNotRide = excluded.has('ride') || !leavesInUse(action) || unsafe > DO_NOT_RIDE_ABOVE;
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
    repairNeeds: repairNeedsOf(model, action, causes),
    spindleStillGood: spindleVerdictOf(model, at, subject, contradicted),
    nextChecks: nextChecksOf(model, weights, subject.asked, answers, excludedWith, action),
    evidence: evidenceOf(model, items, leading),
    contradictions,
    cautions: cautionsOf({
      family: model.family,
      conditions: byCondition,
      action,
      doNotRide,
      unsafe,
      mixedInterface: causes.find(({ id }) => id === 'mixed-interface')?.probability ?? 0,
      contradicted,
    }),
    findings: findingsOf(subject, model, items, conditions, input),
    dataEdition: EDITION,
  };
}

/** Ids with their probabilities, greatest first; only those that some state has, where the states are given. */
const ranked = <Id extends string>(
  ids: readonly Id[],
  probabilities: ArrayLike<number>,
  states?: Uint8Array,
): Probable<Id>[] =>
  ids
    .flatMap((id, index) => (states?.includes(index) === false ? [] : [{ id, probability: probabilities[index] ?? 0 }]))
    .sort((a, b) => b.probability - a.probability);

/** Checks that were answered though the joint has nothing to look at there, or nothing that says anything. */
const foreignChecks = ({ answers }: Case, { checks }: Model): CheckId[] =>
  (Object.keys(answers) as CheckId[]).filter((check) => !checks.includes(check));

const isSilent = ({ code }: Model, check: CheckId): boolean => code.silent.includes(letterOf(CHECKS.indexOf(check)));

/** Every answer, what readings stand for included. */
function answersOf(subject: Case, items: readonly Item[]): Answer[] {
  const said = Object.entries(subject.answers) as [CheckId, readonly string[]][];
  const read = items.map(({ check, outcomes }): [CheckId, readonly string[]] => [check, outcomes]);
  return [...said, ...read].flatMap(([check, outcomes]) => outcomes.map((outcome) => `${check}/${outcome}`));
}

function findingsOf(
  subject: Case,
  model: Model,
  items: readonly Item[],
  conditions: Diagnosis['conditions'],
  input: DiagnoseInput,
): Finding[] {
  const found: Finding[] = [];
  const add = (
    code: string,
    severity: 'caution' | 'note',
    values: Record<string, string | number> = {},
    path?: string,
  ): void => {
    found.push(say(code, severity, values, path === undefined ? {} : { path }));
  };
  for (const check of foreignChecks(subject, model)) {
    if (isSilent(model, check)) add('says-nothing', 'note', { what: check }, `observations.${check}`);
    else add('check-not-applicable', 'caution', { check }, `observations.${check}`);
  }
  for (const rule of subject.rules) {
    const { measurement } = rule;
    if (input.measurements?.[measurement] !== undefined && !applies(rule)) {
      add('says-nothing', 'note', { what: measurement }, `measurements.${measurement}`);
    }
  }
  for (const { check, measurement, reading } of items) {
    const rule = subject.rules.find((entry) => entry.measurement === measurement);
    if (measurement === undefined || reading === undefined || rule === undefined) continue;
    const path = `measurements.${measurement}`;
    if (reading.outside) add('reading-outside-bands', 'caution', { measurement, check }, path);
    if (reading.assumed) {
      const { usual: standardUncertainty, unit } = rule;
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

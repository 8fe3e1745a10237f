import { checkInput, DomainError, type FieldSpec, type Measurand, nearestName } from '@spindlewright/quantity';
import { familyOf } from './family-of.ts';
import { CHECK_OUTCOMES, MODELLED_JOINTS, NO_ANSWERS } from './ids.ts';
import { FAMILY_CODES } from './model.generated.ts';
import { type ReadingRule, readingRules, readingValue } from './reading.ts';
import type { CheckId, DiagnoseInput, JointId, MeasurementId, NoAnswer, Observations, OutcomeId } from './types.ts';

/** A checked case: what was answered, in the order of the data, so that the order of the input cannot matter. */
export interface Case {
  joint: JointId;
  /** Answers that say something, by check; one outcome, several only for the history. */
  answers: Partial<Record<CheckId, readonly OutcomeId[]>>;
  /** Checks that were asked, but not those that were left aside as `not-checked`. */
  asked: ReadonlySet<CheckId>;
  /** How readings are taken at this joint. */
  rules: readonly ReadingRule[];
  /** Readings by name; those that say nothing at this joint are left out. */
  readings: Partial<Record<MeasurementId, Measurand>>;
}

/** Refuses a joint that is not modelled, and says which are. */
export function checkJoint(where: string, joint: unknown): asserts joint is JointId {
  if ((MODELLED_JOINTS as readonly unknown[]).includes(joint)) return;
  const name = typeof joint === 'string' ? joint : '';
  const nearest = nearestName({ name, known: MODELLED_JOINTS });
  const allowed = `${MODELLED_JOINTS.join(', ')}; no other joint is modelled`;
  const received = JSON.stringify(name || typeof joint);
  throw new DomainError(where, [{ path: 'joint', received, allowed, ...(nearest === undefined ? {} : { nearest }) }]);
}

/** Checks what came and puts it into the order of the data. */
export function checkCase(where: string, input: DiagnoseInput): Case {
  if (typeof input === 'object' && input !== null) checkJoint(where, input.joint);
  const value = withHistoryList(input);
  checkInput({ where, value, fields: caseFields() });
  const answers: Case['answers'] = {};
  const asked = new Set<CheckId>();
  for (const check of Object.keys(CHECK_OUTCOMES) as CheckId[]) {
    const given = value.observations[check];
    if (given === undefined) continue;
    const list: readonly string[] = typeof given === 'string' ? [given] : given;
    const said = (CHECK_OUTCOMES[check] as readonly OutcomeId[]).filter((outcome) => list.includes(outcome));
    if (said.length > 0) answers[check] = said;
    if (said.length > 0 || list.some((answer) => answer !== ('not-checked' satisfies NoAnswer))) asked.add(check);
  }
  const readings: Case['readings'] = {};
  const rules = readingRules(FAMILY_CODES[familyOf(value.joint)], value.joint);
  for (const rule of rules) {
    const reading = value.measurements?.[rule.measurement];
    if (reading === undefined) continue;
    checkRange(where, rule, reading);
    if (!applies(rule)) continue;
    readings[rule.measurement] = reading;
    asked.add(rule.check);
  }
  return { joint: value.joint, answers, asked, rules, readings };
}

/** False for a reading that says nothing at the joint. */
export const applies = ({ bands }: ReadingRule): boolean => Object.keys(bands).length > 0;

// Uncertainty may reach past what can be where the reading itself may not, so the bound is on the value alone.
function checkRange(where: string, { measurement, min, max, unit }: ReadingRule, reading: Measurand): void {
  const value = readingValue(reading);
  if (value >= min && value <= max) return;
  const allowed = `a value from ${min} to ${max} ${unit}`;
  throw new DomainError(where, [{ path: `measurements.${measurement}`, received: String(value), allowed }]);
}

/** One answer on the history may come without a list around it. */
export function withHistoryList<T extends { observations: Observations }>(value: T): T {
  const history = value?.observations?.history;
  return typeof history === 'string'
    ? { ...value, observations: { ...value.observations, history: [history] } }
    : value;
}

let described: Record<string, FieldSpec> | undefined;

/** Description of what {@link diagnose} takes. */
export function caseFields(): Record<string, FieldSpec> {
  described ??= describeCase();
  return described;
}

function describeCase(): Record<string, FieldSpec> {
  const observations: Record<string, FieldSpec> = {};
  for (const [check, outcomes] of Object.entries(CHECK_OUTCOMES)) {
    const choice: FieldSpec = { type: 'choice', values: [...outcomes, ...NO_ANSWERS] };
    observations[check] = { ...(check === 'history' ? { type: 'list', item: choice } : choice), optional: true };
  }
  const measurements: Record<string, FieldSpec> = {};
  for (const { measurement, unit, min, max } of readingRules()) {
    measurements[measurement] = { type: 'measurand', unit, min: 2 * min - max, max: 2 * max, optional: true };
  }
  return {
    joint: { type: 'choice', values: MODELLED_JOINTS },
    side: { type: 'choice', values: ['drive', 'non-drive'], optional: true },
    observations: { type: 'object', fields: observations },
    measurements: { type: 'object', fields: measurements, optional: true },
  };
}

import { createFinding, DomainError, type Finding, formatFinding, type Messages } from '@spindlewright/quantity';
import { messages as findings } from './messages/findings.ts';
import { words } from './messages/words.ts';
import type { CheckOutlook } from './outlook.ts';
import type { Diagnosis, Evidence } from './types.ts';

// Judgement: below this a second condition only distracts; more pieces of evidence, and more checks with what they would
// change, than these are not read.
const WORTH_NAMING = 0.1;
const PIECES = 3;
const CHANGES = 2;
const OPEN = [0.2, 0.5] as const;

// Which values of a finding name a check, and which of them its outcomes.
const CHECK_VALUES = [
  ['check', ['outcome', 'nearest']],
  ['otherCheck', ['otherOutcome']],
] as const;

/**
 * Puts a diagnosis into sentences, each with its code and values, in English or in the words of another table.
 *
 * @remarks
 * Formula: none; templates are filled with the values, ids are looked up as `condition-`, `cause-`, `action-`,
 * `outcome-` and `check-` codes in the same table.
 *
 * Validity: any result of `diagnose`. A code that the table lacks is worded in English, so that nothing is lost.
 *
 * Accuracy: percentages are rounded to whole numbers in the sentences, not in `values`.
 *
 * @param input - `result`: what `diagnose` gave; `outlook`: what `outlook` gave for the same case, for sentences on what
 * would change the action; `messages`: templates and words by code, English when left out.
 * @returns Sentences in reading order: riding, condition, cause, action, evidence (the heaviest pieces, one against among
 * them where there is one), what stays unknown, contradictions, next check, what would change the action, cautions.
 * @throws {@link DomainError} when `result` is not a result of `diagnose`.
 * @example
 * ```ts
 * import { diagnose, explain } from '@spindlewright/diagnosis';
 * const result = diagnose({
 *   joint: 'square-taper-jis',
 *   observations: { 'bolt-on-arrival': 'tight', 'play-after-tightening': 'remains', 'bore-flats': 'rounded' },
 * });
 * explain({ result }).map((line) => line.message)[0]; // => 'Not to be ridden until this is done and checked.'
 * ```
 * @see The table `@spindlewright/diagnosis/messages/en`.
 */
export function explain(input: {
  result: Diagnosis;
  outlook?: readonly CheckOutlook[];
  messages?: Messages;
}): Finding[] {
  const result = input?.result;
  const [first, second] = Array.isArray(result?.conditions) ? result.conditions : [];
  const [cause] = Array.isArray(result?.causes) ? result.causes : [];
  if (first === undefined || cause === undefined) {
    const allowed = 'a result of diagnose()';
    throw new DomainError('explain', [{ path: 'result', received: typeof result, allowed }]);
  }
  const table = input.messages ?? {};
  const templates = { ...findings, ...table };
  const text = (code: string): string => (Object.hasOwn(table, code) ? table[code] : words[code]) ?? code;
  const line = (code: string, values: Record<string, string | number> = {}, severity: Finding['severity'] = 'note') =>
    createFinding({ code, severity, template: text(code), values });
  const chance = (kind: string, { id, probability }: { id: string; probability: number }) => ({
    id,
    text: text(`${kind}-${id}`),
    percent: 100 * probability,
  });

  const lines: Finding[] = [result.doNotRide ? line('explain-do-not-ride', {}, 'stop') : line('explain-may-ride')];
  lines.push(line('explain-condition', chance('condition', first)));
  if (second !== undefined && second.probability >= WORTH_NAMING) {
    lines.push(line('explain-next-condition', chance('condition', second)));
  }
  for (const beside of result.besides) {
    if (beside.probability >= 0.5) lines.push(line('explain-beside', chance('beside', beside)));
  }
  if (cause.id !== 'none') lines.push(line('explain-cause', chance('cause', cause)));
  lines.push(line('explain-action', { id: result.action, text: text(`action-${result.action}`) }));
  for (const { check, outcomes, weight, logOddsRatio } of worthTelling(result.evidence)) {
    if (weight === 'hardly') continue;
    const said = outcomes.map((outcome) => text(`outcome-${check}-${outcome}`)).join(', ');
    lines.push(line(`explain-evidence-${weight}`, { check, text: said, logOddsRatio }));
  }
  // What stays unknown: what may hold beside it with an open chance, and whether the spindle goes on.
  for (const beside of result.besides) {
    if (beside.probability >= OPEN[0] && beside.probability < OPEN[1]) {
      lines.push(line('explain-open', chance('beside', beside)));
    }
  }
  const { state, check: deciding } = result.spindleStillGood;
  if (result.action !== 'ride') {
    const values = deciding === undefined ? { text: '' } : { check: deciding, text: text(`check-${deciding}`) };
    lines.push(line(`explain-spindle-${state}`, values));
  }
  // Ids stay in `values`; in the sentence they are said in the words of the table.
  const worded = (values: Finding['values']): Finding['values'] => {
    const said: Record<string, number | string> = { ...values };
    for (const [check, outcomes] of CHECK_VALUES) {
      const id = values[check];
      if (typeof id !== 'string') continue;
      for (const outcome of outcomes) {
        if (values[outcome] !== undefined) said[outcome] = text(`outcome-${id}-${values[outcome]}`);
      }
      said[check] = text(`check-${id}`);
    }
    if (values.action !== undefined) said.action = text(`action-${values.action}`);
    return said;
  };
  const reworded = (finding: Finding): Finding => ({
    ...finding,
    message: formatFinding({ ...finding, values: worded(finding.values) }, templates),
  });
  lines.push(...result.contradictions.map(reworded));
  const [next] = result.nextChecks;
  if (next === undefined) lines.push(line('explain-no-next-check'));
  else {
    const { check, minutes, gain } = next;
    lines.push(line('explain-next-check', { check, minutes, gain, text: text(`check-${check}`) }));
  }
  const changing = (input.outlook ?? []).map(({ check, answers }) => ({
    check,
    answers: answers.filter((answer) => answer.changesAction),
  }));
  for (const { check, answers } of changing.filter((entry) => entry.answers.length > 0).slice(0, CHANGES)) {
    for (const { outcome, action, doNotRide } of answers) {
      const values = { check, outcome, text: text(`outcome-${check}-${outcome}`), action: text(`action-${action}`) };
      lines.push(line(doNotRide ? 'explain-would-change' : 'explain-would-allow', values));
    }
  }
  lines.push(...result.cautions.map(reworded));
  return lines;
}

/** The heaviest pieces; what speaks against is never crowded out by what speaks for. */
function worthTelling(evidence: readonly Evidence[]): Evidence[] {
  const heavy = evidence.filter(({ weight }) => weight !== 'hardly');
  const against = heavy.find(({ weight }) => weight.endsWith('against'));
  return heavy.filter((piece, index) => index < PIECES || piece === against);
}

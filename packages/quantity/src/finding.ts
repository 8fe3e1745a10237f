import { checkInput, type FieldSpecs } from './check-input.ts';
import { describeValue } from './describe-value.ts';
import { DomainError, type DomainIssue } from './domain-error.ts';
import { fillTemplate } from './fill-template.ts';

/** How much a finding weighs: `stop` = do not go on, `caution` = go on with care, `note` = worth knowing. */
export type Severity = 'stop' | 'caution' | 'note';

/** Something worth saying about a result that is inside the domain: a code for programs, a sentence for people. */
export interface Finding {
  /** Stable code, such as `bottoms-on-end`. */
  code: string;
  /** How much it weighs. */
  severity: Severity;
  /** English sentence, already filled in. */
  message: string;
  /** The numbers and words in the sentence, by name; each numeric name carries its unit. */
  values: Readonly<Record<string, number | string>>;
  /** Ids in the register of sources that stand behind it. */
  sources: readonly string[];
  /** The input field it speaks of, if it speaks of one. */
  path?: string;
}

/** Templates by finding code; `{name}` stands for a value, `{name:1}` for a number with one decimal. */
export type Messages = Readonly<Record<string, string>>;

const FIELDS = {
  code: { type: 'text' },
  severity: { type: 'choice', values: ['stop', 'caution', 'note'] },
  template: { type: 'text' },
  sources: { type: 'list', item: { type: 'text' }, optional: true },
  path: { type: 'text', optional: true },
} as const satisfies FieldSpecs;

/**
 * Makes a finding from a template, so that the sentence and the values cannot disagree.
 *
 * @remarks
 * Formula: none; placeholders `{name}` are replaced by `values[name]`, numbers with two decimals unless `{name:n}`
 * asks for n.
 *
 * Validity: codes in kebab case; values that are finite numbers or texts, since a finding has to survive JSON. A
 * placeholder without a value stays as it is and shows. A negative zero becomes 0.
 *
 * Accuracy: the sentence rounds, `values` does not.
 *
 * @param input - `code`, `severity`, `template`, and optionally `values`, `sources`, `path`.
 * @returns The finding; it equals its JSON round trip and shares nothing with the input.
 * @throws {@link DomainError} for a value that is neither a finite number nor a text, another severity, or a missing or
 * misspelt part.
 * @example
 * ```ts
 * import { createFinding } from '@spindlewright/quantity';
 * createFinding({ code: 'gap', severity: 'note', template: 'Gap {endGapMm:1} mm.', values: { endGapMm: 1.25 } }).message;
 * // => 'Gap 1.3 mm.'
 * ```
 * @see The project's own message form.
 */
export function createFinding(input: {
  code: string;
  severity: Severity;
  template: string;
  values?: Readonly<Record<string, number | string>>;
  sources?: readonly string[];
  path?: string;
}): Finding {
  const { values = {}, ...parts } = { ...input };
  checkInput({ where: 'createFinding', value: parts, fields: FIELDS });
  const issues: DomainIssue[] = [];
  const refuse = (path: string, came: unknown, allowed: string): void => {
    issues.push({ path, received: describeValue(came), allowed });
  };
  if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(input.code)) refuse('code', input.code, 'a code such as bottoms-on-end');
  if (input.template === '') refuse('template', '', 'a sentence');
  if (typeof values !== 'object' || values === null) refuse('values', values, 'an object of numbers and texts');
  for (const [name, value] of Object.entries(values ?? {})) {
    if (typeof value !== 'string' && !Number.isFinite(value)) {
      refuse(`values.${name}`, value, 'a finite number or a text');
    }
  }
  const [first, ...rest] = issues;
  if (first !== undefined) throw new DomainError('createFinding', [first, ...rest]);
  // JSON has no negative zero: adding 0 turns it into 0.
  const kept = Object.entries(values).map(([name, value]) => [name, typeof value === 'number' ? value + 0 : value]);
  return {
    code: input.code,
    severity: input.severity,
    message: fillTemplate(input.template, values),
    values: Object.fromEntries(kept),
    sources: [...(input.sources ?? [])],
    ...(input.path === undefined ? {} : { path: input.path }),
  };
}

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

/**
 * Makes a finding from a template, so that the sentence and the values cannot disagree.
 *
 * @remarks
 * Formula: none; placeholders `{name}` are replaced by `values[name]`, numbers with two decimals unless `{name:n}`
 * asks for n.
 *
 * Validity: any code and template; a placeholder without a value stays as it is and shows.
 *
 * Accuracy: the sentence rounds, `values` does not.
 *
 * @param input - `code`, `severity`, `template`, and optionally `values`, `sources`, `path`.
 * @returns The finding; it equals its JSON round trip.
 * @throws Nothing.
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
  const values = input.values ?? {};
  return {
    code: input.code,
    severity: input.severity,
    message: fillTemplate(input.template, values),
    values,
    sources: input.sources ?? [],
    ...(input.path === undefined ? {} : { path: input.path }),
  };
}

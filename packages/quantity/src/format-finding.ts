import { fillTemplate } from './fill-template.ts';
import type { Finding, Messages } from './finding.ts';

/**
 * Words a finding by a set of templates, for another language or another house style.
 *
 * @remarks
 * Formula: none; the template for `finding.code` is filled with `finding.values`.
 *
 * Validity: a code without a template falls back to the English sentence that the finding carries, so that a caution is
 * never lost for want of a translation.
 *
 * Accuracy: numbers are rounded as the template asks, two decimals by default.
 *
 * @param finding - The finding to word.
 * @param messages - Templates by code, such as a package's `./messages/en`.
 * @returns One sentence or more.
 * @throws Nothing.
 * @example
 * ```ts
 * import { createFinding, formatFinding } from '@spindlewright/quantity';
 * const finding = createFinding({ code: 'gap', severity: 'note', template: 'Gap {mm} mm.', values: { mm: 1.5 } });
 * formatFinding(finding, { gap: 'Spalt {mm:1} mm.' }); // => 'Spalt 1.5 mm.'
 * ```
 * @see The project's own message form.
 */
export function formatFinding(finding: Finding, messages: Messages): string {
  // Not every key that is found is a template: `constructor` finds a function of the prototype.
  const template: unknown = messages[finding.code];
  return typeof template === 'string' ? fillTemplate(template, finding.values) : finding.message;
}

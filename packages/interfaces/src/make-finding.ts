import { createFinding, type Finding, type Severity } from '@spindlewright/quantity';
import { messages } from './messages/en.ts';

/** Makes a finding with the package's own English template of its code. @internal */
export function makeFinding(
  code: string,
  severity: Severity,
  values: Readonly<Record<string, string | number>> = {},
  sources: readonly string[] = [],
): Finding {
  return createFinding({ code, severity, template: messages[code] ?? code, values, sources });
}

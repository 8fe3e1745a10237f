import { createFinding, type Finding, type Messages, type Severity } from '@spindlewright/quantity';

/** A finding with the template of its code. @internal */
export const find = <M extends Messages>(
  messages: M,
  code: keyof M & string,
  severity: Severity,
  values: Readonly<Record<string, number | string>> = {},
  more: { sources?: readonly string[]; path?: string } = {},
): Finding => createFinding({ code, severity, template: messages[code] ?? code, values, ...more });

import { createFinding, type Finding, type Severity } from '@spindlewright/quantity';
import { messages } from './messages/findings.ts';

/** A finding in the English words of its code. */
export const say = (
  code: string,
  severity: Severity,
  values: Finding['values'] = {},
  more: { sources?: readonly string[]; path?: string } = {},
): Finding => createFinding({ code, severity, template: messages[code] ?? '', values, ...more });

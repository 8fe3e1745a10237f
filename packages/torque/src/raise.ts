import { createFinding, type Finding, type Severity } from '@spindlewright/quantity';
import { messages, type TorqueFindingCode } from './messages/en.ts';

/** Makes a finding of this package from its English template. @internal */
export const raise = (
  code: TorqueFindingCode,
  severity: Severity,
  values: Readonly<Record<string, number | string>> = {},
  more: { sources?: readonly string[]; path?: string } = {},
): Finding => createFinding({ code, severity, template: messages[code], values, ...more });

import { createFinding, type Finding, type Severity } from '@spindlewright/quantity';
import type { TorqueFindingCode } from './messages/en.ts';

/** Makes a finding from a template handed over, so that the table of all of them stays out of a bundle. @internal */
export const raiseText = (
  code: TorqueFindingCode,
  template: string,
  severity: Severity,
  values: Readonly<Record<string, number | string>> = {},
  more: { sources?: readonly string[]; path?: string } = {},
): Finding => createFinding({ code, severity, template, values, ...more });

import type { Finding } from '@spindlewright/quantity';
import { wrapped } from './wrap.ts';

const MARKS = { stop: 'STOP  ', caution: '  !   ', note: '  -   ' } as const;
const ORDER = ['stop', 'caution', 'note'] as const;

/** What is worth saying, gravest first, each thing once. @internal */
export function findingLines(findings: readonly Finding[]): string[] {
  const said = new Set<string>();
  return ORDER.flatMap((severity) =>
    findings
      .filter((finding) => finding.severity === severity && !said.has(finding.message) && said.add(finding.message))
      .flatMap(({ message }) => wrapped(message, undefined, MARKS[severity], '      ')),
  );
}

import { DomainError } from '@spindlewright/quantity';
import type { JobSheet } from './sheet.ts';

/** Refuses what is no job sheet before a renderer walks into it. @internal */
export function checkRenderable(where: string, sheet: JobSheet): void {
  const candidate: unknown = sheet;
  const format =
    typeof candidate === 'object' && candidate !== null ? (candidate as { format?: unknown }).format : undefined;
  if (format !== 'spindlewright-sheet-1') {
    throw new DomainError(where, [
      {
        path: 'format',
        received: format === undefined ? 'nothing' : String(format),
        allowed: 'a job sheet with format "spindlewright-sheet-1"',
      },
    ]);
  }
}

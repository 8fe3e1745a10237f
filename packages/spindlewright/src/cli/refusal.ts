import type { DomainError } from '@spindlewright/quantity';

/** Bad options or input: nothing was done. @internal */
export class Refusal extends Error {}

/** A file that cannot be read or written. @internal */
export class FileTrouble extends Error {}

/** What an error says. @internal */
export const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Every fault that an error names, in lines: where, what came, what is allowed. @internal */
export const faultLines = ({ issues }: DomainError): string =>
  issues
    .map(({ path, received, allowed, nearest }) => {
      const like = nearest === undefined ? '' : `\n    nearest: ${nearest}`;
      return `  ${path || '(the whole input)'}\n    came:    ${received}\n    allowed: ${allowed}${like}`;
    })
    .join('\n');

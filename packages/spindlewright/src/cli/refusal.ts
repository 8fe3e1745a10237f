import type { DomainError } from '@spindlewright/quantity';

/** Bad options or input: nothing was done. @internal */
export class Refusal extends Error {}

/** A file that cannot be read or written. @internal */
export class FileTrouble extends Error {}

/** What an error says. @internal */
export const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** What is said of a file that is not there. @internal */
export const NO_SUCH_FILE = 'there is no such file';

const FILE_REASONS: Readonly<Record<string, string>> = {
  ENOENT: NO_SUCH_FILE,
  ENOTDIR: 'there is no such folder',
  EISDIR: 'it is a folder',
  EACCES: 'that is not allowed',
  EPERM: 'that is not allowed',
  EROFS: 'nothing can be written there',
  ENOSPC: 'the disk is full',
};

/** Why a file cannot be read or written, in words; what the system says where it has none. @internal */
export function fileReason(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return Object.hasOwn(FILE_REASONS, code) ? (FILE_REASONS[code] ?? code) : messageOf(error);
}

/** Every fault that an error names, in lines: where, what came, what is allowed. @internal */
export const faultLines = ({ issues }: DomainError): string =>
  issues
    .map(({ path, received, allowed, nearest }) => {
      const like = nearest === undefined || nearest === allowed ? '' : `\n    nearest: ${nearest}`;
      return `  ${path || '(the whole input)'}\n    came:    ${received}\n    allowed: ${allowed}${like}`;
    })
    .join('\n');

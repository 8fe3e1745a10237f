import { DomainError, isDomainError } from '@spindlewright/quantity';

/** Runs a piece of work whose refusals name fields, and names the flags that filled them instead. @internal */
export function withFlagPaths<T>(flagOf: (path: string) => string | undefined, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!isDomainError(error)) throw error;
    const [first, ...rest] = error.issues.map((issue) => ({ ...issue, path: flagOf(issue.path) ?? issue.path }));
    if (first === undefined) throw error;
    throw new DomainError('spindlewright', [first, ...rest]);
  }
}

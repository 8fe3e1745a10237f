import { type DomainError, isDomainError } from '@spindlewright/quantity';

/** The DomainError that a call throws; fails the test when it throws none. @internal */
export function refusal(call: () => unknown): DomainError {
  try {
    call();
  } catch (error) {
    if (isDomainError(error)) return error;
    throw error;
  }
  throw new Error('nothing was refused');
}

import { DomainError } from '@spindlewright/quantity';

/** Makes the error for one fault that no field description can express. @internal */
export const refuse = (
  where: string,
  path: string,
  received: string,
  allowed: string,
  nearest?: string | undefined,
): DomainError => new DomainError(where, [{ path, received, allowed, ...(nearest === undefined ? {} : { nearest }) }]);

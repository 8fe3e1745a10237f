import { getInterface, type InterfaceRecord } from '@spindlewright/interfaces';
import { DomainError, nearestName } from '@spindlewright/quantity';

/** Interfaces whose seat can be predicted. */
const SQUARE_TAPERS = ['square-taper-jis', 'square-taper-iso'] as const;

/** Looks a square taper up and refuses any other interface by its path in the job. @internal */
export function squareTaper(path: string, id: string): InterfaceRecord {
  if ((SQUARE_TAPERS as readonly string[]).includes(id)) return getInterface(id);
  const nearest = nearestName({ name: id, known: SQUARE_TAPERS });
  throw new DomainError('workJob', [
    {
      path,
      received: JSON.stringify(id),
      allowed: `an interface whose seat can be predicted: ${SQUARE_TAPERS.join(', ')}`,
      ...(nearest === undefined ? {} : { nearest }),
    },
  ]);
}

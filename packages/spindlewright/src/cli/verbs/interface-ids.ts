import { listInterfaces } from '@spindlewright/interfaces';

/** Ids of the interfaces, as a help lists them. @internal */
export const interfaceIds = (): string =>
  listInterfaces()
    .map(({ id }) => id)
    .join(', ');

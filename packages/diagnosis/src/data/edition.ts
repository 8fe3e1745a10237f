import { EDITION } from '../model.generated.ts';

/** Edition of the likelihoods, as it stands in every result. */
export const dataEdition: string = EDITION;

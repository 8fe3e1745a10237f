import { SQUARE_TAPER } from '../model-data.ts';

/** Edition of the likelihoods, as it stands in every result. */
export const dataEdition: string = SQUARE_TAPER.edition;

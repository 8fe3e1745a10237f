import type { Messages } from '@spindlewright/quantity';

/** Templates of what a sampled seat may have to say. @internal */
export const distributionMessages = {
  'probabilities-of-the-inputs':
    'The probabilities follow from the limits and uncertainties put in, sampled {samples:0} times (standard error of a probability at most {standardErrorPercent:1} %); what was not put in is not in them. Decide by the worst case where a seat must hold.',
  'nothing-varies':
    'No input has limits or an uncertainty, so every sample differs by the error of the model alone: give the readings with their uncertainty.',
} as const satisfies Messages;

import type { Datum } from '@spindlewright/quantity';

/** What the identification of a square needs besides the records; all of it judgement, stated so. */
export interface IdentificationData {
  /** Edition of the data. */
  dataEdition: string;
  /** Probability of each candidate before any reading; they sum to 1. */
  priors: readonly { id: string; probability: Datum }[];
  /** Standard deviations of one spindle about the published sizes of its set. */
  spread: { acrossFlatsMm: Datum; faceAngleDeg: Datum; flatLengthMm: Datum };
  /** Middle and standard deviation of what an unlisted square may measure. */
  unlisted: {
    acrossFlatsAtEndMm: Datum;
    acrossFlatsSpreadMm: Datum;
    faceAngleDeg: Datum;
    faceAngleSpreadDeg: Datum;
    flatLengthMm: Datum;
    flatLengthSpreadMm: Datum;
  };
  /** Standard uncertainties taken for readings that come as plain numbers, and the least that any reading has. */
  assumedUncertainty: { acrossFlatsMm: Datum; planeMm: Datum; flatLengthMm: Datum; finestMm: Datum };
  /** The careful readings that may be asked for next, by their standard uncertainties, and the gain that makes one worth asking. */
  nextReading: {
    acrossFlatsAtMm: Datum;
    acrossFlatsMm: Datum;
    planeMm: Datum;
    flatLengthMm: Datum;
    worthwhileGain: Datum;
  };
  /** Chance that the readings tell nothing about the part, so that no candidate is ever impossible. */
  blunderProbability: Datum;
  /** Probability from which on an answer is not called open. */
  convincingProbability: Datum;
}

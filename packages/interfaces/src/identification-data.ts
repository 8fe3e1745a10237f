import type { Datum } from '@spindlewright/quantity';

/** What the identification of a square needs besides the records; all of it judgement, stated so. */
export interface IdentificationData {
  /** Edition of the data. */
  dataEdition: string;
  /** Probability of each candidate before any reading; they sum to 1. */
  priors: readonly {
    /** Record id, or `unlisted`. */
    id: string;
    /** Probability, 0 to 1. */
    probability: Datum;
  }[];
  /** Standard deviations of one spindle about the published sizes of its set. */
  spread: {
    /** Of the size across flats, in mm. */
    acrossFlatsMm: Datum;
    /** Of the face angle, in degrees. */
    faceAngleDeg: Datum;
    /** Of the length of the flats, in mm. */
    flatLengthMm: Datum;
  };
  /** Middle and standard deviation of what an unlisted square may measure. */
  unlisted: {
    /** Middle of the size across flats at the end, in mm. */
    acrossFlatsAtEndMm: Datum;
    /** Standard deviation of that size, in mm. */
    acrossFlatsSpreadMm: Datum;
    /** Middle of the face angle, in degrees. */
    faceAngleDeg: Datum;
    /** Standard deviation of the face angle, in degrees. */
    faceAngleSpreadDeg: Datum;
    /** Middle of the length of the flats, in mm. */
    flatLengthMm: Datum;
    /** Standard deviation of that length, in mm. */
    flatLengthSpreadMm: Datum;
  };
  /** Standard uncertainties taken for readings that come as plain numbers, and the least that any reading has. */
  assumedUncertainty: {
    /** Of a size across flats, in mm. */
    acrossFlatsMm: Datum;
    /** Of the plane of a reading, in mm. */
    planeMm: Datum;
    /** Of a length of flats, in mm. */
    flatLengthMm: Datum;
    /** The least of any reading, in mm. */
    finestMm: Datum;
  };
  /** The careful readings that may be asked for next, by their standard uncertainties. */
  nextReading: {
    /** Plane of a reading across flats, from the end of the spindle, in mm. */
    acrossFlatsAtMm: Datum;
    /** Uncertainty of the size across flats, in mm. */
    acrossFlatsMm: Datum;
    /** Uncertainty of its plane, in mm. */
    planeMm: Datum;
    /** Uncertainty of the length of the flats, in mm. */
    flatLengthMm: Datum;
    /** Gain in probability from which on a reading is worth asking for. */
    worthwhileGain: Datum;
  };
  /** Chance that the readings tell nothing about the part, so that no candidate is ever impossible. */
  blunderProbability: Datum;
  /** Probability from which on an answer is not called open. */
  convincingProbability: Datum;
}

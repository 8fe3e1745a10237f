import type { Datum } from '@spindlewright/quantity';

/** What identification needs besides the records; judgement but for the limits of threads, and stated so. */
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
  /** One reading across flats that slipped. */
  slip: {
    /** Chance of it, for each reading. */
    probability: Datum;
    /** Standard deviation of what it is off by, in mm. */
    spreadMm: Datum;
  };
  /** Share of the variance of a reading that all readings of one sitting have in common, 0 to 1. */
  commonErrorShare: Datum;
  /** What the identification of the bore of an arm needs. */
  bore: BoreIdentificationData;
  /** What the identification of a thread needs. */
  threads: ThreadIdentificationData;
  /** Chance that all readings together tell nothing about the part, so that no candidate is ever impossible. */
  blunderProbability: Datum;
  /** Probability from which on an answer is not called open. */
  convincingProbability: Datum;
}

/** Judgements behind the identification of a bore. */
export interface BoreIdentificationData {
  /** Middle and standard deviation of what an unlisted square bore may measure. */
  unlisted: {
    /** Middle of the size across the flats at the inner mouth, in mm. */
    acrossFlatsAtMouthMm: Datum;
    /** Standard deviation of that size, in mm. */
    acrossFlatsSpreadMm: Datum;
    /** Middle of the face angle, in degrees. */
    faceAngleDeg: Datum;
    /** Standard deviation of the face angle, in degrees. */
    faceAngleSpreadDeg: Datum;
    /** Middle of the bore length, in mm. */
    boreLengthMm: Datum;
    /** Standard deviation of that length, in mm. */
    boreLengthSpreadMm: Datum;
  };
  /** Standard uncertainties taken for readings that come as plain numbers. */
  assumedUncertainty: {
    /** Of a size across flats, in mm. */
    acrossFlatsMm: Datum;
    /** Of the plane of a reading, in mm. */
    planeMm: Datum;
    /** Of a bore length, in mm. */
    boreLengthMm: Datum;
    /** Of the diameter of a round bore, in mm. */
    diameterMm: Datum;
  };
  /** The careful readings that may be asked for next, by their standard uncertainties. */
  nextReading: {
    /** Plane of a reading across flats, from the inner mouth outward, in mm. */
    acrossFlatsAtMm: Datum;
    /** Uncertainty of the size across flats, in mm. */
    acrossFlatsMm: Datum;
    /** Uncertainty of its plane, in mm. */
    planeMm: Datum;
    /** Uncertainty of the bore length, in mm. */
    boreLengthMm: Datum;
  };
  /** Round bores. */
  round: {
    /** Probability of an unlisted bore before any reading. */
    unlistedProbability: Datum;
    /** How much larger than its spindle a plain bore is, in mm. */
    clearanceMm: Datum;
    /** Standard deviation of that, in mm. */
    clearanceSpreadMm: Datum;
    /** How far the crests of teeth lie inside the spindle diameter, measured on the diameter, in mm. */
    toothDepthMm: Datum;
    /** Standard deviation of that, in mm. */
    toothDepthSpreadMm: Datum;
    /** Standard deviation of a minor diameter about its nominal value, in mm. */
    minorSpreadMm: Datum;
    /** Chance that a reading tells nothing. */
    slipProbability: Datum;
    /** Chance that an unlisted bore is toothed. */
    toothedUnlistedProbability: Datum;
  };
}

/** Judgements behind the identification of a thread, and the limits of ISO metric threads. */
export interface ThreadIdentificationData {
  /** Probability of an unlisted thread before any reading; listed designations share the rest alike. */
  unlistedProbability: Datum;
  /** Middle of the pitch of an unlisted thread, in mm. */
  unlistedPitchMm: Datum;
  /** Standard deviation of that pitch, in mm. */
  unlistedPitchSpreadMm: Datum;
  /** Middle of the pitch of a listed thread without one, in mm. */
  unstatedPitchMm: Datum;
  /** Standard deviation of that pitch, in mm. */
  unstatedPitchSpreadMm: Datum;
  /** Coefficients of the limits 6g and 6H, in micrometres with the pitch in mm. */
  limits: {
    /** Constant of the allowance of position g, in micrometres. */
    allowanceUm: Datum;
    /** Rise of that allowance with the pitch, in micrometres per mm. */
    allowancePerPitchUm: Datum;
    /** Coefficient of P^(2/3) in the width of the major diameter, grade 6, in micrometres. */
    majorWidthUm: Datum;
    /** Coefficient of P^(-1/2) that is taken off that width, in micrometres. */
    majorWidthFallUm: Datum;
    /** Coefficient of P^0.7 in the width of the internal minor diameter, pitches from 1 mm, in micrometres. */
    minorWidthUm: Datum;
    /** Coefficient of P in that width, finer pitches, in micrometres. */
    fineMinorWidthUm: Datum;
    /** Coefficient of P^1.22 that is taken off that width, finer pitches, in micrometres. */
    fineMinorWidthFallUm: Datum;
  };
  /** Standard deviations of one part about the middle of its limits, besides their width. */
  spread: {
    /** Of a metric thread, in mm. */
    metricMm: Datum;
    /** Of any other thread, in mm. */
    otherMm: Datum;
  };
  /** The chamfer at the end of a thread. */
  chamfer: {
    /** Its length in pitches. */
    lengthRatio: Datum;
    /** Standard deviation of that length, in pitches. */
    lengthSpreadRatio: Datum;
  };
  /** Standard uncertainties taken for readings that come as plain numbers. */
  assumedUncertainty: {
    /** Of the diameter of an external thread, in mm. */
    externalDiameterMm: Datum;
    /** Of the diameter between the crests of an internal thread, in mm. */
    internalDiameterMm: Datum;
    /** Of the plane of a diameter, in mm. */
    planeMm: Datum;
    /** Of a pitch, in mm. */
    pitchMm: Datum;
    /** Of a count of threads per inch, in threads per inch. */
    threadsPerInch: Datum;
  };
  /** Plane taken for a diameter that comes without one, from the end of the thread, in mm. */
  assumedPlaneMm: Datum;
  /** Chances that a reading slips. */
  slipProbability: {
    /** Of a diameter. */
    diameter: Datum;
    /** Of a pitch. */
    pitch: Datum;
    /** Of the hand. */
    hand: Datum;
  };
  /** Standard deviations of what a slipped reading is off by. */
  slipSpread: {
    /** Of a diameter, in mm. */
    diameterMm: Datum;
    /** Of a pitch, in mm. */
    pitchMm: Datum;
  };
  /** Chance that a diameter or a pitch has nothing to do with the thread. */
  blunderProbability: Datum;
  /** The careful readings that may be asked for next, by their standard uncertainties. */
  nextReading: {
    /** Uncertainty of the diameter, in mm. */
    diameterMm: Datum;
    /** Plane of it from the end of the thread, in pitches. */
    planeRatio: Datum;
    /** Uncertainty of the pitch, in mm. */
    pitchMm: Datum;
  };
  /** What counts as a thread that starts and then strips. */
  nearMiss: {
    /** Share of the full flank depth from which on a thread starts. */
    leastOverlapShare: Datum;
    /** Share of the full flank depth from which on it holds. */
    soundOverlapShare: Datum;
    /** Difference of pitch, as a share of it, up to which a thread starts by hand. */
    pitchShare: Datum;
    /** Turns over which the pitches may run apart. */
    engagedTurns: Datum;
    /** Axial play of a sound pair, in mm. */
    axialPlayMm: Datum;
    /** Probability from which on the near-misses of a candidate are named. */
    worthNaming: Datum;
  };
}

import type { PictureArm, PictureSpindle, SeatPicture } from '../src/seat-picture.ts';

const about = (nominal: number, spread: number) => ({ lower: nominal - spread, nominal, upper: nominal + spread });

/** Invented spindle. */
const spindle: PictureSpindle = {
  acrossFlatsAtEndMm: about(12.63, 0.02),
  faceAngleDeg: 2,
  flatLengthMm: 16,
  endChamferMm: 1,
  shoulderFromEndMm: 19,
  cornerDiameterMm: 16.5,
};

/** Invented arm. */
const arm: PictureArm = {
  acrossFlatsAtMouthMm: about(13.58, 0.02),
  faceAngleDeg: 2,
  boreLengthMm: 15,
  boltSeatFromMouthMm: 16,
  mouthChamferMm: 0.5,
  bossDiameterMm: 32,
};

/** Seats with room at both ends; invented. */
export const good: SeatPicture = {
  spindle,
  arm,
  verdict: 'seats',
  handFit: {
    mouthFromEndMm: about(13.6, 0.6),
    endGapMm: about(2.4, 0.6),
    shoulderGapMm: about(2.9, 0.6),
    engagedLengthMm: about(12.1, 0.6),
  },
  pressed: {
    mouthFromEndMm: about(14.6, 0.7),
    endGapMm: about(1.4, 0.7),
    shoulderGapMm: about(1.9, 0.7),
    engagedLengthMm: about(13.1, 0.7),
  },
};

/** The bolt meets the spindle end 0.4 mm before the press is reached; invented. */
export const bottoming: SeatPicture = {
  spindle,
  arm: { ...arm, boreLengthMm: 14.2, boltSeatFromMouthMm: 14.2 },
  verdict: 'bottoms-on-end',
  handFit: { mouthFromEndMm: 13.6, endGapMm: about(0.6, 0.6), shoulderGapMm: about(2.9, 0.6), engagedLengthMm: 12.1 },
  pressed: { mouthFromEndMm: 14.6, endGapMm: about(-0.4, 0.7), shoulderGapMm: about(1.9, 0.7), engagedLengthMm: 13.1 },
};

/** The bore's edge meets the run-out 0.5 mm before the press is reached; invented. */
export const stoppedAtRunOut: SeatPicture = {
  spindle: { ...spindle, flatLengthMm: 13.6, shoulderFromEndMm: 16.2 },
  arm: { ...arm, seatIntrusionMm: 0.8 },
  verdict: 'hits-shoulder',
  handFit: { mouthFromEndMm: 13.6, endGapMm: 1.6, shoulderGapMm: 0.5, engagedLengthMm: 12.1 },
  pressed: { mouthFromEndMm: 14.6, endGapMm: 0.6, shoulderGapMm: -0.5, engagedLengthMm: 12.6 },
};

/** The arm's face meets the wall 0.2 mm before the press is reached; invented. */
export const stoppedAtWall: SeatPicture = {
  spindle: { ...spindle, flatLengthMm: 15, shoulderFromEndMm: 15.4 },
  arm: { ...arm, mouthChamferMm: 1 },
  verdict: 'hits-shoulder',
  handFit: { mouthFromEndMm: 14.6, endGapMm: 1.4, shoulderGapMm: 0.8 },
  pressed: { mouthFromEndMm: 15.6, endGapMm: 0.4, shoulderGapMm: -0.2 },
};

/** Known by a trial fit with a depth rod alone; invented. */
export const trialFit: SeatPicture = {
  verdict: 'marginal',
  handFit: {
    mouthFromEndMm: null,
    endGapMm: { value: 1.6, standardUncertainty: 0.06 },
    shoulderGapMm: { value: 3.1, standardUncertainty: 0.06 },
    engagedLengthMm: null,
  },
  pressed: {
    mouthFromEndMm: null,
    endGapMm: { lower: -0.1, nominal: 0.6, upper: 1 },
    shoulderGapMm: { lower: 1.6, nominal: 2.1, upper: 2.5 },
    engagedLengthMm: null,
  },
};

/** All of them by name. */
export const samples = { good, bottoming, stoppedAtRunOut, stoppedAtWall, trialFit };

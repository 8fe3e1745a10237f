/**
 * Sizes drawn where nothing is known, mm: a picture needs an outline, and it says that this one is none to measure.
 * Chosen by judgement to look like a common joint. @internal
 */
export const STAND_IN = {
  halfAtEnd: 6.35,
  faceAngleDeg: 2,
  stopFromEnd: 16.8,
  endGap: 2,
  shoulderGap: 3,
  endChamfer: 1,
  mouthChamfer: 0.8,
  bossRadius: 15.5,
  recessRadius: 11,
} as const;

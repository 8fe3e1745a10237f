import type { Limits } from '@spindlewright/quantity';
import type { SeatPrediction } from '@spindlewright/taper';
import type { SeatBasis } from './seat-part.ts';

/** A verdict in plain words. @internal */
export const verdictWords: Readonly<Record<SeatPrediction['verdict'], string>> = {
  seats: 'seats',
  marginal: 'may seat: too close to say',
  'bottoms-on-end': 'bolt lands on the spindle end',
  'hits-shoulder': 'arm is stopped at the shoulder',
  'too-little-engagement': 'too little of the flats in use',
  'does-not-start': 'arm does not go on',
};

/** A way of knowing in plain words. @internal */
export const basisWords: Readonly<Record<SeatBasis, string>> = {
  'trial-fit': 'trial fit',
  readings: 'readings of the flats',
  'published-set': 'published sizes alone',
};

/** Ids of records in plain words. @internal */
export const recordWords: Readonly<Record<string, string>> = {
  'square-taper-jis': 'JIS square taper',
  'square-taper-iso': 'ISO square taper',
  unlisted: 'another square than those listed',
  unknown: 'not known',
};

/** `2.1 mm (1.4 to 2.9)`, or `not known`; a bare number when the limits do not differ. Bounds are rounded outward. @internal */
export function limitsWords(value: Limits | null, unit: string, decimals = 1): string {
  if (value === null) return 'not known';
  const nominal = plain(value.nominal, decimals);
  const lower = plain(outward(value.lower, decimals, Math.floor), decimals);
  const upper = plain(outward(value.upper, decimals, Math.ceil), decimals);
  return lower === upper || value.lower === value.upper
    ? `${nominal} ${unit}`
    : `${nominal} ${unit} (${lower} to ${upper})`;
}

// A bound that already meets the decimal, but for the last bit of its double, is not pushed past it.
function outward(value: number, decimals: number, round: (x: number) => number): number {
  const scale = 10 ** decimals;
  const near = Math.round(value * scale);
  return Math.abs(value * scale - near) < 1e-6 ? near / scale : round(value * scale) / scale;
}

/** A number with fixed decimals and no negative zero. @internal */
export const plain = (value: number, decimals: number): string => {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace('-', '') : text;
};

/** A torque in Nm, with a decimal only where it has one. @internal */
export const torqueWords = (torqueNm: number): string => plain(torqueNm, Number.isInteger(torqueNm) ? 0 : 1);

/** A gap in words: below zero the arm is stopped before it is pressed, and it says by how much. @internal */
export function gapWords(value: Limits | null): string {
  if (value === null) return 'not known';
  const side = (gap: number, round: (x: number) => number): string => {
    const rounded = outward(gap, 1, round);
    return rounded < 0 ? `${plain(-rounded, 1)} short` : plain(rounded, 1);
  };
  const nominal = value.nominal > 0 ? `${plain(value.nominal, 1)} mm` : `none, ${plain(-value.nominal, 1)} mm short`;
  if (value.lower === value.upper) return nominal;
  return `${nominal} (${side(value.lower, Math.floor)} to ${side(value.upper, Math.ceil)})`;
}

/** A share with its limits: `51 % (13 to 100)`. @internal */
export function shareWords({ lower, nominal, upper }: Limits): string {
  const [a, b, c] = [lower, nominal, upper].map((share) => Math.floor(share * 100 + 1e-9));
  return a === c ? `${b} %` : `${b} % (${a} to ${c})`;
}

const PATH_WORDS: Readonly<Record<string, string>> = {
  'trialFit.endGapMm': 'the end gap, bolt seat to spindle end, with the arm pushed on by hand',
  'trialFit.shoulderGapMm': 'the shoulder gap, arm to wall or run-out, with the arm pushed on by hand',
  partMakerTorqueNm: 'the torque that the part maker asks for',
  'pressing.axialForceN': "the bolt force (the part maker's torque, and what is on thread and head)",
  'pressing.friction': 'the friction of the flats',
  'pressing.materials.arm.yieldStrengthMPa': 'the alloy of the arm',
  'arm.yieldStrengthMPa': 'the alloy of the arm (ask the part maker for its yield strength)',
  'arm.acrossFlatsAtMouthMm': 'the size of the square hole',
  'spindle.acrossFlatsAtEndMm': 'the size of the square of the spindle',
  'arm.faceAngleDeg': 'the face angle of the hole',
  'spindle.faceAngleDeg': 'the face angle of the spindle',
  'arm.boltSeatFromMouthMm': "the depth of the bolt's seat in the arm",
  'arm.boreLengthMm': 'the length of the square hole',
  'arm.bossDiameterMm': 'the diameter of the boss round the hole',
  'arm.boreCornerRadiusMm': 'the corner radius of the hole',
  'arm.mouthChamferMm': 'the chamfer at the mouth of the hole',
  'arm.seatIntrusionMm': 'how far washer or pilot reach into the hole',
  'spindle.flatLengthMm': 'the length of the flats',
  'spindle.shoulderFromEndMm': 'the distance of the wall from the spindle end',
  'spindle.endChamferMm': 'the chamfer at the spindle end',
  'spindle.cornerDiameterMm': 'the diameter over the corners of the spindle',
  'fixing.lengthUnderHeadMm': 'the length of the bolt under its head',
  'fixing.threadDepthMm': 'the depth of the thread in the spindle',
  'fixing.washerThicknessMm': 'the thickness of the washer',
  'fixing.endGapMm': 'the end gap',
  'clamp.safetyCatch': 'the safety catch',
  'clamp.slotGapMm': 'the gap left in the slot',
  'clamp.axialPlayMm': 'the shift of the arm along the spindle',
  'clamp.boltCount': 'the number of pinch bolts',
  'clamp.clampWidthMm': 'the width of the clamp',
  'clamp.hingeToBoltMm': 'the distance from the hinge of the clamp to its bolts',
  'clamp.hingeToAxisMm': 'the distance from the hinge of the clamp to the axis',
  'spline.gapAtTorqueMm': 'the gap at the stop with the bolt at torque',
  'spline.gapByHandMm': 'the gap at the stop with the arm pushed on by hand',
  'spline.forceToStopN': 'the force that brings the arm onto its stop',
  'cotter.sameWayRound': 'which way round the cotters are',
  'cotter.pressForceN': 'the force of the press on the cotter',
  'cotter.flatAngleDeg': "the angle of the cotter's flat",
  'cotter.flatLengthMm': 'the length of the flat across the spindle',
  'cotter.flatWidthMm': 'the width of the flat along the spindle',
  'cotter.axisToFlatMm': 'the distance from the axis of the spindle to its flat',
  'faceTeeth.flankAngleDeg': 'the angle of a tooth flank',
  'faceTeeth.outerDiameterMm': 'the outer diameter of the teeth',
  'faceTeeth.innerDiameterMm': 'the inner diameter of the teeth',
  'bar.crankLengthMm': 'the length of the crank',
  'bar.overhangMm': 'the distance from the middle of the pedal to the section looked at',
  'bar.barDiameterMm': 'the diameter of the bar',
  'bar.yieldStrengthMPa': 'the yield strength of the bar',
  flats: 'whether the flats are greased or dry',
  endGapMm: 'the end gap',
  shoulderGapMm: 'the shoulder gap',
  playAngleDeg: 'the play',
  markEndFromSpindleEndMm: 'the place of the mark',
  releaseForceN: 'the force that took the arm off',
  runoutMm: 'the run-out',
  torqueAtFirstMovementNm: 'the torque at which the bolt first moved',
  turnsToTorque: 'the turns to torque',
  partMakerStatement: 'what the part maker says of these two parts',
  'fixing.travelMm': 'how far the press moves the arm',
  'fixing.holeDepthMm': 'the depth of the hole in the spindle',
};

/** A path of a job or prediction in plain words; the path itself where it has none. @internal */
export const pathWords = (path: string): string =>
  (Object.hasOwn(PATH_WORDS, path) ? PATH_WORDS[path] : undefined) ?? path;

/** Limits of a force in kN for reading. @internal */
export const forceWords = ({ lower, nominal, upper }: Limits, digits?: number): string =>
  limitsWords({ lower: lower / 1000, nominal: nominal / 1000, upper: upper / 1000 }, 'kN', digits);

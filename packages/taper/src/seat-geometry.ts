import type { Limits } from '@spindlewright/quantity';
import { bounds, type Corner, highest, nominal, opposite } from './interval.ts';
import type { Joint } from './joint.ts';

const tangent = (angleDeg: number): number => Math.tan((angleDeg * Math.PI) / 180);

/**
 * Where the mouth stands when the arm, pushed on by hand, first touches.
 *
 * With tan s and tan a of spindle and bore, the gap per side at depth z is (A - S)/2 - m tan a + z (tan a - tan s), linear
 * in z, so first contact is at an end of the overlap: at its outer end when the bore is the steeper of the two, at its
 * inner end when the spindle is. Each end is set either by the chamfer or by where the other part stops; moving the arm on,
 * the later of the two roots is the one that holds. With equal angles all four are (A - S)/(2 tan a).
 */
function firstContact(joint: Joint, corner: Corner, spindleDeg: number, armDeg: number): number {
  const { spindle, arm } = joint;
  const s = tangent(spindleDeg);
  const a = tangent(armDeg);
  const half = (corner(arm.acrossFlatsAtMouthMm) - corner(spindle.acrossFlatsAtEndMm, false)) / 2;
  const roots =
    a >= s
      ? [(half + corner(spindle.endChamferMm) * (a - s)) / a, (half - corner(arm.boreLengthMm, false) * (a - s)) / s]
      : [(half + corner(arm.mouthChamferMm) * (s - a)) / s, (half - corner(spindle.flatLengthMm, false) * (s - a)) / a];
  return Math.max(...roots);
}

/**
 * Hand fit at one corner. The sizes and chamfers act in one direction whatever the others are; an angle does so too while
 * the other one stays on its side, and the direction may turn where they are equal. So the extremes lie at the corners of
 * the two angles or where the angles are equal.
 */
export function handFitAt(joint: Joint, corner: Corner): number {
  const s = joint.spindle.faceAngleDeg;
  const a = joint.arm.faceAngleDeg;
  if (corner === nominal) return firstContact(joint, corner, s.nominal, a.nominal);
  const common = [Math.max(s.lower, a.lower), Math.min(s.upper, a.upper)] as const;
  const pairs = [s.lower, s.upper].flatMap((spindleDeg) =>
    [a.lower, a.upper].map((armDeg): [number, number] => [spindleDeg, armDeg]),
  );
  if (common[0] <= common[1]) pairs.push([common[0], common[0]], [common[1], common[1]]);
  const found = pairs.map(([spindleDeg, armDeg]) => firstContact(joint, corner, spindleDeg, armDeg));
  return corner === highest ? Math.max(...found) : Math.min(...found);
}

/** Outer end of the contact zone. @internal */
export const outerEndAt = ({ spindle, arm }: Joint, mouthMm: Limits, corner: Corner): number =>
  Math.max(corner(spindle.endChamferMm), corner(mouthMm) - corner(arm.boreLengthMm, false));

/** Inner end of the contact zone. @internal */
export const innerEndAt = ({ spindle, arm }: Joint, mouthMm: Limits, corner: Corner): number =>
  Math.min(corner(mouthMm) - corner(arm.mouthChamferMm, false), corner(spindle.flatLengthMm));

/** Engaged length, written as the least of four differences so that the mouth position enters each of them once. */
export const engagedAt = ({ spindle, arm }: Joint, mouthMm: Limits, corner: Corner): number => {
  const chamferEnd = corner(spindle.endChamferMm, false);
  const chamferMouth = corner(arm.mouthChamferMm, false);
  return Math.min(
    corner(mouthMm) - chamferMouth - chamferEnd,
    corner(arm.boreLengthMm) - chamferMouth,
    corner(spindle.flatLengthMm) - chamferEnd,
    corner(spindle.flatLengthMm) + corner(arm.boreLengthMm) - corner(mouthMm, false),
  );
};

/** The shorter of the two flats that could bear at all. @internal */
export const usableFlat = ({ spindle, arm }: Joint): Limits =>
  bounds((corner) =>
    Math.min(
      corner(spindle.flatLengthMm) - corner(spindle.endChamferMm, false),
      corner(arm.boreLengthMm) - corner(arm.mouthChamferMm, false),
    ),
  );

/** How far the mouth is past the chamfers at hand fit, or short of them. @internal */
export const startOf = ({ spindle, arm }: Joint, mouthMm: Limits): Limits =>
  bounds((corner) => corner(mouthMm) - corner(arm.mouthChamferMm, false) - corner(spindle.endChamferMm, false));

/** Where the arm is stopped: the run-out meets the edge of the bore, or the shoulder meets its face. @internal */
export const stopFromEndAt = ({ spindle, arm }: Joint, corner: Corner): number =>
  Math.min(corner(spindle.shoulderFromEndMm), corner(spindle.flatLengthMm) + corner(arm.mouthChamferMm));

/** Depth at which the bolt would meet the spindle end, from the mouth. @internal */
export const boltFaceAt = ({ arm }: Joint, corner: Corner): number =>
  corner(arm.boltSeatFromMouthMm) - corner(arm.seatIntrusionMm, false);

/** Both gaps with the mouth at a position. @internal */
export const gapsAt = (joint: Joint, mouthMm: Limits): { endGapMm: Limits; shoulderGapMm: Limits } => ({
  endGapMm: bounds((corner) => boltFaceAt(joint, corner) - corner(mouthMm, false)),
  shoulderGapMm: bounds((corner) => stopFromEndAt(joint, corner) - corner(mouthMm, false)),
});

/** Across flats of the spindle in the middle of the contact zone. @internal */
export const middleAcrossFlatsAt = (joint: Joint, mouthMm: Limits, corner: Corner): number =>
  corner(joint.spindle.acrossFlatsAtEndMm) +
  (outerEndAt(joint, mouthMm, corner) + innerEndAt(joint, mouthMm, corner)) *
    tangent(corner(joint.spindle.faceAngleDeg));

/** Width of the flats of the spindle there: what the turned corners leave of the square. @internal */
export function flatWidthAt(joint: Joint, mouthMm: Limits, corner: Corner): number {
  const smallest = middleAcrossFlatsAt(joint, mouthMm, corner);
  const largest = middleAcrossFlatsAt(joint, mouthMm, opposite(corner));
  const chord = corner(joint.spindle.cornerDiameterMm) ** 2 - largest ** 2;
  return Math.max(0, Math.min(Math.sqrt(Math.max(0, chord)), smallest));
}

/** How far the face angles differ, as |tan - tan|. @internal */
export function mismatch({ spindle, arm }: Joint): Limits {
  const [s, a] = [spindle.faceAngleDeg, arm.faceAngleDeg];
  const difference = (x: number, y: number): number => tangent(x) - tangent(y);
  return {
    lower: Math.max(0, difference(s.lower, a.upper), difference(a.lower, s.upper)),
    nominal: Math.abs(difference(s.nominal, a.nominal)),
    upper: Math.max(difference(s.upper, a.lower), difference(a.upper, s.lower)),
  };
}

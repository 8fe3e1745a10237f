import type { Limits } from '@spindlewright/quantity';
import { type Corner, highest, nominal, opposite } from './interval.ts';
import type { Joint } from './joint.ts';

/** An angle in radians. @internal */
export const radians = (angleDeg: number): number => (angleDeg * Math.PI) / 180;

/** Tangent of an angle. @internal */
export const tangent = (angleDeg: number): number => Math.tan(radians(angleDeg));

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
  const [steeper, flatter] = [Math.max(a, s), Math.min(a, s)];
  const apart = steeper - flatter;
  const [chamferMm, lengthMm] =
    a < s ? [arm.mouthChamferMm, spindle.flatLengthMm] : [spindle.endChamferMm, arm.boreLengthMm];
  return Math.max((half + corner(chamferMm) * apart) / steeper, (half - corner(lengthMm, false) * apart) / flatter);
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
  const extreme = corner === highest ? Math.max : Math.min;
  const at = (spindleDeg: number, armDeg: number): number => firstContact(joint, corner, spindleDeg, armDeg);
  const ends = [at(s.lower, a.lower), at(s.lower, a.upper), at(s.upper, a.lower), at(s.upper, a.upper)];
  const [from, to] = [Math.max(s.lower, a.lower), Math.min(s.upper, a.upper)];
  return from <= to ? extreme(...ends, at(from, from), at(to, to)) : extreme(...ends);
}

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
export const usableFlatAt = ({ spindle, arm }: Joint, corner: Corner): number =>
  Math.min(
    corner(spindle.flatLengthMm) - corner(spindle.endChamferMm, false),
    corner(arm.boreLengthMm) - corner(arm.mouthChamferMm, false),
  );

/** How far the mouth is past the chamfers at hand fit, or short of them. @internal */
export const startAt = ({ spindle, arm }: Joint, mouthMm: Limits, corner: Corner): number =>
  corner(mouthMm) - corner(arm.mouthChamferMm, false) - corner(spindle.endChamferMm, false);

/** Where the arm is stopped: the run-out meets the edge of the bore, or the shoulder meets its face. @internal */
export const stopFromEndAt = ({ spindle, arm }: Joint, corner: Corner): number =>
  Math.min(corner(spindle.shoulderFromEndMm), corner(spindle.flatLengthMm) + corner(arm.mouthChamferMm));

/** Depth at which the bolt would meet the spindle end, from the mouth. @internal */
export const boltFaceAt = ({ arm }: Joint, corner: Corner): number =>
  corner(arm.boltSeatFromMouthMm) - corner(arm.seatIntrusionMm, false);

/** Across flats of the spindle in the middle of the contact zone. @internal */
export const middleAcrossFlatsAt = ({ spindle, arm }: Joint, mouthMm: Limits, corner: Corner): number => {
  const outerEnd = Math.max(corner(spindle.endChamferMm), corner(mouthMm) - corner(arm.boreLengthMm, false));
  const innerEnd = Math.min(corner(mouthMm) - corner(arm.mouthChamferMm, false), corner(spindle.flatLengthMm));
  return corner(spindle.acrossFlatsAtEndMm) + (outerEnd + innerEnd) * tangent(corner(spindle.faceAngleDeg));
};

/** Width of the flats of the spindle there: what the turned corners leave of the square. @internal */
export function flatWidthAt(joint: Joint, mouthMm: Limits, corner: Corner): number {
  const smallest = middleAcrossFlatsAt(joint, mouthMm, corner);
  const largest = middleAcrossFlatsAt(joint, mouthMm, opposite(corner));
  const chord = corner(joint.spindle.cornerDiameterMm) ** 2 - largest ** 2;
  return Math.max(0, Math.min(Math.sqrt(Math.max(0, chord)), smallest));
}

/** Bore beyond the outer end of the contact. @internal */
export const collarAt = ({ spindle, arm }: Joint, mouthMm: Limits, corner: Corner): number =>
  Math.max(0, corner(spindle.endChamferMm) + corner(arm.boreLengthMm) - corner(mouthMm, false));

/** How far the face angles differ, as |tan - tan|. @internal */
export function mismatchAt({ spindle, arm }: Joint, corner: Corner): number {
  const [s, a] = [spindle.faceAngleDeg, arm.faceAngleDeg];
  const difference = (steeper: Limits, other: Limits): number =>
    tangent(corner(steeper)) - tangent(corner(other, false));
  // At least 0: limits that overlap have equal angles among them.
  return Math.max(0, difference(s, a), difference(a, s));
}

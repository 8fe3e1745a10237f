import type { Limits } from '@spindlewright/quantity';
import { LEAST_CONTACT_MM } from './fitted-factors.ts';
import { type Corner, lowest, opposite } from './interval.ts';
import type { Joint, ResolvedPressing } from './joint.ts';
import type { PressState } from './press-model.ts';
import { engagedAt, flatWidthAt, middleAcrossFlatsAt, mismatch } from './seat-geometry.ts';
import type { Material } from './shapes.ts';

/**
 * Gathers what the press depends on at the corner where the travel is extreme.
 *
 * The travel grows with the force, the across flats, the angle mismatch and (ring) the arm's Poisson's ratio; it falls with
 * the bore's angle over the spindle's (at the mouth no collar helps), friction, angle, engaged length, flat width, collar, boss, fillet, moduli and yield strength. Each is taken at its own
 * bound, so the travel found encloses that of every combination, at the price of some width. With the mouth where the arm
 * already is pressed to, the length that bears has grown and the collar has shrunk, and neither changes any further.
 * @internal
 */
export function pressStateAt(
  joint: Joint,
  pressing: ResolvedPressing,
  mouthMm: Limits,
  corner: Corner,
  place: 'hand-fit' | 'pressed' = 'hand-fit',
): PressState {
  const { spindle, arm } = joint;
  const inverse = opposite(corner);
  const faceAngleRad = (corner(spindle.faceAngleDeg, false) * Math.PI) / 180;
  const collarMm = Math.max(0, inverse(spindle.endChamferMm) + inverse(arm.boreLengthMm) - inverse(mouthMm, false));
  // What a difference of the angles adds may rise or fall with the collar: both ends of it are tried.
  const otherCollarMm = Math.max(0, corner(spindle.endChamferMm) + corner(arm.boreLengthMm) - corner(mouthMm, false));
  const roomMm = inverse(spindle.flatLengthMm) + inverse(arm.mouthChamferMm) - inverse(mouthMm, false);
  const strength = pressing.materials.arm.yieldStrengthMPa;
  return {
    compliance: pressing.compliance,
    axialForceN: corner(pressing.axialForceN),
    friction: corner(pressing.friction, false),
    faceAngleRad,
    engagedLengthMm: engagedAt(joint, mouthMm, inverse),
    // At a corner that no real joint reaches, the faces may have met beyond the axis.
    acrossFlatsMm: Math.max(LEAST_CONTACT_MM, middleAcrossFlatsAt(joint, mouthMm, corner)),
    flatWidthMm: flatWidthAt(joint, mouthMm, inverse),
    widestFlatMm: flatWidthAt(joint, mouthMm, corner),
    collarMm,
    otherCollarMm,
    closingGrows: corner !== lowest,
    growthMm: place === 'pressed' ? 0 : Math.max(0, Math.min(collarMm, roomMm)),
    closingMm: Math.max(0, (engagedAt(joint, mouthMm, corner) * corner(mismatch(joint))) / Math.tan(faceAngleRad)),
    tangentRatio:
      Math.tan((corner(arm.faceAngleDeg, false) * Math.PI) / 180) /
      Math.tan((corner(spindle.faceAngleDeg) * Math.PI) / 180),
    bossDiameterMm: corner(arm.bossDiameterMm, false),
    boreCornerRadiusMm: corner(arm.boreCornerRadiusMm, false),
    spindle: materialAt(pressing.materials.spindle, corner, false),
    arm: {
      ...materialAt(pressing.materials.arm, corner, true),
      ...(strength === undefined ? {} : { yieldStrengthMPa: corner(strength, false) }),
    },
  };
}

const materialAt = (material: Material<Limits>, corner: Corner, poissonGrows: boolean): Material => ({
  youngsModulusGPa: corner(material.youngsModulusGPa, false),
  poissonsRatio: corner(material.poissonsRatio, poissonGrows),
});

import type { Limits } from '@spindlewright/quantity';
import { LEAST_CONTACT_MM } from './fitted-factors.ts';
import { opposite } from './interval.ts';
import type { PressLimits } from './joint.ts';
import type { PressPlace, PressState } from './press-model.ts';
import { collarAt, engagedAt, flatWidthAt, middleAcrossFlatsAt, radians } from './seat-geometry.ts';
import type { Material } from './shapes.ts';

/**
 * Gathers what the press depends on at the corner where the travel is extreme.
 *
 * The travel grows with the force, the across flats, the angle mismatch and (ring) the arm's Poisson's ratio; it falls
 * with the bore's angle over the spindle's (at the mouth no collar helps), friction, angle, engaged length, flat width,
 * collar, boss, fillet, moduli and yield strength. Each is taken at its own bound, so the travel found encloses that of
 * every combination, at the price of some width. With the mouth where the arm already is pressed to, the length that
 * bears has grown and the collar has shrunk, and neither changes any further.
 * @internal
 */
export function pressStateAt(
  { joint, mouthMm, corner }: PressPlace,
  pressing: PressLimits,
  isPressed: boolean,
): PressState {
  const { spindle, arm } = joint;
  const inverse = opposite(corner);
  const faceAngleRad = radians(corner(spindle.faceAngleDeg, false));
  const collarMm = collarAt(joint, mouthMm, inverse);
  const roomMm = inverse(spindle.flatLengthMm) + inverse(arm.mouthChamferMm) - inverse(mouthMm, false);
  const material = (of: Required<Material<Limits>>, poissonGrows: boolean): Required<Material> => ({
    youngsModulusGPa: corner(of.youngsModulusGPa, false),
    poissonsRatio: corner(of.poissonsRatio, poissonGrows),
    yieldStrengthMPa: corner(of.yieldStrengthMPa, false),
  });
  return {
    axialForceN: corner(pressing.axialForceN),
    friction: corner(pressing.friction, false),
    faceAngleRad,
    engagedLengthMm: engagedAt(joint, mouthMm, inverse),
    // At a corner that no real joint reaches, the faces may have met beyond the axis.
    acrossFlatsMm: Math.max(LEAST_CONTACT_MM, middleAcrossFlatsAt(joint, mouthMm, corner)),
    flatWidthMm: flatWidthAt(joint, mouthMm, inverse),
    widestFlatMm: flatWidthAt(joint, mouthMm, corner),
    collarMm,
    growthMm: isPressed ? 0 : Math.max(0, Math.min(collarMm, roomMm)),
    bossDiameterMm: corner(arm.bossDiameterMm, false),
    boreCornerRadiusMm: corner(arm.boreCornerRadiusMm, false),
    spindle: material(pressing.materials.spindle, false),
    arm: material(pressing.materials.arm, true),
  };
}

import { DomainError, hardLimits, type Limits, type Measurand } from '@spindlewright/quantity';
import { takenDimensions, takenMaterials } from './assumed-limits.ts';
import { exactly, OPEN } from './interval.ts';
import type { PressSolver } from './press-model.ts';
import { pressSolvers } from './press-models.ts';
import type { ArmShape, Compliance, Material, Pressing, SpindleShape } from './shapes.ts';

/** Both shapes with every field filled in. @internal */
export interface Joint {
  spindle: Required<SpindleShape<Limits>>;
  arm: Required<ArmShape<Limits>>;
}

/** What presses the arm on, with every field filled in; a yield strength that is not known is infinite. @internal */
export interface PressLimits {
  axialForceN: Limits;
  friction: Limits;
  materials: Record<'spindle' | 'arm', Required<Material<Limits>>>;
  /** Solves the press at one corner, by the model asked for. */
  solve: PressSolver;
}

/** The same with the name of the model. @internal */
export interface ResolvedPressing extends PressLimits {
  compliance: Compliance;
}

const limitsOr = (value: Measurand | undefined, otherwise: Limits): Limits =>
  value === undefined ? otherwise : hardLimits(value);

/** Fills in defaults and turns every reading into its hard bounds. @internal */
export function resolveJoint(spindle: SpindleShape<Measurand>, arm: ArmShape<Measurand>): Joint {
  const none = exactly(0);
  const boreLengthMm = hardLimits(arm.boreLengthMm);
  return {
    spindle: {
      acrossFlatsAtEndMm: hardLimits(spindle.acrossFlatsAtEndMm),
      faceAngleDeg: hardLimits(spindle.faceAngleDeg),
      flatLengthMm: hardLimits(spindle.flatLengthMm),
      endChamferMm: limitsOr(spindle.endChamferMm, none),
      shoulderFromEndMm: limitsOr(spindle.shoulderFromEndMm, OPEN),
      cornerDiameterMm: limitsOr(spindle.cornerDiameterMm, takenDimensions.cornerDiameterMm),
    },
    arm: {
      acrossFlatsAtMouthMm: hardLimits(arm.acrossFlatsAtMouthMm),
      faceAngleDeg: hardLimits(arm.faceAngleDeg),
      boreLengthMm,
      boltSeatFromMouthMm: limitsOr(arm.boltSeatFromMouthMm, boreLengthMm),
      seatIntrusionMm: limitsOr(arm.seatIntrusionMm, none),
      mouthChamferMm: limitsOr(arm.mouthChamferMm, none),
      bossDiameterMm: limitsOr(arm.bossDiameterMm, takenDimensions.bossDiameterMm),
      boreCornerRadiusMm: limitsOr(arm.boreCornerRadiusMm, takenDimensions.boreCornerRadiusMm),
    },
  };
}

function resolveMaterial(part: 'spindle' | 'arm', given?: Material<Measurand>): Required<Material<Limits>> {
  const assumed = takenMaterials[part];
  return {
    youngsModulusGPa: given ? hardLimits(given.youngsModulusGPa) : assumed.youngsModulusGPa,
    poissonsRatio: given ? hardLimits(given.poissonsRatio) : assumed.poissonsRatio,
    yieldStrengthMPa: limitsOr(given?.yieldStrengthMPa, OPEN),
  };
}

/** Refuses one shape without the other. @internal */
export function requireBothShapes(where: string, shapes: { spindle?: unknown; arm?: unknown }): void {
  if ((shapes.spindle === undefined) === (shapes.arm === undefined)) return;
  const path = shapes.spindle === undefined ? 'spindle' : 'arm';
  throw new DomainError(where, [{ path, received: 'nothing', allowed: 'both shapes or neither' }]);
}

/** Refuses a model with yield when no yield strength is given. @internal */
export function requireYieldStrength(where: string, at: string, pressing: Pressing<Measurand>): void {
  if (!pressing.compliance?.endsWith('plastic') || pressing.materials?.arm?.yieldStrengthMPa !== undefined) return;
  const allowed = `the yield strength of the arm, which ${pressing.compliance} needs`;
  throw new DomainError(where, [{ path: `${at}materials.arm.yieldStrengthMPa`, received: 'nothing', allowed }]);
}

/** Fills in the materials and the model. @internal */
export function resolvePressing(pressing: Pressing<Measurand>): ResolvedPressing {
  const { spindle, arm } = pressing.materials ?? {};
  const compliance = pressing.compliance ?? (arm?.yieldStrengthMPa === undefined ? 'fitted' : 'fitted-plastic');
  return {
    axialForceN: hardLimits(pressing.axialForceN),
    friction: hardLimits(pressing.friction),
    materials: { spindle: resolveMaterial('spindle', spindle), arm: resolveMaterial('arm', arm) },
    compliance,
    solve: pressSolvers[compliance],
  };
}

import { checkInput, type Finding } from '@spindlewright/quantity';
import { find } from './find.ts';
import { ringsMessages as messages } from './messages/rings.ts';
import { frictionSpec } from './shapes.ts';

/** Forces of a cone, or cylinder, under an even contact pressure. */
export interface ConeForces {
  /** Force normal to the whole surface, in N, at least 0. */
  normalForceN: number;
  /** Axial force that pushes it on, in N, at least 0. */
  pushOnForceN: number;
  /** Axial force that pulls it off, in N; negative when it has to be held on. */
  releaseForceN: number;
  /** Force along the surface at which it slips round, in N, at least 0. */
  slipForceN: number;
  /** Torque at which it slips round, in Nm, at least 0. */
  slipTorqueNm: number;
  /** Sliding off by itself. */
  findings: Finding[];
}

/**
 * Gives the forces that push a round taper on, pull it off and turn it, from its contact pressure.
 *
 * @remarks
 * Formula: N = p pi d L/cos a; push on = N (sin a + mu cos a) = pi d L p (mu + tan a); release = pi d L p (mu' - tan a);
 * slip = mu N; torque = slip d/2.
 *
 * Validity: even pressure; each load by itself, since friction used one way is not there for the other. Angle 0 is a
 * cylinder. On a slope, friction of tan a or less does not hold: finding `cone-slides-off`.
 *
 * Accuracy: exact for that model.
 *
 * @param input - `pressureMPa` 0 to 5000 MPa; `meanDiameterMm` and `lengthMm` above 0 to 1000 mm; `faceAngleDeg` half the
 * cone angle, 0 to 10 deg; `friction` and `releaseFriction` (default: `friction`) 0 to 1.
 * @returns Forces in N and torque in Nm.
 * @throws {@link DomainError} for unknown keys and values outside those ranges.
 * @example
 * ```ts
 * import { coneForces } from '@spindlewright/taper';
 * const forces = coneForces({ pressureMPa: 44.36, meanDiameterMm: 30, lengthMm: 30, faceAngleDeg: 2.38594, friction: 0.1 });
 * [(forces.pushOnForceN / 1000).toFixed(2), (forces.releaseForceN / 1000).toFixed(2)]; // => ['17.77', '7.32']
 * ```
 * @see Statics of the wedge.
 */
export function coneForces(input: {
  pressureMPa: number;
  meanDiameterMm: number;
  lengthMm: number;
  faceAngleDeg: number;
  friction: number;
  releaseFriction?: number;
}): ConeForces {
  checkInput({
    where: 'coneForces',
    value: input,
    fields: {
      pressureMPa: { type: 'number', unit: 'MPa', min: 0, max: 5000 },
      meanDiameterMm: { type: 'number', unit: 'mm', above: 0, max: 1000 },
      lengthMm: { type: 'number', unit: 'mm', above: 0, max: 1000 },
      faceAngleDeg: { type: 'number', unit: 'deg', min: 0, max: 10 },
      friction: frictionSpec('number'),
      releaseFriction: { ...frictionSpec('number'), optional: true },
    },
  });
  const { pressureMPa, meanDiameterMm, lengthMm, faceAngleDeg, friction, releaseFriction = friction } = input;
  const angle = (faceAngleDeg * Math.PI) / 180;
  const axialPerFriction = Math.PI * meanDiameterMm * lengthMm * pressureMPa;
  const normalForceN = axialPerFriction / Math.cos(angle) + 0;
  const slipForceN = friction * normalForceN + 0;
  const slides = pressureMPa > 0 && angle > 0 && releaseFriction <= Math.tan(angle);
  return {
    normalForceN,
    pushOnForceN: axialPerFriction * (friction + Math.tan(angle)) + 0,
    releaseForceN: axialPerFriction * (releaseFriction - Math.tan(angle)) + 0,
    slipForceN,
    slipTorqueNm: (slipForceN * meanDiameterMm) / 2000,
    findings: slides ? [find(messages, 'cone-slides-off', 'stop', { releaseFriction, faceAngleDeg })] : [],
  };
}

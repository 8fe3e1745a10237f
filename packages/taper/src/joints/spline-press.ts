import { checkInput, type Finding, hardLimits, type Limits, type Measurand } from '@spindlewright/quantity';
import { find } from '../find.ts';
import { bounds, type Corner } from '../interval.ts';
import { jointsMessages as messages } from '../messages/joints.ts';
import { checkWhole, measured } from './measured.ts';

/** A tapered spline that is pressed until it meets a stop. */
export interface SplinePressInput {
  /** Axial force of the bolt, 0 to 200000 N. */
  axialForceN: Measurand;
  /** Axial force that brings the arm onto its stop, above 0 to 200000 N: measured, or of the part maker. */
  forceToStopN: Measurand;
  /** Friction of the flanks, 0 to 1. */
  friction: Measurand;
  /** Taper of a flank against the axis, above 0 to 10 deg (ten-spline: 1). */
  taperPerSideDeg: Measurand;
  /** Number of splines, 2 to 200. */
  splineCount: number;
  /** Height over which a flank bears, above 0 to 20 mm. */
  flankHeightMm: Measurand;
  /** Length over which the splines engage, above 0 to 100 mm. */
  engagedLengthMm: Measurand;
  /** Mean radius of the flanks, above 0 to 100 mm. */
  meanRadiusMm: Measurand;
  /** Pressure that the weaker part bears on its flanks, above 0 to 2000 MPa. */
  allowablePressureMPa: Measurand;
  /** Share of the flanks that carry, above 0 to 1; 0.75 when absent. */
  carryingShare?: Measurand;
}

/** What the press on tapered splines comes to. */
export interface SplinePress {
  /** True when even the lowest force reaches the stop at its highest demand. */
  home: boolean;
  /** Share of the force to the stop that is there, 0 to 1. */
  pressReached: Limits;
  /** Force that the stop takes, in N; what the bolt has beyond the press. */
  stopForceN: Limits;
  /** Normal force of one flank, in N. */
  normalForceN: Limits;
  /** Contact pressure of a flank from the press alone, in MPa. */
  contactPressureMPa: Limits;
  /** Force that pulls the arm off without the bolt, in N; 0 or less: it comes off by itself. */
  releaseForceN: Limits;
  /** True when friction holds the arm at rest without its bolt, at its lowest. */
  holdsAtRestWithoutBolt: boolean;
  /** Torque that the flanks bear at the allowable pressure, in Nm. */
  torqueCapacityNm: Limits;
  /** What is worth saying. */
  findings: Finding[];
}

/**
 * Works out the press of an arm on tapered splines with a stop: whether it is home, what holds it and what torque it bears.
 *
 * @remarks
 * Formula: on z splines with two flanks each, F = 2 z N (sin a + mu cos a) up to the force that reaches the stop; what the
 * bolt has beyond goes into the stop. Release = 2 z N (mu cos a - sin a). Pressure N/(h L). Torque by one flank of each
 * spline: T = p h L z r share, the usual handbook form.
 *
 * Validity: straight flanks, force shared evenly; the force to the stop depends on how deep the arm was coined and has to
 * be measured or given by the maker. A force that does not reach the stop is the finding `not-home`.
 *
 * Accuracy: a model: no measured ten-spline press was found. Bounds are exact for independent readings.
 *
 * @param input - See {@link SplinePressInput}; each a number, limits or a value with uncertainty, `splineCount` a number.
 * @returns Forces in N, pressure in MPa, torque in Nm as limits; whether it is home and holds at rest.
 * @throws {@link DomainError} for unknown keys or values outside their ranges.
 * @example
 * ```ts
 * import { splinePress } from '@spindlewright/taper';
 * const press = splinePress({
 *   axialForceN: 25_000, forceToStopN: 15_000, friction: { lower: 0.1, nominal: 0.13, upper: 0.16 },
 *   taperPerSideDeg: 1, splineCount: 10, flankHeightMm: 1.8, engagedLengthMm: 16, meanRadiusMm: 10,
 *   allowablePressureMPa: 100,
 * });
 * press.home; // => true
 * press.stopForceN.nominal; // => 10000
 * Math.round(press.torqueCapacityNm.nominal); // => 216
 * ```
 * @see Ten-spline stop and taper: `spline-10-letter-2000`, `spline-10-overview`. Share of flanks: handbook form of splined
 * shafts, from memory.
 */
export function splinePress(input: SplinePressInput): SplinePress {
  checkInput({ where: 'splinePress', value: input, fields });
  checkWhole('splinePress', 'splineCount', input.splineCount);
  const F = hardLimits(input.axialForceN);
  const toStop = hardLimits(input.forceToStopN);
  const mu = hardLimits(input.friction);
  const angle = hardLimits(input.taperPerSideDeg);
  const height = hardLimits(input.flankHeightMm);
  const length = hardLimits(input.engagedLengthMm);
  const radius = hardLimits(input.meanRadiusMm);
  const bears = hardLimits(input.allowablePressureMPa);
  const share = hardLimits(input.carryingShare ?? 0.75);
  const flanks = 2 * input.splineCount;
  const radians = (corner: Corner, grows: boolean): number => (corner(angle, grows) * Math.PI) / 180;
  const wedge = (corner: Corner): number =>
    Math.sin(radians(corner, true)) + corner(mu) * Math.cos(radians(corner, true));
  const pressing = (corner: Corner): number => Math.min(corner(F), corner(toStop));
  const normalAt = (corner: Corner): number =>
    pressing(corner) / (flanks * wedge((limits, grows = true) => corner(limits, !grows)));
  const normalForceN = bounds(normalAt);
  const releaseForceN = releaseOf(pressing, mu, angle);
  const pressReached = bounds((corner) => Math.min(1, corner(F) / corner(toStop, false)));
  const findings: Finding[] = [];
  if (pressReached.upper < 1) {
    findings.push(find(messages, 'not-home', 'caution', { leftShare: 1 - pressReached.nominal }));
  } else if (pressReached.lower < 1) findings.push(find(messages, 'may-not-be-home', 'caution'));
  if (input.carryingShare === undefined) {
    findings.push(find(messages, 'share-of-flanks-assumed', 'note', {}, { path: 'carryingShare' }));
  }
  findings.push(find(messages, 'joint-instructions-first', 'caution'));
  return {
    home: pressReached.lower === 1,
    pressReached,
    stopForceN: bounds((corner) => Math.max(0, corner(F) - corner(toStop, false))),
    normalForceN,
    contactPressureMPa: bounds((corner) => corner(normalForceN) / (corner(height, false) * corner(length, false))),
    releaseForceN,
    holdsAtRestWithoutBolt: mu.lower > Math.tan((angle.upper * Math.PI) / 180),
    torqueCapacityNm: bounds(
      (corner) =>
        (corner(bears) * corner(height) * corner(length) * corner(radius) * corner(share) * input.splineCount) / 1000,
    ),
    findings,
  };
}

// Release over pressing force, (mu - tan a)/(mu + tan a), rises with friction and falls with the angle; so does the whole.
const releaseOf = (pressing: (corner: Corner) => number, mu: Limits, angle: Limits): Limits =>
  bounds((corner) => {
    const tangent = Math.tan((corner(angle, false) * Math.PI) / 180);
    const ratio = (corner(mu) - tangent) / (corner(mu) + tangent);
    // Below 0 the arm pushes itself off, the harder the more it was pressed.
    return ratio * (ratio >= 0 ? pressing(corner) : pressing((limits, grows = true) => corner(limits, !grows)));
  });

const fields = {
  axialForceN: measured('N', { min: 0, max: 200_000 }),
  forceToStopN: measured('N', { above: 0, max: 200_000 }),
  friction: measured('', { min: 0, max: 1 }),
  taperPerSideDeg: measured('deg', { above: 0, max: 10 }),
  splineCount: { type: 'number', unit: 'splines', min: 2, max: 200 },
  flankHeightMm: measured('mm', { above: 0, max: 20 }),
  engagedLengthMm: measured('mm', { above: 0, max: 100 }),
  meanRadiusMm: measured('mm', { above: 0, max: 100 }),
  allowablePressureMPa: measured('MPa', { above: 0, max: 2000 }),
  carryingShare: { ...measured('', { above: 0, max: 1 }), optional: true },
} as const;

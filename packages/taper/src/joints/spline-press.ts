import { checkInput, type Finding, hardLimits, type Limits, type Measurand } from '@spindlewright/quantity';
import { find } from '../find.ts';
import { bounds, type Corner, opposite } from '../interval.ts';
import { jointsMessages as messages } from '../messages/joints.ts';
import { checkWhole, measured, NO_GAP_MM } from './measured.ts';
import { gapFindings, splineTravel } from './spline-travel.ts';

/** A tapered spline that is pressed until it meets a stop. */
export interface SplinePressInput {
  /** Axial force of the bolt, 0 to 200000 N. */
  axialForceN: Measurand;
  /** Axial force that brings the arm onto its stop, 1 to 200000 N: measured, or of the part maker. */
  forceToStopN: Measurand;
  /** Friction of the flanks, 0 to 1. */
  friction: Measurand;
  /** Taper of a flank against the axis, 0.01 to 10 deg (ten-spline: 1). */
  taperPerSideDeg: Measurand;
  /** Number of splines, 2 to 200. */
  splineCount: number;
  /** Height over which a flank bears, 0.01 to 20 mm. */
  flankHeightMm: Measurand;
  /** Length over which the splines engage, 0.01 to 100 mm. */
  engagedLengthMm: Measurand;
  /** Mean radius of the flanks, above 0 to 100 mm. */
  meanRadiusMm: Measurand;
  /** Pressure that the weaker part bears on its flanks, above 0 to 2000 MPa. */
  allowablePressureMPa: Measurand;
  /** Share of the flanks that carry, above 0 to 1; 0.75 when absent. */
  carryingShare?: Measurand;
  /** Gap between the arm, pushed on by hand, and its stop, -10 to 20 mm; without it no travel is reckoned. */
  gapAtStopMm?: Measurand;
}

/** What the press on tapered splines comes to. */
export interface SplinePress {
  /** True when even the lowest force reaches the stop at its highest demand. */
  home: boolean;
  /** True when the splines press before the arm meets its stop, at the smallest gap; null without a gap. */
  pressesBeforeStop: boolean | null;
  /** Share of the force to the stop that is there, 0 to 1; 1 where the arm stands on its stop by hand. */
  pressReached: Limits;
  /** Travel from the fit by hand, in mm, no farther than the stop; null without a gap. */
  travelMm: Limits | null;
  /** Way that is left to the stop, in mm, at least 0; null without a gap. */
  leftToStopMm: Limits | null;
  /** Force over travel up to the stop, in N/mm; null without a gap, or where it may be none. */
  stiffnessNPerMm: Limits | null;
  /** How much wider a spline is than the flute it was pressed into, over both flanks, in mm; null without a gap. */
  interferenceMm: Limits | null;
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
 * spline: T = p h L z r share, the usual handbook form. With the gap g that the fit by hand leaves at the stop and the force
 * F0 that closes it: stiffness F0/g, travel g min(1, F/F0), interference 2 travel tan a on each spline.
 *
 * Validity: straight flanks, force shared evenly, and growing evenly with the travel. Without a gap at the stop, or with
 * less, the arm is there before its splines press: no press, finding `stop-before-press`. The force to the stop depends
 * on how deep the arm was coined and has to be measured or given by the maker. A force that does not reach the stop is
 * the finding `not-home`.
 *
 * Accuracy: a model: no measured ten-spline press was found, and that force and travel grow evenly is taken. Bounds are
 * exact for independent readings.
 *
 * @param input - See {@link SplinePressInput}; each a number, limits or a value with uncertainty, `splineCount` a number.
 * @returns Forces in N, travel in mm, stiffness in N/mm, pressure in MPa, torque in Nm as limits; whether it is home and
 * holds at rest.
 * @throws {@link DomainError} for unknown keys or values outside their ranges.
 * @example
 * ```ts
 * import { splinePress } from '@spindlewright/taper';
 * const press = splinePress({
 *   axialForceN: 25_000, forceToStopN: 15_000, friction: { lower: 0.1, nominal: 0.13, upper: 0.16 },
 *   taperPerSideDeg: 1, splineCount: 10, flankHeightMm: 1.8, engagedLengthMm: 16, meanRadiusMm: 10,
 *   allowablePressureMPa: 100, gapAtStopMm: 0.5,
 * });
 * press.home; // => true
 * press.stiffnessNPerMm?.nominal; // => 30000
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
  const gap = input.gapAtStopMm === undefined ? undefined : hardLimits(input.gapAtStopMm);
  // An arm that stands on its stop by hand presses nothing, whatever force the stop is said to need.
  const toPress = bounds((corner) => (gap !== undefined && corner(gap) <= NO_GAP_MM ? 0 : corner(toStop)));
  const pressing = (corner: Corner): number => Math.min(corner(F), corner(toPress));
  const normalForceN = bounds((corner) => pressing(corner) / (flanks * wedge(opposite(corner))));
  const releaseForceN = releaseOf(pressing, mu, angle);
  const reached = (corner: Corner, whole: Limits): number =>
    corner(F) >= corner(whole, false) ? 1 : corner(F) / corner(whole, false);
  const pressReached = bounds((corner) => reached(corner, toPress));
  const findings: Finding[] = gapFindings(gap);
  if (pressReached.upper < 1) {
    findings.push(find(messages, 'not-home', 'caution', { leftShare: 1 - pressReached.nominal }));
  } else if (pressReached.lower < 1) findings.push(find(messages, 'may-not-be-home', 'caution'));
  if (input.carryingShare === undefined) {
    findings.push(find(messages, 'share-of-flanks-assumed', 'note', {}, { path: 'carryingShare' }));
  }
  findings.push(find(messages, 'joint-instructions-first', 'caution'));
  return {
    home: pressReached.lower === 1,
    pressesBeforeStop: gap === undefined ? null : gap.lower > NO_GAP_MM,
    pressReached,
    ...splineTravel(gap, toStop, angle, reached),
    stopForceN: bounds((corner) => Math.max(0, corner(F) - corner(toPress, false))),
    normalForceN,
    contactPressureMPa: bounds((corner) => corner(normalForceN) / (corner(height, false) * corner(length, false))),
    releaseForceN,
    holdsAtRestWithoutBolt: releaseForceN.lower > 0,
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
    return ratio * (ratio >= 0 ? pressing(corner) : pressing(opposite(corner)));
  });

const fields = {
  axialForceN: measured('N', { min: 0, max: 200_000 }),
  forceToStopN: measured('N', { min: 1, max: 200_000 }),
  friction: measured('', { min: 0, max: 1 }),
  taperPerSideDeg: measured('deg', { min: 0.01, max: 10 }),
  splineCount: { type: 'number', unit: 'splines', min: 2, max: 200 },
  flankHeightMm: measured('mm', { min: 0.01, max: 20 }),
  engagedLengthMm: measured('mm', { min: 0.01, max: 100 }),
  meanRadiusMm: measured('mm', { above: 0, max: 100 }),
  allowablePressureMPa: measured('MPa', { above: 0, max: 2000 }),
  carryingShare: { ...measured('', { above: 0, max: 1 }), optional: true },
  gapAtStopMm: { ...measured('mm', { min: -10, max: 20 }), optional: true },
} as const;

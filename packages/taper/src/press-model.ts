import { closingTravel } from './angle-contact.ts';
import { falsePosition } from './false-position.ts';
import {
  COLLAPSE_RATIO,
  clamp,
  effectiveCollar,
  fitRange,
  fittedArmFactor,
  fittedSpindleFactor,
  LARGEST_RATIO,
  LEAST_CONTACT_MM,
  LONGEST_COLLAR_RATIO,
  PLASTIC_RISE,
  PLASTIC_RISE_UPPER,
  plasticShare,
  THICKNESS_FACTOR,
  THINNEST_BOSS_RATIO,
  TRAVEL_LOWER,
  TRAVEL_UPPER,
} from './fitted-factors.ts';
import { plasticRing } from './plastic-ring.ts';
import type { Compliance, Material } from './shapes.ts';

/** Everything the press depends on, as plain numbers at one corner of the limits. @internal */
export interface PressState {
  compliance: Compliance;
  axialForceN: number;
  friction: number;
  /** Face angle of the spindle, on whose flats the edge of the bore slides. */
  faceAngleRad: number;
  engagedLengthMm: number;
  /** Across flats and width of the flats in the middle of the contact zone. */
  acrossFlatsMm: number;
  flatWidthMm: number;
  /** Widest flats within the limits, which decide whether the boss collapses. */
  widestFlatMm: number;
  /** Bore beyond the outer end of the contact, and how much of it the spindle can still move into. */
  collarMm: number;
  growthMm: number;
  /** The collar at its other bound, and whether the larger or the smaller of what both add to the travel is asked for. */
  otherCollarMm: number;
  closingGrows: boolean;
  /** Travel over which a difference of the face angles closes; 0 for equal angles. */
  closingMm: number;
  /** Tangent of the bore's angle over that of the spindle: below 1 first contact is at the mouth of the bore. */
  tangentRatio: number;
  bossDiameterMm: number;
  boreCornerRadiusMm: number;
  spindle: Material;
  arm: Material;
}

/** What the press comes to. Travel has the bounds of the model itself, not those of the input. @internal */
export interface PressOutcome {
  normalForceN: number;
  pressureMPa: number;
  stiffnessNPerMm: number;
  armFactor: number;
  spindleFactor: number;
  /** Share of what the boss carries fully plastic, as p/(Sy (D/s - 1)) of the first rows; 0 without a yield strength. */
  plasticityRatio: number;
  /** p/(Sy (D/s - 1)). */
  pressureRatio: number;
  /** The boss runs towards collapse. */
  collapses: boolean;
  /** Pressure at which the ring first yields; infinite when no yield strength is known. */
  firstYieldMPa: number;
  /** False when the bore gives way without bound; `travelMm` is then the largest for which the model has an answer. */
  bounded: boolean;
  travelMm: { lower: number; nominal: number; upper: number };
  /** Travel with equal angles and without yield. */
  elasticMm: number;
  /** What unequal angles add to the travel. */
  closingMm: number;
}

// The fit of the corner stress ends at a boss of 24 mm on 13 mm across flats; its pole lies at 1.45.
const THINNEST_STRESSED_RATIO = 1.845;

// What unequal angles add to the travel, over what it comes to in the rows.
const CLOSING_SCALE = [0.85, 1.15] as const;

/** Solves the press at one corner; undefined when there is nothing to press on. @internal */
export function solvePress(state: PressState): PressOutcome | undefined {
  const { engagedLengthMm, acrossFlatsMm, flatWidthMm, friction, faceAngleRad, axialForceN, compliance, arm } = state;
  if (!(engagedLengthMm > LEAST_CONTACT_MM && flatWidthMm > LEAST_CONTACT_MM)) return undefined;
  const bossRatio = Math.max(state.bossDiameterMm / acrossFlatsMm, THINNEST_BOSS_RATIO);
  const wedge = Math.sin(faceAngleRad) + friction * Math.cos(faceAngleRad);
  const normalForceN = axialForceN / (4 * wedge);
  const pressureMPa = normalForceN / (flatWidthMm * engagedLengthMm);
  const fitted = compliance.startsWith('fitted');
  const factors = fitted ? fittedFactors(state, bossRatio) : ringFactors(state, bossRatio);
  const stiffness = (growthMm: number, freeMm = state.collarMm): number => {
    const lengthMm = engagedLengthMm + growthMm;
    const collarMm = fitted ? effectiveCollar(Math.max(0, freeMm - growthMm), acrossFlatsMm) : 0;
    const give =
      (acrossFlatsMm / 2000) *
      ((factors.armFactor * lengthMm) / (lengthMm + collarMm) / arm.youngsModulusGPa +
        factors.spindleFactor / state.spindle.youngsModulusGPa);
    const force = 4 * flatWidthMm * lengthMm * wedge * Math.tan(faceAngleRad);
    return force / give / (fitted ? THICKNESS_FACTOR : 1);
  };
  const elasticMm = fitted ? growingTravel(state, stiffness) : axialForceN / stiffness(0);
  const opening = state.closingMm / engagedLengthMm;
  const closingWith = (collarMm: number): number =>
    closingTravel({
      axialForceN,
      stiffnessNPerMm2: stiffness(0, 0) / engagedLengthMm,
      lengthMm: engagedLengthMm,
      opening,
      tangentRatio: state.tangentRatio,
      collarMm,
      decayMm: LONGEST_COLLAR_RATIO * acrossFlatsMm,
    });
  const extreme = state.closingGrows ? Math.max : Math.min;
  const closing = opening > 0 ? extreme(closingWith(state.collarMm), closingWith(state.otherCollarMm)) : 0;
  const strengthMPa = arm.yieldStrengthMPa ?? Number.POSITIVE_INFINITY;
  const pressureRatio = pressureMPa / (strengthMPa * (bossRatio - 1));
  const plasticityRatio = (pressureMPa / strengthMPa) * plasticShare(state, bossRatio, flatWidthMm);
  // Wider flats lower the travel as a whole, yet bring collapse nearer.
  const collapseRatio = (pressureMPa / strengthMPa) * plasticShare(state, bossRatio, state.widestFlatMm);
  const collapses = pressureRatio > COLLAPSE_RATIO || collapseRatio > LARGEST_RATIO;
  let bounded = state.bossDiameterMm / acrossFlatsMm >= THINNEST_BOSS_RATIO;
  let nominal = elasticMm;
  let upper = elasticMm;
  let scale: readonly [lower: number, upper: number] = [TRAVEL_LOWER, fitted ? TRAVEL_UPPER : 1.15];
  if (compliance === 'fitted-plastic') {
    if (collapses) bounded = false;
    const fourth = Math.min(plasticityRatio, LARGEST_RATIO) ** 4;
    nominal = elasticMm * (1 + PLASTIC_RISE * fourth);
    upper = elasticMm * (1 + PLASTIC_RISE_UPPER * fourth);
  } else if (compliance === 'ring-plastic') {
    scale = [0.65, 1.15];
    const ring = plasticRing({
      radiusRatio: bossRatio,
      pressureRatio: pressureMPa / strengthMPa,
      poissonsRatio: arm.poissonsRatio,
    });
    if (!ring.carries) bounded = false;
    // exp(2) is the largest (c/ri)^2 Sy/p that any ring reaches before it gives way, at ro/ri = e.
    const growth = ring.carries ? ring.growthFactor : Math.exp(2) - (1 - arm.poissonsRatio);
    const give = growth / arm.youngsModulusGPa + factors.spindleFactor / state.spindle.youngsModulusGPa;
    nominal = (pressureMPa * (acrossFlatsMm / 2000) * give) / Math.tan(faceAngleRad);
    upper = nominal;
  }
  // On the steeper face of the bore the end of the spindle is wedged sooner.
  const slope = Math.max(1, state.tangentRatio);
  nominal /= slope;
  upper /= slope;
  return {
    normalForceN,
    pressureMPa,
    stiffnessNPerMm: stiffness(0),
    ...factors,
    plasticityRatio,
    pressureRatio,
    collapses,
    firstYieldMPa: (strengthMPa / 2) * (1 - 1 / bossRatio ** 2),
    bounded,
    elasticMm,
    closingMm: closing,
    travelMm: {
      // The order holds by itself but for the rounding of forces below 1e-300 N.
      lower: Math.min(scale[0] * nominal + CLOSING_SCALE[0] * closing, nominal + closing),
      nominal: nominal + closing,
      upper: Math.max(scale[1] * upper + CLOSING_SCALE[1] * closing, nominal + closing),
    },
  };
}

function fittedFactors(state: PressState, bossRatio: number): { armFactor: number; spindleFactor: number } {
  const flatRatio = clamp(state.flatWidthMm / state.acrossFlatsMm, fitRange.flatRatio);
  const filletRatio = clamp(state.boreCornerRadiusMm / state.acrossFlatsMm, fitRange.filletRatio);
  return {
    armFactor: fittedArmFactor(flatRatio, filletRatio, bossRatio),
    spindleFactor: fittedSpindleFactor(flatRatio, bossRatio),
  };
}

function ringFactors(state: PressState, bossRatio: number): { armFactor: number; spindleFactor: number } {
  const square = bossRatio ** 2;
  return {
    armFactor: (square + 1) / (square - 1) + state.arm.poissonsRatio,
    spindleFactor: 1 - state.spindle.poissonsRatio,
  };
}

/**
 * Largest stress in the corner fillets of the bore over the contact pressure, two-dimensional fit for uniform pressure;
 * null for a boss under the range of the fit. @internal
 */
export function cornerStressFactor(state: PressState): number | null {
  const { acrossFlatsMm, bossDiameterMm, flatWidthMm, boreCornerRadiusMm } = state;
  const bossRatio = bossDiameterMm / acrossFlatsMm;
  if (bossRatio < THINNEST_STRESSED_RATIO) return null;
  const beta = flatWidthMm / acrossFlatsMm - 10 / 13;
  const boss = 3.61 + 8.67 / (bossRatio ** 2 - 2.108);
  return boss * ((boreCornerRadiusMm * 13) / acrossFlatsMm) ** -0.4515 * (1 + 1.5475 * beta + 0.7512 * beta ** 2);
}

// The engaged length grows with the travel while there is bore beyond the spindle end, so the force rises faster than in
// proportion: F = k(d) d with k rising. The root of F/k(d) - d is bracketed by the stiffest and the softest slope.
function growingTravel(state: PressState, stiffness: (growthMm: number) => number): number {
  const excess = (d: number): number => state.axialForceN / stiffness(Math.min(d, state.growthMm)) - d;
  const high = state.axialForceN / stiffness(0);
  return falsePosition(excess, state.axialForceN / stiffness(state.growthMm), high, 1e-15 * high);
}

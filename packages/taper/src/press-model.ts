import { closingTravel } from './angle-contact.ts';
import { falsePosition } from './false-position.ts';
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

/** Range of the fit of the compliance factors: boss over across flats, flat width and fillet over across flats. */
export const fitRange = {
  bossRatio: [1.7, 4],
  flatRatio: [7 / 13, 11 / 13],
  filletRatio: [0.038, 0.1154],
} as const;

/** Beyond this plasticity ratio the finite-element rows run towards collapse of the boss. */
export const COLLAPSE_RATIO = 0.63;

// How near the boss is to yielding right through. What splits it is carried by the wall at the corners, (D - sqrt2 s)/2 and
// what the fillet adds, in a thick boss by the metal round the flats instead: the two are added as one over the squares. Wide
// flats push with more force for the same pressure, and nearer to the corners; the net section alone would give a power of
// 1. Share and power were fitted to the rows of narrow (0.634) and wide flats (0.841) and of bosses of 26 and 44 mm, as 0.69
// and 1.43. A collar carries with the length as it does in the elastic press, to a power of 1.2 after the rows without one. All is scaled to p/(Sy (D/s - 1)) of the first
// rows: 34 mm on 13.09 mm, flats of 10.05 mm, fillets of 1 mm, collar of 1.5 mm on 14 mm.
const WIDTH_POWER = 1.4;
const COLLAR_POWER = 1.2;
const LOCAL_SHARE = 0.7;
const plain = { bossRatio: 34 / 13.0889, flatRatio: 10.0464 / 13.0889, wall: 1.2467, helped: 1.0908 };

// Wide flats and thick bosses reach this ratio before the pressure alone reaches that of collapse; the last row met has 0.683.
const LARGEST_RATIO = 0.685;

// The wall at the corners of a boss so thin that they all but cut it, over half of the across flats.
const THINNEST_WALL = 0.02;

// A thinner boss would be cut by the corners of the square, and the fits have their poles below it.
const THINNEST_BOSS_RATIO = 1.3;

/** A contact shorter or narrower than a micrometre carries nothing that could be reckoned with. @internal */
export const LEAST_CONTACT_MM = 1e-3;

// Contact compliance of the solid spindle by flat width over across flats, finite elements at D/s = 34/13. The pressure
// crowds to the edges of the flat, the more the thinner the boss: fitted to the rows of other bosses within 0.9 %.
const SPINDLE_FACTORS = [0.555, 0.585, 0.621, 0.671, 0.743] as const;
const SPINDLE_BOSS_RATIO = 34 / 13;

// Stiffness of the three-dimensional rows over that of the plane-stress fit: 2.2 % is the thickness seen in the thick slab,
// the rest is fitted to the press rows.
const THICKNESS_FACTOR = 0.965;

// However long, a collar helps like this much engaged length, over across flats: an axisymmetric ring of 13.1 mm gives
// 0.86 mm at 1, 1.19 at 1.5, 2.1 at 4 and 2.3 mm at 10 mm of collar.
const LONGEST_COLLAR_RATIO = 0.183;

// The fit of the corner stress ends at a boss of 24 mm on 13 mm across flats; its pole lies at 1.45.
const THINNEST_STRESSED_RATIO = 1.845;

// What unequal angles add to the travel, over what it comes to in the rows.
const CLOSING_SCALE = [0.85, 1.15] as const;

const clamp = (value: number, [low, high]: readonly [number, number]): number => Math.min(high, Math.max(low, value));

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
  let scale: readonly [lower: number, upper: number] = fitted ? [0.95, 1.05] : [0.95, 1.15];
  if (compliance === 'fitted-plastic') {
    if (collapses) bounded = false;
    const fourth = Math.min(plasticityRatio, LARGEST_RATIO) ** 4;
    nominal = elasticMm * (1 + 3 * fourth);
    upper = elasticMm * (1 + 4 * fourth);
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

/** Plasticity ratio for a pressure as large as the yield strength. */
function plasticShare(
  { acrossFlatsMm, boreCornerRadiusMm, engagedLengthMm, collarMm }: PressState,
  bossRatio: number,
  widthMm: number,
): number {
  const fillet = (2 * (Math.SQRT2 - 1) * boreCornerRadiusMm) / acrossFlatsMm;
  const wall = Math.max(THINNEST_WALL, bossRatio - Math.SQRT2 + fillet) / plain.wall;
  const carries = wall * Math.sqrt((1 + LOCAL_SHARE) / (1 + LOCAL_SHARE * wall ** 2));
  const helped = ((1 + effectiveCollar(collarMm, acrossFlatsMm) / engagedLengthMm) / plain.helped) ** COLLAR_POWER;
  return (widthMm / acrossFlatsMm / plain.flatRatio) ** WIDTH_POWER / (carries * helped * (plain.bossRatio - 1));
}

function fittedFactors(state: PressState, bossRatio: number): { armFactor: number; spindleFactor: number } {
  const flatRatio = clamp(state.flatWidthMm / state.acrossFlatsMm, fitRange.flatRatio);
  const beta = flatRatio - 10 / 13;
  const r = clamp(state.boreCornerRadiusMm / state.acrossFlatsMm, fitRange.filletRatio) - 1 / 13;
  const place = flatRatio * 13 - 7;
  const below = clamp(Math.floor(place), [0, SPINDLE_FACTORS.length - 2]);
  const from = SPINDLE_FACTORS[below] ?? 0;
  const to = SPINDLE_FACTORS[below + 1] ?? 0;
  return {
    armFactor:
      1.4403 +
      0.3519 * beta -
      2.352 * beta ** 2 -
      0.796 * r +
      (2.823 * (1 - 0.904 * beta - 2.719 * beta ** 2 - 2.658 * r)) / (bossRatio ** 2 - 1.564),
    spindleFactor:
      from +
      (place - below) * (to - from) +
      (7.91 + 18.3 * beta - 14.7 * beta ** 2) * (bossRatio ** -6 - SPINDLE_BOSS_RATIO ** -6),
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

const effectiveCollar = (collarMm: number, acrossFlatsMm: number): number =>
  collarMm / Math.sqrt(1 + (collarMm / (LONGEST_COLLAR_RATIO * acrossFlatsMm)) ** 2);

// The engaged length grows with the travel while there is bore beyond the spindle end, so the force rises faster than in
// proportion: F = k(d) d with k rising. The root of F/k(d) - d is bracketed by the stiffest and the softest slope.
function growingTravel(state: PressState, stiffness: (growthMm: number) => number): number {
  const excess = (d: number): number => state.axialForceN / stiffness(Math.min(d, state.growthMm)) - d;
  const high = state.axialForceN / stiffness(0);
  return falsePosition(excess, state.axialForceN / stiffness(state.growthMm), high, 1e-15 * high);
}

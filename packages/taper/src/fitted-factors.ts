/** Coefficients and factors of the fits to the finite-element rows, for one joint or for a column of them. */

const NARROWEST_FLAT = 7 / 13;
const WIDEST_FLAT = 11 / 13;

/** Range of the fit of the compliance factors: boss over across flats, flat width and fillet over across flats. */
export const fitRange = {
  bossRatio: [1.7, 4],
  flatRatio: [NARROWEST_FLAT, WIDEST_FLAT],
  filletRatio: [0.038, 0.1154],
} as const;

/**
 * Fit of the compliance factor of the boss to the plane-stress rows: c0 + c1 beta + c2 beta^2 + c3 r
 * + c4 (1 + c5 beta + c6 beta^2 + c7 r)/((D/s)^2 - c8). @internal
 */
export const ARM_FIT = [1.4403, 0.3519, -2.352, -0.796, 2.823, -0.904, -2.719, -2.658, 1.564] as const;

/** Fit of what another boss than that of the rows changes in the compliance of the spindle: c0 + c1 beta + c2 beta^2. @internal */
export const SPINDLE_FIT = [7.91, 18.3, -14.7] as const;

/** Flat width and fillet over across flats about which the fits are written. @internal */
export const CENTRE_FLAT_RATIO = 10 / 13;
export const CENTRE_FILLET_RATIO = 1 / 13;

// Contact compliance of the solid spindle by flat width over across flats, finite elements at D/s = 34/13. The pressure
// crowds to the edges of the flat, the more the thinner the boss: fitted to the rows of other bosses within 0.9 %.
export const SPINDLE_FACTORS = [0.555, 0.585, 0.621, 0.671, 0.743] as const;
// First and last place from which the table can be read between two of its five values.
const SPINDLE_PLACES = [0, 3] as const;
/** Boss over across flats of those rows, to the power of -6. @internal */
export const OF_ROWS = (13 / 34) ** 6;

// Stiffness of the three-dimensional rows over that of the plane-stress fit: 2.2 % is the thickness seen in the thick slab,
// the rest is fitted to the press rows.
export const THICKNESS_FACTOR = 0.965;

// However long, a collar helps like this much engaged length, over across flats: an axisymmetric ring of 13.1 mm gives
// 0.86 mm at 1, 1.19 at 1.5, 2.1 at 4 and 2.3 mm at 10 mm of collar.
export const LONGEST_COLLAR_RATIO = 0.183;

/** Error of the elastic travel: what the lower and the upper bound take of it. @internal */
export const TRAVEL_LOWER = 0.95;
export const TRAVEL_UPPER = 1.05;
/** What the fourth power of the plasticity ratio adds to the travel at nominal values and at the upper bound. @internal */
export const PLASTIC_RISE = 3;
export const PLASTIC_RISE_UPPER = 4;

/** Beyond this plasticity ratio the finite-element rows run towards collapse of the boss. */
export const COLLAPSE_RATIO = 0.63;

// How near the boss is to yielding right through. What splits it is carried by the wall at the corners, (D - sqrt2 s)/2
// and what the fillet adds, in a thick boss by the metal round the flats instead: the two are added as one over the
// squares. Wide flats push with more force for the same pressure, and nearer to the corners; the net section alone would
// give a power of 1. Share and power were fitted to the rows of narrow (0.634) and wide flats (0.841) and of bosses of
// 26 and 44 mm, as 0.69 and 1.43. A collar carries with the length as it does in the elastic press, to a power of 1.2
// after the rows without one. All is scaled to p/(Sy (D/s - 1)) of the first rows: 34 mm on 13.09 mm, flats of 10.05 mm,
// fillets of 1 mm, collar of 1.5 mm on 14 mm.
export const WIDTH_POWER = 1.4;
export const COLLAR_POWER = 1.2;
export const LOCAL_SHARE = 0.7;
export const plain = { bossRatio: 34 / 13.0889, flatRatio: 10.0464 / 13.0889, wall: 1.2467, helped: 1.0908 };

// Wide flats and thick bosses reach this ratio before the pressure alone reaches that of collapse; the last row met has
// 0.683.
export const LARGEST_RATIO = 0.685;

// The wall at the corners of a boss so thin that they all but cut it, over half of the across flats.
export const THINNEST_WALL = 0.02;

// A thinner boss would be cut by the corners of the square, and the fits have their poles below it.
export const THINNEST_BOSS_RATIO = 1.3;

/** A contact shorter or narrower than a micrometre carries nothing that could be reckoned with. @internal */
export const LEAST_CONTACT_MM = 1e-3;

/** Holds a value within two bounds. @internal */
export const clamp = (value: number, range: readonly [number, number]): number =>
  Math.min(range[1], Math.max(range[0], value));

/** What a collar of that length helps, as engaged length. @internal */
export const effectiveCollar = (collarMm: number, acrossFlatsMm: number): number =>
  collarMm / Math.sqrt(1 + (collarMm / (LONGEST_COLLAR_RATIO * acrossFlatsMm)) ** 2);

/** Plasticity ratio for a pressure as large as the yield strength. @internal */
export function plasticShare(
  sizes: { acrossFlatsMm: number; boreCornerRadiusMm: number; engagedLengthMm: number; collarMm: number },
  bossRatio: number,
  widthMm: number,
): number {
  const { acrossFlatsMm, boreCornerRadiusMm, engagedLengthMm, collarMm } = sizes;
  const fillet = (2 * (Math.SQRT2 - 1) * boreCornerRadiusMm) / acrossFlatsMm;
  const wall = Math.max(THINNEST_WALL, bossRatio - Math.SQRT2 + fillet) / plain.wall;
  const carries = wall * Math.sqrt((1 + LOCAL_SHARE) / (1 + LOCAL_SHARE * wall ** 2));
  const helped = ((1 + effectiveCollar(collarMm, acrossFlatsMm) / engagedLengthMm) / plain.helped) ** COLLAR_POWER;
  return (widthMm / acrossFlatsMm / plain.flatRatio) ** WIDTH_POWER / (carries * helped * (plain.bossRatio - 1));
}

/** Compliance factor of the boss for ratios within {@link fitRange}. @internal */
export function fittedArmFactor(flatRatio: number, filletRatio: number, bossRatio: number): number {
  const beta = flatRatio - CENTRE_FLAT_RATIO;
  const r = filletRatio - CENTRE_FILLET_RATIO;
  const c = ARM_FIT;
  const crowding = c[4] * (1 + c[5] * beta + c[6] * beta * beta + c[7] * r);
  return c[0] + c[1] * beta + c[2] * beta * beta + c[3] * r + crowding / (bossRatio * bossRatio - c[8]);
}

/** Compliance factor of the solid spindle. @internal */
export function fittedSpindleFactor(flatRatio: number, bossRatio: number): number {
  const beta = flatRatio - CENTRE_FLAT_RATIO;
  const place = flatRatio * 13 - 7;
  const below = clamp(Math.floor(place), SPINDLE_PLACES);
  const from = SPINDLE_FACTORS[below] ?? 0;
  const to = SPINDLE_FACTORS[below + 1] ?? 0;
  const square = bossRatio * bossRatio;
  const c = SPINDLE_FIT;
  const crowding = c[0] + c[1] * beta + c[2] * beta * beta;
  return from + (place - below) * (to - from) + crowding * (1 / (square * square * square) - OF_ROWS);
}

/**
 * Growth of the bore of a ring that yields, over p ri/E, and whether the ring still carries the pressure.
 *
 * Tresca in the plane of the ring, plane stress, no hardening: the plastic zone reaches c, with p/Sy = ln(c/ri) +
 * (1 - c^2/ro^2)/2, and u E/(p ri) = (c/ri)^2 Sy/p - (1 - nu). Up to first yield this is the elastic ring. It ends where
 * the zone reaches the outside, p/Sy = ln(ro/ri), or where the hoop stress at the bore would turn to compression, p = Sy.
 */
export function plasticRing(input: {
  /** ro/ri, above 1. */
  radiusRatio: number;
  /** p/Sy, at least 0. */
  pressureRatio: number;
  poissonsRatio: number;
}): { growthFactor: number; carries: boolean } {
  const { radiusRatio, pressureRatio, poissonsRatio } = input;
  const square = radiusRatio ** 2;
  if (pressureRatio <= (1 - 1 / square) / 2) {
    return { growthFactor: (square + 1) / (square - 1) + poissonsRatio, carries: true };
  }
  if (pressureRatio >= Math.min(1, Math.log(radiusRatio))) return { growthFactor: Number.NaN, carries: false };
  // The left side rises with c, slowest at the outside: bisection keeps its bracket where Newton's step would leave it.
  let low = 1;
  let high = radiusRatio;
  for (let step = 0; step < 60; step++) {
    const c = (low + high) / 2;
    if (Math.log(c) + (1 - (c * c) / square) / 2 < pressureRatio) low = c;
    else high = c;
  }
  return { growthFactor: (high * high) / pressureRatio - (1 - poissonsRatio), carries: true };
}

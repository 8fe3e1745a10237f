/** A square and how far it is drawn to turn in its bore, mm and rad. @internal */
export interface BorePlayScene {
  halfWidthMm: number;
  flatWidthMm: number;
  /** Radius of the turned corners: half the diagonal over the flats. */
  cornerRadiusMm: number;
  /** Clearance as drawn. */
  drawnClearanceMm: number;
  /** How many times the true clearance that is. */
  factor: number;
  /** Rotation from the middle to a stop at the clearance as drawn; `null` when nothing stops it. */
  drawnRotationRad: number | null;
  /** Rotation at the true clearance, by the same relation; `null` when nothing stops it. */
  rotationDeg: number | null;
}

// At the true size a clearance of hundredths of a millimetre is thinner than a line.
const FACTORS = [1, 2, 3, 5, 8, 10, 15, 20, 30, 50, 80, 100] as const;

/** Chooses how wide to draw the clearance, and where the square then comes to its stops. @internal */
export function borePlayScene(input: { halfWidthMm: number; flatWidthMm: number; clearanceMm: number }): BorePlayScene {
  const { halfWidthMm, flatWidthMm, clearanceMm } = input;
  const cornerRadiusMm = Math.hypot(halfWidthMm, flatWidthMm / 2);
  const rotationAt = (clearance: number): number | null => rotation(halfWidthMm, flatWidthMm, clearance);
  // Wide enough to see, well short of where the square would turn through.
  const widest = Math.min(0.09 * halfWidthMm, 0.6 * (cornerRadiusMm - halfWidthMm));
  const turns = rotationAt(clearanceMm) === null;
  const factor = turns ? 1 : ([...FACTORS].reverse().find((one) => one * clearanceMm <= widest) ?? 1);
  const rad = rotationAt(clearanceMm);
  return {
    halfWidthMm,
    flatWidthMm,
    cornerRadiusMm,
    drawnClearanceMm: factor * clearanceMm,
    factor: clearanceMm === 0 ? 1 : factor,
    drawnRotationRad: rotationAt(factor * clearanceMm),
    rotationDeg: rad === null ? null : (rad * 180) / Math.PI,
  };
}

/** Solves h cos phi + (b/2) sin phi = h + c: with R the corner radius, R cos(phi - atan(b/2h)) = h + c. */
function rotation(halfWidthMm: number, flatWidthMm: number, clearanceMm: number): number | null {
  if (clearanceMm === 0) return 0;
  const radius = Math.hypot(halfWidthMm, flatWidthMm / 2);
  const reach = (halfWidthMm + clearanceMm) / radius;
  if (reach > 1) return null;
  return Math.max(0, Math.atan2(flatWidthMm / 2, halfWidthMm) - Math.acos(reach));
}

import type { Limits } from '@spindlewright/quantity';

/** A reading with its hard bounds. */
interface BoundedReading {
  acrossFlatsMm: Limits;
  atMm: Limits;
}

/** Straight flats through readings: one slope for all pairs, one width at the reference plane for each. @internal */
export interface FlatLine {
  faceAngleDeg: Limits;
  acrossFlatsMm: Limits[];
  /** Largest departure of a reading from its line beyond its own bounds, and the pair it belongs to. */
  residualMm: { worst: number; group: number };
}

const degrees = (growth: number): number => (Math.atan(growth / 2) * 180) / Math.PI;
const halfWidth = (limits: Limits): number => Math.max(limits.upper - limits.nominal, limits.nominal - limits.lower);

/**
 * Least squares with a slope common to all pairs. Every estimate is a weighted sum of the readings, so its bounds follow
 * from theirs; a reading taken dx off its plane is off by dx times the true growth, which is why the growth found is
 * divided by 1 -+ the weighted plane errors. Undefined when no pair was read in two planes.
 * @internal
 */
export function fitLines(groups: readonly BoundedReading[][], widens: 1 | -1): FlatLine | undefined {
  const place = (reading: BoundedReading): number => widens * reading.atMm.nominal;
  const centres = groups.map((group) => mean(group.map(place)));
  const spread = sum(groups.map((group, g) => sum(group.map((reading) => (place(reading) - (centres[g] ?? 0)) ** 2))));
  if (spread < 1e-6) return undefined;
  const slopeWeights = groups.map((group, g) => group.map((reading) => (place(reading) - (centres[g] ?? 0)) / spread));
  const planes = planeErrors(groups, slopeWeights);
  const raw = weighted(groups, slopeWeights);
  const widest = Math.max(0.01, 1 - planes);
  const growth = {
    lower: Math.min(raw.lower / (1 + planes), raw.lower / widest),
    nominal: raw.nominal,
    upper: Math.max(raw.upper / (1 + planes), raw.upper / widest),
  };
  const steepest = Math.max(Math.abs(growth.lower), Math.abs(growth.upper));
  const acrossFlatsMm = groups.map((own, g) => {
    const weights = groups.map((group, h) =>
      group.map((_, i) => (h === g ? 1 / own.length : 0) - (centres[g] ?? 0) * (slopeWeights[h]?.[i] ?? 0)),
    );
    const width = weighted(groups, weights);
    const slack = steepest * planeErrors(groups, weights);
    return { lower: width.lower - slack, nominal: width.nominal, upper: width.upper + slack };
  });
  return assemble(groups, widens, growth, acrossFlatsMm);
}

/** Widths at the reference plane with the face angle given. @internal */
export function linesAtAngle(groups: readonly BoundedReading[][], widens: 1 | -1, faceAngleDeg: Limits): FlatLine {
  const growthAt = (angleDeg: number): number => 2 * Math.tan((angleDeg * Math.PI) / 180);
  const growth = {
    lower: growthAt(faceAngleDeg.lower),
    nominal: growthAt(faceAngleDeg.nominal),
    upper: growthAt(faceAngleDeg.upper),
  };
  const acrossFlatsMm = groups.map((group) => {
    const rise = (key: keyof Limits): number => growth[key] * mean(group.map((reading) => reading.atMm[key]));
    const width = (key: keyof Limits): number => mean(group.map((reading) => reading.acrossFlatsMm[key]));
    return widens > 0
      ? {
          lower: width('lower') - rise('upper'),
          nominal: width('nominal') - rise('nominal'),
          upper: width('upper') - rise('lower'),
        }
      : {
          lower: width('lower') + rise('lower'),
          nominal: width('nominal') + rise('nominal'),
          upper: width('upper') + rise('upper'),
        };
  });
  return { ...assemble(groups, widens, growth, acrossFlatsMm), faceAngleDeg };
}

function assemble(
  groups: readonly BoundedReading[][],
  widens: 1 | -1,
  growth: Limits,
  acrossFlatsMm: Limits[],
): FlatLine {
  const residualMm = { worst: 0, group: 0 };
  groups.forEach((group, index) => {
    for (const reading of group) {
      const line = (acrossFlatsMm[index]?.nominal ?? 0) + growth.nominal * widens * reading.atMm.nominal;
      const own = halfWidth(reading.acrossFlatsMm) + Math.abs(growth.nominal) * halfWidth(reading.atMm);
      const beyond = Math.abs(reading.acrossFlatsMm.nominal - line) - own;
      if (beyond > residualMm.worst) Object.assign(residualMm, { worst: beyond, group: index });
    }
  });
  const faceAngleDeg = {
    lower: degrees(growth.lower),
    nominal: degrees(growth.nominal),
    upper: degrees(growth.upper),
  };
  return { faceAngleDeg, acrossFlatsMm, residualMm };
}

function weighted(groups: readonly BoundedReading[][], weights: readonly number[][]): Limits {
  const total = { lower: 0, nominal: 0, upper: 0 };
  groups.forEach((group, g) => {
    group.forEach(({ acrossFlatsMm }, i) => {
      const weight = weights[g]?.[i] ?? 0;
      total.lower += weight * (weight > 0 ? acrossFlatsMm.lower : acrossFlatsMm.upper);
      total.nominal += weight * acrossFlatsMm.nominal;
      total.upper += weight * (weight > 0 ? acrossFlatsMm.upper : acrossFlatsMm.lower);
    });
  });
  return total;
}

const planeErrors = (groups: readonly BoundedReading[][], weights: readonly number[][]): number =>
  sum(groups.flatMap((group, g) => group.map(({ atMm }, i) => Math.abs(weights[g]?.[i] ?? 0) * halfWidth(atMm))));

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const mean = (values: readonly number[]): number => sum(values) / values.length;

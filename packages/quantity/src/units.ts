/** Physical dimension of a unit; a conversion never crosses it. */
export type Dimension = 'length' | 'force' | 'torque' | 'pressure' | 'angle';

interface UnitFactor {
  dimension: Dimension;
  /** Size in the base unit of the dimension (mm, N, Nm, MPa, deg) = numerator / denominator; exact doubles but for pi. */
  numerator: number;
  denominator: number;
}

// One exact chain: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, standard gravity 9.80665 m/s2, so that siblings cannot
// disagree (NIST SP 811, 2008 edition, appendix B.8 marks these factors as exact). Integers below are those products,
// reduced until both fit a double: 1 lbf = 44482216152605 / 10^13 N. Only rad is irrational.
const UNITS = {
  mm: { dimension: 'length', numerator: 1, denominator: 1 },
  um: { dimension: 'length', numerator: 1, denominator: 1000 },
  cm: { dimension: 'length', numerator: 10, denominator: 1 },
  m: { dimension: 'length', numerator: 1000, denominator: 1 },
  in: { dimension: 'length', numerator: 127, denominator: 5 },
  N: { dimension: 'force', numerator: 1, denominator: 1 },
  kN: { dimension: 'force', numerator: 1000, denominator: 1 },
  lbf: { dimension: 'force', numerator: 8896443230521, denominator: 2e12 },
  kgf: { dimension: 'force', numerator: 196133, denominator: 20000 },
  Nm: { dimension: 'torque', numerator: 1, denominator: 1 },
  'lbf.in': { dimension: 'torque', numerator: 1129848290276167, denominator: 1e16 },
  'lbf.ft': { dimension: 'torque', numerator: 3389544870828501, denominator: 2.5e15 },
  'kgf.cm': { dimension: 'torque', numerator: 196133, denominator: 2000000 },
  'kgf.m': { dimension: 'torque', numerator: 196133, denominator: 20000 },
  MPa: { dimension: 'pressure', numerator: 1, denominator: 1 },
  psi: { dimension: 'pressure', numerator: 8896443230521, denominator: 1.29032e15 },
  deg: { dimension: 'angle', numerator: 1, denominator: 1 },
  rad: { dimension: 'angle', numerator: 180, denominator: Math.PI },
} as const satisfies Record<string, UnitFactor>;

/** Id of a unit, in ASCII as a file or a form would write it. */
export type Unit = keyof typeof UNITS;

/** The units of the same dimension as `U`: the only ones `U` can be converted to. */
export type UnitLike<U extends Unit> = {
  [K in Unit]: (typeof UNITS)[K]['dimension'] extends (typeof UNITS)[U]['dimension'] ? K : never;
}[Unit];

/** All unit ids, in the order of the table. @internal */
export const unitIds = (): Unit[] => Object.keys(UNITS) as Unit[];

/** Factor of a unit, or undefined for an unknown id. @internal */
export const unitFactor = (unit: unknown): UnitFactor | undefined =>
  // The type is asked first, since a list such as ['mm'] would pass for the key 'mm'.
  typeof unit === 'string' && Object.hasOwn(UNITS, unit) ? UNITS[unit as Unit] : undefined;

import { DomainError, type Limits } from '@spindlewright/quantity';
import type { BareSeatInput } from './bare-solve.ts';
import { exactly, OPEN } from './interval.ts';

// A nanometre: what has to be above 0 in the full functions has to be as much here, and one comparison does.
const LEAST_MM = 1e-6;

type Range = readonly [least: number, most: number, without?: Limits];

/** Range of each number as in the full functions, and what stands for one that may be left out. */
const MATERIAL = {
  youngsModulusGPa: [1, 1000],
  poissonsRatio: [0, 0.49],
  yieldStrengthMPa: [1, 5000, OPEN],
} as const;
const FIELDS = {
  spindle: {
    acrossFlatsAtEndMm: [LEAST_MM, 60],
    faceAngleDeg: [0.2, 10],
    flatLengthMm: [LEAST_MM, 100],
    endChamferMm: [0, 20],
    shoulderFromEndMm: [LEAST_MM, 200, OPEN],
    cornerDiameterMm: [LEAST_MM, 80],
  },
  arm: {
    acrossFlatsAtMouthMm: [LEAST_MM, 60],
    faceAngleDeg: [0.2, 10],
    boreLengthMm: [LEAST_MM, 100],
    boltSeatFromMouthMm: [LEAST_MM, 100],
    seatIntrusionMm: [0, 50],
    mouthChamferMm: [0, 20],
    bossDiameterMm: [LEAST_MM, 200],
    boreCornerRadiusMm: [LEAST_MM, 10],
  },
  pressing: {
    materials: { spindle: MATERIAL, arm: MATERIAL },
    axialForceN: [0, 200_000],
    friction: [0, 1],
  },
} as const;

type Fields = Range | { readonly [key: string]: Fields };
type Read<F> = F extends Range ? Limits : { [K in keyof F]: Read<F[K]> };

/** The numbers as limits, each within its range. */
function read(where: string, value: unknown, fields: Fields, path: string): unknown {
  if (!Array.isArray(fields)) {
    const inner = (key: string): unknown => (value as Record<string, unknown> | null | undefined)?.[key];
    return Object.fromEntries(
      Object.entries(fields).map(([key, below]) => [key, read(where, inner(key), below, `${path}.${key}`)]),
    );
  }
  const [least, most, without] = fields as Range;
  if (value === undefined && without) return without;
  const given = value as Limits | number | null | undefined;
  const { lower, nominal, upper } =
    (given as Limits | null | undefined)?.upper === undefined ? exactly(given as number) : (given as Limits);
  if (
    [lower, nominal, upper].every(Number.isFinite) &&
    least <= lower &&
    lower <= nominal &&
    nominal <= upper &&
    upper <= most
  )
    return { lower, nominal, upper };
  const allowed = `a number or rising limits from ${least} to ${most}`;
  throw new DomainError(where, [
    { path: path.slice(1), received: Object(value) === value ? 'an object' : String(value), allowed },
  ]);
}

/** The input as limits. @internal */
export type BareLimits = Read<typeof FIELDS>;

/** Reads the input as limits. @internal */
export const readBare = (where: string, input: BareSeatInput): BareLimits =>
  read(where, input, FIELDS, '') as BareLimits;

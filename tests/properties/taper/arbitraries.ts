// Square-taper joints as a bench meets them, exact or with limits.
import type { Limits } from '@spindlewright/quantity';
import type { ArmShape, Compliance, Materials, SpindleShape } from '@spindlewright/taper';
import fc from 'fast-check';

/** A bounded double that is a number. */
export const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** Limits about a value, up to `spread` to either side and inside `[low, high]`. */
export const limitsIn = (low: number, high: number, spread: number): fc.Arbitrary<Limits> =>
  fc.tuple(between(low, high), between(0, spread), between(0, spread)).map(([nominal, below, above]) => ({
    lower: Math.max(low, nominal - below),
    nominal,
    upper: Math.min(high, nominal + above),
  }));

/** Ranges of a joint: smallest, largest, widest tolerance. */
const SPINDLE = {
  acrossFlatsAtEndMm: [12.4, 12.8, 0.05],
  faceAngleDeg: [1.8, 2.3, 0.05],
  flatLengthMm: [14, 24, 0.5],
  endChamferMm: [0, 1.5, 0.3],
  shoulderFromEndMm: [15, 26, 0.5],
  cornerDiameterMm: [15.8, 17.2, 0.3],
} as const;
const ARM = {
  acrossFlatsAtMouthMm: [13.2, 13.9, 0.05],
  faceAngleDeg: [1.8, 2.3, 0.05],
  boreLengthMm: [14, 22, 0.5],
  boltSeatFromMouthMm: [14, 24, 0.5],
  seatIntrusionMm: [0, 1, 0.2],
  mouthChamferMm: [0, 1.5, 0.3],
  bossDiameterMm: [26, 44, 2],
  boreCornerRadiusMm: [0.5, 1.5, 0.3],
} as const;

type Ranges = Readonly<Record<string, readonly [number, number, number]>>;
const record = <R extends Ranges, T>(ranges: R, of: (range: readonly [number, number, number]) => fc.Arbitrary<T>) =>
  fc.record(Object.fromEntries(Object.entries(ranges).map(([key, range]) => [key, of(range)]))) as fc.Arbitrary<
    Record<keyof R, T>
  >;

const exact = ([low, high]: readonly [number, number, number]): fc.Arbitrary<number> => between(low, high);
const toleranced = ([low, high, spread]: readonly [number, number, number]): fc.Arbitrary<Limits> =>
  limitsIn(low, high, spread);

/** Exact joints with every field given. */
export const joints: fc.Arbitrary<{ spindle: Required<SpindleShape>; arm: Required<ArmShape> }> = fc.record({
  spindle: record(SPINDLE, exact),
  arm: record(ARM, exact),
});

/** Joints with limits on every field. */
export const tolerancedJoints: fc.Arbitrary<{
  spindle: Required<SpindleShape<Limits>>;
  arm: Required<ArmShape<Limits>>;
}> = fc.record({ spindle: record(SPINDLE, toleranced), arm: record(ARM, toleranced) });

/** Every model. */
export const models: fc.Arbitrary<Compliance> = fc.constantFrom('fitted', 'ring', 'fitted-plastic', 'ring-plastic');

/** Steel and aluminium with their yield strength, as limits. */
export const tolerancedMaterials: fc.Arbitrary<Required<Materials<Limits>>> = fc.record({
  spindle: fc.record({ youngsModulusGPa: limitsIn(195, 215, 5), poissonsRatio: limitsIn(0.27, 0.31, 0.01) }),
  arm: fc.record({
    youngsModulusGPa: limitsIn(66, 74, 2),
    poissonsRatio: limitsIn(0.3, 0.36, 0.01),
    yieldStrengthMPa: limitsIn(200, 520, 20),
  }),
});

/** Draws an exact value inside every limits of a structure. */
export function drawn<T>(structure: T, share: () => number): unknown {
  if (typeof structure !== 'object' || structure === null) return structure;
  if ('nominal' in structure) {
    const { lower, upper } = structure as unknown as Limits;
    return Math.min(upper, lower + share() * (upper - lower));
  }
  return Object.fromEntries(Object.entries(structure).map(([key, value]) => [key, drawn(value, share)]));
}

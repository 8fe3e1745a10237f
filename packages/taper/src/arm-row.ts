/** Lower, nominal and upper value. @internal */
export type Triple = Float64Array;

/** The sizes of one arm, filled anew for each row. @internal */
export interface ArmRow {
  acrossFlatsAtMouthMm: Triple;
  boreLengthMm: Triple;
  boltSeatFromMouthMm: Triple;
  seatIntrusionMm: Triple;
  mouthChamferMm: Triple;
  bossDiameterMm: Triple;
  boreCornerRadiusMm: Triple;
}

/** Limits as a triple. @internal */
export const triple = ({ lower, nominal, upper }: { lower: number; nominal: number; upper: number }): Triple =>
  Float64Array.of(lower, nominal, upper);
/** The value at one bound; the bound is 0, 1 or 2. @internal */
export const at = (values: Triple, corner: number): number => values[corner] as number;

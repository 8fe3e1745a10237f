import type { LimitsInput, Standing } from '@spindlewright/quantity';

/** A square-taper spindle end as seat prediction takes it; z runs from the end face inward. */
export interface SquareTaperSpindle {
  /** Size across the flats at the end, in mm. */
  acrossFlatsAtEndMm: LimitsInput;
  /** Angle of a face against the axis, in degrees. */
  faceAngleDeg: LimitsInput;
  /** Length of the flats, in mm. */
  flatLengthMm: LimitsInput;
  /** Length of the chamfer at the end, in mm. */
  endChamferMm?: LimitsInput;
  /** From the end to the shoulder, in mm. */
  shoulderFromEndMm?: LimitsInput;
  /** Twice the radius of the turned corners, in mm. */
  cornerDiameterMm?: LimitsInput;
}

/** The square bore of an arm as seat prediction takes it; measured from its inner mouth outward. */
export interface SquareTaperArm {
  /** Size across the flats at the inner mouth, in mm. */
  acrossFlatsAtMouthMm: LimitsInput;
  /** Angle of a face against the axis, in degrees. */
  faceAngleDeg: LimitsInput;
  /** Length of the bore, in mm. */
  boreLengthMm: LimitsInput;
  /** From the inner mouth to the seat of the bolt, in mm. */
  boltSeatFromMouthMm?: LimitsInput;
  /** How far the bolt or its washer reaches in past that seat, in mm. */
  seatIntrusionMm?: LimitsInput;
  /** Length of the chamfer at the inner mouth, in mm. */
  mouthChamferMm?: LimitsInput;
  /** Outer diameter of the boss, in mm. */
  bossDiameterMm?: LimitsInput;
  /** Radius in the corners of the bore, in mm. */
  boreCornerRadiusMm?: LimitsInput;
}

/** A geometry drawn from one published set, with what stands behind it. */
export interface PublishedGeometry<Shape> {
  /** The sizes. */
  geometry: Shape;
  /** Name of the set; a pair is drawn from one set only. */
  set: string;
  /** Ids in the register of sources. */
  sources: readonly string[];
  /** The weakest standing of the numbers used. */
  standing: Standing;
  /** Fields that the set does not give, or gives in words that had to be interpreted. */
  assumed: readonly string[];
  /** How the assumed fields came about. */
  note?: string;
  /** Edition of the data. */
  dataEdition: string;
}

/** A spindle of one published set. */
export interface SpindleGeometry extends PublishedGeometry<SquareTaperSpindle> {
  /** From the middle plane of a symmetric spindle to its end, in mm, when a spindle length was given. */
  endFromMidplaneMm?: number;
}

/** An arm of one published set. */
export type ArmGeometry = PublishedGeometry<SquareTaperArm>;

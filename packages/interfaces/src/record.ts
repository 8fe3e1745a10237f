import type { Datum, Standing } from '@spindlewright/quantity';

/** How the arm is joined to the spindle. */
export type InterfaceFamily = 'square-taper' | 'spline' | 'face-spline' | 'through-spindle' | 'cottered' | 'one-piece';

/** A fact in words with its standing and sources; what is said beside a number is in `value`. */
export interface Claim {
  /** Id, unique in its list. */
  id: string;
  /** The fact, in the project's words. */
  statement: string;
  /** Where it comes from. */
  standing: Standing;
  /** Ids in the register of sources; empty only where the standing needs none. */
  sources: readonly string[];
  /** The number that the fact is about, when it is about one. */
  value?: Datum;
  /** `none-found`: believed in the trade, and no source was found that supports it. */
  support?: 'none-found';
  /** What a reader has to know to use it. */
  note?: string;
}

/** A subject on which sources disagree, with every position kept apart. */
export interface Conflict {
  /** Id, unique in the record; the same conflict has the same id in every record that it concerns. */
  id: string;
  /** What the sources disagree on. */
  subject: string;
  /** The positions; never merged. */
  positions: readonly Claim[];
  /** What can be said about the disagreement. */
  comment: string;
}

/** A screw thread that the interface uses. */
export interface ThreadRecord {
  /** Id, unique in its list. */
  id: string;
  /** What the thread is for. */
  use: string;
  /** Designation, such as `M8x1`; without a pitch where the source gives none. */
  designation: string;
  /** Nominal diameter in mm. */
  nominalDiameterMm: Datum;
  /** Pitch in mm, where a source gives one. */
  pitchMm?: Datum;
  /** Threads per inch, for inch threads. */
  threadsPerInch?: Datum;
  /** Hand of the thread. */
  hand: 'right' | 'left';
  /** Whether the part that the record describes carries it outside or inside; absent where both are meant. */
  member?: 'external' | 'internal';
  /** True for the thread that sources call the usual one of its list. */
  usual?: boolean;
  /** Pitch diameter of the basic profile in mm, where it was reckoned. */
  pitchDiameterMm?: Datum;
  /** Minor diameter of the external thread in mm, where it was reckoned. */
  minorDiameterMm?: Datum;
  /** Minor diameter of the internal thread in mm, where it was reckoned. */
  internalMinorDiameterMm?: Datum;
  /** Tensile stress area of the external thread in mm2, where it was reckoned. */
  stressAreaMm2?: Datum;
  /** What a reader has to know to use it. */
  note?: string;
}

/** The drive of a fixing: what a tool has to fit. */
export interface FixingHead {
  /** Id, unique in its list. */
  id: string;
  /** Form of the drive. */
  kind: 'external-hexagon' | 'internal-hexagon';
  /** Size across flats of the drive in mm. */
  acrossFlatsMm: Datum;
  /** What a reader has to know to use it. */
  note?: string;
}

/** One published or practised tightening torque. */
export interface TorquePractice {
  /** Id, unique in its list. */
  id: string;
  /** The joint as the source names it. */
  joint: string;
  /** Torque in Nm; the bounds are the published range. */
  torqueNm: Datum;
}

/** Advice on lubricating one surface of the joint. */
export interface LubricationClaim extends Claim {
  /** The surface. */
  surface: 'flats' | 'spline' | 'cotter' | 'bolt-thread-and-head';
  /** What the source advises. */
  advice: 'grease' | 'dry' | 'depends';
}

/** Advice on tightening again after riding. */
export interface RetighteningClaim extends Claim {
  /** What the source advises; `explains` = says why the question arises. */
  advice: 'once' | 'never' | 'repeatedly' | 'explains';
}

/** A way in which the joint fails. */
export interface FailureClaim extends Claim {
  /** The part that fails. */
  where: 'arm' | 'arm-bore' | 'spindle' | 'fixing' | 'joint';
}

/** Something to look at, and what it says. */
export interface InspectionClaim extends Claim {
  /** The check, by the id that a diagnosis uses for it. */
  look: string;
}

/** Whether parts named alike interchange at all. */
export interface Interchange extends Claim {
  /**
   * `open-standard` and `published-sizes` parts are meant to; of `maker-specific` parts only those of one maker are;
   * `inseparable` ones are one piece.
   */
  kind: 'open-standard' | 'published-sizes' | 'maker-specific' | 'inseparable';
}

/** What is known about a spindle of one record with an arm of another. */
export interface MatingRule extends Claim {
  /** Record id of the spindle. */
  spindle: string;
  /** Record id of the arm. */
  arm: string;
  /** What happens. */
  verdict: MateVerdict;
}

/** What happens when an arm is put on a spindle. */
export type MateVerdict = 'mates' | 'mates-with-shift' | 'starts-then-fails' | 'does-not-mate' | 'unknown';

/** A field of a set whose wording had to be interpreted before it could be used. */
export interface Interpretation {
  /** The field. */
  field: 'acrossFlatsAtEndMm' | 'faceAngleDeg' | 'flatLengthMm';
  /** How it was read, and why. */
  why: string;
}

/** Sizes of a square taper that were published together; a mixed pair is drawn from one set, never from two. */
export interface TaperSet {
  /** Name of the set, the same in every record that shares it. */
  id: string;
  /** Size across the flats at the end of the spindle, in mm. */
  acrossFlatsAtEndMm: Datum;
  /** Angle of a face against the axis, in degrees, when the set gives one. */
  faceAngleDeg?: Datum;
  /** Length of the flats in mm, when the set gives one. */
  flatLengthMm?: Datum;
  /** What had to be read into the source. */
  interpreted: readonly Interpretation[];
}

/** Geometry of a square taper. */
export interface SquareTaperGeometry {
  /** Published sets of sizes, in no order of merit; empty where no source gives sizes of its own to this square. */
  sets: readonly TaperSet[];
  /** What stands in where a set gives no value. */
  fallback: {
    /** Angle of a face against the axis, in degrees. */
    faceAngleDeg: Datum;
    /** Length of the flats in mm. */
    flatLengthMm: Datum;
  };
  /** From the inner face of a hand-fitted arm to the inner end of the flats of its own standard, in mm. */
  handFitShoulderGapMm: Datum;
  /** From the end of the spindle to the bolt seat of a hand-fitted arm of its own standard, in mm. */
  handFitEndGapMm: Datum;
  /** Further facts. */
  claims: readonly Claim[];
}

/** Geometry of a splined spindle with a separate arm on each end. */
export interface SplineGeometry {
  /** Number of splines. */
  splineCount: Datum;
  /** Nominal spindle diameter in mm. */
  spindleDiameterMm?: Datum;
  /** Major diameter of the spline in the arm, in mm. */
  majorDiameterMm?: Datum;
  /** Minor diameter of the spline in the arm, in mm. */
  minorDiameterMm?: Datum;
  /** Width of one spline in mm. */
  splineWidthMm?: Datum;
  /** Length over which arm and spindle engage, in mm. */
  engagementMm?: Datum;
  /** Shortest spline allowed in the arm, in mm. */
  minimumSplineLengthMm?: Datum;
  /** Taper of the spline per side, in degrees. */
  taperPerSideDeg?: Datum;
  /** From the end of the spindle to the stop of the arm, in mm. */
  stopFromEndMm?: Datum;
  /** Further facts. */
  claims: readonly Claim[];
}

/** Geometry of a joint of radial teeth on two faces. */
export interface FaceSplineGeometry {
  /** Number of teeth. */
  toothCount?: Datum;
  /** Outer diameter of the toothed ring in mm. */
  outerDiameterMm?: Datum;
  /** Further facts. */
  claims: readonly Claim[];
}

/** Geometry of a spindle that is fixed in one arm and passes through the bearings into the other. */
export interface ThroughSpindleGeometry {
  /** Spindle diameter at the drive side, in mm. */
  driveSideDiameterMm: Datum;
  /** Spindle diameter at the non-drive side, in mm. */
  nonDriveSideDiameterMm: Datum;
  /** Further facts. */
  claims: readonly Claim[];
}

/** Geometry of a round spindle that holds the arm by a tapered cotter. */
export interface CotteredGeometry {
  /** Spindle diameter at the arm, in mm. */
  spindleDiameterMm: Datum;
  /** Diameter of the cotter in mm. */
  cotterDiameterMm: Datum;
  /** Angle of the flat of the cotter against its axis, in degrees. */
  cotterFlatAngleDeg?: Datum;
  /** Further facts. */
  claims: readonly Claim[];
}

/** Geometry of a crank forged in one piece with its axle. */
export interface OnePieceGeometry {
  /** Bore of the shell in mm. */
  shellBoreMm: Datum;
  /** Further facts. */
  claims: readonly Claim[];
}

/** What every record holds, whatever its family. */
export interface InterfaceRecordBase {
  /** Edition of the data. */
  dataEdition: string;
  /** Id, never reused. */
  id: string;
  /** Ids that this record had before. */
  aliases: readonly string[];
  /** Name for people. */
  title: string;
  /** One or two sentences. */
  summary: string;
  /** Standards and documents that govern it. */
  documents: readonly Claim[];
  /** Whether parts of this name interchange. */
  interchange: Interchange;
  /** How the arm is stopped along the axis. */
  axialStop: {
    /** The principle. */
    kind: 'press-on-taper' | 'shoulder' | 'preload-adjuster' | 'cotter' | 'face-teeth' | 'forged';
    /** What is known about it. */
    claims: readonly Claim[];
  };
  /** How the joint is drawn tight. */
  drawnTight: {
    /** The means. */
    by: 'centre-bolt-or-nut' | 'pinch-bolts' | 'cotters' | 'none';
    /** What is known about it. */
    claims: readonly Claim[];
  };
  /** Threads of the fixing. */
  fixingThreads: readonly ThreadRecord[];
  /** Drives of the fixing. */
  fixingHeads: readonly FixingHead[];
  /** How the arm comes off. */
  puller: {
    /** Puller threads in the arm; empty where the arm has none. */
    threads: readonly ThreadRecord[];
    /** What the tip of the puller has to be. */
    tip: readonly Claim[];
    /** Practice of taking off. */
    practice: readonly Claim[];
  };
  /** In how many positions the arm goes on. */
  indexPositions: {
    /** Number of positions, where known. */
    count?: Datum;
    /** Step between them in degrees, where known. */
    stepDeg?: Datum;
    /** What is known about it. */
    claims: readonly Claim[];
  };
  /** Torques as published and practised; never merged. */
  torquePractice: readonly TorquePractice[];
  /** Advice on lubrication, both sides of it. */
  lubrication: readonly LubricationClaim[];
  /** Advice on tightening again. */
  retightening: readonly RetighteningClaim[];
  /** Ways to fail. */
  failures: readonly FailureClaim[];
  /** What to look at. */
  inspection: readonly InspectionClaim[];
  /** What happens with parts of other records; the spindle or the arm of each rule is this record. */
  mating: readonly MatingRule[];
  /** Where sources disagree. */
  conflicts: readonly Conflict[];
  /** What could not be found out. */
  missing: readonly string[];
}

/** Record of a square-taper interface. */
export interface SquareTaperRecord extends InterfaceRecordBase {
  /** Always `square-taper`. */
  family: 'square-taper';
  /** Sizes. */
  geometry: SquareTaperGeometry;
}

/** Record of a splined interface. */
export interface SplineRecord extends InterfaceRecordBase {
  /** Always `spline`. */
  family: 'spline';
  /** Sizes. */
  geometry: SplineGeometry;
}

/** Record of an interface with face teeth. */
export interface FaceSplineRecord extends InterfaceRecordBase {
  /** Always `face-spline`. */
  family: 'face-spline';
  /** Sizes. */
  geometry: FaceSplineGeometry;
}

/** Record of a through spindle with a pinched or bolted arm. */
export interface ThroughSpindleRecord extends InterfaceRecordBase {
  /** Always `through-spindle`. */
  family: 'through-spindle';
  /** Sizes. */
  geometry: ThroughSpindleGeometry;
}

/** Record of a cottered interface. */
export interface CotteredRecord extends InterfaceRecordBase {
  /** Always `cottered`. */
  family: 'cottered';
  /** Sizes. */
  geometry: CotteredGeometry;
}

/** Record of a one-piece crank. */
export interface OnePieceRecord extends InterfaceRecordBase {
  /** Always `one-piece`. */
  family: 'one-piece';
  /** Sizes. */
  geometry: OnePieceGeometry;
}

/** Everything known about one interface between arm and spindle, told apart by `family`. */
export type InterfaceRecord =
  | SquareTaperRecord
  | SplineRecord
  | FaceSplineRecord
  | ThroughSpindleRecord
  | CotteredRecord
  | OnePieceRecord;

import type { ActionId, Measurements, Observations } from '@spindlewright/diagnosis';
import type { Measurand } from '@spindlewright/quantity';

/** A reading as a job gives it: a number in the unit of the field's name, with or without its bounds. */
export type Reading = Measurand;

/** One reading across two opposite flats. */
export interface FlatReading {
  /** Across flats, mm. */
  acrossFlatsMm: Reading;
  /** Where the jaw bears, mm: from the end face inward on a spindle, from the mouth outward in an arm. */
  atMm: Reading;
  /** Which pair of flats it spans. */
  pair: 'a' | 'b';
}

/** What was read on the spindle; what is missing is taken from the standard's record. */
export interface SpindleReadings {
  /** Readings across the flats. */
  flats?: readonly FlatReading[];
  /** Face angle against the axis, deg. */
  faceAngleDeg?: Reading;
  /** Length of the flats from the end face, mm. */
  flatLengthMm?: Reading;
  /** Length of the chamfer at the end, mm. */
  endChamferMm?: Reading;
  /** Distance of the shoulder from the end face, mm. */
  shoulderFromEndMm?: Reading;
  /** Diameter over the turned corners, mm. */
  cornerDiameterMm?: Reading;
}

/** What was read on the arm; what is missing is taken from the standard's record. */
export interface ArmReadings {
  /** Readings across the flats of the bore. */
  flats?: readonly FlatReading[];
  /** Face angle against the axis, deg. */
  faceAngleDeg?: Reading;
  /** Length of the square hole, mm. */
  boreLengthMm?: Reading;
  /** Depth of the bolt's seat from the mouth, mm. */
  boltSeatFromMouthMm?: Reading;
  /** How far washer or pilot reach into the hole, mm. */
  seatIntrusionMm?: Reading;
  /** Length of the chamfer at the mouth, mm. */
  mouthChamferMm?: Reading;
  /** Diameter of the boss round the hole, mm. */
  bossDiameterMm?: Reading;
  /** Yield strength of the alloy, if the part maker states it, MPa. */
  yieldStrengthMPa?: Reading;
}

/** The fixing bolt of the joint; what decides whether it can press the arm at all. */
export interface Fixing {
  /** Thread designation, such as `M8x1`. */
  thread: string;
  /** What is on thread and head. */
  lubrication: 'lubricated' | 'dry' | 'unknown';
  /** Thread designation of the spindle, when it was gauged. */
  spindleThread?: string;
  /** Property class read from the head mark, such as `8.8`; left out when there is none to read. */
  propertyClass?: string;
  /** Length from the face of the head to the tip, mm. */
  lengthUnderHeadMm?: Reading;
  /** Depth from the spindle's end to the last full thread, mm. */
  threadDepthMm?: Reading;
  /** Thickness of the washer, mm; 0 when there is none. */
  washerThicknessMm?: Reading;
  /** `flanged` when head and washer are one piece. */
  head?: 'plain' | 'flanged';
  /** What covers or surrounds the bolt, so that it becomes a step of the plan. */
  extras?: readonly ('dust-cap' | 'self-extractor-ring')[];
  /** Outer diameter of the face that bears on the arm, mm. */
  bearingOuterDiameterMm?: Reading;
}

/** What was read at the clamp of a pinched arm. */
export interface ClampReadings {
  /** Gap left in the slot, mm. */
  slotGapMm?: Reading;
  /** Shift of the arm along the spindle with the cap set, mm. */
  axialPlayMm?: Reading;
  /** Number of pinch bolts; 2 when absent. */
  boltCount?: number;
  /** Width of the clamp along the spindle, mm. */
  clampWidthMm?: Reading;
  /** From the hinge behind the spindle to the bolts, mm. */
  hingeToBoltMm?: Reading;
  /** From that hinge to the axis of the spindle, mm. */
  hingeToAxisMm?: Reading;
  /** Whether the safety catch lies in its hole; `none` where the arm has none. */
  safetyCatch?: 'engaged' | 'not-engaged' | 'none' | 'unknown';
}

/** What is known of the press of a splined arm. */
export interface SplineReadings {
  /** Axial force that brings the arm onto its stop, as the part maker states it, N. */
  forceToStopN?: Reading;
  /** Gap between the arm, pushed on by hand, and its stop, mm. */
  gapByHandMm?: Reading;
  /** Gap left at the stop with the bolt at torque, mm; 0 = home. */
  gapAtTorqueMm?: Reading;
}

/** What was read on a cotter and its flat; what the cotter holds is reckoned once all of the lengths, angle and force are there. */
export interface CotterReadings {
  /** Force of the press along the cotter, N. */
  pressForceN?: Reading;
  /** Angle of the cotter's flat against its axis, deg. */
  flatAngleDeg?: Reading;
  /** Length of the flat across the spindle, mm. */
  flatLengthMm?: Reading;
  /** Width of the flat along the spindle, mm. */
  flatWidthMm?: Reading;
  /** From the axis of the spindle to its flat, mm. */
  axisToFlatMm?: Reading;
  /** True when both cotters are in the same way round. */
  sameWayRound?: boolean;
}

/** What was read on the teeth of a face spline; what they hold is reckoned once all three are there. */
export interface FaceTeethReadings {
  /** Angle of a tooth flank against the axis, deg. */
  flankAngleDeg?: Reading;
  /** Outer diameter of the toothed ring, mm. */
  outerDiameterMm?: Reading;
  /** Inner diameter of the toothed ring, mm. */
  innerDiameterMm?: Reading;
}

/** What was read on a crank of one bent bar; what it bears is reckoned once its three lengths are there. */
export interface BarReadings {
  /** Length of the crank, mm. */
  crankLengthMm?: Reading;
  /** From the middle of the pedal to the section looked at, along the axis, mm. */
  overhangMm?: Reading;
  /** Diameter of the bar there, mm. */
  barDiameterMm?: Reading;
  /** Yield strength of the bar, if it is known, MPa. */
  yieldStrengthMPa?: Reading;
}

/** The torque wrench at hand. */
export interface Wrench {
  /** Unit of its scale. */
  unit: 'Nm' | 'lbf.in' | 'lbf.ft' | 'kgf.cm';
  /** Lowest setting, in `unit`. */
  lowestSetting: number;
  /** Highest setting, in `unit`. */
  highestSetting: number;
  /** From its square to the mark on the grip, mm. */
  lengthMm?: number;
}

/** What was found on one end of the spindle. */
export interface SideFindings {
  /** What was seen, felt and told, by check. */
  observations: Observations;
  /** Readings of that end. */
  measurements?: Measurements;
}

/** The two clearances with an arm pushed on by hand; at least one. */
export interface TrialFitReadings {
  /** From the bolt's seat in the arm down to the spindle end, mm. */
  endGapMm?: Reading;
  /** From the arm to the run-out of the flats or the wall, mm. */
  shoulderGapMm?: Reading;
}

/** The interface of each part, by id of its record or `unknown`. */
export interface JobInterface {
  /** Interface of the spindle. */
  spindle: string;
  /** Interface of the arm. */
  arm: string;
}

/** An arm that might be fitted. */
export interface CandidateArm {
  /** What the mechanic calls it. */
  name: string;
  /** Id of its interface record. */
  interface: string;
  /** What was read on it. */
  arm?: ArmReadings;
  /** The two clearances with it pushed on by hand, mm. */
  trialFit?: TrialFitReadings;
}

/** An amount of money. */
export interface Amount {
  /** How much, in `unit`. */
  value: number;
  /** Currency. */
  unit: string;
}

/** Minutes that a shop reckons for an action. */
export interface WorkMinutes {
  /** The action. */
  action: ActionId;
  /** Minutes of work, at least 0. */
  minutes: number;
}

/** What a part costs at a shop. */
export interface PartPrice extends Amount {
  /** The part. */
  part: 'arm' | 'spindle' | 'fixing' | 'bearing';
}

/** What the shop charges; nothing of it is guessed. */
export interface Rates {
  /** Currency, as the shop names it, such as `EUR`. */
  unit: string;
  /** Charge for a minute of work, in `unit`. */
  chargePerMinute: number;
  /** Minutes that the shop reckons for an action. */
  work?: readonly WorkMinutes[];
  /** Prices of parts, in `unit`. */
  parts?: readonly PartPrice[];
}

/** Fields that take the place of those of the job; each as a whole. */
export type JobChange = {
  [K in
    | 'interface'
    | 'spindle'
    | 'arm'
    | 'trialFit'
    | 'flats'
    | 'clamp'
    | 'spline'
    | 'cotter'
    | 'faceTeeth'
    | 'bar'
    | 'fixing'
    | 'partMakerTorqueNm']?: NonNullable<Job[K]>;
};

/** A change to try on a job. */
export interface WhatIf {
  /** What it is, for the reader. */
  name: string;
  /** What is changed. */
  change: JobChange;
}

/** A job: the bike, the joint, and what was read on it. */
export interface Job {
  /** Format of the job. */
  format: 'spindlewright-job-1';
  /** Title. */
  title: string;
  /** Date, `YYYY-MM-DD`; the sheet never looks at a clock. */
  date: string;
  /** True for an invented example. */
  invented?: boolean;
  /** The bike in a few words. */
  bike: string;
  /** Side of the arm. */
  side: 'drive' | 'non-drive';
  /** Interface of spindle and arm. */
  interface: JobInterface;
  /** What was seen, felt and told of this side; leads to a diagnosis. */
  observations?: Observations;
  /** Readings that the diagnosis uses. */
  measurements?: Measurements;
  /** What was found on the other side, for comparison. */
  otherSide?: SideFindings;
  /** What was read on the spindle. */
  spindle?: SpindleReadings;
  /** What was read on the arm. */
  arm?: ArmReadings;
  /** The two clearances with the arm pushed on by hand, mm. */
  trialFit?: TrialFitReadings;
  /** State of the flats when the arm is pressed on. */
  flats?: 'greased' | 'dry' | 'unknown';
  /** Readings of the clamp, where the spindle is a through spindle. */
  clamp?: ClampReadings;
  /** Readings of the splines, where the spindle has a taper of splines. */
  spline?: SplineReadings;
  /** Readings of the cotter, where the arm is cottered. */
  cotter?: CotterReadings;
  /** Readings of the teeth, where the joint is a face spline. */
  faceTeeth?: FaceTeethReadings;
  /** Readings of the bar, where the crank is one piece. */
  bar?: BarReadings;
  /** The fixing; that of the interface with unknown lubrication when absent, `M8x1` at a square taper. */
  fixing?: Fixing;
  /** The torque wrench at hand. */
  wrench?: Wrench;
  /** Arms that might be fitted, each judged by itself. */
  candidates?: readonly CandidateArm[];
  /** Torque the part maker asks for, Nm; the trade range when absent. */
  partMakerTorqueNm?: Reading;
  /** Changes to try, each set beside the job as it is: another arm, another torque, greased or dry. */
  whatIf?: readonly WhatIf[];
  /** What the shop charges, for minutes and costs. */
  rates?: Rates;
}

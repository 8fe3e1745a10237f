import type { MateResult } from '@spindlewright/interfaces';
import type { Limits } from '@spindlewright/quantity';
import type { SeatPrediction, VerdictShare } from '@spindlewright/taper';

/** How the seat is known, best first. */
export type SeatBasis = 'trial-fit' | 'readings' | 'published-set';

/** One way of knowing the seat, and what it predicts. */
export interface SeatWay {
  /** How the seat is known. */
  basis: SeatBasis;
  /** Name of the published set that fills in what was not read. */
  set: string;
  /** What the press does to the arm, by this way of knowing; lengths in mm. */
  prediction: SeatPrediction;
  /** Paths of shape fields that come from the set and not from a reading. */
  assumed: readonly string[];
  /** Ids of the sources of the set. */
  sources: readonly string[];
}

/** A predicted seat as numbers and verdicts, in mm; what else a prediction says belongs to the way that leads. */
export type SeatNumbers = Omit<SeatPrediction, 'basis' | 'ways' | 'sensitivity' | 'findings'>;

/** A way of knowing the seat that does not lead. */
export interface OtherWay {
  /** How the seat is known. */
  basis: SeatBasis;
  /** Name of the published set that fills in what was not read. */
  set: string;
  /** What the press does to the arm, by this way of knowing; lengths in mm. */
  prediction: SeatNumbers;
  /** Paths of shape fields that come from the set and not from a reading. */
  assumed: readonly string[];
  /** Ids of the sources of the set. */
  sources: readonly string[];
}

/** A torque range that the trade states. */
export interface StatedTorque {
  /** Id of its row in the torque data. */
  id: string;
  /** Lower end, Nm. */
  lowerNm: number;
  /** Upper end, Nm. */
  upperNm: number;
  /** Ids of its sources. */
  sources: readonly string[];
}

/** A drawing in two widths with its text alternative. */
export interface SheetDrawing {
  /** SVG for a phone. */
  narrowSvg: string;
  /** SVG for a wide page and for print. */
  wideSvg: string;
  /** What it shows, in words. */
  description: string;
}

/** The press that the prediction reckons with. */
export interface PressPlan {
  /** Torque to set, with what the torque tool makes of it, Nm. */
  torqueNm: Limits;
  /** Where the torque comes from. */
  torqueFrom: 'part-maker' | 'trade-range';
  /** What the trade is found to use, each source apart, Nm. */
  tradeTorques: readonly StatedTorque[];
  /** Bolt preload, which presses the arm on, N. */
  preloadN: Limits;
  /** Friction of the flats, dimensionless. */
  flatsFriction: Limits;
  /** State of the flats. */
  flats: 'greased' | 'dry' | 'unknown';
  /** Friction of thread and head, dimensionless. */
  threadFriction: Limits;
  /** Thread designation of the fixing. */
  thread: string;
  /** What is on thread and head. */
  lubrication: 'lubricated' | 'dry' | 'unknown';
}

/** How likely the leading way makes each verdict, beside its worst case. */
export interface SeatChances {
  /** Share of the samples that come to each verdict, 0 to 1; those that none comes to are left out. */
  verdicts: readonly VerdictShare[];
  /** Number of samples. */
  samples: number;
  /** Seed that they follow from. */
  seed: number;
  /** The two clearances as histograms. */
  drawing: SheetDrawing;
}

/** What is known of a seat, before anything is drawn. */
export interface SeatFacts {
  /** The way that leads: trial fit, else readings, else the published set that leaves the least room. */
  lead: SeatWay;
  /** What other ways of knowing say. */
  others: readonly OtherWay[];
  /** Whether the two interfaces go together by name, and the shift by set. */
  mate: MateResult;
}

/** The seat part of a job sheet. */
export interface SeatPart extends SeatFacts {
  /** The section drawing to scale. */
  drawing: SheetDrawing;
  /** The leading way as a distribution. */
  chances?: SeatChances;
}

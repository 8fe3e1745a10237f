import type { Finding, Measurand } from '@spindlewright/quantity';
import type {
  ACCESSES,
  ACTIONS,
  BESIDES,
  CAUSES,
  CHECK_OUTCOMES,
  CONDITIONS,
  FAMILIES,
  KINDS,
  MEASUREMENTS,
  MODELLED_JOINTS,
  NEED_KINDS,
  NO_ANSWERS,
} from './ids.ts';

/** Id of a check. */
export type CheckId = keyof typeof CHECK_OUTCOMES;
/** Id of an outcome of the check `C`. */
export type OutcomeOf<C extends CheckId> = (typeof CHECK_OUTCOMES)[C][number];
/** Id of an outcome of any check. */
export type OutcomeId = OutcomeOf<CheckId>;
/** An answer that says nothing. */
export type NoAnswer = (typeof NO_ANSWERS)[number];
/** Id of a condition of the joint. */
export type ConditionId = (typeof CONDITIONS)[number];
/** Id of a state that can hold beside any condition. */
export type BesideId = (typeof BESIDES)[number];
/** Id of a cause. */
export type CauseId = (typeof CAUSES)[number];
/** Id of an action. */
export type ActionId = (typeof ACTIONS)[number];
/** Id of a joint that can be diagnosed. */
export type JointId = (typeof MODELLED_JOINTS)[number];
/** Id of a family of joints. */
export type FamilyId = (typeof FAMILIES)[number];
/** A condition as the model tells them apart. */
export type KindId = (typeof KINDS)[number];
/** How far the joint has to be opened for a check. */
export type Access = (typeof ACCESSES)[number];
/** Name of a reading. */
export type MeasurementId = (typeof MEASUREMENTS)[number];
/** Side of the bicycle: `drive` carries the chainrings. */
export type Side = 'drive' | 'non-drive';
/** A word of the frequency scale. */
export type FrequencyWord =
  | 'never-say-never'
  | 'hardly-ever'
  | 'almost-never'
  | 'rarely'
  | 'seldom'
  | 'sometimes'
  | 'as-often-as-not'
  | 'often'
  | 'usually'
  | 'almost-always';

/** One answer on the past of the joint. */
export type HistoryAnswer = OutcomeOf<'history'> | NoAnswer;

/** What was seen, felt and told, by check; every check may be left out. `history` is one answer or a list. */
export type Observations = {
  [C in Exclude<CheckId, 'history'>]?: OutcomeOf<C> | NoAnswer;
} & {
  /** What is known of the past: one answer or a list. */
  history?: HistoryAnswer | readonly HistoryAnswer[];
};

/** Readings; each a number, limits or a value with standard uncertainty. */
export interface Measurements {
  /** How far the bolt's seat stands proud of the spindle end, arm as found, in mm; negative = the end stands past it. */
  endGapMm?: Measurand;
  /** Between the arm's inner edge and the collar or run-out behind the flats, in mm; 0 = touching. */
  shoulderGapMm?: Measurand;
  /** Free rotation of the arm on the spindle between its stops, in deg, at least 0. */
  playAngleDeg?: Measurand;
  /** Inner end of the arm's mark on the flats, measured from the spindle end, in mm, at least 0. */
  markEndFromSpindleEndMm?: Measurand;
  /** Axial force that took the arm off, in N, at least 0. */
  releaseForceN?: Measurand;
  /** Total reading at the spindle end over one turn, in mm, at least 0. */
  runoutMm?: Measurand;
  /** Torque at which the bolt first moved on, in N.m, at least 0. */
  torqueAtFirstMovementNm?: Measurand;
  /** Turns of the bolt from hand fit to full torque, at least 0. */
  turnsToTorque?: Measurand;
}

/** What {@link diagnose} takes. */
export interface DiagnoseInput {
  /** Which joint, by the id of its interface; `square-taper` when it is a taper but not known which. */
  joint: JointId;
  /** Which side; the left joint works loose more often. */
  side?: Side;
  /** What was seen, felt and told. */
  observations: Observations;
  /** What was measured. */
  measurements?: Measurements;
}

/** An id with its probability. */
export interface Probable<Id extends string> {
  /** What. */
  id: Id;
  /** Probability, 0 to 1. */
  probability: number;
}

/** An action with what it is expected to cost. */
export interface PricedAction {
  /** The action. */
  id: ActionId;
  /** Expected loss in minutes of workshop time (risk and parts turned into such minutes), at least 0. */
  expectedLossMinutes: number;
  /** False when the action is ruled out whatever its price, as riding is with a sign of danger in sight. */
  admissible: boolean;
}

/** A check that is worth making next. */
export interface NextCheck {
  /** The check. */
  check: CheckId;
  /**
   * By how much it is expected to lower the loss of the decision, in the same minutes as `expectedLossMinutes`, above 0.
   * For a check that only has to come before another one, what is gained by that other one.
   */
  gain: number;
  /** What it takes in minutes, getting at the place included, above 0. */
  minutes: number;
  /**
   * Gain for each minute, by which the list is ordered, above 0. For a check that only has to come before another one the
   * minutes of both count.
   */
  gainPerMinute: number;
}

/** How heavily a piece of evidence weighs, in words. */
export type EvidenceWeight = 'strongly-for' | 'for' | 'hardly' | 'against' | 'strongly-against';

/** What one observation or reading says about the leading condition. */
export interface Evidence {
  /** The check it belongs to. */
  check: CheckId;
  /** What was observed (several for the history), or what the reading comes nearest to. */
  outcomes: readonly OutcomeId[];
  /** The reading it rests on, if it is one. */
  measurement?: MeasurementId;
  /** Natural logarithm of the factor by which it changed the odds of the leading condition against all others. */
  logOddsRatio: number;
  /** The same in words: a factor above 10, above 2, less either way. */
  weight: EvidenceWeight;
}

/** Id of a need: what a repair has to see to. */
export type NeedId =
  | 'same-interface'
  | 'measure-first'
  | 'right-fixing'
  | 'full-torque'
  | 'cotter-pressed-in'
  | 'bolts-in-turn'
  | 'recheck-once'
  | 'torque-limit'
  | 'clean-and-in-step'
  | 'look-at-the-rest'
  | 'stop-when-loose'
  | 'refit-seldom'
  | 'parts-of-that-age'
  | 'look-at-times';

/** What a need is about: the part that is bought, how it is fitted, how the bicycle is used afterwards. */
export type NeedKind = (typeof NEED_KINDS)[number];

/** What has to be seen to so that the repair does not fail as the joint did. */
export interface RepairNeed {
  /** What. */
  id: NeedId;
  /** Whether it is about the new part, its fitting or its use. */
  kind: NeedKind;
  /** The cause that asks for it; without one it holds for every such repair. */
  cause?: CauseId;
  /** Probability of that cause, 0 to 1; 1 without one. */
  probability: number;
}

/** Whether the spindle can go on being used. */
export interface SpindleVerdict {
  /** `good`, `not-good`, or that it cannot be told yet. */
  state: 'good' | 'not-good' | 'cannot-tell';
  /** Probability that it is worn, bent or cracked, 0 to 1. */
  probability: number;
  /** The open check that decides it, while it cannot be told. */
  check?: CheckId;
}

/** What {@link diagnose} gives. */
export interface Diagnosis {
  /** The joint that was asked about. */
  joint: JointId;
  /** The side that was asked about. */
  side?: Side;
  /** Every condition that can be at this joint, most probable first; the probabilities sum to 1. */
  conditions: readonly Probable<ConditionId>[];
  /** What may hold beside the condition, most probable first; each probability stands alone. */
  besides: readonly Probable<BesideId>[];
  /** Every cause that can be at this joint, most probable first; the probabilities sum to 1. */
  causes: readonly Probable<CauseId>[];
  /** What to do: the admissible action of least expected loss. */
  action: ActionId;
  /** Every action that makes sense at this joint, cheapest first. */
  actions: readonly PricedAction[];
  /** True: not to be ridden until the action is done and checked. */
  doNotRide: boolean;
  /** What keeps the repair from failing as the joint did; empty while the action is no repair. */
  repairNeeds: readonly RepairNeed[];
  /** Whether the spindle is still good, whatever became of the arm. */
  spindleStillGood: SpindleVerdict;
  /** Checks worth their time, best gain per minute first; empty when none would change the action. */
  nextChecks: readonly NextCheck[];
  /** What each observation says about the leading condition, heaviest first. */
  evidence: readonly Evidence[];
  /** What does not fit together; named here and never averaged away. */
  contradictions: readonly Finding[];
  /** What to heed before touching or riding the bicycle. */
  cautions: readonly Finding[];
  /** What is worth knowing about this result. */
  findings: readonly Finding[];
  /** Edition of the likelihood data. */
  dataEdition: string;
}

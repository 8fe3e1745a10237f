/**
 * What is wrong with a crank joint, why, what to check next and what to do about it.
 *
 * @packageDocumentation
 */
export {
  compareSides,
  type ReadingDifference,
  type SideComparison,
  type SideDifference,
  type SideInput,
} from './compare-sides.ts';
export { diagnose } from './diagnose.ts';
export { explain } from './explain.ts';
export { type ActionDescription, listActions } from './list-actions.ts';
export { type CheckDescription, listChecks, type OutcomeDescription, type ToolDescription } from './list-checks.ts';
export { type ConditionDescription, listConditions } from './list-conditions.ts';
export { type JointDescription, listJoints } from './list-joints.ts';
export { type AnswerOutlook, type CheckOutlook, outlook } from './outlook.ts';
export { type OwnerWords, ownerWords } from './owner-words.ts';
export type {
  Access,
  ActionId,
  BesideId,
  CauseId,
  CheckId,
  ConditionId,
  DiagnoseInput,
  Diagnosis,
  Evidence,
  EvidenceWeight,
  FamilyId,
  FrequencyWord,
  HistoryAnswer,
  JointId,
  KindId,
  MeasurementId,
  Measurements,
  NeedId,
  NeedKind,
  NextCheck,
  NoAnswer,
  Observations,
  OutcomeId,
  OutcomeOf,
  PricedAction,
  Probable,
  RepairNeed,
  Side,
  SpindleVerdict,
} from './types.ts';
export { version } from './version.ts';

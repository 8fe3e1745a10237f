/**
 * The interfaces between crank arms and spindles as sourced data, with their conflicts kept apart: look them up, say
 * which parts mate, name a spindle, a bore or a thread by its readings, and draw geometries for seat prediction.
 *
 * @packageDocumentation
 */
export { armGeometries } from './arm-geometries.ts';
export type { BoreFlatsReading, IdentifyBoreInput } from './bore-readings.ts';
export { checkMate, type MateInput, type MateResult } from './check-mate.ts';
export { dataEdition } from './data-edition.ts';
export { getInterface } from './get-interface.ts';
export { getNeighbour } from './get-neighbour.ts';
export { type BoreIdentification, identifyBore } from './identify-bore.ts';
export { identifySpindle, type SpindleIdentification } from './identify-spindle.ts';
export {
  identifyThread,
  type ThreadCandidate,
  type ThreadIdentification,
  type ThreadSetProbability,
} from './identify-thread.ts';
export { type ConflictEntry, type ConflictFilter, listConflicts } from './list-conflicts.ts';
export { type InterfaceFilter, listInterfaces } from './list-interfaces.ts';
export { listNeighbours, type NeighbourFilter } from './list-neighbours.ts';
export { listObservations } from './list-observations.ts';
export { listThreads, type ThreadFilter } from './list-threads.ts';
export type {
  BoltCircleRecord,
  ConventionRecord,
  FixingRecord,
  NeighbourKind,
  NeighbourRecord,
  NeighbourRecordBase,
  NeighbourRule,
  PedalThreadRecord,
  PullerThreadRecord,
  ShellBoreRecord,
  ShellThreadRecord,
  ShellWidth,
  SidedThreads,
} from './neighbour.ts';
export type { ObservationMeaning, ObservationRecord } from './observation.ts';
export type {
  ArmGeometry,
  PublishedGeometry,
  SpindleGeometry,
  SquareTaperArm,
  SquareTaperSpindle,
} from './published-geometry.ts';
export type {
  Claim,
  Conflict,
  CotteredGeometry,
  CotteredRecord,
  FaceSplineGeometry,
  FaceSplineRecord,
  FailureClaim,
  FixingHead,
  InspectionClaim,
  Interchange,
  InterfaceFamily,
  InterfaceRecord,
  InterfaceRecordBase,
  Interpretation,
  LubricationClaim,
  MateVerdict,
  MatingRule,
  OnePieceGeometry,
  OnePieceRecord,
  RetighteningClaim,
  SplineGeometry,
  SplineRecord,
  SquareTaperGeometry,
  SquareTaperRecord,
  TaperSet,
  ThreadRecord,
  ThroughSpindleGeometry,
  ThroughSpindleRecord,
  TorquePractice,
} from './record.ts';
export { spindleGeometries } from './spindle-geometries.ts';
export type { SetProbability, SpindleCandidate } from './square-candidates.ts';
export type { FlatsReading, IdentifySpindleInput } from './square-readings.ts';
export type { MateShift } from './taper-shifts.ts';
export type { ThreadKind } from './thread-hypotheses.ts';
export type { IdentifyThreadInput } from './thread-readings.ts';
export type { ThreadRow } from './thread-rows.ts';
export { version } from './version.ts';

/**
 * The whole crank-arm job: readings in, a job sheet with verdict, drawing and cautions out.
 *
 * @packageDocumentation
 */
export type { CandidateSeat, JudgedCandidate } from './candidates.ts';
export type { CostPart, PartCost, SideCost } from './cost-section.ts';
export { createFitChecker, type FitAnswer, type FitChecker } from './create-fit-checker.ts';
export { jobDefaults } from './defaults.ts';
export type { DiagnosisPart } from './diagnosis-part.ts';
export type {
  Amount,
  ArmReadings,
  BarReadings,
  CandidateArm,
  ClampReadings,
  CotterReadings,
  FaceTeethReadings,
  Fixing,
  FlatReading,
  Job,
  JobChange,
  JobInterface,
  PartPrice,
  Rates,
  Reading,
  SideFindings,
  SpindleReadings,
  SplineReadings,
  TrialFitReadings,
  WhatIf,
  WorkMinutes,
  Wrench,
} from './job.ts';
export type { FasteningPlan, JointPart, NotHere } from './joint-part.ts';
export { messages } from './messages/en.ts';
export { type JobSeat, predictJobSeat } from './predict-job-seat.ts';
export { type Provenance, provenance } from './provenance.ts';
export { readJob } from './read-job.ts';
export { renderHtml } from './render-html.ts';
export { renderMarkdown } from './render-markdown.ts';
export { renderText } from './render-text.ts';
export { draftMapping, type MappingDraft } from './screen/draft-mapping.ts';
export { type FitAnswerEntry, type FitData, type FitFacts, fitData } from './screen/fit-data.ts';
export type { ColumnMapping, Mapping } from './screen/mapping.ts';
export type { Need } from './screen/need.ts';
export { needFromJob } from './screen/need-from-job.ts';
export type { Doubt, Part, PartField, PartKind, PartSide } from './screen/part.ts';
export { type Screening, screenParts } from './screen/screen-parts.ts';
export type { ScreenCount, ScreenedPart, ScreenSummary, UnmappedWord } from './screen/screened.ts';
export type { PredictedSeat } from './screen/seat-by-readings.ts';
export { shortlist } from './screen/shortlist.ts';
export type {
  OtherWay,
  PressPlan,
  SeatBasis,
  SeatChances,
  SeatFacts,
  SeatNumbers,
  SeatPart,
  SeatWay,
  SheetDrawing,
  StatedTorque,
} from './seat-part.ts';
export type { Block, FitState, JobSheet, Section } from './sheet.ts';
export type { BoltStrength, SettlingPlan, TighteningPart, WrenchPlan } from './tightening-part.ts';
export { version } from './version.ts';
export type { WhatIfRow } from './what-if.ts';
export { workJob } from './work-job.ts';

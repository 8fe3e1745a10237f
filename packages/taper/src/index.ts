/**
 * Where a square-taper crank arm seats, what pressing does to it and how far it may turn when worn.
 *
 * @packageDocumentation
 */
export { type ArmClearance, armClearance } from './arm-clearance.ts';
export type { ArmColumn, ArmColumns, SizeColumn } from './arm-columns.ts';
export { assumedDimensions, assumedMaterials, flatFriction, seatThresholds } from './assumed.ts';
export { type BoltTurns, boltTurns } from './bolt-turns.ts';
export { type ChainlineShift, chainlineShift } from './chainline-shift.ts';
export { clearanceFromPlay } from './clearance-from-play.ts';
export { type ConeForces, coneForces } from './cone-forces.ts';
export { faceAngleFromTaper } from './face-angle-from-taper.ts';
export { type FlatFit, type FlatReading, fitFlats } from './fit-flats.ts';
export { type CotterWedge, type CotterWedgeInput, cotterWedge } from './joints/cotter-wedge.ts';
export { type FaceSpline, type FaceSplineInput, faceSpline } from './joints/face-spline.ts';
export { type OnePieceCrank, type OnePieceCrankInput, onePieceCrank } from './joints/one-piece-crank.ts';
export { type PinchClamp, type PinchClampInput, pinchClamp } from './joints/pinch-clamp.ts';
export { type SplinePress, type SplinePressInput, splinePress } from './joints/spline-press.ts';
export { type LoadMargin, loadMargin, type SideMargin } from './load-margin.ts';
export { crankTestLoad, type PedalLoad, type SquareOrientation } from './pedal-load.ts';
export { type BorePlay, playFromClearance } from './play-from-clearance.ts';
export { predictSeat } from './predict-seat.ts';
export { type NeededPreload, preloadFor } from './preload-for.ts';
export { type PressFit, pressFit } from './press-fit.ts';
export { type PullerTurns, pullerTurns } from './puller-turns.ts';
export { type RetighteningCycle, type RetighteningPath, retighteningPath } from './retightening-path.ts';
export { type ScreenedSeats, type ScreenSeatsInput, type ScreenSpindle, screenSeats } from './screen-seats.ts';
export type { Seat, SeatPrediction, SeatSensitivity, SeatVerdict, SeatWay } from './seat.ts';
export type { SeatContribution } from './seat-contributions.ts';
export {
  type SampledSeat,
  type SeatDistribution,
  type SeatDistributionInput,
  seatDistribution,
  type VerdictShare,
} from './seat-distribution.ts';
export { seatFromWitnessMark } from './seat-from-witness-mark.ts';
export type { PredictSeatInput, SeatInput, TrialFit, WitnessMark } from './seat-input.ts';
export { type SeatLeft, seatLeft } from './seat-left.ts';
export type { InputCorrelation } from './seat-samples.ts';
export type { LengthShare, LengthSpread, SeatSpread } from './seat-spread.ts';
export { type SeatVerdictSql, type SeatVerdictSqlInput, seatVerdictSql } from './seat-verdict-sql.ts';
export { type SettledPreload, settledPreload } from './settled-preload.ts';
export type { ArmShape, Compliance, Material, Materials, Pressing, SpindleShape } from './shapes.ts';
export { type ShrinkFit, shrinkFit } from './shrink-fit.ts';
export type { ArmSource, ArmSources } from './sql-arms.ts';
export type { SquareInBore } from './square-in-bore.ts';
export { type TemperatureEffect, temperatureEffect, thermalExpansion } from './temperature-effect.ts';
export { version } from './version.ts';

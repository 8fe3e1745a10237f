/**
 * Drawings of crank joints to scale, as self-contained SVG with a text alternative, from plain numbers.
 *
 * @packageDocumentation
 */
export { type BorePlayPicture, describeBorePlay } from './describe-bore-play.ts';
export { type DiagnosisCondition, type DiagnosisPicture, describeDiagnosis } from './describe-diagnosis.ts';
export { describePreloadRange, type PreloadMark, type PreloadRangePicture } from './describe-preload-range.ts';
export { describeSeat } from './describe-seat.ts';
export {
  describeSeatDistribution,
  type GapSamples,
  type SeatDistributionPicture,
} from './describe-seat-distribution.ts';
export { describeSides, type PictureSide, type SidesPicture } from './describe-sides.ts';
export { drawBorePlay } from './draw-bore-play.ts';
export { drawDiagnosis } from './draw-diagnosis.ts';
export { drawPreloadRange } from './draw-preload-range.ts';
export { drawSeat } from './draw-seat.ts';
export { drawSeatDistribution } from './draw-seat-distribution.ts';
export { drawSides } from './draw-sides.ts';
export type { PictureFrame } from './frame.ts';
export type { LabelKey, Labels } from './labels.ts';
export type { PictureArm, PictureSeat, PictureSpindle, SeatPicture } from './seat-picture.ts';
export { version } from './version.ts';

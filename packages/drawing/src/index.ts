/**
 * Drawings of crank joints to scale, as self-contained SVG with a text alternative, from plain numbers.
 *
 * @packageDocumentation
 */
export { describeSeat } from './describe-seat.ts';
export { drawSeat } from './draw-seat.ts';
export type { LabelKey, Labels } from './labels.ts';
export type { PictureArm, PictureSeat, PictureSpindle, SeatPicture } from './seat-picture.ts';
export { version } from './version.ts';

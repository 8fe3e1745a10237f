/**
 * The seat alone: the same numbers and verdicts as `predictSeat`, without findings and sentences, for pages that count
 * every kilobyte.
 *
 * @packageDocumentation
 */
export { bareSeat } from './bare-seat.ts';
export { bareSeatOfEqualAngles } from './bare-seat-of-equal-angles.ts';
export type { BareMaterials, BarePressing, BareSeat, BareSeatInput, BareSpindle } from './bare-solve.ts';

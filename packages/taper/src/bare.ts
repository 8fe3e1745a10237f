/**
 * The seat alone: the same numbers and verdicts as `predictSeat`, without findings and sentences, for pages that count
 * every kilobyte.
 *
 * @packageDocumentation
 */
export { type BareSeat, type BareSeatInput, bareSeat } from './bare-seat.ts';

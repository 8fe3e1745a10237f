/**
 * The seat alone: the same numbers and verdicts as `predictSeat`, without findings and sentences, for pages that count
 * every kilobyte.
 *
 * @packageDocumentation
 */
export {
  type BareMaterials,
  type BarePressing,
  type BareSeat,
  type BareSeatInput,
  type BareSpindle,
  bareSeat,
} from './bare-seat.ts';

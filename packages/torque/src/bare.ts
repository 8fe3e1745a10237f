/**
 * The conversions alone: the same numbers as the full functions, without findings and sentences, for pages that count
 * every kilobyte.
 *
 * @packageDocumentation
 */
export { barePreloadN } from './bare-preload-n.ts';
export { bareTorqueNm } from './bare-torque-nm.ts';

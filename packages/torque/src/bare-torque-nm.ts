import { bareArmMm, inRange } from './bare-joint.ts';
import type { FrictionJoint } from './joint.ts';

/**
 * Gives the tightening torque for a preload as a bare number, for pages that count every kilobyte.
 *
 * @remarks
 * Formula: that of `torqueFromPreload` for the same `method`, by the same code; F preload, T = F times the lever arm.
 *
 * Validity: as there. Left out, to be small: findings and their sentences, the split of the torque, keys that are not
 * known (they are passed over), near names. Say the cautions yourself: one exact friction is no range.
 *
 * Accuracy: the same number as `torqueFromPreload`, to the last digit.
 *
 * @param input - `preloadN` from 0 to 1e9 in N; `thread`; `bearing` in mm; `threadFriction`, `bearingFriction` above 0 to
 * 1; `method` (`exact` when absent).
 * @returns Torque in Nm, at least 0.
 * @throws {@link DomainError} for a number outside its range, by its path.
 * @example
 * ```ts
 * import { metricThread } from '@spindlewright/torque';
 * import { bareTorqueNm } from '@spindlewright/torque/bare';
 * const torqueNm = bareTorqueNm({
 *   preloadN: 25_000,
 *   thread: metricThread({ nominalDiameterMm: 8, pitchMm: 1 }),
 *   threadFriction: 0.12,
 *   bearingFriction: 0.12,
 *   bearing: { outerDiameterMm: 16, holeDiameterMm: 9 },
 * });
 * torqueNm.toFixed(1); // => '35.6'
 * ```
 * @see `torqueFromPreload` and its sources.
 */
export function bareTorqueNm(input: { preloadN: number } & FrictionJoint): number {
  const armMm = bareArmMm('bareTorqueNm', input);
  inRange('bareTorqueNm', 'preloadN', input.preloadN, 0, 1e9);
  return (input.preloadN * armMm) / 1000;
}

import { bareArmMm, inRange } from './bare-joint.ts';
import type { FrictionJoint } from './joint.ts';

/**
 * Gives the preload that a tightening torque makes as a bare number, for pages that count every kilobyte.
 *
 * @remarks
 * Formula: that of `preloadFromTorque` for the same `method`, by the same code; T torque, F = T over the lever arm.
 *
 * Validity: as there. Left out, to be small: findings and their sentences, the split of the torque, keys that are not
 * known (they are passed over), near names. Say the cautions yourself: what a wrench makes of a real joint is a range.
 *
 * Accuracy: the same number as `preloadFromTorque`, to the last digit.
 *
 * @param input - `torqueNm` from 0 to 1e9 in Nm; `thread`; `bearing` in mm; `threadFriction`, `bearingFriction` above 0
 * to 1; `method` (`exact` when absent).
 * @returns Preload in N, at least 0.
 * @throws {@link DomainError} for a number outside its range, by its path.
 * @example
 * ```ts
 * import { metricThread } from '@spindlewright/torque';
 * import { barePreloadN } from '@spindlewright/torque/bare';
 * const preloadN = barePreloadN({
 *   torqueNm: 40,
 *   thread: metricThread({ nominalDiameterMm: 8, pitchMm: 1 }),
 *   threadFriction: 0.12,
 *   bearingFriction: 0.12,
 *   bearing: { outerDiameterMm: 16, holeDiameterMm: 9 },
 * });
 * Math.round(preloadN); // => 28121
 * ```
 * @see `preloadFromTorque` and its sources.
 */
export function barePreloadN(input: { torqueNm: number } & FrictionJoint): number {
  const armMm = bareArmMm('barePreloadN', input);
  inRange('barePreloadN', 'torqueNm', input.torqueNm, 0, 1e9);
  return (input.torqueNm * 1000) / armMm;
}

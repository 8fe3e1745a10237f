import type { Finding, Limits } from '@spindlewright/quantity';
import { checkInput } from '@spindlewright/quantity';
import { forceSpec } from './domain.ts';
import { type PreloadRangeInput, preloadRange } from './preload-range.ts';
import type { StrengthUse } from './strength-use.ts';
import { toolTorque } from './tool-torque.ts';

/** A preload that is needed at least, and what is known of wrench, friction and joint. */
export interface TorqueToHoldInput extends Omit<PreloadRangeInput, 'torqueNm'> {
  /** Preload in N that has to be there at the low end, above 0. */
  neededPreloadN: number;
}

/** Torque at whose low end the joint still holds. */
export interface TorqueToHold {
  /** Torque to set in Nm. */
  settingNm: number;
  /** Torque in Nm that the tool may make of it. */
  torqueNm: Limits;
  /** Preload in N that comes of it; the lower bound is what was needed. */
  preloadN: Limits;
  /** Use of the bolt; absent when no strength was given. */
  strength?: StrengthUse;
  /** Whether the bolt stays within its limit at the high end; null when no strength was given. */
  boltBears: boolean | null;
  /** Ids in the register of sources. */
  sources: string[];
  /** Edition of the data. */
  dataEdition: string;
  /** What is worth saying; a bolt that does not bear it among them. */
  findings: Finding[];
}

const WHERE = 'torqueToHold';

/**
 * Gives the torque to set so that the joint has its preload even with the weakest tool and the most friction.
 *
 * @remarks
 * Formula: setting = T/(1 - a), T torque that makes the preload at the highest frictions, a deviation of the tool; then
 * `preloadRange` at that setting, whose high end says whether the bolt bears it.
 *
 * Validity: that of `preloadRange`. Settling and riding take some preload away afterwards: add their loss to what is
 * needed. When the bolt does not bear it, `boltBears` is false and a finding says so: narrow the friction (clean, grease),
 * take a better tool or a stronger bolt.
 *
 * Accuracy: two roundings beyond `preloadRange`. A tool class with two deviations is taken by the one at the setting, the
 * larger one between them.
 *
 * @param input - `neededPreloadN` above 0 in N; the rest as in `preloadRange` without `torqueNm`.
 * @returns Setting in Nm, limits of torque and preload, use of the bolt, findings.
 * @throws {@link DomainError} as `preloadRange`, and for a needed preload that is not above 0.
 * @example
 * ```ts
 * import { threadFor, torqueToHold } from '@spindlewright/torque';
 * const friction = { lower: 0.08, nominal: 0.12, upper: 0.16 };
 * const { settingNm, boltBears } = torqueToHold({
 *   neededPreloadN: 14_000,
 *   tool: 'click-wrench-iso-6789',
 *   thread: threadFor('M8x1'),
 *   threadFriction: friction,
 *   bearingFriction: friction,
 *   bearing: { outerDiameterMm: 20, squareHoleMm: 12.6, cornerReliefMm: 0.5 },
 *   propertyClass: '10.9',
 * });
 * settingNm.toFixed(0); // => '32'
 * boltBears; // => true
 * ```
 * @see VDI 2230 (`vdi-2230-2001-quoted`), smallest and largest assembly preload.
 */
export function torqueToHold(input: TorqueToHoldInput): TorqueToHold {
  const { neededPreloadN, ...joint } = (input ?? {}) as TorqueToHoldInput;
  checkInput({ where: WHERE, value: { neededPreloadN }, fields: { neededPreloadN: { ...forceSpec, min: 1e-3 } } });
  // Preload is proportional to torque, so that one newton metre without a tool gives the lowest preload per torque.
  const { tool, ...bare } = joint;
  const lowestNm = neededPreloadN / preloadRange({ ...bare, torqueNm: 1 }).preloadN.lower;
  const settingNm = tool === undefined ? lowestNm : settingOf(lowestNm, tool);
  const range = preloadRange({ ...joint, torqueNm: settingNm });
  const limit = joint.utilisation ?? 0.9;
  return {
    settingNm,
    torqueNm: range.torqueNm,
    preloadN: range.preloadN,
    ...(range.strength === undefined ? {} : { strength: range.strength }),
    boltBears: range.strength === undefined ? null : range.strength.utilisation.upper <= limit,
    sources: range.sources,
    dataEdition: range.dataEdition,
    findings: range.findings,
  };
}

/** Setting whose low end is a torque; where a class changes its deviation between the two, the larger one. */
function settingOf(lowestNm: number, tool: string): number {
  const aimedWith = (torqueNm: number): number =>
    lowestNm / (1 - toolTorque({ torqueNm, tool }).deviationPercent / 100);
  const first = aimedWith(lowestNm);
  const second = aimedWith(first);
  return aimedWith(second) === second ? second : first;
}

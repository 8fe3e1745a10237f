import { checkInput, type FieldSpecs, type Limits } from '@spindlewright/quantity';
import { torqueSpec } from './domain.ts';
import { refuse } from './refuse.ts';
import { toolSpec, toolTorque } from './tool-torque.ts';

/** Torque to aim at, and what the tool may make of it. */
export interface TargetTorque {
  /** Torque to set in Nm. */
  targetTorqueNm: number;
  /** What the tool may really apply in Nm; its upper bound is the torque not to be exceeded. */
  torqueNm: Limits;
}

/**
 * Gives the torque to set so that the tool, at its worst, does not exceed a torque that must not be exceeded.
 *
 * @remarks
 * Formula: target = T/(1 + a), lowest = target (1 - a); T largest torque allowed, a deviation of the tool.
 *
 * Validity: give either a deviation or a tool class. A class with two deviations (6 % up to 10 Nm, 4 % above) is taken
 * by the deviation at the target; between them, where the target of one lies in the range of the other, the larger
 * holds.
 *
 * Accuracy: two roundings. A printed example rounds the target first and differs by less than 1 in 1200.
 *
 * @param input - `maximumTorqueNm` at least 0 in Nm; `deviationPercent` from 0 to 99, or `tool`: id of a tool class.
 * @returns Target in Nm, and the bounds that the tool makes of it in Nm.
 * @throws {@link DomainError} unless exactly one of deviation and tool is given, or for values outside their domain.
 * @example
 * ```ts
 * import { targetTorque } from '@spindlewright/torque';
 * targetTorque({ maximumTorqueNm: 52, tool: 'click-wrench-iso-6789' }).targetTorqueNm; // => 50
 * ```
 * @see Scatter bookkeeping (`tightening-scatter-page`).
 */
export function targetTorque(input: {
  maximumTorqueNm: number;
  deviationPercent?: number;
  tool?: string;
}): TargetTorque {
  const fields: FieldSpecs = {
    maximumTorqueNm: torqueSpec,
    deviationPercent: { type: 'number', unit: '%', min: 0, max: 99, optional: true },
    tool: { ...toolSpec(), optional: true },
  };
  checkInput({ where: 'targetTorque', value: input, fields });
  const { maximumTorqueNm, tool } = input;
  if ((input.deviationPercent === undefined) === (tool === undefined)) {
    throw refuse('targetTorque', '', 'both or neither', 'deviationPercent or tool, one of them');
  }
  const deviationAt = (torqueNm: number): number =>
    tool === undefined ? (input.deviationPercent ?? 0) : toolTorque({ torqueNm, tool }).deviationPercent;
  const aimedWith = (deviationPercent: number): number => maximumTorqueNm / (1 + deviationPercent / 100);
  const first = deviationAt(maximumTorqueNm);
  const deviationPercent = Math.max(first, deviationAt(aimedWith(first)));
  const targetTorqueNm = aimedWith(deviationPercent);
  return {
    targetTorqueNm,
    torqueNm: {
      lower: targetTorqueNm * (1 - deviationPercent / 100),
      nominal: targetTorqueNm,
      upper: maximumTorqueNm,
    },
  };
}

import { checkInput, type FieldSpecs, type Finding } from '@spindlewright/quantity';
import { torqueSpec } from './domain.ts';
import { handForceHigh } from './messages/lean.ts';
import { raiseText } from './raise-text.ts';

/** Force at the hand. */
export interface HandForce {
  /** Force in N, at least 0. */
  forceN: number;
  /** What is worth saying. */
  findings: Finding[];
}

const fields: FieldSpecs = {
  torqueNm: torqueSpec,
  leverLengthMm: { type: 'number', unit: 'mm', min: 1, max: 10_000 },
  pullAngleDeg: { type: 'number', unit: 'deg', min: 1, max: 90, optional: true },
};

// Judgement: what one arm holds steadily enough to feel a click.
const STEADY_PULL_N = 250;

/**
 * Gives the force that a hand has to pull with for a torque on a lever.
 *
 * @remarks
 * Formula: F = T/(l sin b); l lever from the fastener to the middle of the hand, b angle between pull and lever.
 *
 * Validity: torque at least 0, lever above 0, angle 1 to 90 degrees. Above 250 N (judgement) comes a finding: what
 * one arm can hold with care.
 *
 * Accuracy: one sine; at 90 degrees exact.
 *
 * @param input - `torqueNm` at least 0 in Nm; `leverLengthMm` above 0 in mm; `pullAngleDeg` in degrees (default 90).
 * @returns Force in N.
 * @throws {@link DomainError} for values outside their domain or unknown keys.
 * @example
 * ```ts
 * import { handForce } from '@spindlewright/torque';
 * handForce({ torqueNm: 40, leverLengthMm: 250 }).forceN; // => 160
 * ```
 * @see Statics of the lever; no source needed.
 */
export function handForce(input: { torqueNm: number; leverLengthMm: number; pullAngleDeg?: number }): HandForce {
  checkInput({ where: 'handForce', value: input, fields });
  const { torqueNm, leverLengthMm, pullAngleDeg = 90 } = input;
  const sine = Math.sin((pullAngleDeg * Math.PI) / 180);
  const forceN = (torqueNm * 1000) / (leverLengthMm * sine);
  return {
    forceN,
    findings:
      forceN > STEADY_PULL_N
        ? [raiseText('hand-force-high', handForceHigh, 'caution', { forceN }, { path: 'leverLengthMm' })]
        : [],
  };
}

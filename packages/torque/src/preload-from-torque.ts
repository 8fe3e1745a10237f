import type { FieldSpecs } from '@spindlewright/quantity';
import { torqueSpec } from './domain.ts';
import {
  checkJoint,
  type FrictionJoint,
  type JointTorques,
  leverArms,
  type NutFactorJoint,
  prevailingSpec,
  torquesOf,
} from './joint.ts';
import { prevailingNotOvercome } from './messages/lean.ts';
import { raiseText } from './raise-text.ts';

const own: FieldSpecs = { torqueNm: torqueSpec, prevailingTorqueNm: prevailingSpec };

/** Preload for a torque, and where the torque goes. */
export interface PreloadFromTorque extends JointTorques {
  /** Preload in N, at least 0. */
  preloadN: number;
}

/**
 * Gives the preload that a tightening torque makes, at one exact friction.
 *
 * @remarks
 * Formula: F = (T - prevailing torque)/(lever arm), 0 where the prevailing torque takes all; the lever arm being that of
 * `torqueFromPreload` for the same `method`.
 *
 * Validity: T at least 0, friction above 0 to 1. What a wrench makes of a real joint is a range: use `preloadRange`.
 *
 * Accuracy: the inverse of `torqueFromPreload` to 1e-15 relative; formulas as accurate as told there.
 *
 * @param input - `torqueNm` at least 0 in Nm; the joint as in `torqueFromPreload`: friction without unit, bearing in mm;
 * `prevailingTorqueNm` at least 0 in Nm (default 0).
 * @returns Preload in N, torques in Nm (loosening: below 0 when it unwinds by itself), nut factor, parts, findings.
 * @throws {@link DomainError} for a negative torque, friction outside the domain, a face that its hole leaves nothing
 * of, a thread whose sizes contradict each other, or unknown keys.
 * @example
 * ```ts
 * import { preloadFromTorque, threadFor } from '@spindlewright/torque';
 * const thread = threadFor('M8x1');
 * preloadFromTorque({ torqueNm: 40, thread, nutFactor: 0.2, method: 'nut-factor' }).preloadN; // => 25000
 * ```
 * @see Shigley (`shigley-9`), equations 8-26 and 8-27; VDI 2230 (`vdi-2230-2001-quoted`).
 */
export function preloadFromTorque(
  input: { torqueNm: number; prevailingTorqueNm?: number } & (FrictionJoint | NutFactorJoint),
): PreloadFromTorque {
  checkJoint('preloadFromTorque', input, own);
  const arms = leverArms(input);
  const { torqueNm, prevailingTorqueNm = 0 } = input;
  const preloadN = (Math.max(0, torqueNm - prevailingTorqueNm) * 1000) / arms.tightenMm;
  const torques = torquesOf(input, arms, preloadN, prevailingTorqueNm);
  if (prevailingTorqueNm > 0 && torqueNm <= prevailingTorqueNm) {
    torques.findings.push(
      raiseText('prevailing-not-overcome', prevailingNotOvercome, 'stop', { torqueNm, prevailingTorqueNm }),
    );
  }
  return { preloadN, ...torques };
}

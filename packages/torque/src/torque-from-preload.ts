import type { FieldSpecs } from '@spindlewright/quantity';
import { forceSpec } from './domain.ts';
import {
  checkJoint,
  type FrictionJoint,
  type JointTorques,
  leverArms,
  type NutFactorJoint,
  prevailingSpec,
  torquesOf,
} from './joint.ts';

const own: FieldSpecs = { preloadN: forceSpec, prevailingTorqueNm: prevailingSpec };

/** Torque for a preload, and where it goes. */
export interface TorqueFromPreload extends JointTorques {
  /** Tightening torque in Nm, at least 0. */
  torqueNm: number;
}

/**
 * Gives the tightening torque that makes a preload, at one exact friction.
 *
 * @remarks
 * Formula: `exact`: T = F [d2/2 (tan l + m')/(1 - m' tan l) + m_b r_b], m' = m/cos 30; `vdi-2230`: T = F (0.16 P + 0.58
 * d2 m + m_b r_b); `nut-factor`: T = K d F with K given, or K = (P/pi + d2 m/cos 30 + 2 m_b r_b)/(2 d) from friction.
 * F preload, l lead angle, P pitch, d2 pitch diameter, m and m_b friction of thread and head, r_b friction radius: for a
 * round hole the mean (Do + Dh)/4 in the first two (collar of the handbook, VDI 2230) and 1/3 (Do^3 - Dh^3)/(Do^2 - Dh^2)
 * in the third, as its source has it; for a square hole the integral of r dA over the area that is left, by Simpson's
 * rule, for which no source gives a form. Loosening takes the sign of the lead angle the other way round.
 * The prevailing torque of a locking element adds to both.
 *
 * Validity: F at least 0, friction above 0 to 1. A real joint's friction is a range, so use `preloadRange` to decide;
 * frictions outside 0.04 to 0.35 are a finding, a thread that unwinds by itself too.
 *
 * Accuracy: the inverse of `preloadFromTorque` to 1e-15. The long form meets the handbook example to 0.01 %; the VDI form
 * lies within 2 % of it for usual threads. Even pressure and mean diameter differ by 1.3 % of the radius at an outer
 * diameter of 1.5 holes. On a 12.7 mm square even wear instead of even pressure would give 0.8 % (face of 18 mm) to 3.1 %
 * (26 mm) less radius.
 *
 * @param input - `preloadN` at least 0 in N; `thread`; `threadFriction`, `bearingFriction` above 0 to 1; `bearing` in
 * mm; `method`; `prevailingTorqueNm` at least 0 in Nm (default 0). With `method: 'nut-factor'` a `nutFactor` may stand
 * in place of frictions and bearing.
 * @returns Torques in Nm (loosening: below 0 when it unwinds by itself), nut factor, parts of the torque, findings.
 * @throws {@link DomainError} for a negative preload, friction outside the domain, a face that its hole leaves nothing
 * of, a thread whose sizes contradict each other, or unknown keys.
 * @example
 * ```ts
 * import { metricThread, torqueFromPreload } from '@spindlewright/torque';
 * const { torqueNm, nutFactor } = torqueFromPreload({
 *   preloadN: 25_000,
 *   thread: metricThread({ nominalDiameterMm: 8, pitchMm: 1 }),
 *   threadFriction: 0.12,
 *   bearingFriction: 0.12,
 *   bearing: { outerDiameterMm: 16, holeDiameterMm: 9 },
 * });
 * torqueNm.toFixed(1); // => '35.6'
 * nutFactor.toFixed(3); // => '0.178'
 * ```
 * @see Shigley (`shigley-9`), equation 8-26; VDI 2230 (`vdi-2230-2001-quoted`); Machinery's Handbook
 * (`machinerys-handbook-31`).
 */
export function torqueFromPreload(
  input: { preloadN: number; prevailingTorqueNm?: number } & (FrictionJoint | NutFactorJoint),
): TorqueFromPreload {
  checkJoint('torqueFromPreload', input, own);
  const arms = leverArms(input);
  const { preloadN, prevailingTorqueNm = 0 } = input;
  return {
    torqueNm: (preloadN * arms.tightenMm) / 1000 + prevailingTorqueNm,
    ...torquesOf(input, arms, preloadN, prevailingTorqueNm),
  };
}

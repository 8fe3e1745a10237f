import { checkInput, type FieldSpec, type FieldSpecs, type Finding } from '@spindlewright/quantity';
import { type Bearing, bearingSpec, checkRing } from './bearing.ts';
import { dataEdition } from './data-edition.ts';
import { frictionSpec, strengthRange, utilisationSpec } from './domain.ts';
import { leverArms, torquesOf } from './joint.ts';
import { oneFrictionValue } from './messages/lean.ts';
import { propertyClass } from './property-class.ts';
import { raiseText } from './raise-text.ts';
import { checkThread, type Thread, threadFields } from './thread.ts';

/** Largest preload of tightening and the torque that makes it, at one exact friction. */
export interface AssemblyLimit {
  /** Preload in N at which the wanted share of the yield strength is used, above 0. */
  preloadN: number;
  /** Torque in Nm that makes it, by the VDI 2230 form. */
  torqueNm: number;
  /** Equivalent stress of pull and twist in MPa: utilisation times yield strength. */
  equivalentStressMPa: number;
  /** Stress of the pull alone in MPa. */
  tensileStressMPa: number;
  /** Shear stress of the twist alone in MPa. */
  torsionalStressMPa: number;
  /** Yield strength that was used, in MPa. */
  yieldStrengthMPa: number;
  /** Ids in the register of sources. */
  sources: string[];
  /** Edition of the data. */
  dataEdition: string;
  /** What is worth saying. */
  findings: Finding[];
}

/** A property class by its id, or what `propertyClass` gave for it, or a yield strength in MPa alone. */
export type Strength = string | { yieldStrengthMPa: number };

/** Description of the field `propertyClass`. @internal */
export const strengthSpec = (strength: unknown): FieldSpec =>
  typeof strength === 'object' ? { type: 'object', fields: { yieldStrengthMPa: strengthRange } } : { type: 'text' };

/** The input with the strength reduced to what counts, since a record of `propertyClass` carries more. @internal */
export function withPlainStrength(input: unknown): unknown {
  const strength = (input as { propertyClass?: unknown } | null)?.propertyClass;
  if (typeof strength !== 'object' || strength === null || !('yieldStrengthMPa' in strength)) return input;
  return { ...(input as object), propertyClass: { yieldStrengthMPa: strength.yieldStrengthMPa } };
}

/** Yield strength of a class by id, or the number itself, with the sources. @internal */
export function yieldOf(
  strength: Strength,
  thread: Thread,
): { yieldStrengthMPa: number; sources: string[]; findings: Finding[] } {
  if (typeof strength !== 'string') {
    return { yieldStrengthMPa: strength.yieldStrengthMPa, sources: [], findings: [] };
  }
  const { yieldStrengthMPa, sources, findings } = propertyClass(strength, thread.majorDiameterMm);
  return { yieldStrengthMPa, sources, findings };
}

/**
 * Gives the largest preload for tightening: pull and twist together use the wanted share of the yield strength.
 *
 * @remarks
 * Formula: F = u Re As/sqrt(1 + 3 [c (d2/d0) (P/(pi d2) + 1.155 m)]^2); u utilisation, Re yield strength, As stress area,
 * d0 its diameter, m thread friction; c = 3/2 with the section yielding all over in torsion (VDI 2230:2001 tables), c = 2
 * for the elastic stress at the rim (`torsion: 'elastic'`, older handbooks). Torque by the `vdi-2230` form.
 *
 * Validity: friction above 0 to 1, utilisation 0.01 to 1 (0.9 is usual). One friction: with less of it the same torque
 * pulls more, so take the torque of the lowest friction to be expected, or use `preloadRange`.
 *
 * Accuracy: printed VDI 2230 preloads for fine threads within 0.3 %, torques within 1.2 % (they are rounded to whole
 * numbers).
 *
 * @param input - `thread`; `propertyClass`: id such as `8.8`, a record of `propertyClass`, or a yield strength in MPa;
 * `threadFriction`, `bearingFriction` (default: as the thread) above 0 to 1; `bearing` in mm; `utilisation` (default
 * 0.9); `torsion`.
 * @returns Preload in N, torque in Nm, stresses in MPa, all above 0.
 * @throws {@link DomainError} for friction or utilisation outside the domain, an unknown class, a thread whose
 * sizes contradict each other, or unknown keys.
 * @example
 * ```ts
 * import { assemblyLimit, threadFor } from '@spindlewright/torque';
 * const { preloadN, torqueNm } = assemblyLimit({
 *   thread: threadFor('M8x1'),
 *   propertyClass: '8.8',
 *   threadFriction: 0.12,
 *   bearing: { outerDiameterMm: 11.63, holeDiameterMm: 9 },
 * });
 * (preloadN / 1000).toFixed(1); // => '20.2'
 * torqueNm.toFixed(0); // => '26'
 * ```
 * @see VDI 2230:2001 (`vdi-2230-2001-quoted`), table of assembly preloads.
 */
export function assemblyLimit(input: {
  thread: Thread;
  propertyClass: Strength;
  threadFriction: number;
  bearingFriction?: number;
  bearing: Bearing;
  utilisation?: number;
  torsion?: 'plastic' | 'elastic';
}): AssemblyLimit {
  const fields: FieldSpecs = {
    thread: { type: 'object', fields: threadFields },
    propertyClass: strengthSpec((input as { propertyClass?: unknown } | null)?.propertyClass),
    threadFriction: frictionSpec,
    bearingFriction: { ...frictionSpec, optional: true },
    bearing: bearingSpec(input),
    utilisation: utilisationSpec,
    torsion: { type: 'choice', values: ['plastic', 'elastic'], optional: true },
  };
  checkInput({ where: 'assemblyLimit', value: withPlainStrength(input), fields });
  checkThread('assemblyLimit', input.thread);
  checkRing('assemblyLimit', input.bearing);
  const { thread, threadFriction, bearing, utilisation = 0.9 } = input;
  const { bearingFriction = threadFriction } = input;
  const strength = yieldOf(input.propertyClass, thread);
  const equivalentStressMPa = utilisation * strength.yieldStrengthMPa;
  const twist = twistPerPull(thread, threadFriction, input.torsion ?? 'plastic');
  const tensileStressMPa = equivalentStressMPa / Math.sqrt(1 + 3 * twist ** 2);
  const preloadN = tensileStressMPa * thread.stressAreaMm2;
  const joint = { thread, threadFriction, bearingFriction, bearing, method: 'vdi-2230' } as const;
  const arms = leverArms(joint);
  return {
    preloadN,
    torqueNm: (preloadN * arms.tightenMm) / 1000,
    equivalentStressMPa,
    tensileStressMPa,
    torsionalStressMPa: tensileStressMPa * twist,
    yieldStrengthMPa: strength.yieldStrengthMPa,
    sources: [...new Set([...strength.sources, 'vdi-2230-2001-quoted'])].sort(),
    dataEdition,
    findings: [
      raiseText('one-friction-value', oneFrictionValue, 'note', {}, { path: 'threadFriction' }),
      ...strength.findings,
      ...torquesOf(joint, arms, preloadN).findings,
    ],
  };
}

/** Shear stress of the twist over the stress of the pull, by the form of VDI 2230. @internal */
export function twistPerPull(thread: Thread, threadFriction: number, torsion: 'plastic' | 'elastic'): number {
  const rise = thread.pitchMm / (Math.PI * thread.pitchDiameterMm) + 1.155 * threadFriction;
  return (torsion === 'plastic' ? 1.5 : 2) * (thread.pitchDiameterMm / thread.stressDiameterMm) * rise;
}

import { checkInput, type FieldSpecs, type Finding } from '@spindlewright/quantity';
import { forceSpec } from './domain.ts';
import { partsComeApart } from './messages/lean.ts';
import { raiseText } from './raise-text.ts';

/** How a clamped joint shares a load that pulls it apart. */
export interface LoadFactor {
  /** Share C of the load that reaches the bolt, 0 to 1. */
  loadFactor: number;
  /** Force in the bolt under load, in N. */
  boltForceN: number;
  /** Clamp force left between the parts, in N, at least 0. */
  clampForceN: number;
  /** Load in N at which the parts come apart. */
  separationLoadN: number;
  /** What is worth saying. */
  findings: Finding[];
}

const stiffness = { type: 'number', unit: 'N/mm', min: 1e-3, max: 1e12 } as const;

const fields: FieldSpecs = {
  boltStiffnessNPerMm: stiffness,
  memberStiffnessNPerMm: stiffness,
  preloadN: forceSpec,
  externalLoadN: forceSpec,
};

/**
 * Gives the share of a pulling load that the bolt of a clamped joint takes, and what is left of the clamp.
 *
 * @remarks
 * Formula: C = kb/(kb + km); bolt force = F + C P, clamp = F - (1 - C) P, apart at P = F/(1 - C); F preload, P load. Once
 * apart the bolt carries the whole load.
 *
 * Validity: load along the bolt, under head and nut; a load that enters nearer to the joint line reaches the bolt
 * less. Elastic throughout. The press of an
 * arm on a square taper is a member too, and by far the softest: give the stiffness that `pressFit` of the taper package
 * finds for it.
 *
 * Accuracy: handbook examples to their three figures; the member stiffness behind it is a model.
 *
 * @param input - `boltStiffnessNPerMm`, `memberStiffnessNPerMm` above 0 in N/mm; `preloadN`, `externalLoadN` at least 0
 * in N (take the lower bound of `preloadRange` for the clamp, the upper for the bolt).
 * @returns Share from 0 to 1, forces in N, findings.
 * @throws {@link DomainError} for values outside their domain or unknown keys.
 * @example
 * ```ts
 * import { loadFactor } from '@spindlewright/torque';
 * const joint = { boltStiffnessNPerMm: 200_000, memberStiffnessNPerMm: 600_000 };
 * loadFactor({ ...joint, preloadN: 30_000, externalLoadN: 8000 }).boltForceN; // => 32000
 * ```
 * @see Shigley (`shigley-9`), section 8-7, examples 8-3 and 8-4.
 */
export function loadFactor(input: {
  boltStiffnessNPerMm: number;
  memberStiffnessNPerMm: number;
  preloadN: number;
  externalLoadN: number;
}): LoadFactor {
  checkInput({ where: 'loadFactor', value: input, fields });
  const { boltStiffnessNPerMm, memberStiffnessNPerMm, preloadN, externalLoadN } = input;
  const share = boltStiffnessNPerMm / (boltStiffnessNPerMm + memberStiffnessNPerMm);
  // Taken from the stiffnesses, not as 1 - C, which is 0 for a bolt far stiffer than the parts.
  const rest = memberStiffnessNPerMm / (boltStiffnessNPerMm + memberStiffnessNPerMm);
  const separationLoadN = preloadN / rest;
  const apart = externalLoadN > separationLoadN;
  return {
    loadFactor: share,
    boltForceN: apart ? externalLoadN : preloadN + share * externalLoadN,
    clampForceN: apart ? 0 : Math.max(0, preloadN - rest * externalLoadN),
    separationLoadN,
    findings: apart ? [raiseText('parts-come-apart', partsComeApart, 'stop', { externalLoadN, separationLoadN })] : [],
  };
}

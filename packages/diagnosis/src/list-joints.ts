import { familyOf } from './family-of.ts';
import { MODELLED_JOINTS, UNMODELLED_JOINTS } from './ids.ts';
import type { FamilyId } from './types.ts';

/** A joint and whether it can be diagnosed. */
export interface JointDescription {
  /** Id of the joint. */
  id: (typeof MODELLED_JOINTS)[number] | (typeof UNMODELLED_JOINTS)[number];
  /** True when its likelihoods are written down, so that {@link diagnose} takes it. */
  modelled: boolean;
  /** The family whose likelihoods it has. */
  family?: FamilyId;
}

/**
 * Lists the joints that can be named and says which of them can be diagnosed.
 *
 * @remarks
 * Formula: none.
 *
 * Validity: ids are those of the interface records; a joint that is none of them is refused by name.
 *
 * Accuracy: exact.
 *
 * @returns The joints, those that can be diagnosed first.
 * @throws Nothing.
 * @example
 * ```ts
 * import { listJoints } from '@spindlewright/diagnosis';
 * listJoints().find((joint) => joint.id === 'spline-8-long')?.family; // => 'spline-8'
 * listJoints().find((joint) => joint.id === 'spline-other')?.modelled; // => false
 * ```
 * @see The data files `families/*.json` of this package.
 */
export function listJoints(): JointDescription[] {
  return [
    ...MODELLED_JOINTS.map((id) => ({ id, modelled: true, family: familyOf(id) })),
    ...UNMODELLED_JOINTS.map((id) => ({ id, modelled: false })),
  ];
}

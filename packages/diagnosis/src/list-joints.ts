import { MODELLED_JOINTS, UNMODELLED_JOINTS } from './ids.ts';

/** A joint and whether it can be diagnosed. */
export interface JointDescription {
  /** Id of the joint. */
  id: (typeof MODELLED_JOINTS)[number] | (typeof UNMODELLED_JOINTS)[number];
  /** True when its likelihoods are written down, so that {@link diagnose} takes it. */
  modelled: boolean;
}

/**
 * Lists the joints that are known by name and says which of them can be diagnosed.
 *
 * @remarks
 * Formula: none.
 *
 * Validity: the likelihoods of this edition are those of the square taper; every other family is refused by name.
 *
 * Accuracy: exact.
 *
 * @returns The joints, those that can be diagnosed first.
 * @throws Nothing.
 * @example
 * ```ts
 * import { listJoints } from '@spindlewright/diagnosis';
 * listJoints().find((joint) => joint.id === 'spline-10')?.modelled; // => false
 * ```
 * @see The data file `square-taper.json` of this package.
 */
export function listJoints(): JointDescription[] {
  return [
    ...MODELLED_JOINTS.map((id) => ({ id, modelled: true })),
    ...UNMODELLED_JOINTS.map((id) => ({ id, modelled: false })),
  ];
}

import { FAMILIES } from './ids.ts';
import type { FamilyId, JointId } from './types.ts';

/** The family that a joint belongs to: ids of joints begin with it. */
export const familyOf = (joint: JointId): FamilyId =>
  FAMILIES.find((family) => joint.startsWith(family)) ?? 'square-taper';

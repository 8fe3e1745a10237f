import { checkInput, type FieldSpecs } from '@spindlewright/quantity';
import { modulusSpec } from './domain.ts';

const fields: FieldSpecs = {
  segments: {
    type: 'list',
    minLength: 1,
    item: {
      type: 'object',
      fields: {
        areaMm2: { type: 'number', unit: 'mm2', min: 1e-3, max: 1e6 },
        lengthMm: { type: 'number', unit: 'mm', min: 1e-3, max: 1e5 },
      },
    },
  },
  modulusGPa: modulusSpec,
};

/** One length of a bolt with the same section all along. */
export interface BoltSegment {
  /** Area of the section in mm2, above 0: shank area, or stress area where it is threaded. */
  areaMm2: number;
  /** Length in mm, above 0. */
  lengthMm: number;
}

/**
 * Gives the stiffness of a bolt from its segments in series.
 *
 * @remarks
 * Formula: 1/k = sum of l/(E A) over the segments.
 *
 * Validity: segments inside the grip. For the give of the head and of the engaged thread add segments, 0.4 d to 0.5 d of
 * thread for each (judgement); without them the bolt comes out too stiff, most so at short grips.
 *
 * Accuracy: handbook examples within 0.3 %.
 *
 * @param input - `segments`: areas in mm2 and lengths in mm, above 0; `modulusGPa` above 0 in GPa.
 * @returns Stiffness in N/mm, above 0.
 * @throws {@link DomainError} for an empty list, values that are not above 0, or unknown keys.
 * @example
 * ```ts
 * import { boltStiffness } from '@spindlewright/torque';
 * boltStiffness({ segments: [{ areaMm2: 40, lengthMm: 20 }], modulusGPa: 200 }).stiffnessNPerMm; // => 400000
 * ```
 * @see Shigley (`shigley-9`), section 8-4 and example 8-4.
 */
export function boltStiffness(input: { segments: readonly BoltSegment[]; modulusGPa: number }): {
  stiffnessNPerMm: number;
} {
  checkInput({ where: 'boltStiffness', value: input, fields });
  const compliance = input.segments.reduce((sum, part) => sum + part.lengthMm / (input.modulusGPa * part.areaMm2), 0);
  return { stiffnessNPerMm: 1000 / compliance };
}

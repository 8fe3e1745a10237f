import { checkInput, type FieldSpecs } from '@spindlewright/quantity';
import { modulusSpec } from './domain.ts';
import { refuse } from './refuse.ts';

const fields: FieldSpecs = {
  outerFaceDiameterMm: { type: 'number', unit: 'mm', min: 0.1, max: 1000 },
  holeDiameterMm: { type: 'number', unit: 'mm', min: 0.01, max: 1000 },
  thicknessMm: { type: 'number', unit: 'mm', min: 1e-6, max: 10_000 },
  modulusGPa: modulusSpec,
};

/**
 * Gives the stiffness of one clamped layer as a hollow cone of 30 degrees.
 *
 * @remarks
 * Formula: k = pi E d tan 30/ln\{[(2 t tan 30 + D - d)(D + d)]/[(2 t tan 30 + D + d)(D - d)]\}; D diameter of the smaller
 * face, d hole, t thickness. Layers in series: 1/k = sum 1/k_i; cut the pack at the middle, where both cones meet.
 *
 * Validity: hole below the face diameter, and parts wide enough to hold the cone; a narrow boss is softer.
 *
 * Accuracy: handbook frusta within 0.05 % (they print tan 30 as 0.577).
 *
 * @param input - `outerFaceDiameterMm`, `holeDiameterMm`, `thicknessMm` above 0 in mm; `modulusGPa` above 0 in GPa.
 * @returns Stiffness in N/mm, above 0.
 * @throws {@link DomainError} for values that are not above 0, a hole that is not below the face, or unknown keys.
 * @example
 * ```ts
 * import { frustumStiffness } from '@spindlewright/torque';
 * const layer = { outerFaceDiameterMm: 18, holeDiameterMm: 12, thicknessMm: 13, modulusGPa: 207 };
 * (frustumStiffness(layer).stiffnessNPerMm / 1000).toFixed(0); // => '5316'
 * ```
 * @see Shigley (`shigley-9`), equation 8-20; example of its solutions (`shigley-8-solutions`), problem 8-23.
 */
export function frustumStiffness(input: {
  outerFaceDiameterMm: number;
  holeDiameterMm: number;
  thicknessMm: number;
  modulusGPa: number;
}): { stiffnessNPerMm: number } {
  checkInput({ where: 'frustumStiffness', value: input, fields });
  const { outerFaceDiameterMm: face, holeDiameterMm: hole, thicknessMm, modulusGPa } = input;
  if (hole >= face) throw refuse('frustumStiffness', 'holeDiameterMm', String(hole), `below the face, ${face} mm`);
  const growth = 2 * thicknessMm * TAN_30;
  // log1p: for thin layers the two ratios are nearly one.
  const log = Math.log1p(growth / (face - hole)) - Math.log1p(growth / (face + hole));
  return { stiffnessNPerMm: (Math.PI * modulusGPa * 1000 * hole * TAN_30) / log };
}

const TAN_30 = 0.5773502691896257;

import { checkInput, DomainError, type Finding } from '@spindlewright/quantity';
import { find } from './find.ts';
import { ringsMessages as messages } from './messages/rings.ts';
import { type Material, materialSpec } from './shapes.ts';

/** Pressure and stresses of a press fit of two rings; tension positive. */
export interface ShrinkFit {
  /** Pressure at the interface, in MPa, at least 0. */
  pressureMPa: number;
  /** Hoop stress of the outer ring at the interface, in MPa, at least 0. */
  outerHoopStressMPa: number;
  /** Hoop stress of the inner part at the interface, in MPa, 0 or less. */
  innerHoopStressMPa: number;
  /** Hoop stress at the bore of the inner part, or anywhere in it when it is solid, in MPa, 0 or less. */
  innerBoreHoopStressMPa: number;
  /** What was not checked, and yielding where it was. */
  findings: Finding[];
}

/**
 * Gives the interface pressure and the hoop stresses of a press fit of a ring on a ring or on a solid shaft.
 *
 * @remarks
 * Formula: p = d/2 / (R/Eo [(ro^2 + R^2)/(ro^2 - R^2) + nu_o] + R/Ei [(R^2 + ri^2)/(R^2 - ri^2) - nu_i]), d the diametral
 * interference, R, ro, ri radii of interface, outside and bore. Hoop: p (ro^2 + R^2)/(ro^2 - R^2) outside the interface,
 * -p (R^2 + ri^2)/(R^2 - ri^2) inside, -2 p R^2/(R^2 - ri^2) at the bore.
 *
 * Validity: elastic rings in plane stress, even interference, no friction along the axis. Where a yield strength is given,
 * Tresca yielding at the bore of the outer or of the inner ring is a finding.
 *
 * Accuracy: exact for that model; worked textbook examples agree to their rounding.
 *
 * @param input - `interfaceDiameterMm`, `outerDiameterMm` 0.1 to 1000 mm; `boreDiameterMm` of the inner part, default 0
 * (solid); `diametralInterferenceMm` 0 to 10 mm; `inner` and `outer` materials.
 * @returns Pressure and stresses in MPa, tension positive.
 * @throws {@link DomainError} for unknown keys, values outside those ranges, or diameters out of order.
 * @example
 * ```ts
 * import { shrinkFit } from '@spindlewright/taper';
 * const steel = { youngsModulusGPa: 207, poissonsRatio: 0.292 };
 * const fit = shrinkFit({
 *   interfaceDiameterMm: 40, outerDiameterMm: 80, diametralInterferenceMm: 0.059, inner: steel, outer: steel,
 * });
 * fit.pressureMPa.toFixed(1); // => '114.5'
 * ```
 * @see Source `shigley-9`, chapter on press and shrink fits.
 */
export function shrinkFit(input: {
  interfaceDiameterMm: number;
  outerDiameterMm: number;
  boreDiameterMm?: number;
  diametralInterferenceMm: number;
  inner: Material;
  outer: Material;
}): ShrinkFit {
  checkInput({
    where: 'shrinkFit',
    value: input,
    fields: {
      interfaceDiameterMm: { type: 'number', unit: 'mm', min: 0.1, max: 1000 },
      outerDiameterMm: { type: 'number', unit: 'mm', min: 0.1, max: 1000 },
      boreDiameterMm: { type: 'number', unit: 'mm', min: 0, max: 1000, optional: true },
      diametralInterferenceMm: { type: 'number', unit: 'mm', min: 0, max: 10 },
      inner: { type: 'object', fields: materialSpec('number') },
      outer: { type: 'object', fields: materialSpec('number') },
    },
  });
  const { interfaceDiameterMm, outerDiameterMm, boreDiameterMm = 0, diametralInterferenceMm, inner, outer } = input;
  const refuse = (path: string, came: number, allowed: string): DomainError =>
    new DomainError('shrinkFit', [{ path, received: String(came), allowed }]);
  if (outerDiameterMm <= interfaceDiameterMm) {
    throw refuse('outerDiameterMm', outerDiameterMm, `above ${interfaceDiameterMm} mm, the interface`);
  }
  if (boreDiameterMm >= interfaceDiameterMm) {
    throw refuse('boreDiameterMm', boreDiameterMm, `below ${interfaceDiameterMm} mm, the interface`);
  }
  const outside = (outerDiameterMm / interfaceDiameterMm) ** 2;
  const hole = (boreDiameterMm / interfaceDiameterMm) ** 2;
  const outerFactor = (outside + 1) / (outside - 1);
  const innerFactor = (1 + hole) / (1 - hole);
  const give =
    (outerFactor + outer.poissonsRatio) / outer.youngsModulusGPa +
    (innerFactor - inner.poissonsRatio) / inner.youngsModulusGPa;
  const pressureMPa = (1000 * diametralInterferenceMm) / interfaceDiameterMm / give + 0;
  const innerBoreHoopStressMPa = boreDiameterMm === 0 ? -pressureMPa + 0 : (-2 * pressureMPa) / (1 - hole) + 0;
  const findings: Finding[] = [];
  const equivalents = { outer: pressureMPa * (outerFactor + 1), inner: Math.abs(innerBoreHoopStressMPa) };
  for (const part of ['outer', 'inner'] as const) {
    const { yieldStrengthMPa } = input[part];
    const values = { part, equivalentMPa: equivalents[part], yieldStrengthMPa: yieldStrengthMPa ?? 0 };
    if (yieldStrengthMPa === undefined) findings.push(find(messages, 'yield-not-checked', 'note', { part }));
    else if (equivalents[part] > yieldStrengthMPa) findings.push(find(messages, 'ring-yields', 'caution', values));
  }
  return {
    pressureMPa,
    outerHoopStressMPa: pressureMPa * outerFactor,
    innerHoopStressMPa: -pressureMPa * innerFactor + 0,
    innerBoreHoopStressMPa,
    findings,
  };
}

import { checkInput, type FieldSpecs, type Finding } from '@spindlewright/quantity';
import { forceSpec } from './domain.ts';
import { thermallySlack } from './messages/lean.ts';
import { raiseText } from './raise-text.ts';

/** Preload at another temperature. */
export interface ThermalPreload {
  /** Change of preload in N; above 0 where the parts grow more than the bolt. */
  changeN: number;
  /** Preload afterwards in N, at least 0. */
  preloadAfterN: number;
  /** Change for each kelvin in N. */
  changeNPerKelvin: number;
  /** What is worth saying. */
  findings: Finding[];
}

const stiffness = { type: 'number', unit: 'N/mm', min: 1e-3, max: 1e12 } as const;
const expansion = { type: 'number', unit: '1/K', min: -1e-4, max: 1e-3 } as const;

const fields: FieldSpecs = {
  preloadN: forceSpec,
  temperatureChangeKelvin: { type: 'number', unit: 'K', min: -500, max: 500 },
  clampedLengthMm: { type: 'number', unit: 'mm', min: 1e-3, max: 1e5 },
  boltExpansionPerKelvin: expansion,
  memberExpansionPerKelvin: expansion,
  boltStiffnessNPerMm: stiffness,
  memberStiffnessNPerMm: stiffness,
};

/**
 * Gives the preload of a bolted joint at another temperature, as of a steel bolt in an aluminium arm.
 *
 * @remarks
 * Formula: change = (a_m - a_b) l dT/(1/kb + 1/km); a expansion of parts and bolt, l clamped length, dT change of
 * temperature of the whole joint.
 *
 * Validity: everything at one temperature, elastic, moduli that stay. Aluminium under a steel bolt tightens in the heat
 * and loosens in the cold. On a taper the arm slides before the bolt gives all of that back: the result is the bound for
 * a seat that sticks.
 *
 * Accuracy: that of stiffness and expansion, some 10 % together.
 *
 * @param input - `preloadN` at least 0 in N; `temperatureChangeKelvin` in K, below 0 for cold; `clampedLengthMm` above 0
 * in mm; `boltExpansionPerKelvin`, `memberExpansionPerKelvin` in 1/K; `boltStiffnessNPerMm`, `memberStiffnessNPerMm`
 * above 0 in N/mm.
 * @returns Change (either sign) and preload afterwards in N, change per kelvin in N, findings.
 * @throws {@link DomainError} for values outside their domain or unknown keys.
 * @example
 * ```ts
 * import { thermalPreload } from '@spindlewright/torque';
 * const joint = { preloadN: 25_000, clampedLengthMm: 20, boltStiffnessNPerMm: 250_000, memberStiffnessNPerMm: 500_000 };
 * const steelInAluminium = { boltExpansionPerKelvin: 11.5e-6, memberExpansionPerKelvin: 23.5e-6 };
 * thermalPreload({ ...joint, ...steelInAluminium, temperatureChangeKelvin: -30 }).changeN.toFixed(0); // => '-1200'
 * ```
 * @see Statics of two springs in series; expansion of aluminium: `material-properties-ebook`.
 */
export function thermalPreload(input: {
  preloadN: number;
  temperatureChangeKelvin: number;
  clampedLengthMm: number;
  boltExpansionPerKelvin: number;
  memberExpansionPerKelvin: number;
  boltStiffnessNPerMm: number;
  memberStiffnessNPerMm: number;
}): ThermalPreload {
  checkInput({ where: 'thermalPreload', value: input, fields });
  const mmPerN = 1 / input.boltStiffnessNPerMm + 1 / input.memberStiffnessNPerMm;
  const difference = input.memberExpansionPerKelvin - input.boltExpansionPerKelvin;
  const changeNPerKelvin = (difference * input.clampedLengthMm) / mmPerN;
  // Adding 0 turns a negative zero into 0.
  const changeN = Math.max(-input.preloadN, changeNPerKelvin * input.temperatureChangeKelvin) + 0;
  const preloadAfterN = input.preloadN + changeN;
  return {
    changeN,
    preloadAfterN,
    changeNPerKelvin,
    findings: preloadAfterN === 0 && input.preloadN > 0 ? [raiseText('thermally-slack', thermallySlack, 'stop')] : [],
  };
}

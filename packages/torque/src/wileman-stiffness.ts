import { checkInput, type FieldSpecs, type Finding } from '@spindlewright/quantity';
import { modulusSpec } from './domain.ts';
import { fitFromMemory, outsideStiffnessFit } from './messages/lean.ts';
import { raiseText } from './raise-text.ts';

/** Material whose fit is used: one of three with constants of their own, or any other. */
export type WilemanMaterial = 'steel' | 'aluminium' | 'cast-iron' | 'general';

/** Stiffness of members by the exponential fit. */
export interface WilemanStiffness {
  /** Stiffness in N/mm, above 0. */
  stiffnessNPerMm: number;
  /** Stiffness over modulus times diameter. */
  stiffnessRatio: number;
  /** What is worth saying. */
  findings: Finding[];
}

const length = { type: 'number', unit: 'mm', min: 0.1, max: 10_000 } as const;

const fields: FieldSpecs = {
  nominalDiameterMm: length,
  gripLengthMm: length,
  modulusGPa: modulusSpec,
  material: { type: 'choice', values: ['steel', 'aluminium', 'cast-iron', 'general'], optional: true },
};

/**
 * Gives the stiffness of clamped parts of one material by the exponential fit of Wileman.
 *
 * @remarks
 * Formula: k = E d A exp(B d/l); E modulus, d bolt diameter, l grip. A and B: steel 0.78715, 0.62873; cast iron 0.77871,
 * 0.61616; general 0.78952, 0.62914; aluminium 0.79670, 0.63816 (from memory, a finding).
 *
 * Validity: one material throughout, faces of 1.5 d, parts far wider than the bolt. d/l outside 0.1 to 2 (judgement) is
 * a finding. Above 10 the exponential has long left any joint and the result stands at d/l = 10.
 *
 * Accuracy: printed examples within 0.3 %. Against the cones of `memberStiffness`: 2 % less at
 * d/l 0.42, 9 % less at 1; both are models.
 *
 * @param input - `nominalDiameterMm`, `gripLengthMm` above 0 in mm; `modulusGPa` above 0 in GPa; `material` (default
 * `general`).
 * @returns Stiffness in N/mm, its ratio to E d, findings.
 * @throws {@link DomainError} for values outside their domain, an unknown material, or unknown keys.
 * @example
 * ```ts
 * import { wilemanStiffness } from '@spindlewright/torque';
 * const joint = { nominalDiameterMm: 12, gripLengthMm: 24, modulusGPa: 207 };
 * wilemanStiffness(joint).stiffnessRatio.toFixed(2); // => '1.08'
 * ```
 * @see Shigley (`shigley-9`), equation 8-23 and table 8-8; `shigley-8-solutions`, problems 8-18 and 8-19.
 */
export function wilemanStiffness(input: {
  nominalDiameterMm: number;
  gripLengthMm: number;
  modulusGPa: number;
  material?: WilemanMaterial;
}): WilemanStiffness {
  checkInput({ where: 'wilemanStiffness', value: input, fields });
  const { nominalDiameterMm, gripLengthMm, modulusGPa, material = 'general' } = input;
  const { a, b } = constantsOf(material);
  const slenderRatio = nominalDiameterMm / gripLengthMm;
  const stiffnessRatio = a * Math.exp(b * Math.min(slenderRatio, 10));
  return {
    stiffnessNPerMm: modulusGPa * 1000 * nominalDiameterMm * stiffnessRatio,
    stiffnessRatio,
    findings: [
      ...(material === 'aluminium'
        ? [raiseText('fit-from-memory', fitFromMemory, 'note', {}, { path: 'material' })]
        : []),
      ...(slenderRatio < 0.1 || slenderRatio > 2
        ? [
            raiseText(
              'outside-stiffness-fit',
              outsideStiffnessFit,
              'caution',
              { slenderRatio },
              { path: 'gripLengthMm' },
            ),
          ]
        : []),
    ],
  };
}

function constantsOf(material: WilemanMaterial): { a: number; b: number } {
  if (material === 'steel') return { a: 0.78715, b: 0.62873 };
  if (material === 'cast-iron') return { a: 0.77871, b: 0.61616 };
  if (material === 'aluminium') return { a: 0.7967, b: 0.63816 };
  return { a: 0.78952, b: 0.62914 };
}

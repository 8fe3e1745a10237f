import { checkInput, type FieldSpecs, type Finding } from '@spindlewright/quantity';
import { forceSpec, strengthRange } from './domain.ts';
import { raise } from './raise.ts';
import { refuse } from './refuse.ts';
import { checkThread, type Thread, threadFields } from './thread.ts';

/** How much thread it takes, or what it carries. */
export interface StrippingEngagement {
  /** Shear area of the tapped thread per mm of engagement, in mm2. */
  shearAreaPerLengthMm: number;
  /** Engagement in mm at which the tapped thread carries the load. */
  engagementMm: number;
  /** The same in turns. */
  engagedTurns: number;
  /** Force in N at which the tapped thread strips at the engagement given; null when none was given. */
  strippingForceN: number | null;
  /** What is worth saying. */
  findings: Finding[];
}

const fields: FieldSpecs = {
  thread: { type: 'object', fields: threadFields },
  loadN: forceSpec,
  shearStrengthMPa: strengthRange,
  externalMajorDiameterMm: { type: 'number', unit: 'mm', above: 0, max: 1100, optional: true },
  internalPitchDiameterMm: { type: 'number', unit: 'mm', above: 0, max: 1100, optional: true },
  engagementMm: { type: 'number', unit: 'mm', min: 0.001, max: 1000, optional: true },
};

/**
 * Gives the engagement at which a tapped thread carries a load without stripping: aluminium arms, pedal eyes, pullers.
 *
 * @remarks
 * Formula: shear area per length = (pi/P) Ds [P/2 + tan 30 (Ds - E)]; Ds smallest major diameter of the bolt, E largest
 * pitch diameter of the tapped hole; engagement = load/(shear strength x area per length).
 *
 * Validity: the tapped part is the weaker one and every turn carries alike; the first turn and a chamfer do not, so
 * leave a turn. Worn or once stripped threads carry less than any number here.
 *
 * Accuracy: a handbook example within 0.3 %. Without the two limit diameters basic sizes are taken (Ds = d, E = d2); for
 * that example the area then comes out 11 % too large, on the unsafe side.
 *
 * @param input - `thread`; `loadN` at least 0 in N; `shearStrengthMPa` above 0 in MPa; limit diameters
 * `externalMajorDiameterMm`, `internalPitchDiameterMm` in mm; `engagementMm` above 0 in mm for the force it carries.
 * @returns Area per length in mm2/mm, engagement in mm and turns, force in N.
 * @throws {@link DomainError} for values outside their domain, a pitch diameter that leaves no thread, a thread
 * whose sizes contradict each other, or unknown keys.
 * @example
 * ```ts
 * import { strippingEngagement, threadFor } from '@spindlewright/torque';
 * const { engagementMm } = strippingEngagement({
 *   thread: threadFor('M10'),
 *   loadN: 69_600,
 *   shearStrengthMPa: 130,
 *   externalMajorDiameterMm: 9.968,
 *   internalPitchDiameterMm: 9.206,
 * });
 * engagementMm.toFixed(1); // => '21.6'
 * ```
 * @see Handbook of Bolts and Bolted Joints (`fastener-handbook-stripping`).
 */
export function strippingEngagement(input: {
  thread: Thread;
  loadN: number;
  shearStrengthMPa: number;
  externalMajorDiameterMm?: number;
  internalPitchDiameterMm?: number;
  engagementMm?: number;
}): StrippingEngagement {
  checkInput({ where: 'strippingEngagement', value: input, fields });
  checkThread('strippingEngagement', input.thread);
  const { thread, loadN, shearStrengthMPa } = input;
  const major = input.externalMajorDiameterMm ?? thread.majorDiameterMm;
  const pitchDiameter = input.internalPitchDiameterMm ?? thread.pitchDiameterMm;
  const widthMm = thread.pitchMm / 2 + TAN_30 * (major - pitchDiameter);
  if (widthMm <= 0 || widthMm >= thread.pitchMm) {
    const path = input.internalPitchDiameterMm === undefined ? 'externalMajorDiameterMm' : 'internalPitchDiameterMm';
    throw refuse(
      'strippingEngagement',
      path,
      `${major} in ${pitchDiameter}`,
      'limit diameters near those of the thread',
    );
  }
  const shearAreaPerLengthMm = (Math.PI / thread.pitchMm) * major * widthMm;
  const neededMm = loadN / (shearStrengthMPa * shearAreaPerLengthMm);
  const strippingForceN =
    input.engagementMm === undefined ? null : shearStrengthMPa * shearAreaPerLengthMm * input.engagementMm;
  const strips = strippingForceN !== null && strippingForceN < loadN;
  return {
    shearAreaPerLengthMm,
    engagementMm: neededMm,
    engagedTurns: neededMm / thread.pitchMm,
    strippingForceN,
    findings: strips ? [raise('strips-under-load', 'stop', { strippingForceN, loadN })] : [],
  };
}

const TAN_30 = 0.5773502691896257;

import { checkInput, type FieldSpecs, type Finding } from '@spindlewright/quantity';
import { forceSpec, strengthRange } from './domain.ts';
import { stripsUnderLoad } from './messages/lean.ts';
import { raiseText } from './raise-text.ts';
import { refuse } from './refuse.ts';
import { checkThread, type Thread, threadFields } from './thread.ts';

/** Which thread shears: that of the hole, at the crests of the bolt, or that of the bolt, at the crests of the hole. */
export type StrippingPart = 'tapped' | 'bolt';

/** Limit diameters of the two threads; basic sizes where absent. @internal */
export interface LimitDiameters {
  externalMajorDiameterMm?: number;
  internalPitchDiameterMm?: number;
  externalPitchDiameterMm?: number;
  internalMinorDiameterMm?: number;
}

/** How much thread it takes, or what it carries. */
export interface StrippingEngagement {
  /** Shear area of the thread per mm of engagement, in mm2. */
  shearAreaPerLengthMm: number;
  /** Engagement in mm at which the thread carries the load. */
  engagementMm: number;
  /** The same in turns. */
  engagedTurns: number;
  /** Force in N at which the thread strips at the engagement given; null when none was given. */
  strippingForceN: number | null;
  /** What is worth saying. */
  findings: Finding[];
}

const fields: FieldSpecs = {
  thread: { type: 'object', fields: threadFields },
  loadN: forceSpec,
  shearStrengthMPa: strengthRange,
  engagementMm: { type: 'number', unit: 'mm', min: 0.001, max: 1000, optional: true },
  part: { type: 'choice', values: ['tapped', 'bolt'], optional: true },
};

/** Description of a limit diameter. @internal */
export const limitDiameterSpec = { type: 'number', unit: 'mm', above: 0, max: 1100, optional: true } as const;

/** Limit diameters that count for the thread that shears; the others are refused, since they would do nothing. */
const limitFields = (part: unknown): FieldSpecs =>
  part === 'bolt'
    ? { externalPitchDiameterMm: limitDiameterSpec, internalMinorDiameterMm: limitDiameterSpec }
    : { externalMajorDiameterMm: limitDiameterSpec, internalPitchDiameterMm: limitDiameterSpec };

/**
 * Gives the engagement at which a tapped thread carries a load without stripping: aluminium arms, pedal eyes, pullers.
 *
 * @remarks
 * Formula: shear area per length = (pi/P) Ds [P/2 + tan 30 (Ds - E)]; Ds smallest major diameter of the bolt, E largest
 * pitch diameter of the tapped hole; engagement = load/(shear strength x area per length). With `part: 'bolt'` the thread
 * of the bolt: (pi/P) K [P/2 + tan 30 (e - K)]; K largest minor diameter of the hole, e smallest pitch diameter of the
 * bolt.
 *
 * Validity: the part named is the weaker one (`firstToFail` compares both) and every turn carries alike; the first turn
 * and a chamfer do not, so leave a turn. Worn or once stripped threads carry less than any number here.
 *
 * Accuracy: a handbook example within 0.3 %. Without the two limit diameters basic sizes are taken (Ds = d, E = d2); for
 * that example the area then comes out 11 % too large, on the unsafe side.
 *
 * @param input - `thread`; `loadN` at least 0 in N; `shearStrengthMPa` above 0 in MPa; `part`
 * (default `tapped`); limit diameters in mm: `externalMajorDiameterMm`, `internalPitchDiameterMm` for the tapped part,
 * `externalPitchDiameterMm`, `internalMinorDiameterMm` for the bolt; `engagementMm` above 0 in mm for the force it carries.
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
 * @see Handbook of Bolts and Bolted Joints (`fastener-handbook-stripping`); thread of the bolt:
 * `engagement-forum-1991`, which paraphrases Machinery's Handbook.
 */
export function strippingEngagement(input: {
  thread: Thread;
  loadN: number;
  shearStrengthMPa: number;
  part?: StrippingPart;
  externalMajorDiameterMm?: number;
  internalPitchDiameterMm?: number;
  externalPitchDiameterMm?: number;
  internalMinorDiameterMm?: number;
  engagementMm?: number;
}): StrippingEngagement {
  const { part = 'tapped' } = input ?? {};
  checkInput({ where: 'strippingEngagement', value: input, fields: { ...fields, ...limitFields(part) } });
  checkThread('strippingEngagement', input.thread);
  const { thread, loadN, shearStrengthMPa } = input;
  const shearAreaPerLengthMm = shearArea('strippingEngagement', part, thread, input);
  const neededMm = loadN / (shearStrengthMPa * shearAreaPerLengthMm);
  const strippingForceN =
    input.engagementMm === undefined ? null : shearStrengthMPa * shearAreaPerLengthMm * input.engagementMm;
  const strips = strippingForceN !== null && strippingForceN < loadN;
  return {
    shearAreaPerLengthMm,
    engagementMm: neededMm,
    engagedTurns: neededMm / thread.pitchMm,
    strippingForceN,
    findings: strips ? [raiseText('strips-under-load', stripsUnderLoad, 'stop', { strippingForceN, loadN })] : [],
  };
}

/** Shear area per length in mm2/mm of either thread. @internal */
export function shearArea(where: string, part: StrippingPart, thread: Thread, limits: LimitDiameters): number {
  const { pitchMm } = thread;
  const inner =
    part === 'tapped'
      ? (limits.internalPitchDiameterMm ?? thread.pitchDiameterMm)
      : (limits.internalMinorDiameterMm ?? thread.internalMinorDiameterMm);
  const outer =
    part === 'tapped'
      ? (limits.externalMajorDiameterMm ?? thread.majorDiameterMm)
      : (limits.externalPitchDiameterMm ?? thread.pitchDiameterMm);
  const widthMm = pitchMm / 2 + TAN_30 * (outer - inner);
  if (widthMm <= 0 || widthMm >= pitchMm) {
    const [first, second] =
      part === 'tapped'
        ? (['internalPitchDiameterMm', 'externalMajorDiameterMm'] as const)
        : (['internalMinorDiameterMm', 'externalPitchDiameterMm'] as const);
    const path = limits[first] === undefined ? second : first;
    throw refuse(where, path, `${outer} in ${inner}`, 'limit diameters near those of the thread');
  }
  // The cylinder that shears runs along the crests of the other thread.
  return (Math.PI / pitchMm) * (part === 'tapped' ? outer : inner) * widthMm;
}

const TAN_30 = 0.5773502691896257;

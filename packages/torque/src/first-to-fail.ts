import { checkInput, type FieldSpecs, type Finding } from '@spindlewright/quantity';
import { twistPerPull } from './assembly-limit.ts';
import { type Bearing, bearingSpec, checkRing, ringOf } from './bearing.ts';
import { dataEdition } from './data-edition.ts';
import { forceSpec, frictionSpec, strengthRange } from './domain.ts';
import { failsUnderLoad, stripsBeforeBoltBreaks } from './messages/lean.ts';
import { propertyClass } from './property-class.ts';
import { raiseText } from './raise-text.ts';
import { limitDiameterSpec, shearArea } from './stripping-engagement.ts';
import { checkThread, type Thread, threadFields } from './thread.ts';

/** A way in which a bolted joint gives. */
export type FailureMode =
  | 'bolt-yields'
  | 'bolt-breaks'
  | 'tapped-thread-strips'
  | 'bolt-thread-strips'
  | 'head-sinks-in';

/** A way of failing and the force at which it comes. */
export interface FailureForce {
  /** The way. */
  mode: FailureMode;
  /** Force in N at which it comes, above 0. */
  forceN: number;
  /** That force over the load; null for a load of 0. */
  reserveRatio: number | null;
}

/** What fails first and by how much. */
export interface FirstToFail {
  /** The way that comes first. */
  first: FailureMode;
  /** Force of the second over that of the first, at least 1. */
  marginRatio: number;
  /** All ways, the weakest first. */
  modes: FailureForce[];
  /** Ids in the register of sources. */
  sources: string[];
  /** Edition of the data. */
  dataEdition: string;
  /** What is worth saying. */
  findings: Finding[];
}

const WHERE = 'firstToFail';

const fieldsFor = (input: unknown): FieldSpecs => ({
  thread: { type: 'object', fields: threadFields },
  propertyClass: { type: 'text' },
  loadN: forceSpec,
  engagementMm: { type: 'number', unit: 'mm', min: 0.001, max: 1000 },
  tappedShearStrengthMPa: strengthRange,
  boltShearStrengthMPa: { ...strengthRange, optional: true },
  threadFriction: { ...frictionSpec, optional: true },
  bearing: { ...bearingSpec(input), optional: true },
  limitingPressureMPa: { ...strengthRange, optional: true },
  externalMajorDiameterMm: limitDiameterSpec,
  internalPitchDiameterMm: limitDiameterSpec,
  externalPitchDiameterMm: limitDiameterSpec,
  internalMinorDiameterMm: limitDiameterSpec,
});

/**
 * Tells what gives first when a bolt is pulled: shank, thread of the bolt, thread of the part, or the face under the head.
 *
 * @remarks
 * Formula: yields at Re As, while it is tightened (`threadFriction` given) at Re As/sqrt(1 + 3 k^2), k shear over pull as in
 * `assemblyLimit`; breaks at Rm As; a thread strips at shear strength x area x engagement (`strippingEngagement`, both
 * parts); the head sinks in at limiting pressure x area. Shear strength of the bolt Rm/sqrt 3 (distortion energy) unless
 * given.
 *
 * Validity: strengths are minima of the class: a bolt may be stronger, which makes the thread of the part the first all
 * the sooner. A thread that strips before the bolt breaks gives little warning and is a finding. Every turn carries alike.
 *
 * Accuracy: that of its parts; stripping is known to some 10 %, so a margin below 1.1 does not tell which comes first.
 *
 * @param input - `thread`; `propertyClass`; `loadN` at least 0 in N; `engagementMm` above 0 in mm;
 * `tappedShearStrengthMPa`, `boltShearStrengthMPa` in MPa; `threadFriction` above 0 to 1; `bearing` in mm with
 * `limitingPressureMPa`; the limit diameters of `strippingEngagement` in mm.
 * @returns The ways in order of their force in N, the first, its distance to the second, findings.
 * @throws {@link DomainError} for values outside their domain, an unknown class, a thread whose sizes contradict each
 * other, or unknown keys.
 * @example
 * ```ts
 * import { firstToFail, threadFor } from '@spindlewright/torque';
 * const pedal = { propertyClass: '8.8', loadN: 20_000, tappedShearStrengthMPa: 180 };
 * firstToFail({ ...pedal, thread: threadFor('M14x1.25'), engagementMm: 8 }).first; // => 'tapped-thread-strips'
 * firstToFail({ ...pedal, thread: threadFor('M5'), engagementMm: 12 }).first; // => 'bolt-yields'
 * ```
 * @see Handbook of Bolts and Bolted Joints (`fastener-handbook-stripping`); VDI 2230 (`vdi-2230-2001-quoted`).
 */
export function firstToFail(input: {
  thread: Thread;
  propertyClass: string;
  loadN: number;
  engagementMm: number;
  tappedShearStrengthMPa: number;
  boltShearStrengthMPa?: number;
  threadFriction?: number;
  bearing?: Bearing;
  limitingPressureMPa?: number;
  externalMajorDiameterMm?: number;
  internalPitchDiameterMm?: number;
  externalPitchDiameterMm?: number;
  internalMinorDiameterMm?: number;
}): FirstToFail {
  checkInput({ where: WHERE, value: input, fields: fieldsFor(input) });
  checkThread(WHERE, input.thread);
  const { thread, loadN, engagementMm, threadFriction, bearing, limitingPressureMPa } = input;
  if (bearing !== undefined) checkRing(WHERE, bearing);
  const bolt = propertyClass(input.propertyClass, thread.majorDiameterMm);
  const boltShearMPa = input.boltShearStrengthMPa ?? bolt.tensileStrengthMPa / Math.sqrt(3);
  const twist = threadFriction === undefined ? 0 : twistPerPull(thread, threadFriction, 'plastic');
  const forces: [FailureMode, number][] = [
    ['bolt-yields', (bolt.yieldStrengthMPa * thread.stressAreaMm2) / Math.sqrt(1 + 3 * twist ** 2)],
    ['bolt-breaks', bolt.tensileStrengthMPa * thread.stressAreaMm2],
    ['tapped-thread-strips', input.tappedShearStrengthMPa * engagementMm * shearArea(WHERE, 'tapped', thread, input)],
    ['bolt-thread-strips', boltShearMPa * engagementMm * shearArea(WHERE, 'bolt', thread, input)],
  ];
  if (bearing !== undefined && limitingPressureMPa !== undefined) {
    forces.push(['head-sinks-in', limitingPressureMPa * ringOf(bearing).areaMm2]);
  }
  forces.sort(([, a], [, b]) => a - b);
  const [[first, weakestN], [, secondN]] = forces as [[FailureMode, number], [FailureMode, number]];
  const forceOf = new Map(forces);
  const stripsN = Math.min(forceOf.get('tapped-thread-strips') ?? 0, forceOf.get('bolt-thread-strips') ?? 0);
  const breaksN = forceOf.get('bolt-breaks') ?? 0;
  const strips = { strippingForceN: stripsN, breakingForceN: breaksN };
  return {
    first,
    marginRatio: secondN / weakestN,
    modes: forces.map(([mode, forceN]) => ({ mode, forceN, reserveRatio: loadN === 0 ? null : forceN / loadN })),
    sources: [...new Set([...bolt.sources, 'fastener-handbook-stripping'])].sort(),
    dataEdition,
    findings: [
      ...(weakestN < loadN ? [raiseText('fails-under-load', failsUnderLoad, 'stop', { forceN: weakestN, loadN })] : []),
      ...(stripsN < breaksN ? [raiseText('strips-before-bolt-breaks', stripsBeforeBoltBreaks, 'caution', strips)] : []),
      ...bolt.findings,
    ],
  };
}

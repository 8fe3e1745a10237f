import { checkInput, type FieldSpecs, type Finding } from '@spindlewright/quantity';
import { type Bearing, type BearingRing, bearingFindings, bearingSpec, checkRing, ringOf } from './bearing.ts';
import { frictionSpec } from './domain.ts';
import { frictionUnusual, leftHandThread, lumpedFriction, selfLoosening } from './messages/lean.ts';
import { raiseText } from './raise-text.ts';
import { checkThread, type Thread, threadFields } from './thread.ts';

/** Formula between torque and preload: the exact long form, its linear form in VDI 2230, or one nut factor. */
export type TorqueMethod = 'exact' | 'vdi-2230' | 'nut-factor';

/** A threaded joint whose friction is known for the thread and for the face that turns. */
export interface FrictionJoint {
  /** The thread. */
  thread: Thread;
  /** Coefficient of friction in the thread, above 0, at most 1. */
  threadFriction: number;
  /** Coefficient of friction under the head or nut, above 0, at most 1. */
  bearingFriction: number;
  /** The face that turns. */
  bearing: Bearing;
  /** Formula; `exact` when absent. */
  method?: TorqueMethod;
}

/** A threaded joint of which only the nut factor K of T = K d F is known. */
export interface NutFactorJoint {
  /** The thread. */
  thread: Thread;
  /** Nut factor K, from 0.001 to 1. */
  nutFactor: number;
  /** Formula: K is read by this one only. */
  method: 'nut-factor';
}

/** Where the torque goes, in Nm; the parts add up to the whole. */
export interface TorqueSplit {
  /** Part that stretches the bolt: it comes back when the joint is loosened. */
  pitchNm: number;
  /** Part lost in the thread; null when only a nut factor was given. */
  threadFrictionNm: number | null;
  /** Part lost under the head; null when only a nut factor was given. */
  bearingFrictionNm: number | null;
  /** All that friction takes, thread and head together. */
  frictionNm: number;
  /** Part that a locking element takes at any preload, 0 without one. */
  prevailingNm: number;
}

/** Torque of a locking element. @internal */
export const prevailingSpec = { type: 'number', unit: 'Nm', min: 0, max: 1e6, optional: true } as const;

/** Checks an input that is a joint and the fields of `own`. @internal */
export function checkJoint(where: string, input: unknown, own: FieldSpecs): void {
  const lumped = typeof input === 'object' && input !== null && Object.hasOwn(input, 'nutFactor');
  const fields: FieldSpecs = lumped
    ? {
        ...own,
        thread: { type: 'object', fields: threadFields },
        nutFactor: { type: 'number', unit: '1', min: 0.001, max: 1 },
        method: { type: 'choice', values: ['nut-factor'] },
      }
    : {
        ...own,
        thread: { type: 'object', fields: threadFields },
        threadFriction: frictionSpec,
        bearingFriction: frictionSpec,
        bearing: bearingSpec(input),
        method: { type: 'choice', values: ['exact', 'vdi-2230', 'nut-factor'], optional: true },
      };
  checkInput({ where, value: input, fields });
  const joint = input as FrictionJoint;
  checkThread(where, joint.thread);
  if (!lumped) checkRing(where, joint.bearing);
}

/** Lever arms in mm: torque in N.mm per newton of preload. @internal */
export interface LeverArms {
  pitchMm: number;
  threadMm: number;
  bearingMm: number;
  /** The whole, tightening. */
  tightenMm: number;
  /** The whole, loosening; negative where the thread would unwind by itself. */
  loosenMm: number;
  /** Radius at which the friction under the head was taken to act; absent with a bare nut factor. */
  frictionRadiusMm?: number;
}

/** Cosine of 30 degrees: the flank presses harder than the axis by its inverse. @internal */
export const COS_HALF_PROFILE = 0.8660254037844387;

/** Lever arms by the formula asked for; a ring worked out before saves doing it again. @internal */
export function leverArms(joint: FrictionJoint | NutFactorJoint, known?: BearingRing): LeverArms {
  const { thread } = joint;
  const pitchMm = thread.pitchMm / (2 * Math.PI);
  if ('nutFactor' in joint) {
    const tightenMm = joint.nutFactor * thread.majorDiameterMm;
    return { pitchMm, threadMm: 0, bearingMm: 0, tightenMm, loosenMm: tightenMm - 2 * pitchMm };
  }
  const { method = 'exact', threadFriction, bearingFriction } = joint;
  const ring = known ?? ringOf(joint.bearing);
  const flankFriction = threadFriction / COS_HALF_PROFILE;
  const radius = thread.pitchDiameterMm / 2;
  const frictionRadiusMm = method === 'nut-factor' ? ring.evenPressureRadiusMm : ring.customaryRadiusMm;
  const bearingMm = bearingFriction * frictionRadiusMm;
  if (method === 'exact') {
    const tangent = thread.pitchMm / (Math.PI * thread.pitchDiameterMm);
    const up = (radius * (tangent + flankFriction)) / (1 - flankFriction * tangent);
    const down = (radius * (flankFriction - tangent)) / (1 + flankFriction * tangent);
    return {
      pitchMm,
      threadMm: up - pitchMm,
      bearingMm,
      tightenMm: up + bearingMm,
      loosenMm: down + bearingMm,
      frictionRadiusMm,
    };
  }
  // VDI 2230 rounds 1/(2 pi) to 0.16 and 1/(2 cos 30) to 0.58; its tables are made with these figures.
  const riseMm = method === 'vdi-2230' ? 0.16 * thread.pitchMm : pitchMm;
  const threadMm = method === 'vdi-2230' ? 0.58 * thread.pitchDiameterMm * threadFriction : flankFriction * radius;
  return {
    pitchMm: riseMm,
    threadMm,
    bearingMm,
    tightenMm: riseMm + threadMm + bearingMm,
    loosenMm: threadMm + bearingMm - riseMm,
    frictionRadiusMm,
  };
}

/** What a given preload means in torques. @internal */
export interface JointTorques {
  /** Torque needed to loosen again, in Nm; not above 0 where the thread unwinds by itself. */
  looseningTorqueNm: number;
  /** Nut factor K = T/(F d) of the tightening. */
  nutFactor: number;
  /** Where the tightening torque goes. */
  split: TorqueSplit;
  /** Radius at which the friction under the head acts in mm; null when only a nut factor was given. */
  frictionRadiusMm: number | null;
  /** What is worth saying. */
  findings: Finding[];
}

/** Works out what both directions of the conversion share. @internal */
export function torquesOf(
  joint: FrictionJoint | NutFactorJoint,
  arms: LeverArms,
  preloadN: number,
  prevailingNm = 0,
): JointTorques {
  const inNm = (armMm: number): number => (preloadN === 0 ? 0 : (preloadN * armMm) / 1000);
  const looseningTorqueNm = inNm(arms.loosenMm) + prevailingNm;
  const lumped = 'nutFactor' in joint;
  return {
    looseningTorqueNm,
    nutFactor: arms.tightenMm / joint.thread.majorDiameterMm,
    split: {
      pitchNm: inNm(arms.pitchMm),
      threadFrictionNm: lumped ? null : inNm(arms.threadMm),
      bearingFrictionNm: lumped ? null : inNm(arms.bearingMm),
      frictionNm: inNm(arms.tightenMm - arms.pitchMm),
      prevailingNm,
    },
    frictionRadiusMm: arms.frictionRadiusMm ?? null,
    findings: [
      ...(joint.thread.hand === 'left'
        ? [raiseText('left-hand-thread', leftHandThread, 'note', {}, { path: 'thread' })]
        : []),
      ...(arms.loosenMm <= 0 && looseningTorqueNm <= 0
        ? [raiseText('self-loosening', selfLoosening, 'caution', { looseningTorqueNm })]
        : []),
      ...(lumped
        ? [raiseText('lumped-friction', lumpedFriction, 'note', {}, { path: 'nutFactor' })]
        : [
            ...unusualFriction(joint.threadFriction, 'threadFriction'),
            ...unusualFriction(joint.bearingFriction, 'bearingFriction'),
            ...bearingFindings(joint.bearing),
          ]),
    ],
  };
}

// Classes A to D of VDI 2230 run from 0.04 to 0.35; class E has no upper end.
const LOWEST = 0.04;
const HIGHEST = 0.35;

/** Says so when a friction lies outside the usual classes. @internal */
export const unusualFriction = (value: number, path: string): Finding[] =>
  value >= LOWEST && value <= HIGHEST
    ? []
    : [
        raiseText(
          'friction-unusual',
          frictionUnusual,
          'note',
          { friction: value, lowest: LOWEST, highest: HIGHEST },
          { sources: ['vdi-2230-2001-quoted'], path },
        ),
      ];

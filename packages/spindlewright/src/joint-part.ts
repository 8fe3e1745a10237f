import type { FamilyId } from '@spindlewright/diagnosis';
import type { MateResult } from '@spindlewright/interfaces';
import type { Finding, Limits } from '@spindlewright/quantity';
import type { CotterWedge, FaceSpline, OnePieceCrank, PinchClamp, SplinePress } from '@spindlewright/taper';
import type { StatedTorque } from './seat-part.ts';
import type { WrenchPlan } from './tightening-part.ts';

/** How a joint that is no pressed square taper is drawn tight. */
export interface FasteningPlan {
  /** The means. */
  by: 'centre-bolt-or-nut' | 'pinch-bolts' | 'cotters' | 'none';
  /** Where the torque comes from; `not-known`: nothing published, ask the part maker; `no-torque`: nothing is torqued. */
  torqueFrom: 'part-maker' | 'trade-range' | 'not-known' | 'no-torque';
  /** Torque to set, with what the torque tool makes of it, Nm. */
  torqueNm?: Limits;
  /** What the trade is found to use, each source apart, Nm. */
  tradeTorques: readonly StatedTorque[];
  /** Preload of one bolt, N. */
  preloadN?: Limits;
  /** Friction of thread and head, dimensionless. */
  threadFriction: Limits;
  /** What is on thread and head. */
  lubrication: 'lubricated' | 'dry' | 'unknown';
  /** Thread designation of the fixing, as read or as the record names it. */
  thread?: string;
  /** The wrench at hand, when the job names one and there is a torque. */
  wrench?: WrenchPlan;
  /** What to do, in order. */
  steps: readonly string[];
}

/** Something that a sheet of a square taper would say and that this joint does not have. */
export interface NotHere {
  /** What. */
  what: string;
  /** Why it does not apply, or why it was not worked. */
  why: string;
}

/** The part of a sheet for a joint that is no pressed square taper. */
export interface JointPart {
  /** Id of its interface record. */
  interface: string;
  /** Its family. */
  family: FamilyId;
  /** Whether arm and spindle go together by their interfaces, when both are known. */
  mate?: MateResult;
  /** How it is drawn tight. */
  fastening: FasteningPlan;
  /** What a pinched clamp holds. */
  clamp?: PinchClamp;
  /** What the press on tapered splines comes to. */
  spline?: SplinePress;
  /** What a cotter holds. */
  cotter?: CotterWedge;
  /** What the teeth of a face spline hold. */
  faceTeeth?: FaceSpline;
  /** What a one-piece crank bears. */
  bar?: OnePieceCrank;
  /** What does not apply here or was not worked, by name. */
  notHere: readonly NotHere[];
  /** What is worth saying about fastening and mechanics. */
  findings: readonly Finding[];
}

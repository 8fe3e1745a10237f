import type { Finding, Limits } from '@spindlewright/quantity';
import type { FixingCheck } from '@spindlewright/torque';
import type { PressPlan } from './seat-part.ts';

/** Whether the bolt's own strength allows the target. */
export interface BoltStrength {
  /** Property class reckoned with. */
  propertyClass: string;
  /** True when the class was read from the head mark, false when it is only the weakest likely one. */
  read: boolean;
  /** Torque that uses 90 % of the yield strength, at lowest, nominal and highest friction, Nm. */
  limitTorqueNm: Limits;
  /** Preload that uses 90 % of the yield strength at nominal friction, N. */
  limitPreloadN: number;
  /** What it comes to. */
  state: 'within' | 'within-if-friction-is-not-low' | 'exceeded' | 'unknown';
}

/** What to set the wrench at hand to. */
export interface WrenchPlan {
  /** Unit of its scale. */
  unit: 'Nm' | 'lbf.in' | 'lbf.ft' | 'kgf.cm';
  /** Target in that unit. */
  target: number;
  /** How the target is reached. */
  reach: 'direct' | 'with-extension' | 'other-wrench';
  /** What to set, in that unit; absent for `other-wrench`. */
  setting?: number;
  /** Length of the in-line extension to use, mm, for `with-extension`. */
  extensionLengthMm?: number;
}

/** What the press feels like at the bolt and what riding leaves of it. */
export interface SettlingPlan {
  /** Turns from snug to the target, with the arm free to move. */
  tighteningTurns: Limits;
  /** Turns from snug to the target of a bolt that has gone solid. */
  solidBoltTurns: Limits;
  /** Preload once riding has shaken the friction out of the taper, without wear, N. */
  preloadAfterShakedownN: Limits;
  /** Further loss for each micrometre of bedding per flat, over the stiffness of the bolt, N/um. */
  preloadLossPerMicrometreN: Limits;
}

/** How tight, with what, and what to expect. */
export interface TighteningPart {
  /** Torque, preload and friction. */
  press: PressPlan;
  /** Strength of the bolt. */
  strength: BoltStrength;
  /** The wrench at hand, when the job names one. */
  wrench?: WrenchPlan;
  /** Whether the bolt can press the arm at all, when its length was read. */
  fixing?: FixingCheck;
  /** Turns and settling, when the seat could be predicted. */
  settling?: SettlingPlan;
  /** What is worth saying about it. */
  findings: readonly Finding[];
}

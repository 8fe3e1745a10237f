import type { ConditionId } from '@spindlewright/diagnosis';

/** One thing that keeps the bike at the stand, or that has to be known first. */
export interface Problem {
  /** For the mechanic. */
  headline: string;
  /** For the owner of the bike. */
  owner: string;
  /** What the shop does about it, for the owner. */
  remedy: string;
  /** Condition of the diagnosis that is the same thing seen from the other end; the owner is told of it once. */
  sameAs?: ConditionId;
}

import type { Claim, InterfaceFamily } from './record.ts';

/** What one outcome of one check means at a joint. */
export interface ObservationMeaning extends Claim {
  /** The check, by the id that a diagnosis uses for it. */
  check: string;
  /** The outcome of the check, by the id that a diagnosis uses for it. */
  outcome: string;
  /** `right` = as it should be; `wrong` = a fault; `depends` = by itself it decides nothing; `cannot-be` = no such part here. */
  reading: 'right' | 'wrong' | 'depends' | 'cannot-be';
  /** Ids of the interfaces of the family that it holds for; absent when it holds for all. */
  interfaces?: readonly string[];
}

/** Meanings of observations, for every joint or for one family, whose own go before the common ones. */
export interface ObservationRecord {
  /** Edition of the data. */
  dataEdition: string;
  /** Id, never reused. */
  id: string;
  /** Ids that this record had before. */
  aliases: readonly string[];
  /** The family, or `any`. */
  family: InterfaceFamily | 'any';
  /** Checks that make no sense at this family. */
  checksWithoutObject: readonly string[];
  /** The meanings. */
  meanings: readonly ObservationMeaning[];
}

import type { Finding, Limits } from '@spindlewright/quantity';
import type { Provenance } from '../provenance.ts';
import type { FitState } from '../sheet.ts';
import type { PartField } from './part.ts';
import type { PredictedSeat } from './seat-by-readings.ts';

/** What one row of a catalogue comes to. */
export interface ScreenedPart {
  /** Where it stands in the catalogue: line of a file, else place in the list, from 1. */
  line: number;
  /** The shop's id; empty when the row was refused for want of one. */
  partId: string;
  /** What a shop can act on; `refused` for a row that could not be read. */
  state: FitState | 'refused';
  /** What the answer rests on: the names of both, or their sizes. */
  basis?: 'names' | 'sizes';
  /** The one fact that would decide, when the state is `cannot-tell`. */
  missingFact?: string;
  /** Why, the deciding reason first. */
  reasons: readonly Finding[];
  /** Where the part is predicted to sit, for square tapers. */
  predictedSeat?: PredictedSeat;
  /** How far the chainline moves, mm, positive outward; against an arm or a spindle like the old one. */
  chainlineEffectMm?: Limits;
}

/** How often something was met. */
export interface ScreenCount {
  /** What was met. */
  what: string;
  /** How often. */
  rowCount: number;
}

/** A word of the catalogue that no mapping explains. */
export interface UnmappedWord {
  /** The field in whose column it stands. */
  field: PartField;
  /** The word. */
  word: string;
  /** In how many rows. */
  rowCount: number;
}

/** What a whole screening comes to; the four counts of states add up to the rows. */
export interface ScreenSummary {
  /** Rows that came in. */
  rowCount: number;
  /** Rows that fit. */
  fitsCount: number;
  /** Rows that do not. */
  doesNotFitCount: number;
  /** Rows of which it cannot be told. */
  cannotTellCount: number;
  /** Rows that could not be read or have no id to order by. */
  refusedCount: number;
  /** Rows with the part id of an earlier row; each was judged. */
  duplicateCount: number;
  /** Rows by their deciding reason, most frequent first. */
  reasons: readonly ScreenCount[];
  /** Facts that would decide, most frequent first. */
  missingFacts: readonly ScreenCount[];
  /** Words that no mapping explains, most frequent first; at most 200. */
  unmappedWords: readonly UnmappedWord[];
  /** What holds whatever the answers. */
  cautions: readonly Finding[];
  /** Versions, edition of the data and sources. */
  provenance: Provenance;
}

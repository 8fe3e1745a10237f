import type { SpindleIdentification } from '@spindlewright/interfaces';
import type { Finding } from '@spindlewright/quantity';
import type { JudgedCandidate } from './candidates.ts';
import type { CostPart } from './cost-section.ts';
import type { DiagnosisPart } from './diagnosis-part.ts';
import type { JointPart } from './joint-part.ts';
import type { Provenance } from './provenance.ts';
import type { SeatPart } from './seat-part.ts';
import type { TighteningPart } from './tightening-part.ts';
import type { WhatIfRow } from './what-if.ts';

/** One of the three answers a shop can act on. */
export type FitState = 'fits' | 'does-not-fit' | 'cannot-tell';

/** The three answers in words. @internal */
export const STATE_WORDS = { fits: 'Fits', 'does-not-fit': 'Does not fit', 'cannot-tell': 'Cannot tell yet' } as const;

/** A piece of a sheet, independent of the output form. */
export type Block =
  | { kind: 'paragraph'; text: string }
  | { kind: 'list'; ordered: boolean; items: readonly string[] }
  | { kind: 'table'; caption: string; head: readonly string[]; rows: readonly (readonly string[])[] }
  | { kind: 'findings'; findings: readonly Finding[] }
  | {
      kind: 'drawing';
      narrowSvg: string;
      wideSvg: string;
      description: string;
      /** True where a table before it says the same in words, so that text and paper leave it out. */
      told?: boolean;
    };

/** A headed part of a sheet. */
export interface Section {
  /** Stable id, such as `seat`. */
  id: string;
  /** Heading. */
  title: string;
  /** True for what stands behind the sheet: a page shows it folded up, and paper leaves it out. */
  detail?: boolean;
  /** Its content in reading order. */
  blocks: readonly Block[];
}

/** The blocks that a form without pictures has: a drawing of what stands in a table before it says nothing new. @internal */
export const worded = ({ blocks }: Section): readonly Block[] =>
  blocks.filter((block) => block.kind !== 'drawing' || block.told !== true);

/** What comes out of a job: the figures, what to make of them, and the sheet in reading order. */
export interface JobSheet {
  /** Format of this object. */
  format: 'spindlewright-sheet-1';
  /** Title of the job. */
  title: string;
  /** Date of the job as given, `YYYY-MM-DD`. */
  date: string;
  /** True when the job is an invented example. */
  invented: boolean;
  /** The bike in the job's words. */
  bike: string;
  /** Side of the arm. */
  side: 'drive' | 'non-drive';
  /** Whether the arm fits, for a shop to act on; `cannot-tell` also when no seat was asked for. */
  state: FitState;
  /** The one fact that would decide, when the state is `cannot-tell`. */
  missingFact?: string;
  /** True: not to be ridden until what the sheet names is done and checked. */
  doNotRide: boolean;
  /** The answer in two or three words. */
  answer: string;
  /** The answer in a line or two. */
  headline: string;
  /** The matter in at most three sentences, for the owner of the bike. */
  forOwner: readonly string[];
  /** What is wrong and why, when the job tells what was observed. */
  diagnosis?: DiagnosisPart;
  /** Which taper the spindle has, when the job does not say. */
  identification?: SpindleIdentification;
  /** The seat: prediction, ways of knowing it, what the published sets say; when something of the arm was read. */
  seat?: SeatPart;
  /** Arms that might be fitted, each judged by itself. */
  candidates: readonly JudgedCandidate[];
  /** How tight, with what, and what to expect, at a square taper of published sizes. */
  tightening?: TighteningPart;
  /** Interfaces, fastening and mechanics of any other joint, and what does not apply to it. */
  joint?: JointPart;
  /** The job as it is and with each change that it asks about. */
  whatIf?: readonly WhatIfRow[];
  /** Minutes and costs by the rates of the shop, when the job gives them and something is to be done. */
  cost?: CostPart;
  /** Everything worth saying, gravest first. */
  findings: readonly Finding[];
  /** Standing cautions of the sheet. */
  cautions: readonly string[];
  /** The sheet itself, in reading order. */
  sections: readonly Section[];
  /** Versions, data edition and sources that stand behind it. */
  provenance: Provenance;
}

import { CHECK_OUTCOMES } from './ids.ts';
import type { CheckId, Side } from './types.ts';

/** Check as a letter, unit, usual uncertainty, least and greatest value. */
export type ReadingCode = readonly [check: string, unit: string, usualUncertainty: number, min: number, max: number];

/**
 * The data of a family in short: kinds, checks, actions are small letters, causes capitals, words and outcomes digits, all
 * by their place in the lists of ids. `scripts/generate.ts` writes them from `data/families`.
 */
export interface FamilyCode {
  /** Cause, prior in thousandths, then kind and word of each condition. */
  causes: string;
  /** For what holds beside the joint: prior, then check, outcome from, outcome to and word of each sign. */
  besides: readonly (readonly [prior: number, signs: string])[];
  /** Factors on causes and kinds. */
  sides: Readonly<Record<Side, Readonly<Record<string, number>>>>;
  /** Words by default, by cause and by kind; a dot says nothing. */
  history: string;
  /** By check, parted by bars: rows of kinds, causes and words; empty where the check does not apply. */
  rows: string;
  /** By reading, parted by bars: ends of the band of each outcome; empty where it does not apply. */
  bands: string;
  /** The same for one joint by reading and joint. */
  joints: Readonly<Record<string, string>>;
  /** Check and outcomes, over and over: signs of danger. */
  stop: string;
  /** Pairs of check and outcome that exclude each other, over and over. */
  pairs: string;
  /** Checks that say nothing here. */
  silent: string;
  /** Minutes and access of each check. */
  checks: string;
  /** By access: minutes, minutes of wear, checks destroyed. */
  opening: readonly (readonly [minutes: number, wearMinutes: number, destroys: string])[];
  /** By action: answers that rule it out, answers of which one is wanted. */
  gates: Readonly<Record<string, readonly [string, string]>>;
  /** Actions that make no sense here. */
  lacks: string;
  /** By action: losses by kind, where they differ from the common ones. */
  losses: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** Needs that take another form here. */
  instead: Readonly<Record<string, string>>;
}

/** The checks in the order of the data. */
export const CHECKS: readonly CheckId[] = Object.keys(CHECK_OUTCOMES) as CheckId[];

/** Place of a letter, small or capital. */
export const placeOf = (letter: string): number => letter.toLowerCase().charCodeAt(0) - 97;

/** The small letter of a place. */
export const letterOf = (place: number): string => String.fromCharCode(97 + place);

/** The check that a letter stands for. */
export const checkOf = (letter: string): CheckId => CHECKS[placeOf(letter)] ?? 'history';

/** Kinds, causes and the digits of words, row by row. */
export const rowsIn = (code: string): { kinds: string; causes: string; words: string }[] =>
  Array.from(code.matchAll(/([a-z]*)([A-Z]*)([\d.]+)/g), ([, kinds = '', causes = '', words = '']) => ({
    kinds,
    causes,
    words,
  }));

/** Answers named by a code, as `check/outcome`. */
export const answersIn = (code: string): string[] =>
  rowsIn(code).flatMap(({ kinds, words }) =>
    Array.from(words, (digit) => `${checkOf(kinds)}/${CHECK_OUTCOMES[checkOf(kinds)][Number(digit)]}`),
  );

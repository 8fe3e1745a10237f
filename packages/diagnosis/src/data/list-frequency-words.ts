import type { FrequencyWord } from '../types.ts';
import { SCALE_REASON } from './reasons.ts';
import { SCALE } from './rows.ts';

/** A word of the frequency scale with its number. */
export interface FrequencyWordRecord {
  /** The word. */
  word: FrequencyWord;
  /** How often it means, 0 to 1. */
  probability: number;
  /** Always `judgement`. */
  standing: 'judgement';
  /** Where the number comes from. */
  note: string;
  /** Ids in the register of sources. */
  sources: readonly string[];
}

/**
 * Lists the words in which the likelihoods are written, with their numbers.
 *
 * @remarks
 * Formula: none.
 *
 * Validity: people differ widely in what they mean by such words; the scale only fixes what is meant here.
 *
 * Accuracy: judgement, near the means of published surveys as remembered.
 *
 * @returns The words, rarest first.
 * @throws Nothing.
 * @example
 * ```ts
 * import { listFrequencyWords } from '@spindlewright/diagnosis/data';
 * listFrequencyWords()[0]?.word; // => 'never-say-never'
 * ```
 * @see verbal-frequency-survey-1990 and verbal-probability-scale-1999 in the register of sources.
 */
export function listFrequencyWords(): FrequencyWordRecord[] {
  return (Object.entries(SCALE) as [FrequencyWord, number][]).map(([word, probability]) => ({
    word,
    probability,
    standing: 'judgement',
    note: SCALE_REASON.note,
    sources: SCALE_REASON.sources,
  }));
}

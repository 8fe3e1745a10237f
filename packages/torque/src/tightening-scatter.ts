import { checkInput, type FieldSpecs, type Limits } from '@spindlewright/quantity';
import data from '../data/tightening-methods.json' with { type: 'json' };
import { dataEdition } from './data-edition.ts';
import { forceSpec } from './domain.ts';

interface Row {
  id: string;
  minScatterPercent: number;
  maxScatterPercent: number;
  sources: string[];
}

// Read on demand: a table touched while the module loads would ride in every bundle.
const rows = (): readonly Row[] => data.rows;

/** Preload that a way of tightening makes, by the scatter its source states. */
export interface TighteningScatter {
  /** Bounds of the preload in N where the way works at its best. */
  bestN: Limits;
  /** Bounds of the preload in N where it works at its worst. */
  worstN: Limits;
  /** Largest over smallest preload at best, at least 1. */
  minTighteningFactor: number;
  /** Largest over smallest preload at worst. */
  maxTighteningFactor: number;
  /** Ids in the register of sources. */
  sources: string[];
  /** Edition of the data. */
  dataEdition: string;
}

/**
 * Gives the bounds of a preload by the way of tightening, friction and tool together, as one source states them.
 *
 * @remarks
 * Formula: F (1 -+ x), tightening factor (1 + x)/(1 - x); x scatter about the mean.
 *
 * Validity: sources differ for the same way (a torque wrench: 17 to 35 %) and stay apart; take the one whose bolts are
 * like yours. Where torque and friction are known, `preloadRange` says more.
 *
 * Accuracy: as printed, whole per cents. The sources do not say which share of bolts lies inside.
 *
 * @param input - `meanPreloadN` at least 0 in N; `method`: id of a row of `tighteningMethods`.
 * @returns Bounds in N at best and at worst, and the tightening factors.
 * @throws {@link DomainError} for a negative preload, an unknown method, with the nearest, or unknown keys.
 * @example
 * ```ts
 * import { tighteningScatter } from '@spindlewright/torque';
 * const { worstN } = tighteningScatter({ meanPreloadN: 20_000, method: 'nasa-torque-lubricated' });
 * worstN; // => { lower: 15000, nominal: 20000, upper: 25000 }
 * ```
 * @see Each row's own sources, such as `nasa-nsts-08307` and `vdi-2230-1986-quoted`.
 */
export function tighteningScatter(input: { meanPreloadN: number; method: string }): TighteningScatter {
  const fields: FieldSpecs = {
    meanPreloadN: forceSpec,
    method: { type: 'choice', values: rows().map((row) => row.id) },
  };
  checkInput({ where: 'tighteningScatter', value: input, fields });
  // The check leaves only names that a row has.
  const [row] = rows().filter((entry) => entry.id === input.method) as [Row];
  const boundsOf = (percent: number): Limits => ({
    lower: input.meanPreloadN * (1 - percent / 100),
    nominal: input.meanPreloadN,
    upper: input.meanPreloadN * (1 + percent / 100),
  });
  const factorOf = (percent: number): number => (100 + percent) / (100 - percent);
  return {
    bestN: boundsOf(row.minScatterPercent),
    worstN: boundsOf(row.maxScatterPercent),
    minTighteningFactor: factorOf(row.minScatterPercent),
    maxTighteningFactor: factorOf(row.maxScatterPercent),
    sources: [...row.sources],
    dataEdition,
  };
}

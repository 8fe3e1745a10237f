import { checkInput, type FieldSpecs, type Finding, type Limits } from '@spindlewright/quantity';
import data from '../data/friction-classes.json' with { type: 'json' };
import { dataEdition } from './data-edition.ts';
import { frictionUnbounded } from './messages/lean.ts';
import { raiseText } from './raise-text.ts';

interface Row {
  id: string;
  frictionClass: string;
  standing: string;
  min: number;
  max?: number;
  sources: string[];
}

// Read on demand: a table touched while the module loads would ride in every bundle.
const rows = (): readonly Row[] => data.rows;

/** Friction of a class or a state of the parts. */
export interface FrictionRange {
  /** Class A to E. */
  frictionClass: string;
  /** Lowest coefficient, above 0. */
  minFriction: number;
  /** Highest coefficient; null where the source gives none. */
  maxFriction: number | null;
  /** Both as limits about their middle, ready for `preloadRange`; null where one is missing. */
  friction: Limits | null;
  /** How much the row can be relied on: `judgement` where a state of the parts was put into a class. */
  standing: string;
  /** Ids in the register of sources. */
  sources: string[];
  /** Edition of the data. */
  dataEdition: string;
  /** What is worth saying. */
  findings: Finding[];
}

/**
 * Gives the range of friction of a class of VDI 2230 or of a state of the parts.
 *
 * @remarks
 * Formula: none; a row of `frictionClasses`. The nominal value is the middle of the range and no more likely than another.
 *
 * Validity: thread and head each have a class. Class E (light metal, stainless steel or zinc, all dry) has no upper bound
 * in the source: `maxFriction` and `friction` are null with a finding.
 *
 * Accuracy: as printed; which state belongs to which class is judgement, told by the standing.
 *
 * @param input - `of`: a class `A` to `E`, or the id of a row such as `greased-steel-thread`.
 * @returns Range of the coefficient, standing, sources, findings.
 * @throws {@link DomainError} for what is neither, with the nearest, or unknown keys.
 * @example
 * ```ts
 * import { frictionRange } from '@spindlewright/torque';
 * frictionRange({ of: 'B' }).friction; // => { lower: 0.08, nominal: 0.12, upper: 0.16 }
 * frictionRange({ of: 'E' }).maxFriction; // => null
 * ```
 * @see VDI 2230, friction classes (`vdi-2230-2001-quoted`).
 */
export function frictionRange(input: { of: string }): FrictionRange {
  const ofClass = (row: Row): string => (row.id.startsWith('friction-class-') ? row.frictionClass : row.id);
  const fields: FieldSpecs = { of: { type: 'choice', values: rows().map(ofClass) } };
  checkInput({ where: 'frictionRange', value: input, fields });
  // The check leaves only names that a row has.
  const [row] = rows().filter((entry) => ofClass(entry) === input.of) as [Row];
  const { frictionClass, min, max, standing, sources } = row;
  return {
    frictionClass,
    minFriction: min,
    maxFriction: max ?? null,
    // Halves of rounded decimals would show as 0.12000000000000001.
    friction: max === undefined ? null : { lower: min, nominal: Math.round(500 * (min + max)) / 1000, upper: max },
    standing,
    sources: [...sources],
    dataEdition,
    findings:
      max === undefined
        ? [raiseText('friction-unbounded', frictionUnbounded, 'caution', { minFriction: min }, { sources })]
        : [],
  };
}

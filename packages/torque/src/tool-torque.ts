import { checkInput, type FieldSpecs, hardLimits, type Limits, type Measurand } from '@spindlewright/quantity';
import data from '../data/tool-classes.json' with { type: 'json' };
import { dataEdition } from './data-edition.ts';
import { torqueSpec } from './domain.ts';

interface Row {
  id: string;
  deviationPercent: number;
  upToTorqueNm?: number;
  deviationUpToPercent?: number;
  sources: string[];
}

// Read on demand: a table touched while the module loads would ride in every bundle.
const rows = (): readonly Row[] => data.rows;

/** Torque that a tool may really apply. */
export interface ToolTorque {
  /** Bounds of the torque in Nm. */
  torqueNm: Limits;
  /** Largest deviation of the tool from its setting, in per cent. */
  deviationPercent: number;
  /** Ids in the register of sources. */
  sources: string[];
  /** Edition of the data. */
  dataEdition: string;
}

/** Description of a field that names a tool class. @internal */
export const toolSpec = (): { type: 'choice'; values: string[] } => ({
  type: 'choice',
  values: rows().map((row) => row.id),
});

/**
 * Gives the torque that a tool may really apply when it is set to a torque.
 *
 * @remarks
 * Formula: T (1 -+ a); a permissible deviation of the class at T. Where a class has two (6 % up to 10 Nm, 4 % above) and
 * the setting is uncertain, the larger one that the setting can meet counts for both bounds.
 *
 * Validity: tools as new or calibrated; a dropped or worn one is another class. Some texts refer the deviation to the
 * true torque: the difference is a^2, 0.16 % of T at 4 %.
 *
 * Accuracy: a rounding a bound; the class itself is a promise of the maker, not a distribution.
 *
 * @param input - `torqueNm` at least 0 in Nm: the setting, exact or with its own limits; `tool`: id of the tool class.
 * @returns Bounds of the torque in Nm, and the deviation in per cent.
 * @throws {@link DomainError} for a negative torque, an unknown tool, with the nearest, or unknown keys.
 * @example
 * ```ts
 * import { toolTorque } from '@spindlewright/torque';
 * toolTorque({ torqueNm: 50, tool: 'click-wrench-iso-6789' }).torqueNm; // => { lower: 48, nominal: 50, upper: 52 }
 * toolTorque({ torqueNm: 10, tool: 'click-wrench-iso-6789' }).deviationPercent; // => 6
 * ```
 * @see ISO 6789 (`iso-6789-quoted`).
 */
export function toolTorque(input: { torqueNm: Measurand; tool: string }): ToolTorque {
  const fields: FieldSpecs = { torqueNm: { ...torqueSpec, type: 'measurand' }, tool: toolSpec() };
  checkInput({ where: 'toolTorque', value: input, fields });
  const set = hardLimits(input.torqueNm);
  // The check leaves only names that a row has.
  const [row] = rows().filter((entry) => entry.id === input.tool) as [Row];
  const { upToTorqueNm = 0, deviationUpToPercent = row.deviationPercent } = row;
  const deviationPercent = set.lower <= upToTorqueNm ? deviationUpToPercent : row.deviationPercent;
  return {
    torqueNm: {
      lower: set.lower * (1 - deviationPercent / 100),
      nominal: set.nominal,
      upper: set.upper * (1 + deviationPercent / 100),
    },
    deviationPercent,
    sources: [...row.sources],
    dataEdition,
  };
}

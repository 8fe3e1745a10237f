import { checkInput } from '@spindlewright/quantity';
import type { InterfaceFamily, InterfaceRecord } from './record.ts';
import { interfaceRecords } from './records/registry.generated.ts';

/** What records to list. */
export interface InterfaceFilter {
  /** Only records of this family. */
  family?: InterfaceFamily;
  /** Only records whose joint is drawn tight in this way. */
  drawnTightBy?: InterfaceRecord['drawnTight']['by'];
}

const FAMILIES = [
  'square-taper',
  'spline',
  'face-spline',
  'through-spindle',
  'cottered',
  'one-piece',
] as const satisfies readonly InterfaceFamily[];
const DRAWN_TIGHT_BY = ['centre-bolt-or-nut', 'pinch-bolts', 'cotters', 'none'] as const;

/**
 * Lists the interface records, in the order of their ids.
 *
 * @remarks
 * Formula: none; a record is listed when it meets every part of the filter.
 *
 * Validity: the records of this edition of the data.
 *
 * Accuracy: exact.
 *
 * @param filter - `family` and `drawnTightBy`; without either, every record is listed.
 * @returns A new list of the shared records, which must not be changed; empty when none meets the filter.
 * @throws {@link DomainError} for an unknown key or value.
 * @example
 * ```ts
 * import { listInterfaces } from '@spindlewright/interfaces';
 * listInterfaces({ family: 'cottered' }).map(({ id }) => id); // => ['cottered-inch', 'cottered-metric']
 * ```
 * @see The records themselves, `data/records/*.json`.
 */
export function listInterfaces(filter: InterfaceFilter = {}): InterfaceRecord[] {
  checkInput({
    where: 'listInterfaces',
    value: filter,
    fields: {
      family: { type: 'choice', values: FAMILIES, optional: true },
      drawnTightBy: { type: 'choice', values: DRAWN_TIGHT_BY, optional: true },
    },
  });
  const { family, drawnTightBy } = filter;
  return interfaceRecords.filter(
    (record) =>
      (family === undefined || record.family === family) &&
      (drawnTightBy === undefined || record.drawnTight.by === drawnTightBy),
  );
}

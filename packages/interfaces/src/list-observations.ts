import type { ObservationMeaning } from './observation.ts';
import { observationRecords } from './observations.generated.ts';
import type { InterfaceRecord } from './record.ts';
import { requireRecord } from './require-record.ts';

/**
 * Says what each outcome of each check means at one joint.
 *
 * @remarks
 * Formula: none. The same sight can be right at one family and a fault at another. Meanings that hold for the family, or
 * for some of its interfaces, go before those of any joint; checks that make no sense at the family are left out.
 *
 * Validity: the records of this edition of the data; ids of checks and outcomes are those of the diagnosis package.
 *
 * Accuracy: mostly common practice and judgement, as each meaning says; none decides alone whether a bicycle may be
 * ridden.
 *
 * @param record - An interface record, not an id.
 * @returns A new list of shared meanings, one for each check and outcome that can be at this joint.
 * @throws {@link DomainError} when it is given something other than an interface record.
 * @example
 * ```ts
 * import { getInterface, listObservations } from '@spindlewright/interfaces';
 * const reading = (id: string) =>
 *   listObservations(getInterface(id)).find((m) => m.check === 'shoulder-gap' && m.outcome === 'touching')?.reading;
 * [reading('spline-10'), reading('square-taper-jis')]; // => ['right', 'wrong']
 * ```
 * @see Sources `spline-10-letter-2000`, `taper-fr-workshop-wiki`, `service-manual-page-16`.
 */
export function listObservations(record: InterfaceRecord): ObservationMeaning[] {
  requireRecord('listObservations', 'record', record);
  const own = observationRecords.filter(({ family }) => family === record.family);
  const common = observationRecords.filter(({ family }) => family === 'any');
  const without = new Set(own.flatMap(({ checksWithoutObject }) => checksWithoutObject));
  const meanings = new Map<string, ObservationMeaning>();
  for (const { meanings: list } of [...own, ...common]) {
    for (const meaning of list) {
      const { check, outcome, interfaces } = meaning;
      if (without.has(check) || interfaces?.includes(record.id) === false) continue;
      const key = `${check}/${outcome}`;
      if (!meanings.has(key)) meanings.set(key, meaning);
    }
  }
  return [...meanings.values()].sort((one, other) => order(common, one) - order(common, other));
}

/** Place of a meaning among the common ones, so that every joint lists its checks in one order. */
function order(common: readonly { meanings: readonly ObservationMeaning[] }[], meaning: ObservationMeaning): number {
  const all = common.flatMap(({ meanings }) => meanings);
  const at = all.findIndex(({ check, outcome }) => check === meaning.check && outcome === meaning.outcome);
  return at < 0 ? all.length : at;
}

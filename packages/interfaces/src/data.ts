/**
 * The data of the package as typed values; the same stands raw in `data/records/*.json` and `data/numbers.csv`.
 *
 * @packageDocumentation
 */
export { dataEdition } from './data-edition.ts';
export { identificationData } from './identification.generated.ts';
export type { IdentificationData } from './identification-data.ts';
export { type NumberRow, numberRows } from './number-rows.ts';
export type { InterfaceRecord } from './record.ts';
export { interfaceRecords } from './records/registry.generated.ts';

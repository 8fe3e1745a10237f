/**
 * The data of the package as typed values; the same stands raw in `data/records/*.json`, `data/neighbours/*.json` and
 * `data/observations/*.json`, and as tables in the files that `data/datapackage.json` lists.
 *
 * @packageDocumentation
 */
export { dataEdition } from './data-edition.ts';
export { identificationData } from './identification.generated.ts';
export type {
  BoreIdentificationData,
  IdentificationData,
  ThreadIdentificationData,
} from './identification-data.ts';
export { matingData } from './mating.generated.ts';
export type { MatingData } from './mating-data.ts';
export type { NeighbourRecord } from './neighbour.ts';
export { neighbourRecords } from './neighbours/registry.generated.ts';
export { type NumberRow, numberRows } from './number-rows.ts';
export type { ObservationRecord } from './observation.ts';
export { observationRecords } from './observations.generated.ts';
export type { InterfaceRecord } from './record.ts';
export { interfaceRecords } from './records/registry.generated.ts';

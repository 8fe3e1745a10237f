import { checkInput, type FieldSpecs } from '@spindlewright/quantity';
import type { TorqueTable, TorqueTableRow } from './torque-table.ts';

/** Columns of a written table, in order. @internal */
export const TABLE_COLUMNS = [
  'designation',
  'propertyClass',
  'friction',
  'preloadN',
  'torqueNm',
  'torqueLbfIn',
  'torqueLbfFt',
  'torqueKgfCm',
] as const satisfies readonly (keyof TorqueTableRow)[];

/** Refuses what is no torque table. @internal */
export function checkTable(where: string, table: TorqueTable): void {
  const number = { type: 'number', unit: '', min: 0 } as const;
  const row: FieldSpecs = Object.fromEntries(
    TABLE_COLUMNS.map((column) => [column, /designation|propertyClass/.test(column) ? { type: 'text' } : number]),
  );
  const fields: FieldSpecs = {
    rows: { type: 'list', item: { type: 'object', fields: row } },
    method: { type: 'choice', values: ['exact', 'vdi-2230', 'nut-factor'] },
    utilisation: number,
    sources: { type: 'list', item: { type: 'text' } },
    dataEdition: { type: 'text' },
  };
  checkInput({ where, value: table, fields });
}

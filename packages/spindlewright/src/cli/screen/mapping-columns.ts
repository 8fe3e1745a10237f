import { nearestName } from '@spindlewright/quantity';
import type { Mapping } from '../../screen/mapping.ts';

/** Columns that a mapping takes a field from. @internal */
export const mappingColumns = ({ columns }: Mapping): string[] => [
  ...new Set(
    Object.values(columns).flatMap((column) => {
      const named = typeof column === 'string' ? column : column?.column;
      // Of several columns that may hold a field one is enough.
      return typeof named === 'string' ? [named] : [];
    }),
  ),
];

/** Columns that a mapping names and rows do not have, each with the nearest that they have. @internal */
export function absentColumns(
  mapping: Mapping,
  rows: readonly unknown[],
): { column: string; nearest: string | undefined }[] {
  const known = [...new Set(rows.flatMap((row) => (typeof row === 'object' && row !== null ? Object.keys(row) : [])))];
  if (known.length === 0) return [];
  return mappingColumns(mapping)
    .filter((column) => !known.includes(column))
    .map((column) => ({ column, nearest: nearestName({ name: column, known }) }));
}

import type { ColumnMapping } from './mapping.ts';

/** A row of a catalogue: fields by name. @internal */
export type Row = Readonly<Record<string, unknown>>;

/** Reads one field of a row, whatever it holds. @internal */
export type CellReader = (row: Row) => unknown;

/** Makes the reader of one column, of the first of several that holds anything, or of what always holds. @internal */
export function cellReader({ column, always }: ColumnMapping): CellReader {
  if (column === undefined) return () => always;
  const names = typeof column === 'string' ? [column] : column;
  const [first] = names;
  if (names.length === 1 && first !== undefined && always === undefined) return singleCell(first);
  const readers = names.map(singleCell);
  return (row) => {
    for (const reader of readers) {
      const value = reader(row);
      if (value !== undefined && value !== null && value !== '') return value;
    }
    return always;
  };
}

/** Own keys only: a row is a stranger's, and a key such as `__proto__` stays data. */
function singleCell(name: string): CellReader {
  const path = name.split('.');
  return (row) => {
    if (Object.hasOwn(row, name)) return row[name];
    if (path.length === 1) return undefined;
    let value: unknown = row;
    for (const key of path) {
      if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
      value = (value as Row)[key];
    }
    return value;
  };
}

const SHORT = 60;

/** What came, cut short; a list nested without end could not be written out, and is named by its form. @internal */
export const receivedText = (value: unknown): string =>
  typeof value === 'string' ? value.slice(0, SHORT) : typeof value === 'object' ? 'something nested' : String(value);

// What an adapters.ts exports: the way from a row of a *.ref.json file to our values.

/** A cell of a row. */
export type Cell = number | string | boolean | null;

/** One row of a reference file, by column. */
export type Row = Readonly<Record<string, Cell>>;

/** Computes our values for the expected columns of a row; it may return more, never less. */
export type Adapter = (row: Row) => Readonly<Record<string, Cell>>;

/** Adapters by the `id` of their reference file. */
export type Adapters = Readonly<Record<string, Adapter>>;

/** A cell that has to be a number; says which column is not. */
export function numberIn(row: Row, column: string): number {
  const cell = row[column];
  if (typeof cell !== 'number') throw new Error(`column ${column} holds ${JSON.stringify(cell)}, not a number`);
  return cell;
}

/** A cell that has to be a text; says which column is not. */
export function textIn(row: Row, column: string): string {
  const cell = row[column];
  if (typeof cell !== 'string') throw new Error(`column ${column} holds ${JSON.stringify(cell)}, not a text`);
  return cell;
}

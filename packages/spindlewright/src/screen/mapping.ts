import type { PartField } from './part.ts';

/** How one field of a part is read from a row. */
export interface ColumnMapping {
  /** Column, or columns of which the first that holds something is read; a dot leads into nested objects. */
  column?: string | readonly string[];
  /** What every row is, when no column tells; one of our words. */
  always?: string;
  /** Unit of plain numbers in the column; mm, deg or a count when absent. */
  unit?: 'mm' | 'cm' | 'm' | 'in' | 'deg' | 'rad';
  /** The shop's words and what each means in ours; `""` for a word that says nothing. */
  values?: Readonly<Record<string, string>>;
  /** What stands between several values of one cell; a slash, a semicolon, a bar or a plus when absent. */
  separator?: string;
  /** For part ids of figures alone: how many figures each has; a shorter one has lost its zeros. */
  digitCount?: number;
}

/** What a shop's columns, units and words mean; the file is the shop's own. */
export interface Mapping {
  /** Format of the mapping. */
  format: 'spindlewright-mapping-1';
  /** A line about the catalogue, for people. */
  note?: string;
  /** By field of a part, the column that holds it. */
  columns: Readonly<Partial<Record<PartField, string | ColumnMapping>>>;
  /** Texts that mean that nothing is known, beside the usual ones. */
  missing?: readonly string[];
}

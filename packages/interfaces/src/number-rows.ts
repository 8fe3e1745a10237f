import type { Datum, Standing } from '@spindlewright/quantity';

/** One number of the data as a row of a table. */
export interface NumberRow {
  /** Stable id of the row: record and path; made of names, so that the order of a list does not change it. */
  rowId: string;
  /** Id of the record, or `identification`. */
  record: string;
  /** Where in the record; a member of a list by its id in brackets. */
  path: string;
  /** The number, in `unit`. */
  value: number;
  /** Unit id, or a plain word for counts. */
  unit: string;
  /** Lower bound, when there is one. */
  lower?: number;
  /** Upper bound, when there is one. */
  upper?: number;
  /** Where the number comes from. */
  standing: Standing;
  /** Ids in the register of sources. */
  sources: readonly string[];
  /** Name of the set of values published together, when it belongs to one. */
  set?: string;
}

/**
 * Lists every number of a record as rows, alternatives included, for tables and files.
 *
 * @remarks
 * Formula: none; the tree is walked in the order of the record.
 *
 * Validity: any record of this package or of the same form. Members of lists are named by their `id`, alternatives by
 * their set or their sources.
 *
 * Accuracy: exact.
 *
 * @param input - `name`: what the rows call the record; `data`: the record.
 * @returns One row a number.
 * @throws Nothing.
 * @example
 * ```ts
 * import { numberRows } from '@spindlewright/interfaces/data';
 * import { squareTaperJis } from '@spindlewright/interfaces/records';
 * const rows = numberRows({ name: 'square-taper-jis', data: squareTaperJis });
 * rows[0]?.rowId; // => 'square-taper-jis:geometry.sets[taper-jp-ham-2013].acrossFlatsAtEndMm'
 * rows[0]?.value; // => 12.65
 * ```
 * @see The file `data/numbers.csv`, made of these rows.
 */
export function numberRows(input: { name: string; data: object }): NumberRow[] {
  return walk(input.name, input.data, '');
}

function walk(record: string, node: unknown, path: string): NumberRow[] {
  if (Array.isArray(node)) {
    return node.flatMap((item, index) => walk(record, item, `${path}[${nameOf(item) ?? index}]`));
  }
  if (typeof node !== 'object' || node === null) return [];
  const own = isDatum(node) ? [rowOf(record, node, path)] : [];
  const below = Object.entries(node).flatMap(([key, child]) =>
    walk(record, child, path === '' ? key : `${path}.${key}`),
  );
  return [...own, ...below];
}

function nameOf(item: unknown): string | undefined {
  if (typeof item !== 'object' || item === null) return undefined;
  if ('id' in item && typeof item.id === 'string') return item.id;
  return isDatum(item) ? (item.set ?? item.sources.join('+')) : undefined;
}

const isDatum = (node: object): node is Datum => 'standing' in node && 'unit' in node && 'value' in node;

function rowOf(record: string, datum: Datum, path: string): NumberRow {
  const { value, unit, lower, upper, standing, sources, set } = datum;
  return {
    rowId: `${record}:${path}`,
    record,
    path,
    value,
    unit,
    ...(lower === undefined ? {} : { lower }),
    ...(upper === undefined ? {} : { upper }),
    standing,
    sources,
    ...(set === undefined ? {} : { set }),
  };
}

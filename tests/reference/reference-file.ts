// Reads, checks and compares reference files. Used by the runner and by the generator of the validation pages, so that
// what is tested and what is printed cannot differ.
import { existsSync } from 'node:fs';
import { z } from 'zod/v4';
import { filesOf, readText, root } from '../workspace.ts';
import type { Adapter, Adapters, Cell, Row } from './adapter.ts';

const text = z.string().min(1);
const cell = z.union([z.number(), z.string(), z.boolean(), z.null()]);

const tolerance = z.strictObject({
  rtol: z.number().min(0).lt(1),
  atol: z.number().min(0),
  why: z.string().min(10, 'a tolerance stands with its reason'),
});

/** Where expected values may come from; `erratum` rows are printed values known to be wrong, which must NOT be met. */
const originKinds = [
  ...(['standard', 'handbook', 'finite-elements', 'other-tool', 'closed-form', 'measurement', 'erratum'] as const),
] as const;

/** Format of a `*.ref.json` file. */
export const referenceFile = z
  .strictObject({
    id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
    title: text,
    function: z.string().regex(/^[a-z]\w*$/i),
    columns: z.record(text, text),
    expected: z.array(text).min(1),
    rows: z.array(z.record(z.string(), cell)).min(1),
    tolerance: z.record(z.string(), tolerance),
    origin: z.strictObject({
      kind: z.enum(originKinds),
      source: text,
      citation: text,
      tool: text.optional(),
      command: text.optional(),
      seed: z.union([z.number(), text]).optional(),
      note: text.optional(),
    }),
    note: text.optional(),
  })
  .superRefine((file, context) => {
    const fault = (path: (string | number)[], message: string): void => {
      context.addIssue({ code: 'custom', path, message });
    };
    const columns = new Set(Object.keys(file.columns));
    for (const name of file.expected) if (!columns.has(name)) fault(['expected'], `no column ${name}`);
    for (const name of Object.keys(file.tolerance)) {
      if (!file.expected.includes(name)) fault(['tolerance', name], 'is no expected column');
    }
    file.rows.forEach((row, index) => {
      for (const name of Object.keys(row)) if (!columns.has(name)) fault(['rows', index, name], 'is no column');
      for (const name of file.expected) if (!(name in row)) fault(['rows', index], `lacks expected column ${name}`);
    });
    for (const name of file.expected) {
      const numbers = file.rows.map((row) => row[name]).filter((value) => typeof value === 'number');
      if (numbers.length === 0) continue;
      const bound = file.tolerance[name];
      if (bound === undefined) fault(['tolerance'], `no tolerance for the numbers of ${name}`);
      else if (numbers.some((value) => value !== 0) && numbers.every((value) => isWithin(0, value, bound))) {
        fault(['tolerance', name], 'is so wide that 0 would pass every row');
      }
    }
    if (file.origin.kind === 'other-tool' && file.origin.tool === undefined) {
      fault(['origin', 'tool'], 'name the tool and its version');
    }
  });

/** A checked reference file. */
export type ReferenceFile = z.infer<typeof referenceFile>;

/** How far ours may lie from the expected value: the larger of the absolute and the relative bound, never their sum. */
const allowance = (expected: number, bound: { rtol: number; atol: number }): number =>
  Math.max(bound.atol, bound.rtol * Math.abs(expected));

const isWithin = (ours: number, expected: number, bound: { rtol: number; atol: number }): boolean =>
  Math.abs(ours - expected) <= allowance(expected, bound);

/** Outcome of one expected cell. */
export interface Comparison {
  column: string;
  unit: string;
  expected: Cell;
  ours: Cell;
  /** Ours less expected; null unless both are numbers. */
  difference: number | null;
  /** Largest difference allowed; null where only equality will do. */
  allowed: number | null;
  met: boolean;
}

/** Compares our values for one row with every expected cell; throws when ours are missing or not finite. */
export function compareRow(file: ReferenceFile, row: Row, adapter: Adapter): Comparison[] {
  const values = adapter(row);
  return file.expected.map((column) => {
    const ours = values[column];
    const expected = row[column] ?? null;
    if (ours === undefined) throw new Error(`the adapter of ${file.id} gives no ${column}`);
    if (typeof ours === 'number' && !Number.isFinite(ours)) throw new Error(`${column} is ${ours}`);
    const bound = file.tolerance[column];
    const unit = file.columns[column] ?? '';
    if (typeof ours === 'number' && typeof expected === 'number' && bound !== undefined) {
      const met = isWithin(ours, expected, bound);
      return { column, unit, expected, ours, difference: ours - expected, allowed: allowance(expected, bound), met };
    }
    return { column, unit, expected, ours, difference: null, allowed: null, met: ours === expected };
  });
}

/** True when the row proves what it is there for: met in every cell, or, for an erratum, missed in at least one. */
export const isProved = (file: ReferenceFile, comparisons: readonly Comparison[]): boolean =>
  comparisons.every((entry) => entry.met) !== (file.origin.kind === 'erratum');

/** One line an expected cell, for a failure or a log. */
export const describeComparison = (entry: Comparison): string =>
  `${entry.met ? 'met   ' : 'MISSED'} ${entry.column} [${entry.unit}]: ours ${entry.ours}, expected ${entry.expected}` +
  (entry.difference === null ? '' : `, difference ${entry.difference.toPrecision(4)}, allowed ${entry.allowed}`);

/** Name of a row: its `case` where it has one, else its number. */
export const rowName = (row: Row, index: number): string =>
  typeof row.case === 'string' ? `${index + 1}: ${row.case}` : String(index + 1);

/** Paths of all reference files; the folder under tests/reference is the package, or a part of one, see `packageOf`. */
export const referencePaths = (): string[] => filesOf('tests/reference/*/*.ref.json');

/** Folder under tests/reference that a file stands in. */
export const folderOf = (path: string): string => path.split('/')[2] ?? '';

/** Folders with comparisons of a part of a package, by the folder of that package. */
const PARTS: Readonly<Record<string, string>> = { joints: 'taper' };

/** Folder of the package whose functions are compared in a folder under tests/reference. */
export const packageOf = (folder: string): string => PARTS[folder] ?? folder;

/** Reads one file; throws with every fault when it has not the form. */
export function readReferenceFile(path: string): ReferenceFile {
  const parsed = referenceFile.safeParse(JSON.parse(readText(path)));
  if (!parsed.success) throw new Error(`${path}\n${z.prettifyError(parsed.error)}`);
  return parsed.data;
}

/** Loads the adapters of a package; none when the file is not there. */
export async function readAdapters(folder: string): Promise<Adapters> {
  const path = `${root}/tests/reference/${folder}/adapters.ts`;
  if (!existsSync(path)) return {};
  const module = (await import(/* @vite-ignore */ path)) as { adapters: Adapters };
  return module.adapters;
}

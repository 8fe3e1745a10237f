import { type NumberRow, numberRows } from '../../src/number-rows.ts';
import { numberedTrees } from '../atlas.ts';
import type { RawData } from '../raw-data.ts';

/** A place in the data where a rule is broken. */
export interface Fault {
  linter: string;
  /** Row id, or record and path. */
  place: string;
  message: string;
}

/** A rule of the data. */
export interface Linter {
  id: string;
  /** What it asks for. */
  rule: string;
  check: (data: RawData) => Omit<Fault, 'linter'>[];
}

/** An object of the data, of whatever form. */
export type Node = Record<string, unknown>;

/** Every object of a tree with its path; members of lists by their id. */
function* objectsOf(node: unknown, path: string): Generator<[string, Node]> {
  if (typeof node !== 'object' || node === null) return;
  if (!Array.isArray(node)) yield [path, node as Node];
  for (const [key, child] of Object.entries(node)) {
    const name = Array.isArray(node) ? `[${(child as Node | null)?.id ?? key}]` : `.${key}`;
    yield* objectsOf(child, `${path}${name}`);
  }
}

/** The files of the data, each under the name that places begin with. */
export const trees = (data: RawData): { name: string; data: object }[] => [
  ...numberedTrees(data),
  ...data.observations.map((record) => ({ name: record.id, data: record })),
];

/** Every object of the data with its path. */
export const everyObject = (data: RawData): [string, Node][] =>
  trees(data).flatMap(({ name, data: tree }) => [...objectsOf(tree, name)]);

/** Every number of the data as a row. */
export const allNumbers = (data: RawData): NumberRow[] => numberedTrees(data).flatMap((tree) => numberRows(tree));

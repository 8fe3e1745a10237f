import { type Bearing, ringOf } from './bearing.ts';
import { checkJoint, leverArms, type TorqueMethod } from './joint.ts';
import { refuse } from './refuse.ts';
import type { Thread } from './thread.ts';

/** A column of numbers. */
export type NumberColumn = readonly number[] | Float64Array;

/** The joint of a column conversion: one thread and face; friction by row, or one for all. */
export interface ColumnJoint {
  /** The thread. */
  thread: Thread;
  /** The face that turns. */
  bearing: Bearing;
  /** Friction in the thread, above 0 to 1. */
  threadFriction: number | NumberColumn;
  /** Friction under the head, above 0 to 1. */
  bearingFriction: number | NumberColumn;
  /** Formula; `exact` when absent. */
  method?: TorqueMethod;
}

/** Runs over the rows: `convert(value, arm in mm)` gives the result; bad rows are marked, never thrown. @internal */
export function convertColumn(
  where: string,
  path: string,
  input: ColumnJoint,
  convert: (value: number, armMm: number) => number,
): { out: Float64Array; refused: Uint8Array } {
  const { [path]: column, ...rest } = (input ?? {}) as unknown as Record<string, unknown>;
  const joint = rest as unknown as ColumnJoint;
  const { thread, bearing, method = 'exact' } = joint;
  if (!isColumn(column)) throw refuse(where, path, 'no column', 'an array of numbers or a Float64Array');
  // Numbers in the rows are judged row by row; everything else once, as for a single conversion.
  checkJoint(where, { ...joint, threadFriction: 0.1, bearingFriction: 0.1 }, {});
  const ring = ringOf(bearing);
  const { length } = column;
  const threadFriction = reader(where, 'threadFriction', joint.threadFriction, length);
  const bearingFriction = reader(where, 'bearingFriction', joint.bearingFriction, length);
  const out = new Float64Array(length);
  const refused = new Uint8Array(length);
  for (let row = 0; row < length; row++) {
    const value = numberAt(column, row);
    const friction = { threadFriction: threadFriction(row), bearingFriction: bearingFriction(row) };
    const good = value >= 0 && value <= 1e9 && inDomain(friction.threadFriction) && inDomain(friction.bearingFriction);
    if (good) out[row] = convert(value, leverArms({ thread, bearing, method, ...friction }, ring).tightenMm);
    else refused[row] = 1;
  }
  return { out, refused };
}

const isColumn = (column: unknown): column is NumberColumn =>
  Array.isArray(column) || (ArrayBuffer.isView(column) && 'length' in column);

/** What is no number, a text that reads like one included, counts as not a number. */
const numberAt = (column: NumberColumn, row: number): number => {
  const value: unknown = column[row];
  return typeof value === 'number' ? value : Number.NaN;
};

const inDomain = (friction: number): boolean => friction > 0 && friction <= 1;

function reader(where: string, path: string, column: number | NumberColumn, length: number): (row: number) => number {
  if (typeof column === 'number') return () => column;
  if (!isColumn(column) || column.length !== length) {
    throw refuse(where, path, 'no number and no column of that length', `a number, or a column of ${length}`);
  }
  return (row) => numberAt(column, row);
}

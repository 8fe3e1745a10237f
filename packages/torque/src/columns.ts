import { type Bearing, ringOf } from './bearing.ts';
import { exactPreloads, exactTorques, linearRows, type Rows } from './column-rows.ts';
import { checkJoint, type TorqueMethod } from './joint.ts';
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

/** Which way a column goes. @internal */
export type ColumnWay = 'to-torque' | 'to-preload';

/** Runs over the rows; bad rows are marked, never thrown. @internal */
export function convertColumn(
  where: string,
  path: string,
  input: ColumnJoint,
  way: ColumnWay,
): { out: Float64Array; refused: Uint8Array } {
  const {
    [path]: column,
    out: given,
    ...rest
  } = (input ?? {}) as unknown as Record<string, unknown> & {
    out?: Record<string, unknown>;
  };
  const joint = rest as unknown as ColumnJoint;
  const result = way === 'to-torque' ? 'torqueNm' : 'preloadN';
  const { thread, bearing, method = 'exact' } = joint;
  if (!isColumn(column)) throw refuse(where, path, 'no column', 'an array of numbers or a Float64Array');
  // Numbers in the rows are judged row by row; everything else once, as for a single conversion.
  checkJoint(where, { ...joint, threadFriction: 0.1, bearingFriction: 0.1 }, {});
  const ring = ringOf(bearing);
  const { length } = column;
  const values = numbersOf(column);
  const threadFriction = spread(where, 'threadFriction', joint.threadFriction, length);
  const bearingFriction = spread(where, 'bearingFriction', joint.bearingFriction, length);
  const radiusMm = method === 'nut-factor' ? ring.evenPressureRadiusMm : ring.customaryRadiusMm;
  const out = buffer(where, given?.[result], `out.${result}`, length, (rows) => new Float64Array(rows));
  const refused = buffer(where, given?.refused, 'out.refused', length, (rows) => new Uint8Array(rows));
  const rows: Rows = { values, threadFriction, bearingFriction, out, refused };
  if (method === 'exact') {
    const arms = {
      halfPitchDiameterMm: thread.pitchDiameterMm / 2,
      tangent: thread.pitchMm / (Math.PI * thread.pitchDiameterMm),
      radiusMm,
    };
    (way === 'to-torque' ? exactTorques : exactPreloads)(rows, arms);
  } else linearRows(rows, { thread, radiusMm, vdi: method === 'vdi-2230', toTorque: way === 'to-torque' });
  return { out, refused };
}

const isColumn = (column: unknown): column is NumberColumn =>
  Array.isArray(column) || (ArrayBuffer.isView(column) && 'length' in column);

/** The column as doubles; what is no number, a text that reads like one included, counts as not a number. */
function numbersOf(column: NumberColumn): Float64Array {
  if (column instanceof Float64Array) return column;
  const numbers = new Float64Array(column.length);
  for (let row = 0; row < numbers.length; row++) {
    const value: unknown = column[row];
    numbers[row] = typeof value === 'number' ? value : Number.NaN;
  }
  return numbers;
}

/** The array to write into: the caller's own, when it has the kind and the length, else a new one. */
function buffer<T extends Float64Array | Uint8Array>(
  where: string,
  given: unknown,
  path: string,
  length: number,
  create: (length: number) => T,
): T {
  const own = create(given === undefined ? length : 0);
  if (given === undefined) return own;
  if (given instanceof own.constructor && (given as T).length === length) return given as T;
  throw refuse(where, path, 'another kind or length', `a ${own.constructor.name} of ${length}`);
}

function spread(where: string, path: string, column: number | NumberColumn, length: number): Float64Array {
  if (typeof column === 'number') return new Float64Array(length).fill(column);
  if (!isColumn(column) || column.length !== length) {
    throw refuse(where, path, 'no number and no column of that length', `a number, or a column of ${length}`);
  }
  return numbersOf(column);
}

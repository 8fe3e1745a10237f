import { checkInput, DomainError, type FieldSpec, type LimitsInput, limitsOf } from '@spindlewright/quantity';
import type { ArmRow } from './arm-row.ts';
import { assumedDimensions } from './assumed.ts';
import { armSpec } from './shapes.ts';

/** A column of numbers; NaN where a value is not known. */
export type SizeColumn = readonly number[] | Float64Array;

/**
 * One size of many arms: the same for all, as number or limits; or a column of exact values, of values with one tolerance, or
 * of limits.
 */
export type ArmColumn =
  | LimitsInput
  | SizeColumn
  | { nominal: SizeColumn; plusMinusMm: number }
  | { lower: SizeColumn; nominal: SizeColumn; upper: SizeColumn };

/** Sizes of many arms in mm; the names are those of an arm's shape, the face angle is that of the spindle. */
export interface ArmColumns {
  /** Across flats of the bore at its inner face; above 0 to 60 mm. */
  acrossFlatsAtMouthMm: ArmColumn;
  /** Length of the bore; above 0 to 100 mm. */
  boreLengthMm: ArmColumn;
  /** Where bolt or washer bear, from the mouth; above 0 to 100 mm, the bore length when absent. */
  boltSeatFromMouthMm?: ArmColumn;
  /** How far bolt or washer reach in beyond that; 0 to 50 mm, 0 when absent. */
  seatIntrusionMm?: ArmColumn;
  /** Length of the chamfer at the mouth; 0 to 20 mm, 0 when absent. */
  mouthChamferMm?: ArmColumn;
  /** Diameter of the boss; above 0 to 200 mm, `assumedDimensions` when absent. */
  bossDiameterMm?: ArmColumn;
  /** Radius of the bore's corners; above 0 to 10 mm, `assumedDimensions` when absent. */
  boreCornerRadiusMm?: ArmColumn;
}

/** What a row is before it is judged. */
type RowState = 'known' | 'unknown' | 'refused';

/** One column on its way into a row. */
interface Reader {
  nominal: Float64Array;
  /** Bounds of their own, or none: then the nominal value less and more the tolerance. */
  lower: Float64Array | undefined;
  upper: Float64Array | undefined;
  plusMinusMm: number;
  above: number;
  min: number;
  max: number;
  into: Float64Array;
}

/** Columns of many arms, to be read row by row into one and the same place. */
interface ArmReader {
  rows: number;
  row: ArmRow;
  /** Fills the row and tells whether it can be judged. */
  read(row: number): RowState;
}

/** What a size is when neither column nor value is given. @internal */
export const optionalSizes = (): Partial<Record<keyof ArmRow, LimitsInput>> => ({
  seatIntrusionMm: 0,
  mouthChamferMm: 0,
  bossDiameterMm: limitsOf(assumedDimensions.bossDiameterMm),
  boreCornerRadiusMm: limitsOf(assumedDimensions.boreCornerRadiusMm),
});

/** Checks the columns and makes them ready to be read; what is the same for all rows is filled in at once. @internal */
export function readArms(where: string, arms: ArmColumns): ArmReader {
  const specs = armSpec('limits');
  const { faceAngleDeg: _, ...known } = specs;
  const given = (typeof arms === 'object' && arms !== null ? arms : {}) as Readonly<Record<string, unknown>>;
  // Columns are judged row by row; to the check of the names and the single numbers they are absent.
  const columns = Object.entries(given).filter(([name, value]) => Object.hasOwn(known, name) && isColumn(value));
  const single = Object.fromEntries(
    Object.entries(given).filter((entry) => !columns.some(([name]) => name === entry[0])),
  );
  const fields: Record<string, FieldSpec> = { ...known };
  for (const [name] of columns) delete fields[name];
  checkInput({ where, value: { arms: single }, fields: { arms: { type: 'object', fields } } });

  const [first] = columns;
  if (first === undefined) throw refusal(where, '', 'no column', 'at least one size as a column');
  const rows = lengthOf(first[1]);
  const row = {} as Record<keyof ArmRow, Float64Array>;
  const readers: Reader[] = [];
  for (const name of Object.keys(known) as (keyof ArmRow)[]) {
    const column = columns.find(([of]) => of === name)?.[1];
    const into = new Float64Array(3);
    row[name] = into;
    if (column !== undefined) {
      const {
        above = Number.NEGATIVE_INFINITY,
        min = 0,
        max = 0,
      } = known[name] as { above?: number; min?: number; max?: number };
      readers.push({ ...columnOf(where, name, column, rows), above, min, max, into });
    } else if (name === 'boltSeatFromMouthMm' && given[name] === undefined) row[name] = row.boreLengthMm;
    else {
      const value = (given[name] ?? optionalSizes()[name]) as LimitsInput;
      into.set(typeof value === 'number' ? [value, value, value] : [value.lower, value.nominal, value.upper]);
    }
  }
  return { rows, row, read: (index) => readInto(readers, index) };
}

function readInto(readers: readonly Reader[], index: number): RowState {
  let state: RowState = 'known';
  for (let place = 0; place < readers.length; place++) {
    const { nominal, lower, upper, plusMinusMm, above, min, max, into } = readers[place] as Reader;
    const value = nominal[index] as number;
    const low = lower === undefined ? value - plusMinusMm : (lower[index] as number);
    const high = upper === undefined ? value + plusMinusMm : (upper[index] as number);
    if (Number.isNaN(value) || Number.isNaN(low) || Number.isNaN(high)) state = 'unknown';
    else if (!(low <= value && value <= high && low > above && low >= min && high <= max) && state === 'known')
      state = 'refused';
    into[0] = low;
    into[1] = value;
    into[2] = high;
  }
  return state;
}

const isList = (value: unknown): value is SizeColumn => Array.isArray(value) || value instanceof Float64Array;
const isColumn = (value: unknown): boolean =>
  isList(value) || (typeof value === 'object' && value !== null && isList((value as { nominal?: unknown }).nominal));
const lengthOf = (value: unknown): number =>
  (isList(value) ? value : (value as { nominal: SizeColumn }).nominal).length;

function columnOf(
  where: string,
  name: string,
  column: unknown,
  rows: number,
): Pick<Reader, 'nominal' | 'lower' | 'upper' | 'plusMinusMm'> {
  const numbers = (value: unknown, path: string): Float64Array => {
    if (isList(value) && value.length === rows) return value instanceof Float64Array ? value : doubles(value);
    throw refusal(
      where,
      `.${path}`,
      isList(value) ? `a column of ${value.length}` : typeof value,
      `a column of ${rows}`,
    );
  };
  if (isList(column)) {
    return { nominal: numbers(column, name), lower: undefined, upper: undefined, plusMinusMm: 0 };
  }
  const { nominal, lower, upper, plusMinusMm, ...more } = column as Readonly<Record<string, unknown>>;
  const hasBounds = lower !== undefined || upper !== undefined;
  const isTolerance = typeof plusMinusMm === 'number' && plusMinusMm >= 0 && plusMinusMm <= 100;
  if (Object.keys(more).length > 0 || hasBounds === isTolerance) {
    const allowed = 'a column, { nominal, plusMinusMm } or { lower, nominal, upper }';
    throw refusal(where, `.${name}`, Object.keys(column as object).join(', '), allowed);
  }
  return {
    nominal: numbers(nominal, `${name}.nominal`),
    lower: hasBounds ? numbers(lower, `${name}.lower`) : undefined,
    upper: hasBounds ? numbers(upper, `${name}.upper`) : undefined,
    plusMinusMm: isTolerance ? plusMinusMm : 0,
  };
}

/** A list as doubles: what is absent counts as not known, what is no number as outside of every range. */
const doubles = (list: readonly unknown[]): Float64Array =>
  Float64Array.from(list, (value) =>
    typeof value === 'number' ? value : value === null || value === undefined ? Number.NaN : Number.POSITIVE_INFINITY,
  );

const refusal = (where: string, path: string, received: string, allowed: string): DomainError =>
  new DomainError(where, [{ path: `arms${path}`, received, allowed }]);

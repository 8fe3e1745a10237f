import { checkInput, DomainError, type FieldSpec, type LimitsInput } from '@spindlewright/quantity';
import { type ArmColumns, optionalSizes } from './arm-columns.ts';
import type { ArmRow } from './arm-row.ts';
import { exactly } from './interval.ts';
import { armSpec } from './shapes.ts';
import { literal, minus, type Names, plus, type Term } from './sql-terms.ts';

/** Where one size of many arms stands: nowhere, since it is the same for all, or in a column, or in three. */
export type ArmSource =
  | LimitsInput
  | { column: string; plusMinusMm?: number }
  | { lower: string; nominal: string; upper: string };

/** Where the sizes of many arms stand, in mm. */
export interface ArmSources extends Partial<Record<keyof ArmColumns, ArmSource>> {
  /** Across flats of the bore at its inner face; above 0 to 60 mm. */
  acrossFlatsAtMouthMm: ArmSource;
  /** Length of the bore; above 0 to 100 mm. */
  boreLengthMm: ArmSource;
}

/** Lower, nominal and upper value as SQL. @internal */
export type TermTriple = readonly [Term, Term, Term];

/** The sizes of an arm as SQL, and whether its row can be judged. @internal */
export interface ReadSources {
  row: Record<keyof ArmRow, TermTriple>;
  /** Conditions over a row: a size is not known; a size is outside its domain. */
  state: { unknown: string; refused: string };
}

interface Column {
  name: keyof ArmRow;
  nominal: string;
  bounds: [lower: string, upper: string] | undefined;
  plusMinusMm: number;
  raw: readonly string[];
}

// What stands in for the sizes of a row that is not judged, so that no engine meets a root or a division without an answer.
const STAND_IN: Record<keyof ArmRow, number> = {
  acrossFlatsAtMouthMm: 13.6,
  boreLengthMm: 18,
  boltSeatFromMouthMm: 18,
  seatIntrusionMm: 0,
  mouthChamferMm: 0,
  bossDiameterMm: 34,
  boreCornerRadiusMm: 1,
};

/** Checks where the sizes stand and names them. @internal */
export function readSources(input: {
  where: string;
  arms: ArmSources;
  names: Names;
  doubleType: string;
  plainName: (path: string, name: unknown) => void;
}): ReadSources {
  const { where, arms, names, doubleType, plainName } = input;
  const { faceAngleDeg: _, ...known } = armSpec('limits');
  const given = (typeof arms === 'object' && arms !== null ? arms : {}) as Readonly<Record<string, unknown>>;
  const inColumns = Object.entries(given).filter(([name, source]) => Object.hasOwn(known, name) && isColumn(source));
  const fields: Record<string, FieldSpec> = { ...known };
  for (const [name] of inColumns) delete fields[name];
  const single = Object.fromEntries(Object.entries(given).filter(([name]) => !inColumns.some(([of]) => of === name)));
  checkInput({ where, value: { arms: single }, fields: { arms: { type: 'object', fields } } });
  if (inColumns.length === 0) {
    throw new DomainError(where, [{ path: 'arms', received: 'no column', allowed: 'at least one size as a column' }]);
  }
  const cast = (column: string): string => `CAST(${column} AS ${doubleType})`;
  const columns = inColumns.map(([name, source]) => columnOf(where, name as keyof ArmRow, source, plainName));
  const unknown = columns.flatMap(({ raw }) => raw.map((column) => `${column} IS NULL`)).join(' OR ');
  const domains = columns.map(({ name, nominal, bounds, plusMinusMm }) => {
    const { above, min, max = 0 } = known[name] as { above?: number; min?: number; max?: number };
    const [low, high] = bounds?.map(cast) ?? [
      `(${cast(nominal)} - ${literal(plusMinusMm).text})`,
      `(${cast(nominal)} + ${literal(plusMinusMm).text})`,
    ];
    const start = above === undefined ? `${low} >= ${literal(min ?? 0).text}` : `${low} > ${literal(above).text}`;
    const rising = bounds === undefined ? '' : `${low} <= ${cast(nominal)} AND ${cast(nominal)} <= ${high} AND `;
    return `${rising}${start} AND ${high} <= ${literal(max).text}`;
  });
  const isUnknown = names.decide('unknown', { text: unknown, value: undefined, level: 0 });
  const isJudged = names.decide('judged', { text: domains.join(' AND '), value: undefined, level: 0 });

  const row = {} as Record<keyof ArmRow, TermTriple>;
  for (const name of Object.keys(known) as (keyof ArmRow)[]) {
    const column = columns.find((entry) => entry.name === name);
    if (column !== undefined) {
      const fact = (at: string, text: string): Term =>
        names.define(`${shortName(name)}_${at}`, {
          text: `CASE WHEN ${isJudged.text} THEN ${text} ELSE ${literal(STAND_IN[name]).text} END`,
          value: undefined,
          level: isJudged.level,
        });
      const middle = fact('nominal', cast(column.nominal));
      const [low, high] = column.bounds ?? [];
      if (low !== undefined && high !== undefined)
        row[name] = [fact('lower', cast(low)), middle, fact('upper', cast(high))];
      else if (column.plusMinusMm === 0) row[name] = [middle, middle, middle];
      else {
        const by = column.plusMinusMm;
        row[name] = [
          names.define(`${shortName(name)}_lower`, minus(middle, by)),
          middle,
          names.define(`${shortName(name)}_upper`, plus(middle, by)),
        ];
      }
    } else if (name === 'boltSeatFromMouthMm' && given[name] === undefined) row[name] = row.boreLengthMm;
    else {
      const value = (given[name] ?? optionalSizes()[name]) as LimitsInput;
      const { lower, nominal, upper } = typeof value === 'number' ? exactly(value) : value;
      row[name] = [literal(lower), literal(nominal), literal(upper)];
    }
  }
  return { row, state: { unknown: isUnknown.text, refused: `NOT (${isJudged.text})` } };
}

/** `acrossFlatsAtMouthMm` as `across_flats_at_mouth`. */
const shortName = (name: string): string =>
  name.replace(/Mm$/, '').replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

const isColumn = (source: unknown): boolean =>
  typeof source === 'object' &&
  source !== null &&
  (Object.hasOwn(source, 'column') || typeof (source as { nominal?: unknown }).nominal === 'string');

function columnOf(
  where: string,
  name: keyof ArmRow,
  source: unknown,
  plainName: (path: string, name: unknown) => void,
): Column {
  const path = `arms.${name}`;
  const { column, plusMinusMm, lower, nominal, upper, ...more } = source as Readonly<Record<string, unknown>>;
  const isSingle = column !== undefined && lower === undefined && nominal === undefined && upper === undefined;
  const by = plusMinusMm ?? 0;
  const hasTolerance = isSingle ? typeof by === 'number' && by >= 0 && by <= 100 : plusMinusMm === undefined;
  if (Object.keys(more).length > 0 || !hasTolerance || (column !== undefined) !== isSingle) {
    const allowed = '{ column }, { column, plusMinusMm } or { lower, nominal, upper } of column names';
    throw new DomainError(where, [{ path, received: Object.keys(source as object).join(', '), allowed }]);
  }
  if (isSingle) {
    plainName(`${path}.column`, column);
    return { name, nominal: column as string, bounds: undefined, plusMinusMm: by as number, raw: [column as string] };
  }
  for (const [at, text] of Object.entries({ lower, nominal, upper })) plainName(`${path}.${at}`, text);
  const [low, middle, high] = [lower, nominal, upper] as [string, string, string];
  return { name, nominal: middle, bounds: [low, high], plusMinusMm: 0, raw: [low, middle, high] };
}

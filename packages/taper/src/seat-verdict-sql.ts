import { checkInput, DomainError, type LimitsInput } from '@spindlewright/quantity';
import { resolveJoint, resolvePressing } from './joint.ts';
import type { ScreenSpindle } from './screen-seats.ts';
import { faceAngleSpec, type Pressing, pressingSpec, spindleSpec } from './shapes.ts';
import { type ArmSources, readSources } from './sql-arms.ts';
import { verdictSteps } from './sql-seat.ts';
import { createNames } from './sql-terms.ts';

/** One spindle, and where the sizes of the arms stand in a table. */
export interface SeatVerdictSqlInput {
  /** Shape of the spindle end. */
  spindle: ScreenSpindle;
  /** Where each size of the arms stands. */
  arms: ArmSources;
  /** What presses the arms on; without it the verdict is that of the hand fit. */
  pressing?: Omit<Pressing<LimitsInput>, 'compliance'>;
  /** Name of the table or view. */
  from: string;
  /** Columns of it that are to stand beside the verdicts. */
  keep?: readonly string[];
  /** The engine that is to run it; `duckdb` when absent. */
  engine?: 'duckdb' | 'postgresql' | 'spark' | 'trino';
}

/** A verdict as text for a database. */
export interface SeatVerdictSql {
  /** The whole statement: the columns kept, then `verdict`, `worst_lower` and `worst_upper`. */
  statement: string;
  /** The selections before the last, as they stand behind `WITH`, for a statement of one's own. */
  steps: string;
  /** Name of the last of them, which has every column of the table. */
  lastStep: string;
  /** The verdict over the columns of the last selection: at nominal values, lowered when a worst case is not `seats`. */
  verdict: string;
  /** The verdict with the arm as far out as it may stand. */
  worstLower: string;
  /** The verdict with the arm as far in as it may stand. */
  worstUpper: string;
}

const WHERE = 'seatVerdictSql';
const PREFIX = 'sw_';

/**
 * Writes the verdict of `screenSeats` as one SQL statement, for catalogues that stand in a database.
 *
 * @remarks
 * Formula: that of {@link screenSeats}, step for step, each piece that is used more than once as a column
 * of a selection. (As a single expression without names it would be millions of characters long: the flat width alone
 * enters some hundred times.) What does not depend on a row, sines and tangents included, is worked out beforehand.
 * The text keeps to what DuckDB, PostgreSQL, Spark and Trino have in common: `WITH`, `CASE`, `SQRT`, `POWER`, `FLOOR`,
 * numbers in exponent form, columns cast to double, no `LEAST` or `GREATEST`. For PostgreSQL alone the double has another
 * name and each selection is kept (`MATERIALIZED`, from version 12 on).
 *
 * Validity: as {@link screenSeats}. A size that is NULL gives `cannot-tell` before anything else, one outside its domain, or
 * limits that cross, `refused`, and so is NaN where the engine orders it (DuckDB, PostgreSQL, Spark). Names are written as
 * they are, unquoted: letters, digits and underscores, for the table with its schema before a point; words that the engine
 * keeps for itself have to be renamed in a view. No column of the table may begin with `sw_`: the pieces are called so.
 *
 * Accuracy: that of the engine's doubles. Verdicts agree with `predictSeat` but for seats within some 1e-12 mm of a limit.
 *
 * @param input - `spindle` in mm and deg, `pressing` with force in N and friction, numbers or limits; `arms`: each size as a
 * number or limits in mm, or as `{ column }`, `{ column, plusMinusMm }` or `{ lower, nominal, upper }` of column names;
 * `from`, `keep`, `engine`.
 * @returns The statement, and its parts for a statement of one's own.
 * @throws {@link DomainError} for unknown keys, single numbers outside their domain, names that are not plain ones, no column
 * at all.
 * @example
 * ```ts
 * import { seatVerdictSql } from '@spindlewright/taper';
 * const { statement } = seatVerdictSql({
 *   spindle: { acrossFlatsAtEndMm: 12.63, faceAngleDeg: 2, flatLengthMm: 20, cornerDiameterMm: 16.5 },
 *   arms: { acrossFlatsAtMouthMm: { column: 'mouth_mm', plusMinusMm: 0.02 }, boreLengthMm: { column: 'bore_mm' } },
 *   pressing: { axialForceN: 15_000, friction: { lower: 0.1, nominal: 0.13, upper: 0.16 } },
 *   from: 'parts',
 *   keep: ['sku'],
 * });
 * statement.startsWith('WITH sw_0 AS (SELECT *,'); // => true
 * statement.includes('GREATEST'); // => false
 * ```
 * @see `predictSeat` and its sources.
 */
export function seatVerdictSql(input: SeatVerdictSqlInput): SeatVerdictSql {
  const { arms, ...rest } = (input ?? {}) as SeatVerdictSqlInput;
  const { compliance: _, ...press } = pressingSpec('limits');
  checkInput({
    where: WHERE,
    value: rest,
    fields: {
      spindle: { type: 'object', fields: { ...spindleSpec('limits'), faceAngleDeg: faceAngleSpec('number') } },
      pressing: { type: 'object', fields: press, optional: true },
      from: { type: 'text' },
      keep: { type: 'list', item: { type: 'text' }, optional: true },
      engine: { type: 'choice', values: ['duckdb', 'postgresql', 'spark', 'trino'], optional: true },
    },
  });
  const { spindle, pressing, from, keep = [], engine = 'duckdb' } = rest;
  const isPostgres = engine === 'postgresql';
  plainName('from', from);
  for (const [index, column] of keep.entries()) plainName(`keep.${index}`, column);
  const names = createNames(PREFIX);
  const { row, state } = readSources({
    where: WHERE,
    arms,
    names,
    doubleType: isPostgres ? 'DOUBLE PRECISION' : 'DOUBLE',
    plainName,
  });
  const joint = resolveJoint(spindle, { acrossFlatsAtMouthMm: 1, faceAngleDeg: spindle.faceAngleDeg, boreLengthMm: 1 });
  const verdicts = verdictSteps({
    spindle: joint.spindle,
    pressing: pressing && resolvePressing(pressing),
    row,
    names,
    state,
  });

  const levels = names.levels();
  const step = (level: number): string => `${PREFIX}${level}`;
  // Left to itself PostgreSQL writes each piece out wherever it is used, and runs out of memory.
  const kept = isPostgres ? 'AS MATERIALIZED' : 'AS';
  const steps = levels
    .map((columns, level) => {
      const under = level === 0 ? from : step(level - 1);
      return `${step(level)} ${kept} (SELECT *,\n  ${columns.join(',\n  ')}\n  FROM ${under})`;
    })
    .join(',\n');
  const lastStep = step(levels.length - 1);
  const columns = [
    ...keep,
    `${verdicts.verdict} AS verdict`,
    `${verdicts.worstLower} AS worst_lower`,
    `${verdicts.worstUpper} AS worst_upper`,
  ];
  return {
    statement: `WITH ${steps}\nSELECT ${columns.join(',\n  ')}\nFROM ${lastStep}`,
    steps,
    lastStep,
    ...verdicts,
  };
}

/**
 * Refuses what would need quotes, so that no text of a user's ever becomes SQL, and what begins like a name of our own, which
 * would stand beside it under the same name.
 */
function plainName(path: string, name: unknown): void {
  const isTable = path === 'from';
  const pattern = isTable ? /^[A-Za-z_]\w*(\.[A-Za-z_]\w*){0,2}$/ : /^[A-Za-z_]\w*$/;
  if (typeof name === 'string' && name.length <= 200 && pattern.test(name) && !isOurs(name)) return;
  const points = isTable ? ', at most two points between' : '';
  const allowed = `a plain name: letters, digits and underscores${points}; not ${RESERVED.join(', ')}, nor begun with ${PREFIX}`;
  throw new DomainError(WHERE, [{ path, received: String(name), allowed }]);
}

const RESERVED = ['verdict', 'worst_lower', 'worst_upper'];
const isOurs = (name: string): boolean =>
  name.toLowerCase().startsWith(PREFIX) || RESERVED.includes(name.toLowerCase());

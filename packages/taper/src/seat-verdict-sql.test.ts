import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { type SeatVerdictSqlInput, seatVerdictSql } from './seat-verdict-sql.ts';

const input: SeatVerdictSqlInput = {
  spindle: { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 20, endChamferMm: 0.5, cornerDiameterMm: 16.5 },
  arms: { acrossFlatsAtMouthMm: { column: 'mouth_mm', plusMinusMm: 0.02 }, boreLengthMm: { column: 'bore_mm' } },
  pressing: {
    axialForceN: 15_000,
    friction: { lower: 0.1, nominal: 0.13, upper: 0.16 },
    materials: {
      spindle: { youngsModulusGPa: 205, poissonsRatio: 0.29 },
      arm: { youngsModulusGPa: 70, poissonsRatio: 0.33, yieldStrengthMPa: 280 },
    },
  },
  from: 'shop.parts',
  keep: ['sku'],
};
const caughtPath = (changed: object): string => {
  try {
    seatVerdictSql({ ...input, ...changed } as SeatVerdictSqlInput);
  } catch (error) {
    if (isDomainError(error)) return error.path;
  }
  throw new Error('nothing refused');
};

describe('seatVerdictSql', () => {
  it('keeps to what the engines have in common', () => {
    const { statement } = seatVerdictSql(input);
    const words = new Set(statement.match(/\b[A-Z]{2,}\b/g));
    expect([...words].sort()).toEqual(
      'AND AS CASE CAST DOUBLE ELSE END FLOOR FROM IS NOT NULL OR POWER SELECT SQRT THEN WHEN WITH'.split(' '),
    );
    // Numbers are doubles by their exponent; what else has digits is a name.
    const rest = statement.replace(/\b\d(\.\d+)?E[+-]\d+\b/g, '').replace(/\b[a-z]\w*\b/g, '');
    expect(rest).not.toMatch(/\d/);
    expect(statement).not.toMatch(/Infinity|NaN|undefined/);
  });

  it('asks first whether everything is known, then whether it is inside its domain', () => {
    const { verdict } = seatVerdictSql(input);
    expect(verdict.indexOf("'cannot-tell'")).toBeLessThan(verdict.indexOf("'refused'"));
    expect(verdict.indexOf("'refused'")).toBeLessThan(verdict.indexOf("'does-not-start'"));
    expect(seatVerdictSql(input).steps).toContain('mouth_mm IS NULL OR bore_mm IS NULL');
  });

  it('has a double of another name and kept selections for PostgreSQL', () => {
    const { statement } = seatVerdictSql({ ...input, engine: 'postgresql' });
    expect(statement).toContain('CAST(mouth_mm AS DOUBLE PRECISION)');
    expect(statement).toContain('sw_0 AS MATERIALIZED (');
    const others = (['duckdb', 'spark', 'trino'] as const).map(
      (engine) => seatVerdictSql({ ...input, engine }).statement,
    );
    expect(new Set([...others, seatVerdictSql(input).statement]).size).toBe(1);
  });

  it('is made of the parts that it gives', () => {
    const { statement, steps, lastStep, verdict } = seatVerdictSql(input);
    expect(statement.startsWith(`WITH ${steps}`)).toBe(true);
    expect(statement.endsWith(`FROM ${lastStep}`)).toBe(true);
    expect(statement).toContain(`${verdict} AS verdict`);
    expect(steps).toContain('FROM shop.parts');
  });

  it.each([
    ['a text in the place of a name', { from: 'parts; DROP TABLE parts' }, 'from'],
    ['a quoted name', { keep: ['"sku"'] }, 'keep.0'],
    ['a column by its table', { keep: ['parts.sku'] }, 'keep.0'],
    ['a column that the statement makes itself', { keep: ['Verdict'] }, 'keep.0'],
    ['a table that is called as a step', { from: 'sw_0' }, 'from'],
    [
      'a tolerance beside limits',
      { arms: { ...input.arms, boreLengthMm: { lower: 'a', nominal: 'b', upper: 'c', plusMinusMm: 0.1 } } },
      'arms.boreLengthMm',
    ],
    [
      'a column with a comment',
      { arms: { ...input.arms, boreLengthMm: { column: 'a--' } } },
      'arms.boreLengthMm.column',
    ],
    [
      'two of three columns',
      { arms: { ...input.arms, boreLengthMm: { lower: 'a', nominal: 'b' } } },
      'arms.boreLengthMm.upper',
    ],
    ['no column', { arms: { acrossFlatsAtMouthMm: 13.5, boreLengthMm: 16 } }, 'arms'],
    ['a misspelt size', { arms: { ...input.arms, mouthChamfer: 1 } }, 'arms.mouthChamfer'],
    ['another engine', { engine: 'sqlite' }, 'engine'],
  ])('refuses %s', (_name, changed, path) => {
    expect(caughtPath(changed)).toBe(path);
  });
});

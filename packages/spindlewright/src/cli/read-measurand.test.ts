import { describe, expect, it } from 'vitest';
import { readMeasurand } from './read-measurand.ts';

describe('readMeasurand', () => {
  it.each([
    ['12.65 mm', 12.65],
    ['12,65mm', 12.65],
    // 25.4 * 5/16
    ['5/16 in', 7.9375],
    ['1 3/8 in', 34.925],
    ['-2 mm', -2],
  ])('reads %s', (text, value) => {
    expect(readMeasurand('--x', text, 'mm')).toBeCloseTo(value, 12);
  });

  it.each([
    ['12.65 +- 0.02 mm', 12.63, 12.65, 12.67],
    ['12.65 mm \u00b1 0.02', 12.63, 12.65, 12.67],
    ['12.65 mm+/-0.001 in', 12.6246, 12.65, 12.6754],
    ['12.6..12.7 mm', 12.6, 12.65, 12.7],
    ['12.6 mm .. 12.7 mm', 12.6, 12.65, 12.7],
  ])('reads %s with its bounds', (text, lower, nominal, upper) => {
    const found = readMeasurand('--x', text, 'mm') as { lower: number; nominal: number; upper: number };
    expect(found.lower).toBeCloseTo(lower, 9);
    expect(found.nominal).toBeCloseTo(nominal, 9);
    expect(found.upper).toBeCloseTo(upper, 9);
  });

  it('reads plain numbers where there is no unit', () => {
    expect(readMeasurand('--x', '0,12')).toBe(0.12);
    expect(readMeasurand('--x', '0.08..0.16')).toEqual({ lower: 0.08, nominal: 0.12, upper: 0.16 });
  });

  it.each([
    '12.65',
    '12.65 kg',
    '12.65 Nm',
    'mm',
    '',
    '1 +- 2 +- 3 mm',
    '1..2..3 mm',
    '2..1 mm',
    '1 +- -1 mm',
    '+- 1 mm',
  ])('refuses %s and says what is wanted', (text) => {
    expect(() => readMeasurand('--length', text, 'mm')).toThrow(
      /^--length .*a number with its unit, such as "12.65 mm"/,
    );
  });

  it('passes over blanks without end in one go', () => {
    const blanks = ' '.repeat(200_000);
    expect(() => readMeasurand('--x', `1 1/2${blanks}x`, 'mm')).toThrow(/a number with its unit/);
    expect(readMeasurand('--x', `12.6 mm${blanks}..${blanks}12.8 mm`, 'mm')).toMatchObject({
      lower: 12.6,
      upper: 12.8,
    });
  });

  it('refuses a unit where none belongs', () => {
    expect(() => readMeasurand('--friction', '0.1 mm')).toThrow(/a number or a range/);
  });
});

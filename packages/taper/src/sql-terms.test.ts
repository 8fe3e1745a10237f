import { describe, expect, it } from 'vitest';
import { all, any, choose, createNames, less, literal, minus, not, over, plus, power, type Term } from './sql-terms.ts';

const column = (text: string): Term => ({ text, value: undefined, level: 0 });

describe('terms of SQL', () => {
  it('keep every digit of a number, and its sign in brackets', () => {
    expect(literal(0.1 + 0.2).text).toBe('3.0000000000000004E-1');
    expect(literal(-1 / 3).text).toBe('(-3.333333333333333E-1)');
    for (const value of [Math.PI, 1e-300, 123456789.125, 5e-324]) expect(Number(literal(value).text)).toBe(value);
  });

  it('work out beforehand what no row enters, in the order written', () => {
    expect(over(minus(plus(0.1, 0.2), 0.3), 2).value).toBe((0.1 + 0.2 - 0.3) / 2);
    expect(power(2, 0.5).value).toBe(Math.SQRT2);
    expect(plus(column('a'), minus(3, 2)).text).toBe('(a + 1E+0)');
  });

  it('leave out conditions that are settled', () => {
    const open = less(column('a'), 1);
    expect(all(open, less(1, 2)).text).toBe('a < 1E+0');
    expect(all(open, less(2, 1)).value).toBe(false);
    expect(any(open, less(1, 2)).value).toBe(true);
    expect(not(all()).value).toBe(false);
    expect(choose(less(1, 2), column('a'), column('b')).text).toBe('a');
  });

  it('stand in the selection above those that they are made of, each name once', () => {
    const names = createNames('x_');
    const a = names.define('a', plus(column('raw'), 1));
    const b = names.decide('b', less(a, 2));
    expect(names.define('c', literal(3)).text).toBe('3E+0');
    expect(b.text).toBe('x_b > 0E+0');
    expect(names.levels()).toEqual([['(raw + 1E+0) AS x_a'], ['CASE WHEN x_a < 2E+0 THEN 1E+0 ELSE 0E+0 END AS x_b']]);
    expect(() => names.define('a', column('raw'))).toThrow('x_a');
  });
});

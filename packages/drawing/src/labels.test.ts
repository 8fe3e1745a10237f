import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { wordingOf } from './labels.ts';

const { number, bounds, say } = wordingOf(undefined);

describe('wording', () => {
  test('numbers are rounded half away from zero, with a true minus sign and no negative zero', () => {
    expect([number(1.25, 1), number(-1.25, 1), number(-0.04, 1), number(2, 2)]).toEqual([
      '1.3',
      '\u22121.3',
      '0.0',
      '2.00',
    ]);
    expect(wordingOf({ 'decimal-mark': ',' }).number(-1.5, 1)).toBe('\u22121,5');
  });

  test('bounds are rounded outward, but not past a decimal they already meet', () => {
    expect(bounds({ lower: 0.4999, nominal: 1, upper: 1.2001 }, 1)).toEqual({ lower: '0.4', upper: '1.3' });
    expect(bounds({ lower: 0.1 + 0.2, nominal: 1, upper: 1.1 * 3 }, 1)).toEqual({ lower: '0.3', upper: '3.3' });
    expect(bounds({ lower: -0.25, nominal: 0, upper: -0.01 }, 1)).toEqual({ lower: '\u22120.3', upper: '0.0' });
  });

  test('words never claim less width than the limits have', () => {
    const finite = fc.double({ min: -100, max: 100, noNaN: true });
    fc.assert(
      fc.property(finite, finite, (a, b) => {
        const [lower, upper] = [Math.min(a, b), Math.max(a, b)];
        const said = bounds({ lower, nominal: lower, upper }, 1);
        const read = (text: string): number => Number(text.replace('\u2212', '-'));
        // The slack is a millionth of the last digit.
        expect(read(said.lower)).toBeLessThanOrEqual(lower + 1.01e-7);
        expect(read(said.upper)).toBeGreaterThanOrEqual(upper - 1.01e-7);
      }),
    );
  });

  test('unknown placeholders stay visible', () => {
    expect(wordingOf({ engaged: '{value} {odd}' }).say('engaged', { value: '3' })).toBe('3 {odd}');
    expect(say('engaged', { value: '3 mm' })).toBe('engaged 3 mm');
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dejaVuWidth } from '../test/advance-widths.ts';
import { messages } from './messages/en.ts';
import { textWidth, wrapText } from './text-layout.ts';

describe('text layout', () => {
  test.each(Object.values(messages))('the estimate covers, and hardly exceeds, the widest face: %s', (text) => {
    const plain = text.replaceAll(/[^ -~]/g, '');
    for (const bold of [false, true]) {
      expect(textWidth(plain, 1, bold)).toBeGreaterThan(0.98 * dejaVuWidth(plain, bold));
      expect(textWidth(plain, 1, bold)).toBeLessThan(1.2 * dejaVuWidth(plain, bold) + 0.3);
    }
  });

  test('lines break at spaces, cut long words and hold at no-break spaces', () => {
    expect(wrapText('one two three', 10, textWidth('one two', 10))).toEqual(['one two', 'three']);
    expect(wrapText('aaaa', 10, textWidth('aa', 10))).toEqual(['aa', 'aa']);
    expect(wrapText('x 1\u00a0mm', 10, textWidth('1\u00a0m', 10))).toEqual(['x', '1\u00a0m', 'm']);
    expect(wrapText('', 10, 100)).toEqual([]);
  });

  test('no line is wider than asked, and no character is lost', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.integer({ min: 20, max: 300 }), (text, width) => {
        const lines = wrapText(text, 12, width);
        for (const line of lines) expect(textWidth(line, 12)).toBeLessThanOrEqual(width);
        expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(/[ \t\r\n]/g, ''));
      }),
    );
  });
});

import { describe, expect, test } from 'vitest';
import { readXml } from '../test/read-xml.ts';
import { element, escapeXml, px } from './svg.ts';

describe('svg text', () => {
  test('the five characters of XML are escaped', () => {
    expect(escapeXml(`<a href="x">&'</a>`)).toBe('&lt;a href=&quot;x&quot;&gt;&amp;&#39;&lt;/a&gt;');
  });

  // XML 1.0 (fifth edition), production 2: Char ::= #x9 | #xA | #xD | [#x20-#xD7FF] | [#xE000-#xFFFD] | [#x10000-#x10FFFF]
  test('what XML cannot hold becomes the replacement character', () => {
    expect(escapeXml('a\u0000b\u001fc\ufffed\ud800e')).toBe('a\ufffdb\ufffdc\ufffdd\ufffde');
    expect(escapeXml('\t\n\r\ud83d\ude00')).toBe('\t\n\r\ud83d\ude00');
  });

  test('coordinates keep thousandths and no exponent', () => {
    expect([px(1.23456), px(-0.0001), px(1e-9), px(2)]).toEqual(['1.235', '0', '0', '2']);
  });

  test('attributes come back as written', () => {
    const { attributes, text } = readXml(element('a', { b: 1 / 3, c: '"<&', d: undefined }, escapeXml('x < y')));
    expect(attributes).toEqual({ b: '0.333', c: '"<&' });
    expect(text).toBe('x < y');
  });

  test.each(['<a>', '<a></b>', '<a b=c/>', '<a b="1" b="2"/>', '<a>&x;</a>', '<a/><b/>', '<a b="<"/>', '<a>&</a>'])(
    'the reader of the tests refuses %s',
    (broken) => {
      expect(() => readXml(broken)).toThrow();
    },
  );
});

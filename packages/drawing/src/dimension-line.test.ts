import { describe, expect, test } from 'vitest';
import { allElements, readXml } from '../test/read-xml.ts';
import { dimensionLine } from './dimension-line.ts';

const draw = (x1: number, x2: number) =>
  allElements(readXml(`<g>${dimensionLine({ x1, x2, y: 10, lineClass: 'l', headClass: 'h', mark: 'gap' })}</g>`));
const tips = (elements: ReturnType<typeof draw>): string[] =>
  elements.flatMap(({ attributes }) =>
    attributes.class === 'h' ? [/^M([\d.]+ [\d.]+)/.exec(attributes.d ?? '')?.[1] ?? ''] : [],
  );

describe('dimensionLine', () => {
  test('ends where it is told to, whichever end comes first', () => {
    for (const [x1, x2] of [
      [10, 60],
      [60, 10],
    ] as const) {
      const marked = draw(x1, x2).find(({ attributes }) => attributes['data-mark'] === 'gap');
      expect(marked?.attributes).toMatchObject({ x1: '10', x2: '60', y1: '10', y2: '10' });
      expect(tips(draw(x1, x2))).toEqual(['10 10', '60 10']);
    }
  });

  // ISO 129-1: where space is short the arrowheads go outside the ends and point inward.
  test('a short one has its heads outside, still with their tips on the ends', () => {
    const elements = draw(10, 16);
    expect(tips(elements)).toEqual(['10 10', '16 10']);
    const [left, right] = elements.filter(({ attributes }) => attributes.class === 'h');
    expect(left?.attributes.d).toMatch(/L3 /);
    expect(right?.attributes.d).toMatch(/L23 /);
  });
});

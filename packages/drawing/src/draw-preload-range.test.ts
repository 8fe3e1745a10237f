import { isDomainError } from '@spindlewright/quantity';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPicture } from '../test/picture-reader.ts';
import { describePreloadRange, type PreloadRangePicture } from './describe-preload-range.ts';
import { drawPreloadRange } from './draw-preload-range.ts';

// Invented forces.
const picture: PreloadRangePicture = {
  preloadN: { lower: 9840, nominal: 14200, upper: 21030 },
  marks: [
    { label: 'stripping', forceN: 34000 },
    { label: 'assembly limit', forceN: 17900 },
    { label: 'least press', forceN: 8000 },
  ],
};

const force = fc.double({ min: 0, max: 1e9, noNaN: true });
const anyPicture: fc.Arbitrary<PreloadRangePicture> = fc.record(
  {
    preloadN: fc.tuple(force, force, force).map((three) => {
      const [lower = 0, nominal = 0, upper = 0] = three.sort((a, b) => a - b);
      return { lower, nominal, upper };
    }),
    marks: fc.array(fc.record({ label: fc.string(), forceN: force }), { maxLength: 12 }),
    widthPx: fc.double({ min: 320, max: 2000, noNaN: true }),
  },
  { requiredKeys: ['preloadN'] },
);

describe('drawPreloadRange', () => {
  test('range, nominal value and marks lie to scale from 0', () => {
    const { elements } = readPicture(drawPreloadRange(picture));
    const at = (mark: string, key: string): number =>
      Number(elements.find(({ attributes }) => attributes['data-mark'] === mark)?.attributes[key]);
    const k = Number(elements.find(({ attributes }) => attributes['data-px-per-n'])?.attributes['data-px-per-n']);
    const zero = at('range', 'x') - 9840 * k;
    expect(Math.abs(at('range', 'width') - (21030 - 9840) * k)).toBeLessThan(0.01);
    for (const [mark, forceN] of [
      ['nominal', 14200],
      ['mark-0', 34000],
      ['mark-1', 17900],
      ['mark-2', 8000],
    ] as const) {
      expect(Math.abs(at(mark, 'x1') - zero - forceN * k), mark).toBeLessThan(0.01);
    }
    expect(zero).toBeCloseTo(16, 2);
  });

  test('words say on which side of the range each mark lies', () => {
    expect(describePreloadRange(picture)).toBe(
      'Preload 14.2 kN, limits 9.8 to 21.1. stripping 34.0 kN: above the range. ' +
        'assembly limit 17.9 kN: inside the range. least press 8.0 kN: below the range.',
    );
    expect(describePreloadRange({ preloadN: 800 })).toBe('Preload 800 N, no limits given.');
    const { root } = readPicture(drawPreloadRange(picture));
    expect(root.children[1]?.text).toBe(describePreloadRange(picture));
  });

  test('a mark on a limit is inside, one past it is not', () => {
    const at = (forceN: number): string => describePreloadRange({ ...picture, marks: [{ label: 'm', forceN }] });
    expect(at(21030)).toContain('inside');
    expect(at(9840)).toContain('inside');
    expect(at(21030.1)).toContain('above');
    expect(at(9839.9)).toContain('below');
  });

  test('numbers on the marks run from left to right and are explained in that order', () => {
    const { words } = readPicture(drawPreloadRange(picture));
    expect(words.indexOf('least press')).toBeLessThan(words.indexOf('assembly limit'));
    expect(words.indexOf('assembly limit')).toBeLessThan(words.indexOf('stripping'));
  });

  test('any accepted input gives a well-formed picture of finite numbers inside its sheet', () => {
    fc.assert(
      fc.property(anyPicture, (input) => {
        const { root, elements } = readPicture(drawPreloadRange({ ...input, idPrefix: 'p' }));
        for (const { name, attributes } of elements) {
          if (name === 'text' || name === 'desc' || name === 'title') continue;
          for (const [key, value] of Object.entries(attributes)) {
            expect(value).not.toMatch(/NaN|Infinity|undefined/);
            if (/^(x|x1|x2|cx)$/.test(key)) {
              expect(Number(value)).toBeGreaterThanOrEqual(0);
              expect(Number(value)).toBeLessThanOrEqual(Number(root.attributes.width));
            }
          }
        }
      }),
    );
  });

  test.each([
    [{ preloadN: -1 }, 'preloadN'],
    [{ preloadN: 1, marks: [{ label: 'x' }] }, 'marks[0].forceN'],
    [{ preloadN: 1, mark: [] }, 'mark'],
  ])('refuses a wrong input, %#', (input, path) => {
    let caught: unknown;
    try {
      drawPreloadRange(input as PreloadRangePicture);
    } catch (error) {
      caught = error;
    }
    expect(isDomainError(caught) && caught.path).toBe(path);
  });
});

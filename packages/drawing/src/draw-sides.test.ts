import { isDomainError } from '@spindlewright/quantity';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPicture } from '../test/picture-reader.ts';
import { describeSides, type SidesPicture } from './describe-sides.ts';
import { drawSides } from './draw-sides.ts';
import { sidesPictureSchema } from './schema.ts';

const picture: SidesPicture = {
  drive: {
    words: 'the joint is sound',
    state: 'good',
    endGapMm: 2,
    shoulderGapMm: { lower: 2.8, nominal: 3, upper: 3.2 },
  },
  nonDrive: { words: 'the hole is deformed', state: 'bad', endGapMm: -0.5, shoulderGapMm: null, playAngleDeg: 1.4 },
};

const read = (input: SidesPicture) => {
  const { elements, root } = readPicture(drawSides(input));
  const of = (mark: string) => elements.find(({ attributes }) => attributes['data-mark'] === mark)?.attributes ?? {};
  const scale = Number(elements.find(({ attributes }) => attributes['data-px-per-mm'])?.attributes['data-px-per-mm']);
  return { of, scale, root };
};
const lengthOf = ({ x1, x2 }: Record<string, string>): number => Math.abs(Number(x2) - Number(x1));

describe('drawSides', () => {
  test('clearances of both ends are drawn to one scale', () => {
    const { of, scale } = read(picture);
    expect(lengthOf(of('drive-end-gap'))).toBeCloseTo(2 * scale, 2);
    expect(lengthOf(of('drive-shoulder-gap'))).toBeCloseTo(3 * scale, 2);
  });

  test('a spindle end past its seat stands out of the arm, the non-drive end to the left', () => {
    const { of, scale } = read(picture);
    expect(Number(of('non-drive-arm').x) - Number(of('non-drive-spindle').x)).toBeCloseTo(0.5 * scale, 2);
    expect(Number(of('non-drive-arm').x)).toBeLessThan(Number(of('drive-arm').x));
  });

  test('what was not measured is dashed and said to be so', () => {
    expect(read(picture).of('non-drive-shoulder-gap').class).toBe('guess');
    expect(describeSides(picture)).toContain('shoulder gap not measured');
  });

  test('good and bad differ in shape, not only in colour', () => {
    const { of } = read(picture);
    expect(of('state-good').d).toMatch(/l4 5/);
    expect(of('state-bad').d).toMatch(/l10 10/);
  });

  test('its description is the text alternative', () => {
    const { root } = read(picture);
    expect(root.children[1]?.text).toBe(describeSides(picture));
    expect(describeSides(picture)).toBe(
      'Non-drive side: the hole is deformed. End gap −0.50 mm, shoulder gap not measured, turns by 1.4° on the spindle. ' +
        'Drive side: the joint is sound. End gap 2.00 mm, shoulder gap 3.0 mm (limits 2.8 to 3.2).',
    );
  });

  test('any accepted input gives a well-formed picture inside its width', () => {
    const gap = fc.option(fc.double({ min: -100, max: 100, noNaN: true }));
    const side = fc.record({
      words: fc.string({ unit: 'binary', minLength: 1 }),
      state: fc.constantFrom('good' as const, 'bad' as const, 'open' as const),
      endGapMm: gap,
      shoulderGapMm: gap,
    });
    fc.assert(
      fc.property(side, side, fc.integer({ min: 320, max: 900 }), (drive, nonDrive, widthPx) => {
        const { of } = read({ drive, nonDrive, widthPx });
        expect(Number(of('non-drive-arm').x)).toBeGreaterThanOrEqual(0);
        expect(Number(of('drive-arm').x) + Number(of('drive-arm').width)).toBeLessThanOrEqual(widthPx);
      }),
    );
  });

  test.each([
    [{ drive: picture.drive }, 'nonDrive'],
    [{ ...picture, drive: { ...picture.drive, state: 'fine' } }, 'drive.state'],
    [{ ...picture, drive: { ...picture.drive, endGapMm: 101 } }, 'drive.endGapMm'],
  ])('refuses a wrong input, and its schema does too, %#', (input, path) => {
    let caught: unknown;
    try {
      drawSides(input as SidesPicture);
    } catch (error) {
      caught = error;
    }
    expect(isDomainError(caught) && caught.path).toBe(path);
    expect(sidesPictureSchema.safeParse(input).success).toBe(false);
  });

  test('its schema takes what is drawn', () => {
    expect(sidesPictureSchema.parse(picture)).toEqual(picture);
  });
});

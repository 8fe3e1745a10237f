import { isDomainError } from '@spindlewright/quantity';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPicture } from '../test/picture-reader.ts';
import { describeSeatDistribution, type SeatDistributionPicture } from './describe-seat-distribution.ts';
import { drawSeatDistribution } from './draw-seat-distribution.ts';
import { seatDistributionPictureSchema } from './schema.ts';

const picture: SeatDistributionPicture = {
  endGap: { samplesMm: [-0.4, 0.2, 0.8, 1.1, 1.4], limitsMm: { lower: -0.7, nominal: 0.8, upper: 1.9 } },
  shoulderGap: { samplesMm: [1.5, 2, 2.5] },
};

const marks = (input: SeatDistributionPicture) => {
  const { elements } = readPicture(drawSeatDistribution(input));
  const scale = Number(elements.find(({ attributes }) => attributes['data-px-per-mm'])?.attributes['data-px-per-mm']);
  const line = (mark: string) => elements.find(({ attributes }) => attributes['data-mark'] === mark)?.attributes ?? {};
  const bars = elements.filter(({ attributes }) => attributes['data-count'] !== undefined);
  return { scale, line, bars };
};

describe('drawSeatDistribution', () => {
  test('is a well-formed document whose description is the text alternative', () => {
    const { root } = readPicture(drawSeatDistribution(picture));
    const [title, desc] = root.children;
    expect(root.attributes).toMatchObject({ role: 'img', lang: 'en' });
    expect(title?.text).toBe('How the pressed seat may fall out');
    expect(desc?.text).toBe(describeSeatDistribution(picture));
  });

  // Counted by hand: one of five samples lies below 0, two below 0.5 mm, none of three.
  test('says the middle, where most lie, and how often the clearance is gone or thin', () => {
    expect(describeSeatDistribution(picture)).toBe(
      'End gap: middle 0.8 mm, nine of ten from −0.4 to 1.4 mm; gone in 20 %, thinner than 0.5 mm in 40 %. ' +
        'Worst case −0.7 to 1.9 mm. ' +
        'Shoulder gap: middle 2.0 mm, nine of ten from 1.5 to 2.5 mm; gone in none of 3 samples, thinner than 0.5 mm in none of 3 samples.',
    );
  });

  test('room and limits lie to scale from the place where nothing is left', () => {
    const { scale, line } = marks(picture);
    const nothing = Number(line('end-gap-nothing').x1);
    expect(Number(line('end-gap-room').x1) - nothing).toBeCloseTo(0.5 * scale, 2);
    expect(Number(line('end-gap-limits').x1) - nothing).toBeCloseTo(-0.7 * scale, 2);
    expect(Number(line('end-gap-limits').x2) - nothing).toBeCloseTo(1.9 * scale, 2);
    expect(line('shoulder-gap-limits')).toEqual({});
  });

  test('bars below 0 are hatched and of another class, and none straddles 0', () => {
    const { line, bars } = marks({ endGap: { samplesMm: [-0.3, -0.1, 0, 0.1, 2] } });
    const nothing = Number(line('end-gap-nothing').x1);
    for (const { attributes } of bars) {
      const gone = Number(attributes.x) + Number(attributes.width) <= nothing + 0.01;
      expect(attributes.class).toBe(gone ? 'gone' : 'share');
      if (!gone) expect(Number(attributes.x)).toBeGreaterThanOrEqual(nothing - 0.01);
    }
    expect(bars.reduce((sum, { attributes }) => sum + Number(attributes['data-count']), 0)).toBe(5);
  });

  test('any accepted samples give a well-formed picture whose bars hold every sample', () => {
    const samplesMm = fc.array(fc.double({ min: -20_000, max: 20_000, noNaN: true }), { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(samplesMm, (values) => {
        const { bars } = marks({ shoulderGap: { samplesMm: values } });
        expect(bars.reduce((sum, { attributes }) => sum + Number(attributes['data-count']), 0)).toBe(values.length);
      }),
    );
  });

  test.each([
    [{}, 'endGap'],
    [{ endGap: { samplesMm: [] } }, 'endGap.samplesMm'],
    [{ endGap: { samplesMm: [1], limitsMm: { lower: 2, nominal: 1, upper: 3 } } }, 'endGap.limitsMm'],
    [{ shoulderGap: { samplesMm: [20_001] } }, 'shoulderGap.samplesMm[0]'],
    [{ ...picture, room: 1 }, 'room'],
  ])('refuses a wrong input, and its schema does too, %#', (input, path) => {
    let caught: unknown;
    try {
      drawSeatDistribution(input as SeatDistributionPicture);
    } catch (error) {
      caught = error;
    }
    expect(isDomainError(caught) && caught.path).toBe(path);
    expect(seatDistributionPictureSchema.safeParse(input).success).toBe(false);
  });

  test('its schema takes what is drawn', () => {
    expect(seatDistributionPictureSchema.parse(picture)).toEqual(picture);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { samples } from '../test/sample-seats.ts';
import { seatPicture } from '../test/seat-arbitrary.ts';
import { drawSeat } from './draw-seat.ts';
import { seatPictureSchema } from './schema.ts';

describe('seatPictureSchema', () => {
  test('accepts what drawSeat accepts', () => {
    for (const picture of Object.values(samples)) expect(seatPictureSchema.parse(picture)).toEqual(picture);
    fc.assert(fc.property(seatPicture, (picture) => seatPictureSchema.safeParse(picture).success));
  });

  test.each([
    { ...samples.good, verdit: 'seats' },
    { ...samples.good, labels: { 'part-amr': 'x' } },
    { ...samples.good, pressed: { endGapMm: { lower: 2, nominal: 1, upper: 3 } } },
    { ...samples.good, pressed: { endGapMm: 101 } },
    { ...samples.good, idPrefix: '1' },
    { ...samples.good, widthPx: 319 },
    { ...samples.good, spindle: { ...samples.good.spindle, faceAngleDeg: 0 } },
    { pressed: {} },
  ])('refuses what drawSeat refuses, %#', (wrong) => {
    expect(seatPictureSchema.safeParse(wrong).success).toBe(false);
    expect(() => drawSeat(wrong as never)).toThrow();
  });
});

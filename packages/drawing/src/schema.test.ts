import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { samples } from '../test/sample-seats.ts';
import { seatPicture } from '../test/seat-arbitrary.ts';
import { drawBorePlay } from './draw-bore-play.ts';
import { drawDiagnosis } from './draw-diagnosis.ts';
import { drawPreloadRange } from './draw-preload-range.ts';
import { drawSeat } from './draw-seat.ts';
import {
  borePlayPictureSchema,
  diagnosisPictureSchema,
  preloadRangePictureSchema,
  seatPictureSchema,
} from './schema.ts';

describe('seatPictureSchema', () => {
  test('accepts what drawSeat accepts', () => {
    for (const picture of Object.values(samples)) expect(seatPictureSchema.parse(picture)).toEqual(picture);
    fc.assert(fc.property(seatPicture, (picture) => seatPictureSchema.safeParse(picture).success));
  });

  test.each([
    { ...samples.good, verdit: 'seats' },
    { ...samples.good, labels: { 'part-amr': 'x' } },
    { ...samples.good, pressed: { endGapMm: { lower: 2, nominal: 1, upper: 3 } } },
    { ...samples.good, pressed: { endGapMm: 20001 } },
    { ...samples.good, idPrefix: '1' },
    { ...samples.good, widthPx: 319 },
    { ...samples.good, spindle: { ...samples.good.spindle, faceAngleDeg: 0 } },
    { pressed: {} },
  ])('refuses what drawSeat refuses, %#', (wrong) => {
    expect(seatPictureSchema.safeParse(wrong).success).toBe(false);
    expect(() => drawSeat(wrong as never)).toThrow();
  });
});

describe('schemas of the other pictures', () => {
  test.each([
    [preloadRangePictureSchema, drawPreloadRange, { preloadN: 1, marks: [{ label: 'x', forceN: 2 }], title: 't' }],
    [diagnosisPictureSchema, drawDiagnosis, { conditions: [{ label: 'x', probability: 0.5 }], widthPx: 400 }],
    [borePlayPictureSchema, drawBorePlay, { halfWidthMm: 6, flatWidthMm: 10, clearanceMm: 0.1, rotationDeg: null }],
  ])('accept what is drawn, %#', (schema, draw, picture) => {
    expect(schema.parse(picture)).toEqual(picture);
    expect(() => draw(picture as never)).not.toThrow();
  });

  test.each([
    [preloadRangePictureSchema, drawPreloadRange, { preloadN: -1 }],
    [diagnosisPictureSchema, drawDiagnosis, { conditions: [] }],
    [borePlayPictureSchema, drawBorePlay, { halfWidthMm: 6, flatWidthMm: 13, clearanceMm: 0.1, rotationDeg: 1 }],
    [borePlayPictureSchema, drawBorePlay, { halfWidthMm: 6, flatWidthMm: 10, clearanceMm: 0.1 }],
  ])('refuse what is not drawn, %#', (schema, draw, wrong) => {
    expect(schema.safeParse(wrong).success).toBe(false);
    expect(() => draw(wrong as never)).toThrow();
  });
});

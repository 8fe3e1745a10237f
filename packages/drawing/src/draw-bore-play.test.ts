import { isDomainError } from '@spindlewright/quantity';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPicture } from '../test/picture-reader.ts';
import { borePlayScene } from './bore-play-scene.ts';
import { type BorePlayPicture, describeBorePlay } from './describe-bore-play.ts';
import { drawBorePlay } from './draw-bore-play.ts';

const picture: BorePlayPicture = { halfWidthMm: 6.5, flatWidthMm: 10, clearanceMm: 0.1, rotationDeg: 1.18 };

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyPicture = fc
  .record({
    halfWidthMm: double(0.01, 30),
    part: double(0.001, 1),
    clearanceMm: double(0, 10),
    rotationDeg: double(0, 90),
  })
  .map(({ part, ...rest }): BorePlayPicture => ({ ...rest, flatWidthMm: part * 2 * rest.halfWidthMm }));

/** Distance of a point outside a convex outline, px; negative or 0 inside. */
function outside([x, y]: [number, number], outline: [number, number][]): number {
  const sides = outline.map(([x2, y2], index) => {
    const [x1, y1] = outline.at(index - 1) ?? [x2, y2];
    return ((x2 - x1) * (y - y1) - (y2 - y1) * (x - x1)) / Math.hypot(x2 - x1, y2 - y1);
  });
  const area = outline.reduce((sum, [x2, y2], index) => {
    const [x1, y1] = outline.at(index - 1) ?? [x2, y2];
    return sum + x1 * y2 - x2 * y1;
  }, 0);
  return Math.max(...sides.map((side) => (area > 0 ? -side : side)));
}

describe('drawBorePlay', () => {
  test('square and bore lie to scale, the clearance as many times as the picture says', () => {
    const read = readPicture(drawBorePlay(picture));
    const scale = read.scale('square');
    const factor = Number(
      read.elements.find(({ attributes }) => attributes['data-view'])?.attributes['data-clearance-factor'],
    );
    const [square = []] = read.outlines('square', 'square');
    const [bore = []] = read.outlines('square', 'bore');
    const width = Math.max(...square.map(([x]) => x)) - Math.min(...square.map(([x]) => x));
    expect(Math.abs(width - 13 * scale)).toBeLessThan(0.01);
    const [[x1, y1] = [0, 0], [x2, y2] = [0, 0]] = bore;
    expect(Math.abs(Math.hypot(x2 - x1, y2 - y1) - 2 * (6.5 + factor * 0.1) * scale)).toBeLessThan(0.01);
    expect(factor).toBeGreaterThan(1);
    expect(read.words.replaceAll('\n', ' ')).toContain(`Clearance drawn ${factor} times as wide as it is`);
  });

  // The relation of the contract, h cos phi + (b/2) sin phi = h + c, put back; and its first order, 2c/b.
  test('the rotation drawn closes the clearance drawn', () => {
    const scene = borePlayScene(picture);
    const phi = scene.drawnRotationRad ?? Number.NaN;
    expect(6.5 * Math.cos(phi) + 5 * Math.sin(phi)).toBeCloseTo(6.5 + scene.drawnClearanceMm, 10);
    const small = borePlayScene({ ...picture, clearanceMm: 1e-5 });
    expect(((small.rotationDeg ?? 0) * Math.PI) / 180 / ((2 * 1e-5) / 10)).toBeCloseTo(1, 4);
  });

  test('the square never leaves the bore, and touches it at a stop', () => {
    fc.assert(
      fc.property(anyPicture, (input) => {
        const read = readPicture(drawBorePlay(input));
        const [square = []] = read.outlines('square', 'square');
        const [bore = []] = read.outlines('square', 'bore');
        const farthest = Math.max(...square.map((point) => outside(point, bore)));
        expect(farthest).toBeLessThan(0.01);
        if (borePlayScene(input).drawnRotationRad !== null) expect(farthest).toBeGreaterThan(-0.01);
      }),
    );
  });

  test('a square that turns through is said to, and is drawn without stops', () => {
    const free = { ...picture, clearanceMm: 2.5, rotationDeg: null };
    expect(describeBorePlay(free)).toContain('turns through');
    expect(describeBorePlay(free)).not.toContain('does not follow');
    const { elements } = readPicture(drawBorePlay(free));
    expect(elements.filter(({ attributes }) => attributes.class === 'touch')).toEqual([]);
  });

  test('play is never shown without saying that it is not to be ridden', () => {
    expect(describeBorePlay(picture)).toContain('not to be ridden');
    expect(describeBorePlay({ ...picture, clearanceMm: 2.5, rotationDeg: null })).toContain('not to be ridden');
    expect(describeBorePlay({ ...picture, clearanceMm: 0, rotationDeg: 0 })).not.toContain('not to be ridden');
    expect(readPicture(drawBorePlay(picture)).words.replaceAll('\n', ' ')).toContain('not to be ridden');
  });

  test('a rotation that does not follow from the sizes is pointed out', () => {
    expect(describeBorePlay({ ...picture, rotationDeg: 3 })).toContain('does not follow');
    expect(describeBorePlay({ ...picture, rotationDeg: null })).toContain('does not follow');
    expect(describeBorePlay(picture)).not.toContain('does not follow');
  });

  test.each([
    [{ ...picture, flatWidthMm: 13.1 }, 'flatWidthMm'],
    [{ ...picture, clearanceMm: -0.1 }, 'clearanceMm'],
    [{ ...picture, rotation: 1 }, 'rotation'],
    [{ halfWidthMm: 6, flatWidthMm: 10, clearanceMm: 0.1 }, 'rotationDeg'],
  ])('refuses a wrong input, %#', (input, path) => {
    let caught: unknown;
    try {
      drawBorePlay(input as BorePlayPicture);
    } catch (error) {
      caught = error;
    }
    expect(isDomainError(caught) && caught.path).toBe(path);
  });
});

import { describe, expect, test } from 'vitest';
import { hatchLines } from './hatch.ts';

const segments = (d: string): number[][] =>
  d
    .split('M')
    .filter((part) => part !== '')
    .map((part) => part.split(/[L ]/).map(Number));
const length = ([x1 = 0, y1 = 0, x2 = 0, y2 = 0]: number[]): number => Math.hypot(x2 - x1, y2 - y1);
const square = [
  [0.5, 0.5],
  [100.5, 0.5],
  [100.5, 100.5],
  [0.5, 100.5],
] as const;

describe('hatchLines', () => {
  // Length of hatching is area / spacing, however the outline lies (Cavalieri); the raster leaves at most a line over.
  test.each([0, 45, -45, 30])('covers an area evenly at %i degrees', (angleDeg) => {
    const lines = segments(hatchLines({ outline: square, angleDeg, spacingPx: 5, window: undefined }));
    const total = lines.reduce((sum, line) => sum + length(line), 0);
    expect(Math.abs(total - (100 * 100) / 5)).toBeLessThan(101);
  });

  // Each of the four coordinates is rounded to a tenth.
  test('lines run at the angle asked for', () => {
    const lines = segments(hatchLines({ outline: square, angleDeg: 45, spacingPx: 10, window: undefined }));
    for (const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] of lines) expect(Math.abs(y2 - y1 - (x2 - x1))).toBeLessThan(0.21);
  });

  test('a hole in the way stays blank', () => {
    const notched = [
      [0, 0],
      [10, 0],
      [10, 10],
      [7, 10],
      [7, 2],
      [3, 2],
      [3, 10],
      [0, 10],
    ] as const;
    const lines = segments(hatchLines({ outline: notched, angleDeg: 0, spacingPx: 5, window: undefined }));
    expect(lines).toEqual([
      [0, 0, 10, 0],
      [0, 5, 3, 5],
      [7, 5, 10, 5],
    ]);
  });

  test('nothing is written outside the window', () => {
    const window = { x: 20, y: 30, width: 40, height: 10 };
    const lines = segments(hatchLines({ outline: square, angleDeg: -45, spacingPx: 5, window }));
    expect(lines.length).toBeGreaterThan(5);
    for (const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] of lines) {
      expect(Math.min(x1, x2) >= 20 && Math.max(x1, x2) <= 60).toBe(true);
      expect(Math.min(y1, y2) >= 30 && Math.max(y1, y2) <= 40).toBe(true);
    }
  });
});

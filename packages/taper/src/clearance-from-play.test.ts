import { describe, expect, it } from 'vitest';
import { clearanceFromPlay } from './clearance-from-play.ts';

const square = { halfWidthMm: 6.5, flatWidthMm: 10, crankLengthMm: 170 };

describe('clearanceFromPlay', () => {
  it('splits the play between the two stops', () => {
    const play = clearanceFromPlay({ ...square, playAtPedalMm: 3.4 });
    expect(play.rotationDeg).toBeCloseTo((0.01 * 180) / Math.PI, 12);
    // h (cos f - 1) + (b/2) sin f at f = 0.01
    expect(play.clearanceMm).toBeCloseTo(6.5 * (Math.cos(0.01) - 1) + 5 * Math.sin(0.01), 12);
    expect(play.findings).toMatchObject([{ code: 'bore-is-open', severity: 'stop' }]);
  });

  it('is zero without play', () => {
    expect(clearanceFromPlay({ ...square, playAtPedalMm: 0 })).toEqual({
      clearanceMm: 0,
      rotationDeg: 0,
      findings: [],
    });
  });

  it('is null from the angle of the corner on', () => {
    const largest = 2 * 170 * Math.atan2(5, 6.5);
    expect(clearanceFromPlay({ ...square, playAtPedalMm: largest * 0.999999 }).clearanceMm).not.toBeNull();
    const through = clearanceFromPlay({ ...square, playAtPedalMm: largest * 1.000001 });
    expect(through.clearanceMm).toBeNull();
    expect(through.findings).toMatchObject([{ code: 'clearance-unbounded', severity: 'stop' }]);
  });

  it('refuses flats wider than the square', () => {
    expect(() => clearanceFromPlay({ ...square, flatWidthMm: 14, playAtPedalMm: 1 })).toThrow('at most 13 mm');
  });
});

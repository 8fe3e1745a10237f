import { describe, expect, it } from 'vitest';
import { playFromClearance } from './play-from-clearance.ts';

const square = { halfWidthMm: 6.5, flatWidthMm: 10, crankLengthMm: 170 };
const largest = Math.hypot(6.5, 5) - 6.5;

describe('playFromClearance', () => {
  it('is about 2 c/b for small clearances', () => {
    const { rotationDeg, playAtPedalMm } = playFromClearance({ ...square, clearanceMm: 1e-6 });
    expect(((rotationDeg ?? 0) * Math.PI) / 180 / 2e-7).toBeCloseTo(1, 6);
    expect(playAtPedalMm).toBeCloseTo(2 * 170 * 2e-7, 10);
  });

  it('turns a sharp square by 45 degrees when the bore is as wide as its diagonal', () => {
    const sharp = { halfWidthMm: 6.5, flatWidthMm: 13, crankLengthMm: 170 };
    const clearanceMm = 6.5 * (Math.SQRT2 - 1) - 1e-12;
    expect(playFromClearance({ ...sharp, clearanceMm }).rotationDeg).toBeCloseTo(45, 4);
  });

  it('is null with a stop from where the square turns through', () => {
    expect(playFromClearance({ ...square, clearanceMm: largest * 0.999999 }).rotationDeg).not.toBeNull();
    const through = playFromClearance({ ...square, clearanceMm: largest * 1.000001 });
    expect(through).toMatchObject({ rotationDeg: null, playAtPedalMm: null });
    expect(through.findings.map(({ code }) => code)).toEqual(['bore-is-open', 'rotation-unbounded']);
  });

  it('gives the advance that takes the clearance up when it knows the angle', () => {
    const play = playFromClearance({ ...square, clearanceMm: 0.05, faceAngleDeg: 2 });
    expect(play.takeUpAdvanceMm).toBeCloseTo(0.05 / 0.0349207695, 6);
    expect('takeUpAdvanceMm' in playFromClearance({ ...square, clearanceMm: 0.05 })).toBe(false);
  });

  it('finds nothing wrong without clearance', () => {
    expect(playFromClearance({ ...square, clearanceMm: 0 })).toEqual({
      rotationDeg: 0,
      playAtPedalMm: 0,
      findings: [],
    });
  });

  it('refuses flats wider than the square, and a negative clearance', () => {
    expect(() => playFromClearance({ ...square, flatWidthMm: 13.01, clearanceMm: 0 })).toThrow('flatWidthMm');
    expect(playFromClearance({ ...square, flatWidthMm: 13, clearanceMm: 0 }).rotationDeg).toBe(0);
    expect(() => playFromClearance({ ...square, clearanceMm: -0.01 })).toThrow('clearanceMm');
  });
});

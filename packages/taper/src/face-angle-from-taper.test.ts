import { describe, expect, it } from 'vitest';
import { faceAngleFromTaper } from './face-angle-from-taper.ts';

describe('faceAngleFromTaper', () => {
  it('halves the growth before it takes the angle', () => {
    // 0.06984 mm of across flats per mm is 2 deg a face.
    expect(faceAngleFromTaper({ taperRatio: 0.069841539 }).faceAngleDeg).toBeCloseTo(2, 6);
    expect(faceAngleFromTaper({ taperRatio: 1 }).faceAngleDeg).toBeCloseTo(26.565051, 6);
  });

  it('refuses a ratio of zero', () => {
    expect(() => faceAngleFromTaper({ taperRatio: 0 })).toThrow('taperRatio');
  });
});

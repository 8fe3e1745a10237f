import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { inchSize, unifiedThread } from './unified-thread.ts';

describe('unifiedThread', () => {
  it('has the constants of ASME B1.1, not those of the metric profile', () => {
    // Footnote of table 8-2 in Shigley, 9th edition: 1.299038, 0.649519; mean 0.974279.
    const thread = unifiedThread({ nominalDiameterIn: 1, threadsPerInch: 10 });
    const offset = (diameterMm: number): number => (25.4 - diameterMm) / 2.54;
    expect(offset(thread.minorDiameterMm)).toBeCloseTo(1.299038, 6);
    expect(offset(thread.pitchDiameterMm)).toBeCloseTo(0.649519, 6);
    expect(offset(thread.stressDiameterMm)).toBeCloseTo(0.974279, 6);
    expect(offset(thread.internalMinorDiameterMm)).toBeCloseTo(1.082532, 6);
    expect(thread.pitchMm).toBeCloseTo(2.54, 12);
  });

  it('writes sizes as the trade does', () => {
    expect([0.19, 0.06, 0.5625, 0.5, 1, 1.375, 1.37, 1.015625].map(inchSize)).toEqual([
      '#10',
      '#0',
      '9/16',
      '1/2',
      '1',
      '1 3/8',
      '1.37',
      '1 1/64',
    ]);
    // Numbers run from 0 to 12 (ASME B1.1) in steps of 0.013 in; what lies between or beyond has none.
    expect([0.073, 0.216, 0.229, 0.047, 0.32, 0.1875, 0.2, 2].map(inchSize)).toEqual([
      '#1',
      '#12',
      '0.229',
      '0.047',
      '0.32',
      '3/16',
      '0.2',
      '2',
    ]);
    expect(unifiedThread({ nominalDiameterIn: 0.5625, threadsPerInch: 20 }).designation).toBe('9/16-20');
    expect(unifiedThread({ nominalDiameterIn: 0.5625, threadsPerInch: 20, hand: 'left' }).designation).toBe(
      '9/16-20 LH',
    );
  });

  it('takes a pitch of half the diameter and no more', () => {
    expect(unifiedThread({ nominalDiameterIn: 0.5, threadsPerInch: 4 }).minorDiameterMm).toBeGreaterThan(0);
    expect(refusal(() => unifiedThread({ nominalDiameterIn: 0.5, threadsPerInch: 3.9 }))).toMatchObject({
      path: 'threadsPerInch',
      allowed: 'at least 4',
    });
  });

  it.each([
    [{ nominalDiameterIn: 0, threadsPerInch: 20 }, 'nominalDiameterIn'],
    [{ nominalDiameterIn: 41, threadsPerInch: 20 }, 'nominalDiameterIn'],
    [{ nominalDiameterIn: 0.5, threadsPerInch: -20 }, 'threadsPerInch'],
    [{ nominalDiameterIn: 0.5, threadsPerInch: 20, tpi: 1 }, 'tpi'],
    [null, ''],
  ])('refuses %j', (input, path) => {
    expect(refusal(() => unifiedThread(input as never)).path).toBe(path);
  });
});

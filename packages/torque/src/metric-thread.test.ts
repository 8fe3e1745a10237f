import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { metricThread } from './metric-thread.ts';

describe('metricThread', () => {
  it('has the basic profile of ISO 68-1 in fractions of the pitch', () => {
    // Constants printed to six places: 0.649519, 1.226869, 0.938194 (solutions to Shigley, problem 8-2), 1.082532.
    const thread = metricThread({ nominalDiameterMm: 10, pitchMm: 1 });
    expect(10 - thread.pitchDiameterMm).toBeCloseTo(0.649519, 6);
    expect(10 - thread.minorDiameterMm).toBeCloseTo(1.226869, 6);
    expect(10 - thread.internalMinorDiameterMm).toBeCloseTo(1.082532, 6);
    expect(10 - thread.stressDiameterMm).toBeCloseTo(0.938194, 6);
    expect(thread.leadAngleDeg).toBeCloseTo((Math.atan2(1, Math.PI * (10 - 0.649519)) * 180) / Math.PI, 6);
  });

  it('writes the pitch out and marks a left hand', () => {
    expect(metricThread({ nominalDiameterMm: 8, pitchMm: 1.25 }).designation).toBe('M8x1.25');
    const left = metricThread({ nominalDiameterMm: 23.35, pitchMm: 1, hand: 'left' });
    expect([left.designation, left.hand]).toEqual(['M23.35x1-LH', 'left']);
    expect(metricThread({ nominalDiameterMm: 23.35, pitchMm: 1 }).hand).toBe('right');
  });

  it('takes a pitch of half the diameter and no more', () => {
    expect(metricThread({ nominalDiameterMm: 8, pitchMm: 4 }).minorDiameterMm).toBeGreaterThan(0);
    expect(refusal(() => metricThread({ nominalDiameterMm: 8, pitchMm: 4.01 }))).toMatchObject({
      path: 'pitchMm',
      received: '4.01',
      allowed: 'at most half the diameter, 4 mm',
    });
  });

  it.each([
    [{ nominalDiameterMm: 0, pitchMm: 1 }, 'nominalDiameterMm'],
    [{ nominalDiameterMm: 1001, pitchMm: 1 }, 'nominalDiameterMm'],
    [{ nominalDiameterMm: 8, pitchMm: 0 }, 'pitchMm'],
    [{ nominalDiameterMm: 8, pitchMm: Number.NaN }, 'pitchMm'],
    [{ nominalDiameterMm: 8 }, 'pitchMm'],
    [{ nominalDiameterMm: 8, pitchMm: 1, hand: 'up' }, 'hand'],
    [{ nominalDiameterMm: 8, pitchMm: 1, pitch: 1 }, 'pitch'],
  ])('refuses %j', (input, path) => {
    expect(refusal(() => metricThread(input as never)).path).toBe(path);
  });
});

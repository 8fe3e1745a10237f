import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { compareSides } from './compare-sides.ts';
import type { JointId, Observations } from './types.ts';

const joint = 'square-taper-jis' as const;
const fine: Observations = {
  'arm-alignment': 'in-line',
  'arm-straightness': 'straight',
  'play-at-arm': 'none',
  'bolt-on-arrival': 'tight',
  'creak-under-load': 'none',
  'fretting-debris': 'none',
  'spindle-runout': 'true',
  'end-gap': 'clear',
  'shoulder-gap': 'clear',
};

describe('compareSides', () => {
  it('sees to the worse side first, and one bad side keeps the bicycle off the road', () => {
    const loose: Observations = { 'play-at-arm': 'arm-moves-on-spindle', 'bolt-on-arrival': 'finger-loose' };
    const left = compareSides({ joint, drive: { observations: fine }, nonDrive: { observations: loose } });
    expect(left).toMatchObject({ firstSide: 'non-drive', doNotRide: true, drive: { doNotRide: false } });
    expect(left.action).toBe(left.nonDrive.action);
    const right = compareSides({ joint, drive: { observations: loose }, nonDrive: { observations: fine } });
    expect(right.firstSide).toBe('drive');
  });

  it('shares what belongs to the bicycle', () => {
    const both = compareSides({
      joint,
      drive: { observations: { ...fine, 'bearing-turning': 'rough-or-loose' } },
      nonDrive: { observations: { ...fine, 'play-at-arm': 'both-arms-together' } },
    });
    expect(both.findings).toMatchObject([{ code: 'answer-shared', values: { check: 'bearing-turning' } }]);
    expect(both.nonDrive.besides[0]?.id).toBe('bearing-worn');
    expect(both.nonDrive.action).toBe('service-bearing');
  });

  it('is content with two good sides', () => {
    const observations: Observations = { ...fine, 'bearing-turning': 'smooth' };
    const both = compareSides({ joint, drive: { observations }, nonDrive: { observations } });
    expect(both).toMatchObject({ firstSide: 'neither', doNotRide: false, action: 'ride', findings: [] });
  });

  it('names it when the sides disagree on what they share', () => {
    const { findings } = compareSides({
      joint,
      drive: { observations: { 'bearing-turning': 'smooth' } },
      nonDrive: { observations: { 'bearing-turning': 'rough-or-loose' } },
    });
    expect(findings).toMatchObject([{ code: 'contradiction-sides', severity: 'caution' }]);
  });

  it('sets side by side what was answered and read on both', () => {
    const { differences, readings, findings } = compareSides({
      joint,
      drive: {
        observations: { 'end-gap': 'clear', 'bore-flats': 'straight' },
        measurements: { endGapMm: { value: 3.4, standardUncertainty: 0.1 }, shoulderGapMm: 3 },
      },
      nonDrive: {
        observations: { 'end-gap': 'flush', 'play-at-arm': 'arm-moves-on-spindle' },
        measurements: { endGapMm: { value: 0.2, standardUncertainty: 0.1 }, shoulderGapMm: 3.05 },
      },
    });
    expect(differences).toEqual([{ check: 'end-gap', drive: 'clear', nonDrive: 'flush' }]);
    // 3.4 - 0.2, each within three times its uncertainty; 3 and 3.05 within a tenth each.
    expect(readings.map(({ measurement, beyondUncertainty }) => [measurement, beyondUncertainty])).toEqual([
      ['endGapMm', true],
      ['shoulderGapMm', false],
    ]);
    expect(readings[0]?.difference.lower).toBeCloseTo(2.6, 12);
    expect(readings[0]?.difference.upper).toBeCloseTo(3.8, 12);
    expect(findings).toMatchObject([{ code: 'arm-sits-deeper', values: { side: 'non-drive' } }]);
  });

  it('refuses with the path of the side', () => {
    const paths = (input: unknown): string => {
      try {
        compareSides(input as Parameters<typeof compareSides>[0]);
      } catch (error) {
        if (isDomainError(error)) return error.path;
      }
      return 'not refused';
    };
    const side = { observations: {} };
    expect(paths({ joint, drive: { observations: { 'bore-flats': 'round' } }, nonDrive: side })).toBe(
      'drive.observations.bore-flats',
    );
    expect(paths({ joint, drive: side })).toBe('nonDrive');
    expect(paths({ joint: 'spline-other' as JointId, drive: side, nonDrive: side })).toBe('joint');
    expect(paths({ joint, drive: side, nonDrive: side, left: side })).toBe('left');
    expect(paths(null)).not.toBe('not refused');
  });
});

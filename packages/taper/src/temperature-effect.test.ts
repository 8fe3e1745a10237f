import { describe, expect, it } from 'vitest';
import { temperatureEffect } from './temperature-effect.ts';

const input = { acrossFlatsMm: 13, faceAngleDeg: 2, travelMm: 0.82, armRiseKelvin: 50, spindleRiseKelvin: 50 };
const codes = (more: object) => temperatureEffect({ ...input, ...more }).findings.map(({ code }) => code);

describe('temperatureEffect', () => {
  it('opens a few micrometres against some thirty of interference', () => {
    const heat = temperatureEffect(input);
    // 6.5 mm, 50 K, difference of expansion 11.6e-6 a kelvin.
    expect(heat.openingMm).toBeCloseTo(6.5 * 50 * 11.6e-6, 12);
    expect(heat.interferenceMm).toBeCloseTo(0.82 * Math.tan((2 * Math.PI) / 180), 12);
    expect(heat.lostShare).toBeCloseTo(heat.openingMm / heat.interferenceMm, 12);
    expect(heat.axialMm).toBeCloseTo((heat.lostShare ?? 0) * 0.82, 12);
  });

  it('says what heat can and cannot do', () => {
    expect(codes({})).toEqual(['heat-alone-does-not-free']);
    expect(codes({ armRiseKelvin: 300, spindleRiseKelvin: 0 })).toEqual(['heat-frees-and-may-harm']);
    expect(codes({ armRiseKelvin: -40, spindleRiseKelvin: -40 })).toEqual(['cold-tightens']);
    expect(codes({ armRiseKelvin: 0, spindleRiseKelvin: 0, travelMm: 0 })).toEqual([]);
    expect(temperatureEffect({ ...input, travelMm: 0 }).lostShare).toBeNull();
  });

  it('refuses what it does not know', () => {
    expect(() => temperatureEffect({ ...input, armRiseCelsius: 1 } as never)).toThrow('armRiseCelsius');
    expect(() => temperatureEffect({ ...input, armRiseKelvin: 400 })).toThrow('armRiseKelvin');
  });
});

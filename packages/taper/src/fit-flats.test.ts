import { describe, expect, it } from 'vitest';
import { type FlatReading, fitFlats } from './fit-flats.ts';

const TAN2 = Math.tan((2 * Math.PI) / 180);
const reading = (acrossFlatsMm: number, atMm: number, pair = 'a'): FlatReading => ({ acrossFlatsMm, atMm, pair });
const codes = (fit: ReturnType<typeof fitFlats>): string[] => fit.findings.map(({ code }) => code);

describe('fitFlats', () => {
  it('brings one reading to the end with the angle given', () => {
    const fit = fitFlats({ part: 'spindle', readings: [reading(12.9, 5)], faceAngleDeg: 2 });
    expect(fit.acrossFlatsMm.nominal).toBeCloseTo(12.9 - 10 * TAN2, 12);
    expect(fit.faceAngleDeg).toEqual({ lower: 2, nominal: 2, upper: 2 });
    expect(codes(fit)).toEqual(['one-pair-measured', 'plane-counts']);
    expect(fit.findings[1]?.values.acrossFlatsMm).toBeCloseTo(0.0698, 4);
  });

  it('widens a bore towards its mouth and a spindle away from its end', () => {
    const readings = [reading(13, 5)];
    const bore = fitFlats({ part: 'arm', readings, faceAngleDeg: 2 });
    expect(bore.acrossFlatsMm.nominal).toBeCloseTo(13 + 10 * TAN2, 12);
  });

  it('lets the tighter pair decide: the wider of a spindle, the narrower of a bore', () => {
    const readings = [reading(12.9, 5, 'a'), reading(12.95, 5, 'b')];
    expect(fitFlats({ part: 'spindle', readings, faceAngleDeg: 2 }).decidingPair).toBe('b');
    expect(fitFlats({ part: 'arm', readings, faceAngleDeg: 2 }).decidingPair).toBe('a');
    expect(codes(fitFlats({ part: 'arm', readings, faceAngleDeg: 2 }))).toContain('pairs-differ');
  });

  it('finds the angle from two planes, of either pair', () => {
    const fit = fitFlats({
      part: 'spindle',
      readings: [reading(12.6 + 4 * TAN2, 2), reading(12.6 + 24 * TAN2, 12), reading(12.7 + 4 * TAN2, 2, 'b')],
    });
    expect(fit.faceAngleDeg.nominal).toBeCloseTo(2, 10);
    expect(fit.pairs.map(({ pair, acrossFlatsMm }) => [pair, acrossFlatsMm.nominal.toFixed(6)])).toEqual([
      ['a', '12.600000'],
      ['b', '12.700000'],
    ]);
  });

  it('counts an error of the plane with the slope: 0.07 mm for 1 mm', () => {
    const atMm = { lower: 4, nominal: 5, upper: 6 };
    const fit = fitFlats({ part: 'spindle', readings: [{ ...reading(12.9, 5), atMm }], faceAngleDeg: 2 });
    expect(fit.acrossFlatsMm.upper - fit.acrossFlatsMm.nominal).toBeCloseTo(0.0698, 4);
  });

  it('says when readings leave the angle open, contradict it or scatter', () => {
    const loose = (value: number, atMm: number): FlatReading => ({
      ...reading(value, atMm),
      acrossFlatsMm: { lower: value - 0.03, nominal: value, upper: value + 0.03 },
    });
    const open = fitFlats({ part: 'spindle', readings: [loose(12.74, 2), loose(12.95, 5)] });
    expect(codes(open)).toContain('angle-not-resolved');
    const steep = [reading(12.6 + 4 * TAN2, 2), reading(12.7 + 24 * TAN2, 12)];
    expect(codes(fitFlats({ part: 'spindle', readings: steep, faceAngleDeg: 2 }))).toContain('angle-disagrees');
    const bent = [reading(12.7, 0), reading(12.9, 5), reading(13.4, 10)];
    const scatter = fitFlats({ part: 'spindle', readings: bent }).findings.find(
      ({ code }) => code === 'readings-scatter',
    );
    // The line through the three rises 0.07 a mm and leaves the middle one 0.1 below.
    expect(scatter?.values).toMatchObject({ pair: 'a' });
    expect(scatter?.values.residualMm).toBeCloseTo(0.1, 9);
  });

  it('says when the readings give an angle that no seat is predicted for', () => {
    const at = (rise: number) =>
      fitFlats({ part: 'spindle', readings: [reading(12.7, 2), reading(12.7 + rise, 12)] }).findings.map(
        ({ code }) => code,
      );
    expect(at(0.7)).not.toContain('angle-outside-domain');
    for (const rise of [0, -0.7, 4]) expect(at(rise)).toContain('angle-outside-domain');
  });

  it.each([
    ['no reading', { part: 'spindle', readings: [], faceAngleDeg: 2 }, 'readings'],
    [
      'three pairs',
      { part: 'arm', readings: ['a', 'b', 'c'].map((p) => reading(13, 1, p)), faceAngleDeg: 2 },
      'readings',
    ],
    ['one plane without angle', { part: 'arm', readings: [reading(13, 1), reading(13, 1)] }, 'faceAngleDeg'],
    ['a plane outside the part', { part: 'arm', readings: [reading(13, -1)], faceAngleDeg: 2 }, 'readings[0].atMm'],
    ['an unknown part', { part: 'axle', readings: [reading(13, 1)], faceAngleDeg: 2 }, 'part'],
  ])('refuses %s', (_name, input, path) => {
    expect(() => fitFlats(input as never)).toThrow(path);
  });
});

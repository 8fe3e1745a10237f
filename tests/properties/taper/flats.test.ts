import { type FlatReading, fitFlats } from '@spindlewright/taper';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from './arbitraries.ts';

const parts = fc.constantFrom('spindle', 'arm');
const tapers = fc.record({
  part: parts,
  widths: fc.tuple(between(12, 14), between(12, 14)),
  faceAngleDeg: between(1.5, 3),
});
const widthAt = (part: string, widthMm: number, faceAngleDeg: number, atMm: number): number =>
  widthMm + (part === 'spindle' ? 2 : -2) * atMm * Math.tan((faceAngleDeg * Math.PI) / 180);
const planes = fc.uniqueArray(fc.integer({ min: 0, max: 14 }), { minLength: 2, maxLength: 5 });

describe('fitFlats', () => {
  it('finds a taper again from exact readings, whatever their order, and the tighter pair', () => {
    fc.assert(
      fc.property(tapers, planes, fc.boolean(), ({ part, widths, faceAngleDeg }, at, turned) => {
        const readings = at.flatMap((atMm) =>
          widths.map((widthMm, index) => ({
            acrossFlatsMm: widthAt(part, widthMm, faceAngleDeg, atMm),
            atMm,
            pair: index === 0 ? 'a' : 'b',
          })),
        );
        const fit = fitFlats({ part, readings: turned ? readings.reverse() : readings });
        const tight = part === 'spindle' ? Math.max(...widths) : Math.min(...widths);
        expect(fit.acrossFlatsMm.nominal).toBeCloseTo(tight, 9);
        expect(fit.faceAngleDeg.nominal).toBeCloseTo(faceAngleDeg, 8);
        if (Math.abs(widths[0] - widths[1]) > 1e-9) {
          expect(fit.decidingPair).toBe(widths.indexOf(tight) === 0 ? 'a' : 'b');
        }
      }),
    );
  });

  it('encloses the true taper whatever the errors inside the bounds of the readings', () => {
    const errors = fc.array(between(-1, 1), { minLength: 20, maxLength: 20 });
    fc.assert(
      fc.property(tapers, planes, errors, fc.boolean(), ({ part, widths, faceAngleDeg }, at, list, given) => {
        let next = 0;
        const error = (): number => list[next++ % list.length] ?? 0;
        const readings = at.flatMap((atMm): FlatReading[] =>
          widths.map((widthMm, index) => {
            const plane = atMm + 1;
            const read = widthAt(part, widthMm, faceAngleDeg, plane + 0.2 * error()) + 0.02 * error();
            return {
              acrossFlatsMm: { lower: read - 0.02, nominal: read, upper: read + 0.02 },
              atMm: { lower: plane - 0.2, nominal: plane, upper: plane + 0.2 },
              pair: String(index),
            };
          }),
        );
        const angle = {
          lower: faceAngleDeg - 0.05,
          nominal: faceAngleDeg + 0.05 * error(),
          upper: faceAngleDeg + 0.05,
        };
        const fit = fitFlats({ part, readings, ...(given ? { faceAngleDeg: angle } : {}) });
        const tight = part === 'spindle' ? Math.max(...widths) : Math.min(...widths);
        expect(fit.acrossFlatsMm.lower).toBeLessThanOrEqual(tight + 1e-9);
        expect(fit.acrossFlatsMm.upper).toBeGreaterThanOrEqual(tight - 1e-9);
        expect(fit.faceAngleDeg.lower).toBeLessThanOrEqual(faceAngleDeg + 1e-9);
        expect(fit.faceAngleDeg.upper).toBeGreaterThanOrEqual(faceAngleDeg - 1e-9);
      }),
    );
  });
});

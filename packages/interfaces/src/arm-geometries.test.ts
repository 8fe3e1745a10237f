import { isDomainError, type LimitsInput, limits } from '@spindlewright/quantity';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { armGeometries } from './arm-geometries.ts';
import { spline10 } from './records/spline-10.generated.ts';
import { squareTaperIso } from './records/square-taper-iso.generated.ts';
import { squareTaperJis } from './records/square-taper-jis.generated.ts';
import { armGeometrySchema } from './schema.ts';
import { spindleGeometries } from './spindle-geometries.ts';

const growthOf = (angle: LimitsInput): number => 2 * Math.tan((limits(angle).nominal * Math.PI) / 180);

/** Gaps at hand fit by the definition of the seat: where the bore's mouth is as wide as the spindle. */
function handFit(spindleRecord: typeof squareTaperJis, armRecord: typeof squareTaperJis, set: string) {
  const spindle = spindleGeometries(spindleRecord).find((entry) => entry.set === set)?.geometry;
  const arm = armGeometries(armRecord).find((entry) => entry.set === set)?.geometry;
  if (spindle === undefined || arm === undefined) throw new Error(`no set ${set}`);
  const growth = growthOf(spindle.faceAngleDeg);
  const atEnd = limits(spindle.acrossFlatsAtEndMm);
  const atMouth = limits(arm.acrossFlatsAtMouthMm);
  const seat = limits(arm.boltSeatFromMouthMm ?? arm.boreLengthMm);
  const flats = limits(spindle.flatLengthMm);
  const mouth = {
    lower: (atMouth.lower - atEnd.upper) / growth,
    nominal: (atMouth.nominal - atEnd.nominal) / growth,
    upper: (atMouth.upper - atEnd.lower) / growth,
  };
  return {
    endGapMm: {
      lower: seat.lower - mouth.upper,
      nominal: seat.nominal - mouth.nominal,
      upper: seat.upper - mouth.lower,
    },
    shoulderGapMm: {
      lower: flats.lower - mouth.upper,
      nominal: flats.nominal - mouth.nominal,
      upper: flats.upper - mouth.lower,
    },
  };
}

const shared = squareTaperIso.geometry.sets.map(({ id }) => id);

describe('armGeometries', () => {
  it('gives the arm that was reckoned by hand for one set', () => {
    // 12.65 mm at the end, 15 mm of flats, 2 mm of shoulder gap: 13 mm in, 0.06984 mm a millimetre (printed table of
    // growth at 2 deg), so 12.65 + 13 * 0.06984 = 13.5579 mm at the mouth; bolt seat 13 + 2.5 = 15.5 mm.
    const arm = armGeometries(squareTaperJis).find(({ set }) => set === 'taper-jp-ham-2013');
    expect(limits(arm?.geometry.acrossFlatsAtMouthMm ?? 0).nominal).toBeCloseTo(13.5579, 4);
    // One millimetre more or less of shoulder gap is 0.06984 mm across flats.
    expect(limits(arm?.geometry.acrossFlatsAtMouthMm ?? 0).lower).toBeCloseTo(13.5579 - 0.06984, 4);
    expect(limits(arm?.geometry.acrossFlatsAtMouthMm ?? 0).upper).toBeCloseTo(13.5579 + 0.06984, 4);
    expect(arm?.geometry.boltSeatFromMouthMm).toBe(15.5);
    expect(arm?.geometry.boreLengthMm).toBe(15.5);
  });

  it.each([squareTaperJis, squareTaperIso])('gives back exactly the judged gaps on its own spindle ($id)', (record) => {
    for (const { id } of record.geometry.sets) {
      const { endGapMm, shoulderGapMm } = handFit(record, record, id);
      // The judgement itself: 2.5 mm within 1.5 to 3.5, and 2 mm within 1 to 3.
      for (const [key, mm] of Object.entries({ lower: 1.5, nominal: 2.5, upper: 3.5 })) {
        expect(endGapMm[key as keyof typeof endGapMm]).toBeCloseTo(mm, 9);
      }
      for (const [key, mm] of Object.entries({ lower: 1, nominal: 2, upper: 3 })) {
        expect(shoulderGapMm[key as keyof typeof shoulderGapMm]).toBeCloseTo(mm, 9);
      }
    }
  });

  it.each(shared)('lets a JIS arm on an ISO spindle run out of end gap within one press (%s)', (set) => {
    const { endGapMm } = handFit(squareTaperIso, squareTaperJis, set);
    // By hand: 2.5 - 0.13/0.06984 = 0.64 (0.13/0.07275 = 1.79 leaves 0.71) and 2.5 - 0.15/0.06984 = 0.35 mm.
    expect(endGapMm.nominal).toBeGreaterThan(0.34);
    expect(endGapMm.nominal).toBeLessThan(0.72);
    // Finite-element row p3_D30: a press of 12 kN travels 0.905 mm, more than is left.
    expect(endGapMm.nominal).toBeLessThan(0.905205);
  });

  it.each(shared)('leaves an ISO arm on a JIS spindle less shoulder gap than on its own (%s)', (set) => {
    // Flats of 15 instead of 18 mm, the arm 1.79 to 2.15 mm farther out: 2 - 3 + 1.79 to 2 - 3 + 2.15.
    const { shoulderGapMm } = handFit(squareTaperJis, squareTaperIso, set);
    expect(shoulderGapMm.nominal).toBeGreaterThan(0.78);
    expect(shoulderGapMm.nominal).toBeLessThan(1.16);
  });

  it('says that it is derived and by which judgement', () => {
    for (const arm of armGeometries(squareTaperIso)) {
      expect(arm.standing).toBe('derived');
      expect(arm.note).toContain('handFitEndGapMm');
      expect(arm.assumed).toContain('boltSeatFromMouthMm');
      expect(armGeometrySchema.parse(arm)).toEqual(JSON.parse(JSON.stringify(arm)));
    }
  });

  it('keeps its bounds in order for any judged gaps', () => {
    const gap = fc.double({ min: 0.1, max: 4, noNaN: true });
    fc.assert(
      fc.property(gap, gap, gap, gap, (shoulder, shoulderSpread, end, endSpread) => {
        const datum = (value: number, spread: number) => ({
          value,
          lower: value - spread,
          upper: value + spread,
          unit: 'mm',
          standing: 'invented' as const,
          sources: [],
        });
        const record = {
          ...squareTaperJis,
          geometry: {
            ...squareTaperJis.geometry,
            handFitShoulderGapMm: datum(shoulder, shoulderSpread),
            handFitEndGapMm: datum(end, endSpread),
          },
        };
        for (const { geometry } of armGeometries(record)) {
          // limits() refuses crossed bounds.
          expect(limits(geometry.boltSeatFromMouthMm ?? 0).nominal).toBeCloseTo(15 - shoulder + end, 9);
          expect(limits(geometry.acrossFlatsAtMouthMm).upper).toBeGreaterThan(
            limits(geometry.acrossFlatsAtMouthMm).lower,
          );
        }
      }),
    );
  });

  it('gives nothing for a family without a square, and refuses an id', () => {
    expect(armGeometries(spline10)).toEqual([]);
    try {
      armGeometries('square-taper-jis' as never);
      expect.unreachable();
    } catch (error) {
      expect(isDomainError(error) && error.path).toBe('record');
    }
  });
});

import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { dataEdition } from './data-edition.ts';
import { cotteredMetric } from './records/cottered-metric.generated.ts';
import { squareTaperIso } from './records/square-taper-iso.generated.ts';
import { squareTaperJis } from './records/square-taper-jis.generated.ts';
import { spindleGeometrySchema } from './schema.ts';
import { spindleGeometries } from './spindle-geometries.ts';

describe('spindleGeometries', () => {
  it('gives the published sizes of every set, never merged', () => {
    // Sizes as the sources named by the sets print them; 2 deg 05 min is 2.0833 deg.
    const sizes = (record: typeof squareTaperJis) =>
      spindleGeometries(record).map(({ set, geometry }) => [set, geometry.acrossFlatsAtEndMm, geometry.flatLengthMm]);
    expect(sizes(squareTaperJis)).toEqual([
      ['taper-jp-ham-2013', 12.65, 15],
      ['taper-jp-sizes-2014', 12.63, 15],
      ['taper-de-wiki', 12.63, 15],
      ['taper-fr-workshop-wiki', 12.63, 15],
      ['taper-nl-workshop-first-maker', 12.73, 15],
      ['taper-nl-workshop-second-maker', 12.63, 15],
      ['taper-de-dealer', 12.73, 15],
      ['taper-hobby-metrology-2022', 12.7, 15],
    ]);
    expect(sizes(squareTaperIso)).toEqual([
      ['taper-jp-ham-2013', 12.5, 18],
      ['taper-jp-sizes-2014', 12.5, 18],
      ['taper-de-wiki', 12.5, 18],
      ['taper-fr-workshop-wiki', 12.5, 18],
      ['taper-nl-workshop-first-maker', 12.6, 18],
      ['taper-nl-workshop-second-maker', 12.5, 18],
    ]);
    const french = spindleGeometries(squareTaperIso).find(({ set }) => set === 'taper-fr-workshop-wiki');
    expect(french?.geometry.faceAngleDeg).toBeCloseTo(2 + 5 / 60, 6);
  });

  it('tells what a set does not give and what was read into it', () => {
    const assumed = new Map(spindleGeometries(squareTaperJis).map(({ set, assumed }) => [set, assumed]));
    expect(assumed.get('taper-de-wiki')).toEqual(['flatLengthMm']);
    expect(assumed.get('taper-jp-sizes-2014')).toEqual(['faceAngleDeg', 'acrossFlatsAtEndMm']);
    expect(assumed.get('taper-nl-workshop-first-maker')).toEqual(['faceAngleDeg', 'flatLengthMm']);
    const root = spindleGeometries(squareTaperJis).find(({ set }) => set === 'taper-jp-sizes-2014');
    expect(root?.note).toMatch(/root of the taper/);
    // The size is measured, the length it needs is secondary: the geometry is no better than that.
    const measured = spindleGeometries(squareTaperJis).find(({ set }) => set === 'taper-hobby-metrology-2022');
    expect(measured?.standing).toBe('secondary');
    expect(measured?.sources).toEqual(['taper-hobby-metrology-2022', 'taper-jp-sizes-2014']);
  });

  it('halves the length of a symmetric spindle', () => {
    for (const entry of spindleGeometries(squareTaperJis, { spindleLengthMm: 113 })) {
      expect(entry.endFromMidplaneMm).toBe(56.5);
      expect(entry.assumed).toContain('endFromMidplaneMm');
    }
    expect(spindleGeometries(squareTaperJis)[0]).not.toHaveProperty('endFromMidplaneMm');
  });

  it('passes its schema and its JSON round trip, with the edition', () => {
    for (const entry of spindleGeometries(squareTaperIso, { spindleLengthMm: 80 })) {
      expect(spindleGeometrySchema.parse(entry)).toEqual(JSON.parse(JSON.stringify(entry)));
      expect(entry.dataEdition).toBe(dataEdition);
    }
  });

  it('gives nothing for a family without a square', () => {
    expect(spindleGeometries(cotteredMetric)).toEqual([]);
  });

  it.each([
    ['an id for a record', () => spindleGeometries('square-taper-jis' as never), 'record', undefined],
    ['null for a record', () => spindleGeometries(null as never), 'record', undefined],
    [
      'a length too small',
      () => spindleGeometries(squareTaperJis, { spindleLengthMm: 79.9 }),
      'spindleLengthMm',
      undefined,
    ],
    [
      'a length too large',
      () => spindleGeometries(squareTaperJis, { spindleLengthMm: 200.1 }),
      'spindleLengthMm',
      undefined,
    ],
    [
      'a misspelt option',
      () => spindleGeometries(squareTaperJis, { spindelLengthMm: 113 } as never),
      'spindelLengthMm',
      'spindleLengthMm',
    ],
  ])('refuses %s', (_name, call, path, nearest) => {
    try {
      call();
      expect.unreachable();
    } catch (error) {
      if (!isDomainError(error)) throw error;
      expect([error.path, error.nearest]).toEqual([path, nearest]);
    }
  });
});

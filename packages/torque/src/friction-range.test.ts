import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { frictionClasses } from './data.ts';
import { frictionRange } from './friction-range.ts';

describe('frictionRange', () => {
  it('gives every row of the data, its middle between its ends', () => {
    for (const row of frictionClasses) {
      const name = row.id.startsWith('friction-class') ? row.frictionClass : row.id;
      const range = frictionRange({ of: name });
      expect(range).toMatchObject({ frictionClass: row.frictionClass, minFriction: row.min, standing: row.standing });
      expect(range.maxFriction).toBe(row.max ?? null);
      if (range.friction !== null) expect(range.friction.nominal).toBeCloseTo((row.min + (row.max ?? 0)) / 2, 10);
      expect(range.sources).toEqual(row.sources);
    }
  });

  it('gives class B of VDI 2230 as limits, without a word more', () => {
    const { friction, findings } = frictionRange({ of: 'B' });
    expect(friction).toEqual({ lower: 0.08, nominal: 0.12, upper: 0.16 });
    expect(findings).toEqual([]);
  });

  it('says so where the source gives no upper bound', () => {
    const { friction, findings } = frictionRange({ of: 'E' });
    expect(friction).toBeNull();
    expect(findings.map((finding) => finding.code)).toEqual(['friction-unbounded']);
  });

  it('refuses an unknown class with the nearest', () => {
    const { path, nearest } = refusal(() => frictionRange({ of: 'greased-steel-thred' }));
    expect([path, nearest]).toEqual(['of', 'greased-steel-thread']);
  });
});

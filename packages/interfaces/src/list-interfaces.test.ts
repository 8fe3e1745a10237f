import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { listInterfaces } from './list-interfaces.ts';
import { interfaceFilterSchema } from './schema.ts';

const ids = (filter?: Parameters<typeof listInterfaces>[0]): string[] => listInterfaces(filter).map(({ id }) => id);

describe('listInterfaces', () => {
  it('lists every record in the order of the ids', () => {
    expect(ids()).toEqual([
      'cottered-inch',
      'cottered-metric',
      'face-spline',
      'one-piece',
      'spline-10',
      'spline-48',
      'spline-8-long',
      'spline-8-short',
      'square-taper-iso',
      'square-taper-jis',
      'square-taper-narrow',
      'square-taper-nutted',
      'square-taper-short',
      'through-spindle-19',
      'through-spindle-22',
      'through-spindle-24',
      'through-spindle-24-22',
      'through-spindle-25',
      'through-spindle-28-99',
      'through-spindle-30',
    ]);
  });

  it('filters by family, by means of tightening, and by both', () => {
    expect(ids({ family: 'cottered' })).toEqual(['cottered-inch', 'cottered-metric']);
    expect(ids({ drawnTightBy: 'none' })).toEqual(['one-piece']);
    expect(ids({ family: 'through-spindle', drawnTightBy: 'centre-bolt-or-nut' })).toEqual([
      'through-spindle-24-22',
      'through-spindle-28-99',
    ]);
    expect(ids({ family: 'square-taper', drawnTightBy: 'pinch-bolts' })).toEqual([]);
  });

  it('gives a list of its own', () => {
    listInterfaces().pop();
    expect(ids()).toHaveLength(20);
  });

  it('refuses an unknown key and an unknown family with the nearest name', () => {
    for (const [filter, nearest] of [
      [{ famly: 'spline' }, 'family'],
      [{ family: 'splines' }, 'spline'],
    ] as const) {
      try {
        listInterfaces(filter as never);
        expect.unreachable();
      } catch (error) {
        if (!isDomainError(error)) throw error;
        expect(error.nearest).toBe(nearest);
      }
      expect(interfaceFilterSchema.safeParse(filter).success).toBe(false);
    }
    expect(interfaceFilterSchema.safeParse({ family: 'spline', drawnTightBy: 'none' }).success).toBe(true);
  });
});

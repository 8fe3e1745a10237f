import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { listInterfaces } from './list-interfaces.ts';
import { interfaceFilterSchema } from './schema.ts';

const ids = (filter?: Parameters<typeof listInterfaces>[0]): string[] => listInterfaces(filter).map(({ id }) => id);

describe('listInterfaces', () => {
  it('lists every record in the order of the ids', () => {
    expect(ids()).toEqual([
      'cottered-metric',
      'spline-10',
      'square-taper-iso',
      'square-taper-jis',
      'through-spindle-24',
    ]);
  });

  it('filters by family, by means of tightening, and by both', () => {
    expect(ids({ family: 'cottered' })).toEqual(['cottered-metric']);
    expect(ids({ drawnTightBy: 'centre-bolt-or-nut' })).toEqual(['spline-10', 'square-taper-iso', 'square-taper-jis']);
    expect(ids({ family: 'square-taper', drawnTightBy: 'pinch-bolts' })).toEqual([]);
  });

  it('gives a list of its own', () => {
    listInterfaces().pop();
    expect(ids()).toHaveLength(5);
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

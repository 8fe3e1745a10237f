import { getSource } from '@spindlewright/quantity/sources';
import { describe, expect, it } from 'vitest';
import { workAll } from './index.ts';
import { DRY_KN, LUBRICATED_KN, rangeUpToClass } from './measured-preloads.ts';
import { meets } from './worked.ts';

describe.each(workAll().map((worked) => [`${worked.title} (${worked.source}, ${worked.citation})`, worked] as const))(
  '%s',
  (_name, { source, steps, misprints = [] }) => {
    it.each(steps.map((step) => [step.what, step.printed, step.unit, step] as const))(
      '%s: %d %s',
      (_what, printed, _unit, step) => {
        expect(meets(step), `ours is ${step.ours}, allowed ${step.within * printed}: ${step.why}`).toBe(true);
        // A step that any number would meet proves nothing.
        expect(step.within).toBeLessThan(0.03);
      },
    );

    it('does not follow misprints', () => {
      expect(misprints.filter(meets)).toEqual([]);
    });

    it('comes from a source of the register', () => {
      expect(getSource(source).id).toBe(source);
    });
  },
);

it('holds the measured bolts inside the range of their friction classes', () => {
  const outside = (last: 'C' | 'D', kilonewtons: readonly number[]): number[] => {
    const { preloadN } = rangeUpToClass(last);
    return kilonewtons.filter((kN) => kN * 1000 < preloadN.lower || kN * 1000 > preloadN.upper);
  };
  expect(outside('C', LUBRICATED_KN)).toEqual([]);
  // Without lubricant one bolt in twenty lies below class C: dry threads need class D.
  expect(outside('C', DRY_KN)).toEqual([23.6]);
  expect(outside('D', DRY_KN)).toEqual([]);
});

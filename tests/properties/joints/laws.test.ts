// Laws that hold for each joint beside the square taper, whatever its sizes.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  call,
  exactly,
  limitsOf,
  type Numbers,
  read,
  SUBJECTS,
  type Subject,
  shareTo,
  toleranced,
} from './subjects.ts';

/** How a quantity grows with the size of the joint under one stress. A stiffness, N/mm, grows as a length. */
const powerOf = (name: string): number =>
  name.endsWith('Nm') ? 3 : name.endsWith('N') ? 2 : name.endsWith('Mm') ? 1 : 0;

describe.each<[string, Subject]>(Object.entries(SUBJECTS))('%s', (_, subject) => {
  it('gives rising, finite limits that survive JSON', () => {
    fc.assert(
      fc.property(toleranced(subject), (input) => {
        const result = call(subject, input);
        for (const [name, { lower, nominal, upper }] of limitsOf(result)) {
          expect([lower, nominal, upper].every(Number.isFinite), name).toBe(true);
          expect(lower <= nominal && nominal <= upper, name).toBe(true);
        }
        expect(JSON.parse(JSON.stringify(result))).toEqual(result);
      }),
      { numRuns: 500 },
    );
  });

  it('has every combination of exact readings inside its limits', () => {
    const shares = fc.array(shareTo(1), { minLength: 12, maxLength: 12 });
    fc.assert(
      fc.property(toleranced(subject), shares, (input, places) => {
        const wide = new Map(limitsOf(call(subject, input)));
        const drawn = Object.fromEntries(
          Object.entries(input).map(([key, { lower, upper }], index) => [
            key,
            Math.min(upper, read(lower + (places[index] ?? 0) * (upper - lower))),
          ]),
        );
        for (const [name, { nominal }] of limitsOf(call(subject, drawn))) {
          const bounds = wide.get(name);
          // Limits that have no end are null with a finding; what is exact may have one.
          if (bounds === undefined) continue;
          const { lower, upper } = bounds;
          const slack = 1e-9 * (Math.abs(lower) + Math.abs(upper) + 1e-9);
          expect(nominal >= lower - slack && nominal <= upper + slack, name).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('scales: lengths by k and forces by k squared leave pressures as they are, torques by k cubed, stiffnesses by k', () => {
    const factor = fc.double({ min: 0.7, max: 1.3, noNaN: true });
    const scaled = (input: Numbers, k: number): Numbers =>
      Object.fromEntries(
        Object.entries(input).map(([key, value]) => {
          return [key, value * k ** powerOf(key)];
        }),
      );
    fc.assert(
      fc.property(exactly(subject), factor, (input, k) => {
        // Whether a slot or a gap is open is judged by a length that does not scale.
        fc.pre([input.slotGapMm, input.gapAtStopMm, input.clearanceMm].every((gap = 1) => Math.abs(gap) > 1e-5));
        const before = new Map(limitsOf(call(subject, input)));
        for (const [name, { nominal }] of limitsOf(call(subject, scaled(input, k)))) {
          const expected = (before.get(name)?.nominal ?? 0) * k ** powerOf(name);
          expect(Math.abs(nominal - expected), name).toBeLessThanOrEqual(1e-9 * (Math.abs(expected) + 1e-6));
        }
      }),
      { numRuns: 300 },
    );
  });
});

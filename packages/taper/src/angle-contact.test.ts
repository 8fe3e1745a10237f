import { describe, expect, it } from 'vitest';
import { type AngleContact, closingTravel } from './angle-contact.ts';

const LOCAL = 0.0525;

// Independent of the closed form: the same foundation by finite differences, contact found row by row (a row that would
// pull is let go). Stiffness of a long even contact is 1 for each mm.
function loadOf(depth: number, opening: number, lengthMm: number, collarMm: number, decayMm: number): number {
  const count = 1600;
  const step = (lengthMm + collarMm) / count;
  const [own, top] = [1 / (1 - LOCAL), 1 / LOCAL];
  const shear = (own * decayMm ** 2) / step ** 2;
  const push = Array.from({ length: count }, (_, i) => {
    const z = (i + 0.5) * step;
    return z < lengthMm ? depth - opening * z : Number.NEGATIVE_INFINITY;
  });
  let bears = push.map((u) => u > 0);
  let wall: number[] = [];
  for (let pass = 0; pass < 200; pass++) {
    const cross: number[] = [];
    const right: number[] = [];
    for (let i = 0; i < count; i++) {
      const ends = i === 0 || i === count - 1 ? 1 : 2;
      const pivot = own + ends * shear + (bears[i] ? top : 0) - (i > 0 ? shear * (cross[i - 1] ?? 0) : 0);
      cross.push(shear / pivot);
      right.push(((bears[i] ? top * (push[i] ?? 0) : 0) + (i > 0 ? shear * (right[i - 1] ?? 0) : 0)) / pivot);
    }
    wall = right.slice();
    for (let i = count - 2; i >= 0; i--) wall[i] = (right[i] ?? 0) + (cross[i] ?? 0) * (wall[i + 1] ?? 0);
    const next = push.map((u, i) => u > (wall[i] ?? 0));
    if (next.every((value, i) => value === bears[i])) break;
    bears = next;
  }
  return wall.reduce((sum, w) => sum + own * w * step, 0);
}

const base: AngleContact = {
  axialForceN: 1,
  stiffnessNPerMm2: 1,
  lengthMm: 14,
  opening: 0.25,
  tangentRatio: 0.75,
  collarMm: 1.5,
  decayMm: 2.4,
};

describe('closingTravel', () => {
  it.each([
    ['a short contact at the mouth', 0.4, 1.5],
    ['half of the length', 1.8, 1.5],
    ['nearly the whole length', 3.2, 1.5],
    ['the whole length', 6, 1.5],
    ['a short contact without a collar', 0.4, 0],
  ])('agrees with finite differences: %s', (_name, depth, collarMm) => {
    const load = loadOf(depth, base.opening, base.lengthMm, collarMm, base.decayMm);
    const parallel = loadOf(1, 0, base.lengthMm, collarMm, base.decayMm);
    const added = closingTravel({ ...base, axialForceN: load, collarMm });
    expect(added).toBeCloseTo(depth - load / parallel, 2);
  });

  it('is stopped sooner by the steeper bore, and helped there by a collar', () => {
    const atEnd = { ...base, tangentRatio: 1.25, collarMm: 0 };
    expect(closingTravel(atEnd)).toBeCloseTo(closingTravel({ ...base, collarMm: 0 }) / 1.25, 12);
    expect(closingTravel({ ...atEnd, collarMm: 3 })).toBeLessThan(closingTravel(atEnd));
  });

  it('grows with the force up to half the opening of the length, and ends there', () => {
    const added = [1e-9, 1e-3, 0.1, 1, 10, 100, 1e4].map((axialForceN) =>
      closingTravel({ ...base, axialForceN, collarMm: 0 }),
    );
    for (const [i, value] of added.entries()) if (i > 0) expect(value).toBeGreaterThanOrEqual(added[i - 1] ?? 0);
    expect(added.at(-1)).toBeCloseTo(7 * 0.25, 9);
    expect(closingTravel({ ...base, axialForceN: 0 })).toBeCloseTo(0, 12);
  });

  it('scales: twice every length and four times the force close twice as much', () => {
    const twice = { ...base, axialForceN: 4, lengthMm: 28, collarMm: 3, decayMm: 4.8 };
    expect(closingTravel(twice)).toBeCloseTo(2 * closingTravel(base), 9);
  });
});

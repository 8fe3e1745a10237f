import { describe, expect, it } from 'vitest';
import { crestLimits, FLANK_DEPTH_RATIO } from './thread-limits.ts';

const external = (nominalDiameterMm: number, pitchMm: number) =>
  crestLimits({ nominalDiameterMm, pitchMm, kind: 'external' });
const internal = (nominalDiameterMm: number, pitchMm: number) =>
  crestLimits({ nominalDiameterMm, pitchMm, kind: 'internal' });

describe('crestLimits', () => {
  it.each([
    // Largest major diameters 6g in a general-purpose CAD library: source openscad-mcad.
    [3, 0.5, 2.98],
    [6, 1, 5.974],
    [8, 1.25, 7.972],
    [10, 1.5, 9.968],
    [12, 1.75, 11.966],
    [16, 2, 15.962],
    [24, 3, 23.952],
  ])('puts the largest crest of M%dx%d at %d mm', (d, p, largest) => {
    // The tabled allowances are rounded, and P 2 mm has 38 micrometres where the rule gives 37: one micrometre at most.
    expect(Math.abs(external(d, p).upper - largest)).toBeLessThan(0.00101);
  });

  it.each([
    // Limits of 6g and 6H as the tables of metric threads in handbooks print them (M10x1.5: 9.732, 8.376 to 8.676; and so
    // on); they round the widths to preferred numbers, 2.5 % apart in the mean, so 4 % is the most that may differ.
    [6, 1, 5.794, 4.917, 5.153],
    [8, 1.25, 7.76, 6.647, 6.912],
    [10, 1.5, 9.732, 8.376, 8.676],
    [12, 1.75, 11.701, 10.106, 10.441],
    [16, 2, 15.682, 13.835, 14.21],
    [24, 3, 23.577, 20.752, 21.252],
  ])('gives M%dx%d the widths of grade 6', (d, p, smallest, minor, largestMinor) => {
    const outside = external(d, p);
    const tabled = outside.upper - smallest;
    expect(Math.abs(outside.upper - outside.lower - tabled)).toBeLessThan(0.04 * tabled);
    const inside = internal(d, p);
    expect(inside.lower).toBeCloseTo(minor, 2);
    expect(Math.abs(inside.upper - inside.lower - (largestMinor - minor))).toBeLessThan(0.04 * (largestMinor - minor));
  });

  it('meets what a caliper is said to show on cups and shells', () => {
    // Source shell-thread-page: cup outside 34.6 to 34.9 mm, shell inside 33.6 to 33.9 mm, printed to 0.1 mm.
    const cup = external(34.798, 25.4 / 24);
    const shell = internal(34.798, 25.4 / 24);
    expect(cup.lower).toBeGreaterThan(34.55);
    expect(cup.upper).toBeLessThan(34.95);
    expect(shell.lower).toBeGreaterThan(33.55);
    expect(shell.upper).toBeLessThan(33.95);
  });

  it('goes over from fine to coarse pitches without a jump', () => {
    // The two rules of the width meet near 1 mm: 243 against 230 micrometres, 6 % apart.
    const fine = internal(10, 0.999999);
    const coarse = internal(10, 1);
    expect(Math.abs(fine.upper - fine.lower - (coarse.upper - coarse.lower))).toBeLessThan(0.02);
  });

  it('takes the flank depth of the basic profile', () => {
    // ISO 68-1: D1 = d - 1.082532 P; source iso-68-1.
    expect(FLANK_DEPTH_RATIO).toBeCloseTo(1.082532, 6);
  });
});

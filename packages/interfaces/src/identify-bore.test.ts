import { isDomainError, type Measurand } from '@spindlewright/quantity';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { armGeometries } from './arm-geometries.ts';
import { boreHypotheses } from './bore-hypotheses.ts';
import { identifyBore } from './identify-bore.ts';
import { interfaceRecords } from './records/registry.generated.ts';
import { squareTaperIso } from './records/square-taper-iso.generated.ts';
import { squareTaperJis } from './records/square-taper-jis.generated.ts';
import { roundHypotheses } from './round-bore.ts';
import { boreIdentificationSchema, identifyBoreInputSchema } from './schema.ts';

type Input = Parameters<typeof identifyBore>[0];

const careful = (value: number, standardUncertainty = 0.02): Measurand => ({ value, standardUncertainty });
const probabilities = (input: Input): Record<string, number> =>
  Object.fromEntries(identifyBore(input).candidates.map(({ id, probability }) => [id, probability]));
const codes = (input: Input): string[] => identifyBore(input).findings.map(({ code }) => code);

describe('identifyBore of a square bore', () => {
  it('starts from the arms that the records derive, one for each published set', () => {
    for (const record of [squareTaperIso, squareTaperJis]) {
      const own = boreHypotheses([squareTaperIso, squareTaperJis]).filter(({ id }) => id === record.id);
      const arms = armGeometries(record);
      expect(own.map(({ set }) => set)).toEqual(arms.map(({ set }) => set));
      for (const [index, { geometry }] of arms.entries()) {
        const { acrossFlatsAtMouthMm: mouth, boreLengthMm: length } = geometry;
        expect(own[index]?.acrossFlatsMm.mean).toBeCloseTo(typeof mouth === 'number' ? mouth : mouth.nominal, 9);
        expect(own[index]?.flatLengthMm.mean).toBeCloseTo(typeof length === 'number' ? length : length.nominal, 9);
      }
    }
  });

  it('cannot tell the two squares by the mouth, and asks for the length', () => {
    // JIS 12.65 + 13 * 0.06984 = 13.56, ISO 12.50 + 16 * 0.06984 = 13.62: 0.06 mm apart, on a spread of 0.11.
    const mouth = identifyBore({ acrossFlatsMm: 13.59, atMm: 0 });
    expect(mouth.candidates[0]?.probability).toBeLessThan(0.7);
    expect(mouth.findings.map(({ code }) => code)).toContain('cannot-tell-bores-apart');
    expect(mouth.next.reading).toBe('bore-length');
    expect(mouth.next.expectedProbability).toBeGreaterThan(mouth.candidates[0]?.probability ?? 1);
  });

  it('weighs a bore length as reckoned by hand', () => {
    // Bore lengths 15.5 (JIS) and 18.5 (ISO): flats less 2 plus 2.5. Variance 1.5^2 + 2 * 2^2/12 = 2.9167, with the reading
    // 0.5^2: 3.1667. Read 18.5: densities 0.22418 and, 3 mm off, 0.22418 exp(-9/6.3333) = 0.054132; unlisted, middle 17 and
    // deviation 4: variance 16.25, 0.098966 exp(-2.25/32.5) = 0.092345. A blunder in a hundred, over 37 mm: 0.22221,
    // 0.053861, 0.091692. Priors 0.45, 0.45, 0.1: 0.099995, 0.024238, 0.009169; sum 0.133402.
    const found = probabilities({ boreLengthMm: 18.5 });
    expect(found['square-taper-iso']).toBeCloseTo(0.7496, 3);
    expect(found['square-taper-jis']).toBeCloseTo(0.1817, 3);
    expect(found.unlisted).toBeCloseTo(0.0687, 3);
  });

  it('uses size and length together: a wide mouth on a long arm is no sign of a wide square', () => {
    const long = { acrossFlatsMm: careful(13.7), atMm: careful(0, 0.1), boreLengthMm: careful(18.5, 0.2) };
    const short = { ...long, boreLengthMm: careful(15.5, 0.2) };
    const ratio = (input: Input) =>
      (probabilities(input)['square-taper-jis'] ?? 0) / (probabilities(input)['square-taper-iso'] ?? 1);
    expect(ratio(short)).toBeGreaterThan(2);
    expect(ratio(long)).toBeLessThan(0.5);
  });

  it('shrinks outward', () => {
    // 0.06984 mm a millimetre at 2 deg: 13.6 at the mouth is 13.251 five millimetres outward.
    const atMouth = probabilities({ acrossFlatsMm: careful(13.6), atMm: careful(0, 0.1) });
    const inside = probabilities({ acrossFlatsMm: careful(13.6 - 5 * 0.06984), atMm: careful(5, 0.1) });
    expect(inside['square-taper-iso']).toBeCloseTo(atMouth['square-taper-iso'] ?? 0, 1);
    expect(inside['square-taper-jis']).toBeCloseTo(atMouth['square-taper-jis'] ?? 0, 1);
    // A size that is right only inside is a millimetre off at the mouth: two deviations of the unlisted one, 0.1 * 0.108 =
    // 0.0108, against a slip of a listed one, 0.9 * 0.02 * 0.205 = 0.0037: three in four.
    expect(probabilities({ acrossFlatsMm: careful(12.6), atMm: careful(0, 0.1) }).unlisted).toBeCloseTo(0.74, 1);
  });

  it('says when readings contradict each other', () => {
    const readings = [
      { acrossFlatsMm: careful(9), atMm: careful(0) },
      { acrossFlatsMm: careful(19), atMm: careful(0) },
    ];
    expect(codes({ readings })).toContain('readings-contradict');
  });
});

describe('identifyBore of a round bore', () => {
  it.each([
    // Spindle diameters of the records: 5/8 in and 15.5 mm for cottered ones, 24 mm for a toothed one.
    ['an inch cottered arm', { diameterMm: 15.9, toothed: false }, 'cottered-inch'],
    ['a metric cottered arm', { diameterMm: 15.52, toothed: false }, 'cottered-metric'],
    ['a ten-spline arm, by its minor diameter of 18 mm', { diameterMm: 18.02, toothed: true }, 'spline-10'],
  ] as const)('names %s', (_name, input, id) => {
    expect(identifyBore(input).candidates[0]?.id).toBe(id);
  });

  it('leaves through spindles of like diameter open', () => {
    // Teeth of a depth that nobody published hide whether a bore of 23.6 mm belongs to a spindle of 24 or of 24/22 mm.
    const result = identifyBore({ diameterMm: 23.6, toothed: true });
    expect(result.candidates[0]?.id).toMatch(/^(through-spindle|spline)/);
    expect(result.candidates[0]?.probability).toBeLessThan(0.9);
    expect(result.next.reading).toBe('trial-fit');
  });

  it('asks for a look at the teeth where it helps, and for a diameter where there is none', () => {
    expect(identifyBore({ toothed: true }).next.reading).toBe('diameter');
    const open = identifyBore({ diameterMm: careful(18.4, 0.3) });
    expect(open.shape).toBe('round');
    expect(['teeth', 'trial-fit']).toContain(open.next.reading);
  });

  it('names an unlisted bore rather than force one', () => {
    expect(identifyBore({ diameterMm: careful(38), toothed: false }).candidates[0]?.id).toBe('unlisted');
    expect(codes({ diameterMm: careful(38), toothed: false })).toContain('probably-unlisted-bore');
  });

  it('covers every record that gives a diameter', () => {
    const ids = new Set(roundHypotheses(interfaceRecords).map(({ id }) => id));
    for (const { id, family } of interfaceRecords) {
      if (family === 'cottered' || family === 'through-spindle') expect(ids).toContain(id);
      if (family === 'square-taper') expect(ids).not.toContain(id);
    }
    const sum = roundHypotheses(interfaceRecords).reduce((total, { prior }) => total + prior, 0);
    expect(sum).toBeCloseTo(1, 12);
  });
});

describe('identifyBore', () => {
  it('never answers with certainty, sums to one and loses nothing on the way to JSON', () => {
    const size = fc.double({ min: 9, max: 19, noNaN: true }).map((value) => careful(value));
    const square = fc.record(
      {
        readings: fc.array(fc.record({ acrossFlatsMm: size, atMm: fc.double({ min: 0, max: 15, noNaN: true }) }), {
          minLength: 1,
          maxLength: 3,
        }),
        boreLengthMm: fc.double({ min: 10, max: 25, noNaN: true }),
      },
      { requiredKeys: ['readings'] },
    );
    const round = fc.record(
      { diameterMm: fc.double({ min: 12, max: 35, noNaN: true }), toothed: fc.boolean() },
      { requiredKeys: ['diameterMm'] },
    );
    fc.assert(
      fc.property(fc.oneof(square, round), (input) => {
        const result = identifyBore(input);
        expect(result.candidates.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 9);
        for (const { probability } of result.candidates) {
          expect(probability).toBeGreaterThan(0);
          expect(probability).toBeLessThan(1);
        }
        expect(boreIdentificationSchema.parse(result)).toEqual(JSON.parse(JSON.stringify(result)));
      }),
      { numRuns: 40 },
    );
  });

  it.each([
    ['nothing', {}, ''],
    ['an empty list', { readings: [] }, ''],
    ['a size without its plane', { acrossFlatsMm: 13.5 }, 'atMm'],
    ['a plane without its size', { atMm: 2, boreLengthMm: 15 }, 'acrossFlatsMm'],
    ['a square and a round bore at once', { acrossFlatsMm: 13.5, atMm: 0, diameterMm: 18 }, 'diameterMm'],
    ['the teeth of a square bore', { acrossFlatsMm: 13.5, atMm: 0, toothed: true }, 'toothed'],
    ['a size in inches', { acrossFlatsMm: 0.535, atMm: 0 }, 'acrossFlatsMm'],
    ['a diameter in inches', { diameterMm: 0.625 }, 'diameterMm'],
    ['a misspelt key', { boreLenghtMm: 15 }, 'boreLenghtMm'],
  ])('refuses %s', (_name, input, path) => {
    try {
      identifyBore(input as Input);
      expect.unreachable();
    } catch (error) {
      if (!isDomainError(error)) throw error;
      expect(error.path).toBe(path);
    }
  });

  it('accepts what its schema accepts', () => {
    const input = { readings: [{ acrossFlatsMm: 13.5, atMm: 1 }], boreLengthMm: 16 };
    expect(identifyBoreInputSchema.parse(input)).toEqual(input);
    expect(identifyBore(input).shape).toBe('square');
    expect(identifyBoreInputSchema.safeParse({ ...input, atMM: 1 }).success).toBe(false);
  });
});

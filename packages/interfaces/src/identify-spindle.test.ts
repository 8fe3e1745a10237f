import { isDomainError, type Measurand } from '@spindlewright/quantity';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { identifySpindle } from './identify-spindle.ts';
import { identifySpindleInputSchema, spindleIdentificationSchema } from './schema.ts';

const careful = (value: number, standardUncertainty = 0.01): Measurand => ({ value, standardUncertainty });
const probabilities = (input: Parameters<typeof identifySpindle>[0]): Record<string, number> =>
  Object.fromEntries(identifySpindle(input).candidates.map(({ id, probability }) => [id, probability]));
const codes = (input: Parameters<typeof identifySpindle>[0]): string[] =>
  identifySpindle(input).findings.map(({ code }) => code);

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const reading = fc.record({
  acrossFlatsMm: mm(9, 19).map((value) => careful(value, 0.02)),
  atMm: mm(0, 18).map((value) => careful(value, 0.2)),
});

describe('identifySpindle', () => {
  it('weighs a length of the flats as reckoned by hand', () => {
    // Reading 18 with u 0.5; deviations 1.5 (listed) and 4 (unlisted, middle 16). Densities: variance 2.5 gives 0.25231
    // at 18 and, 3 mm off, 0.25231 exp(-9/5) = 0.041707; variance 16.25, 2 mm off, gives 0.098966 exp(-4/32.5) =
    // 0.087505. One reading in a hundred is a blunder, anywhere in 37 mm: 0.99 * 0.25231 + 0.01/37 = 0.25006, 0.04156,
    // 0.08690. Priors 0.45, 0.45, 0.1: 0.112527, 0.018702, 0.008690; sum 0.139919.
    const byHand = { 'square-taper-iso': 0.8042, 'square-taper-jis': 0.1337, unlisted: 0.0621 };
    const found = probabilities({ flatLengthMm: 18 });
    for (const [id, probability] of Object.entries(byHand)) expect(found[id]).toBeCloseTo(probability, 3);
  });

  it('weighs a size across flats by every set, never by the nearest value', () => {
    // 12.66 at the end lies 0.03 mm from 12.63 and 0.01 from 12.65 (JIS) but also 0.06 from 12.60 (ISO). Caliper 0.03,
    // part 0.02, plane 0.5 mm * 0.06984 = 0.0349: deviation 0.0502. Shares of the peak, JIS, four sizes alike:
    // (0.8364 + 0.9803 + 0.7279 + 0.3781)/4 = 0.7307; ISO, two sizes: (0.0062 + 0.4894)/2 = 0.2478. Unlisted: deviation
    // 0.5021, 0.04 off: 0.0502/0.5021 * 0.9968 = 0.0996. A slip, 2 in 100, widens every one of them to hypot(., 0.7): of
    // the peak 0.0502/0.7018 = 0.0715 for JIS, 0.0705 for ISO, 0.0582 for the unlisted one (0.0502/0.8615). So 0.98 and
    // 0.02 of them: 0.7175, 0.2442, 0.0988. Blunder, 1 in 100, anywhere in 12 mm: 0.0105 of the peak, and 0.7104, 0.2419,
    // 0.0979; times 0.45, 0.45, 0.1: 0.31969, 0.10884, 0.00979; sum 0.43833.
    const found = probabilities({ acrossFlatsMm: 12.66, atMm: 0 });
    expect(found['square-taper-jis']).toBeCloseTo(0.7294, 3);
    expect(found['square-taper-iso']).toBeCloseTo(0.2483, 3);
    expect(found.unlisted).toBeCloseTo(0.0223, 3);
    expect(codes({ acrossFlatsMm: 12.66, atMm: 0 })).toContain('cannot-tell-apart');
  });

  it('shifts a size with its plane', () => {
    // 0.06984 mm a millimetre at 2 deg: 12.50 at the end is 12.849 five millimetres in.
    const atEnd = probabilities({ acrossFlatsMm: careful(12.5), atMm: careful(0, 0.1) });
    const inside = probabilities({ acrossFlatsMm: careful(12.5 + 5 * 0.06984), atMm: careful(5, 0.1) });
    expect(atEnd['square-taper-iso']).toBeGreaterThan(0.95);
    expect(inside['square-taper-iso']).toBeCloseTo(atEnd['square-taper-iso'] ?? 0, 1);
    // The same size read as if at the end would be a JIS or an unlisted one.
    expect(probabilities({ acrossFlatsMm: careful(12.849), atMm: 0 })['square-taper-iso']).toBeLessThan(0.1);
  });

  it('goes back to the priors when the readings say nothing', () => {
    const vague = probabilities({ acrossFlatsMm: { lower: 8, nominal: 12, upper: 20 }, atMm: 0 });
    // 0.45, 0.45 and 0.1 by judgement; the broad reading still sees that the unlisted square is a little wider spread.
    expect(vague['square-taper-jis']).toBeCloseTo(0.45, 1);
    expect(vague['square-taper-iso']).toBeCloseTo(0.45, 1);
    expect(vague.unlisted).toBeCloseTo(0.1, 1);
  });

  it('names an unlisted square rather than force one', () => {
    const far = identifySpindle({ acrossFlatsMm: careful(14), atMm: 2 });
    expect(far.candidates[0]?.id).toBe('unlisted');
    expect(far.findings[0]?.code).toBe('probably-unlisted');
  });

  it('takes one reading that slipped for a slip, not for another square', () => {
    // Three planes of a JIS square of 12.65 with 0.07 mm a millimetre; the middle one misread by half a millimetre.
    const at = (mm: number, size: number) => ({ acrossFlatsMm: careful(size, 0.02), atMm: careful(mm, 0.2) });
    const sound = probabilities({ readings: [at(2, 12.79), at(6, 13.07), at(10, 13.35)] });
    const slipped = probabilities({ readings: [at(2, 12.79), at(6, 13.57), at(10, 13.35)] });
    expect(sound['square-taper-jis']).toBeGreaterThan(0.8);
    expect(slipped['square-taper-jis']).toBeGreaterThan(0.5);
    expect(slipped.unlisted).toBeLessThan(0.2);
  });

  it('does not average away what all readings of one sitting share', () => {
    // Ten readings of one plane: with independent errors of 0.03 mm their mean would be good to 0.0095.
    const ten = Array.from({ length: 10 }, () => ({ acrossFlatsMm: careful(12.61, 0.06), atMm: careful(0, 0.2) }));
    const mean = probabilities({ acrossFlatsMm: careful(12.61, 0.06 / Math.sqrt(10)), atMm: careful(0, 0.02) });
    const shared = probabilities({ readings: ten });
    const certainty = (found: Record<string, number>) => Math.max(...Object.values(found));
    expect(certainty(shared)).toBeLessThan(certainty(mean));
  });

  it('goes back to the priors, and says so, when readings contradict each other', () => {
    const readings = [9, 14.6].map((size) => ({ acrossFlatsMm: careful(size, 0.02), atMm: careful(0, 0.2) }));
    const found = probabilities({ readings });
    // Priors by judgement.
    expect(found['square-taper-jis']).toBeCloseTo(0.45, 6);
    expect(found.unlisted).toBeCloseTo(0.1, 6);
    expect(codes({ readings })[0]).toBe('readings-contradict');
    expect(codes({ acrossFlatsMm: 12.5, atMm: 0 })).not.toContain('readings-contradict');
  });

  it('asks for a reading while one helps, and for a trial fit when none does', () => {
    const open = identifySpindle({ acrossFlatsMm: 12.65, atMm: 0 });
    expect(open.next.reading).toBe('flat-length');
    expect(open.next.expectedProbability).toBeGreaterThan(open.candidates[0]?.probability ?? 1);
    expect(identifySpindle({ flatLengthMm: 16.5 }).next.reading).toBe('across-flats');
    const clear = identifySpindle({ acrossFlatsMm: careful(12.5), atMm: careful(0, 0.1) });
    expect(clear.next.reading).toBe('trial-fit');
    expect(clear.next).not.toHaveProperty('expectedProbability');
  });

  it('never answers with certainty, sums to one and loses nothing on the way to JSON', () => {
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 4 }), (readings) => {
        const result = identifySpindle({ readings });
        const sum = result.candidates.reduce((total, { probability }) => total + probability, 0);
        expect(sum).toBeCloseTo(1, 9);
        for (const { probability, sets } of result.candidates) {
          expect(probability).toBeGreaterThan(0);
          expect(probability).toBeLessThan(1);
          expect(sets.reduce((total, set) => total + set.probability, 0)).toBeCloseTo(probability, 12);
        }
        expect(result.candidates.map(({ id }) => id)).toContain('unlisted');
        expect(spindleIdentificationSchema.parse(result)).toEqual(JSON.parse(JSON.stringify(result)));
      }),
      { numRuns: 30 },
    );
  });

  it('does not depend on the order of the readings', () => {
    fc.assert(
      fc.property(fc.array(reading, { minLength: 2, maxLength: 4 }), (readings) => {
        const forward = probabilities({ readings });
        const backward = probabilities({ readings: [...readings].reverse() });
        for (const [id, probability] of Object.entries(forward)) expect(backward[id]).toBeCloseTo(probability, 9);
      }),
      { numRuns: 20 },
    );
  });

  it('says when it had to assume an uncertainty', () => {
    expect(codes({ acrossFlatsMm: 12.5, atMm: careful(0) })).toContain('uncertainty-assumed');
    expect(codes({ acrossFlatsMm: careful(12.5), atMm: careful(0) })).not.toContain('uncertainty-assumed');
  });

  it.each([
    ['no reading at all', {}, ''],
    ['an empty list', { readings: [] }, ''],
    ['a size without its plane', { acrossFlatsMm: 12.5 }, 'atMm'],
    ['a plane without its size', { atMm: 2, flatLengthMm: 15 }, 'acrossFlatsMm'],
    ['a size out of range', { acrossFlatsMm: 7.9, atMm: 0 }, 'acrossFlatsMm'],
    ['bounds out of range', { acrossFlatsMm: careful(8.1, 0.1), atMm: 0 }, 'acrossFlatsMm'],
    ['a misspelt key', { acrossFlatMm: 12.5, atMm: 0 }, 'acrossFlatMm'],
    ['a faulty entry of the list', { readings: [{ acrossFlatsMm: 12.5, atMm: Number.NaN }] }, 'readings[0].atMm'],
  ])('refuses %s', (_name, input, path) => {
    try {
      identifySpindle(input);
      expect.unreachable();
    } catch (error) {
      if (!isDomainError(error)) throw error;
      expect(error.path).toBe(path);
    }
  });

  it('accepts what its schema accepts', () => {
    const input = {
      acrossFlatsMm: 12.5,
      atMm: 0,
      readings: [{ acrossFlatsMm: careful(13), atMm: 8 }],
      flatLengthMm: 16,
    };
    expect(identifySpindleInputSchema.parse(input)).toEqual(input);
    expect(identifySpindle(input).candidates).toHaveLength(3);
    expect(identifySpindleInputSchema.safeParse({ ...input, atMM: 1 }).success).toBe(false);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nextSquareReadings } from './next-square-reading.ts';
import { squareTaperIso } from './records/square-taper-iso.generated.ts';
import { squareTaperJis } from './records/square-taper-jis.generated.ts';
import { logJoints, type SquareHypothesis, squareHypotheses } from './square-hypotheses.ts';

const hypothesis = (id: string, size: number, length: number): SquareHypothesis => ({
  id,
  set: id,
  prior: 0.5,
  acrossFlatsMm: { mean: size, deviation: 0.02 },
  faceAngleDeg: { mean: 2, deviation: 0 },
  flatLengthMm: { mean: length, deviation: 1.5 },
  sizeWithLength: 0,
  sources: [],
});

const expectedFor = (pair: SquareHypothesis[], reading: string): number =>
  nextSquareReadings(pair, { flats: [] }).find((option) => option.reading === reading)?.expectedProbability ?? 0;

describe('nextSquareReadings', () => {
  it('agrees with the closed form for two squares alike but for one size', () => {
    // Two normal densities d apart, deviation s, equal priors: the right one is named with probability Phi(d/(2 s)).
    // Lengths 15 and 18, s = hypot(1.5, 0.2) = 1.5133: Phi(0.9912) = 0.8392 (table of the normal distribution). A blunder,
    // 1 in 100, leaves an even chance, and the densities beside it shift the answer by less than that one per cent.
    const byLength = expectedFor([hypothesis('a', 12.6, 15), hypothesis('b', 12.6, 18)], 'flat-length');
    expect(byLength).toBeCloseTo(0.99 * 0.8392 + 0.01 * 0.5, 2);
    // Sizes 0.05 apart, s = hypot(0.02, 0.01, 0.1 * 0.06984) = 0.02343: Phi(1.067) = 0.8570.
    const bySize = expectedFor([hypothesis('a', 12.6, 15), hypothesis('b', 12.65, 15)], 'across-flats');
    expect(bySize).toBeCloseTo(0.99 * 0.857 + 0.01 * 0.5, 2);
    // What does not tell them apart leaves an even chance.
    expect(expectedFor([hypothesis('a', 12.6, 15), hypothesis('b', 12.65, 15)], 'flat-length')).toBeCloseTo(0.5, 3);
  });

  it('expects no reading to leave one worse informed', () => {
    const hypotheses = squareHypotheses([squareTaperIso, squareTaperJis]);
    const reading = fc.record({
      acrossFlats: fc.record({
        value: fc.double({ min: 12.3, max: 13.1, noNaN: true }),
        uncertainty: fc.double({ min: 0.01, max: 0.3, noNaN: true }),
      }),
      at: fc.constant({ value: 1, uncertainty: 0.3 }),
    });
    fc.assert(
      fc.property(fc.array(reading, { maxLength: 2 }), (flats) => {
        const logs = logJoints(hypotheses, { flats });
        const total = logs.reduce((sum, log) => sum + Math.exp(log), 0);
        const shares = new Map<string, number>();
        for (const [index, log] of logs.entries()) {
          const id = hypotheses[index]?.id ?? '';
          shares.set(id, (shares.get(id) ?? 0) + Math.exp(log) / total);
        }
        for (const { expectedProbability } of nextSquareReadings(hypotheses, { flats })) {
          // The sum over a grid misses less than a thousandth.
          expect(expectedProbability).toBeGreaterThan(Math.max(...shares.values()) - 0.001);
        }
      }),
      { numRuns: 25 },
    );
  });

  it('does not ask for a length that has been read', () => {
    const options = nextSquareReadings([hypothesis('a', 12.6, 15), hypothesis('b', 12.6, 18)], {
      flats: [],
      flatLength: { value: 15, uncertainty: 0.5 },
    });
    expect(options.map(({ reading }) => reading)).toEqual(['across-flats']);
  });
});

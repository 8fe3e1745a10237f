import { isDomainError, type Measurand } from '@spindlewright/quantity';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { identifyThread, type ThreadIdentification } from './identify-thread.ts';
import { identifyThreadInputSchema, threadIdentificationSchema } from './schema.ts';

type Input = Parameters<typeof identifyThread>[0];

const careful = (value: number, standardUncertainty = 0.01): Measurand => ({ value, standardUncertainty });
const of = (result: ThreadIdentification, id: string): number =>
  result.candidates.find((candidate) => candidate.id === id)?.probability ?? 0;
const best = (input: Input): string => identifyThread(input).candidates[0]?.id ?? '';
const codes = (input: Input): string[] => identifyThread(input).findings.map(({ code }) => code);

describe('identifyThread', () => {
  it.each([
    // An external thread reads a little under its size, an internal one by its minor diameter, d - 1.08 P and a little more.
    ['a crank bolt', { diameterMm: 7.9, pitchMm: 1, kind: 'external' }, 'm8x1'],
    ['a crank nut', { diameterMm: 8.9, pitchMm: 1.25, kind: 'internal' }, 'm10x1-25'],
    ['the puller thread of an arm', { diameterMm: 21.05, kind: 'internal' }, 'm22x1'],
    ['its puller', { diameterMm: 21.9, kind: 'external' }, 'm22x1'],
    ['an old pedal of 14 mm', { diameterMm: 13.9, kind: 'external', hand: 'left' }, 'm14x1-25-left'],
    [
      'a cup, by threads an inch',
      { diameterMm: 34.65, threadsPerInch: 24, hand: 'left', kind: 'external' },
      '1-370-in-x-24-tpi-left',
    ],
  ] as const)('names %s', (_name, input, id) => {
    expect(best(input)).toBe(id);
    expect(identifyThread(input).candidates[0]?.probability).toBeGreaterThan(0.9);
  });

  it('weighs two sizes as reckoned by hand', () => {
    // External, 13.9 with u 0.03, right hand, clear of any chamfer. M14x1.25: limits 13.765 to 13.971 by 15 + 11 P and
    // 180 P^(2/3) - 3.15/sqrt(P): middle 13.868, width 0.2059, with spread 0.03: deviation 0.0665, with the reading 0.0730;
    // 0.032 off: density 4.97. Slips (3 in 100, 0.8 mm) add 0.015. 9/16 in, P 1.27: middle 14.155, width 0.2083, spread
    // 0.06, with the reading 0.0900; 0.255 off: z 2.83, density 0.0803, slips 0.0141. Both have the same prior, a half for
    // the hand: 0.97 * 4.97 + 0.015 = 4.836 against 0.97 * 0.0803 + 0.014 = 0.092: 0.019 of it.
    const result = identifyThread({
      diameterMm: careful(13.9, 0.03),
      atMm: careful(20, 0.1),
      hand: 'right',
      kind: 'external',
    });
    expect(of(result, '9-16-in-x-20-tpi') / of(result, 'm14x1-25')).toBeCloseTo(0.019, 3);
  });

  it('leaves hands alike that were not read, and asks for the hand', () => {
    const result = identifyThread({ diameterMm: careful(14.16), atMm: 8, kind: 'external' });
    expect(of(result, '9-16-in-x-20-tpi')).toBeCloseTo(of(result, '9-16-in-x-20-tpi-left'), 12);
    expect(result.next.reading).toBe('hand');
    // One wrong hand in a hundred is left.
    expect(result.next.expectedProbability).toBeGreaterThan(0.9);
    expect(result.next.expectedProbability).toBeLessThan(0.99);
    expect(codes({ diameterMm: careful(14.16), atMm: 8, kind: 'external' })).toContain('cannot-tell-threads-apart');
  });

  it('asks for the pitch where only the pitch differs', () => {
    const { next, candidates } = identifyThread({ diameterMm: 7.9, kind: 'external' });
    expect(
      candidates
        .slice(0, 3)
        .map(({ id }) => id)
        .sort(),
    ).toEqual(['m8x0-75', 'm8x1', 'm8x1-25']);
    expect(next.reading).toBe('pitch');
    expect(next.message).toContain('ten threads');
  });

  it('gives a wide answer to too few readings, and asks for the diameter', () => {
    const { candidates, next } = identifyThread({ pitchMm: 1 });
    expect(candidates[0]?.probability).toBeLessThan(0.25);
    expect(next.reading).toBe('diameter');
  });

  it('asks for a trial when nothing else helps', () => {
    const { next } = identifyThread({ diameterMm: 21.9, atMm: 5, pitchMm: 1, hand: 'right', kind: 'external' });
    expect(next.reading).toBe('trial-fit');
    expect(next).not.toHaveProperty('expectedProbability');
  });

  it('reads a jaw on the chamfer for what it is', () => {
    const clear = identifyThread({ diameterMm: careful(34.3, 0.03), atMm: careful(6, 0.3), kind: 'external' });
    const onChamfer = identifyThread({ diameterMm: careful(34.3, 0.03), atMm: careful(0.5, 0.3), kind: 'external' });
    const cup = (result: ThreadIdentification) =>
      of(result, '1-370-in-x-24-tpi') + of(result, '1-370-in-x-24-tpi-left') + of(result, '36-mm-x-24-tpi');
    // 34.3 mm is half a millimetre less than any cup measures over full crests, and what a cup measures on its chamfer.
    expect(clear.candidates[0]?.id).toBe('unlisted');
    expect(onChamfer.candidates[0]?.id).not.toBe('unlisted');
    expect(cup(onChamfer)).toBeGreaterThan(2 * cup(clear));
  });

  it('names an unlisted thread rather than force one', () => {
    // M20x1.5 is in none of the records.
    expect(best({ diameterMm: 19.85, pitchMm: 1.5, kind: 'external' })).toBe('unlisted');
    expect(codes({ diameterMm: 19.85, pitchMm: 1.5, kind: 'external' })[0]).toBe('probably-unlisted-thread');
  });

  it('names the near-misses that start and then strip', () => {
    const miss = (input: Input) =>
      identifyThread(input)
        .findings.filter(({ code }) => code === 'starts-then-strips')
        .map(({ values }) => values);
    // An arm that may be 23 or 23.35 mm, and the puller of 23 mm.
    const pair = { male: 'M23x1', female: 'M23.35x1' };
    expect(miss({ diameterMm: 22.2, kind: 'internal' })).toContainEqual(pair);
    expect(miss({ diameterMm: 22.9, kind: 'external' })).toContainEqual(pair);
    expect(miss({ diameterMm: 21.9, kind: 'external' })).not.toContainEqual(pair);
    const binds = identifyThread({ diameterMm: 34.65, threadsPerInch: 24, hand: 'right', kind: 'external' }).findings;
    expect(binds.filter(({ code }) => code === 'starts-then-binds').map(({ values }) => values.female)).toContain(
      'M35x1',
    );
  });

  it('takes outside and inside alike where the kind was not said', () => {
    // 21.1 mm is the inside of M22x1; it is no outside of any thread listed.
    const result = identifyThread({ diameterMm: 21.1 });
    expect(result.candidates[0]?.id).toBe('m22x1');
    expect(result.candidates[0]?.sets[0]?.kind).toBe('internal');
  });

  it('gives every size of a thread that sources disagree on its own share', () => {
    const [odd] = identifyThread({ diameterMm: careful(22.25, 0.02), atMm: 6, kind: 'internal' }).candidates;
    expect(odd?.sets.map(({ set }) => set).sort()).toEqual(['diameter-23-15', 'diameter-23-2', 'diameter-23-35']);
  });

  it('never answers with certainty, sums to one and loses nothing on the way to JSON', () => {
    const input = fc.record(
      {
        diameterMm: fc.double({ min: 5, max: 50, noNaN: true }).map((value) => careful(value, 0.02)),
        atMm: fc.double({ min: 0, max: 20, noNaN: true }),
        pitchMm: fc.double({ min: 0.5, max: 1.6, noNaN: true }),
        hand: fc.constantFrom('right' as const, 'left' as const),
        kind: fc.constantFrom('external' as const, 'internal' as const),
      },
      { requiredKeys: ['diameterMm'] },
    );
    fc.assert(
      fc.property(input, (readings) => {
        const result = identifyThread(readings);
        expect(result.candidates.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 9);
        const [first] = result.candidates;
        for (const { probability, sets } of result.candidates) {
          expect(probability).toBeGreaterThan(0);
          expect(probability).toBeLessThan(1);
          expect(sets.reduce((sum, set) => sum + set.probability, 0)).toBeCloseTo(probability, 12);
        }
        expect(result.candidates.map(({ id }) => id)).toContain('unlisted');
        // A reading that is asked for is expected to help.
        const { expectedProbability = 1 } = result.next;
        expect(expectedProbability).toBeGreaterThan((first?.probability ?? 1) - 0.002);
        expect(threadIdentificationSchema.parse(result)).toEqual(JSON.parse(JSON.stringify(result)));
      }),
      { numRuns: 40 },
    );
  });

  it.each([
    ['nothing', {}, ''],
    ['a hand alone', { hand: 'left' }, ''],
    ['a plane without a diameter', { atMm: 3, pitchMm: 1 }, 'diameterMm'],
    ['a diameter in inches', { diameterMm: 0.5625 }, 'diameterMm'],
    ['threads an inch as a pitch', { diameterMm: 14.2, pitchMm: 20 }, 'pitchMm'],
    ['a pitch as threads an inch', { diameterMm: 14.2, threadsPerInch: 1.27 }, 'threadsPerInch'],
    ['both', { diameterMm: 14.2, pitchMm: 1.27, threadsPerInch: 20 }, 'threadsPerInch'],
    ['a pitch beyond a third of the diameter', { diameterMm: 8, pitchMm: 3 }, 'pitchMm'],
    ['the same in threads an inch', { diameterMm: 8, threadsPerInch: 8 }, 'threadsPerInch'],
    ['a hand of its own', { diameterMm: 8, hand: 'both' }, 'hand'],
    ['a misspelt key', { diameterMM: 8 }, 'diameterMM'],
    ['a reading that is no number', { diameterMm: Number.NaN }, 'diameterMm'],
  ])('refuses %s', (_name, input, path) => {
    try {
      identifyThread(input as Input);
      expect.unreachable();
    } catch (error) {
      if (!isDomainError(error)) throw error;
      expect(error.path).toBe(path);
    }
  });

  it('accepts what its schema accepts', () => {
    const input = { diameterMm: 8, atMm: 4, threadsPerInch: 24, hand: 'right', kind: 'external' } as const;
    expect(identifyThreadInputSchema.parse(input)).toEqual(input);
    expect(identifyThread(input).candidates.length).toBeGreaterThan(20);
    expect(identifyThreadInputSchema.safeParse({ ...input, kind: 'bolt' }).success).toBe(false);
  });
});

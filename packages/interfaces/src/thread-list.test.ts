import { describe, expect, it } from 'vitest';
import { knownThreads, threadList } from './thread-list.ts';
import type { ThreadRow } from './thread-rows.ts';

const datum = (value: number, unit = 'mm', source = 'a') =>
  ({ value, unit, standing: 'secondary', sources: [source] }) as const;
const row = (record: string, thread: Partial<ThreadRow['thread']>): ThreadRow => ({
  rowId: `${record}:thread`,
  record,
  purpose: 'fixing',
  thread: { id: 't', use: 'Bolt', designation: 'M8x1', nominalDiameterMm: datum(8), hand: 'right', ...thread },
});

describe('knownThreads', () => {
  it('puts like threads together and keeps sizes, uses and sources apart', () => {
    const [first, ...rest] = knownThreads([
      row('one', { pitchMm: datum(1) }),
      row('two', {
        use: 'Nut',
        nominalDiameterMm: { ...datum(8, 'mm', 'b'), alternatives: [datum(7.9, 'mm', 'c')] },
        pitchMm: datum(1),
      }),
    ]);
    expect(rest).toEqual([]);
    expect(first).toEqual({
      id: 'm8x1',
      designation: 'M8x1',
      hand: 'right',
      metric: true,
      uses: ['Bolt', 'Nut'],
      records: ['one', 'two'],
      diametersMm: [
        { value: 8, set: 'diameter-8' },
        { value: 7.9, set: 'diameter-7-9' },
      ],
      pitchesMm: [1],
      sources: ['a', 'b', 'c'],
    });
  });

  it('tells the hands apart, reads threads an inch and leaves an unstated pitch out', () => {
    const inch = { designation: '1/2 in x 20 tpi', nominalDiameterMm: datum(12.7), threadsPerInch: datum(20, 'tpi') };
    const threads = knownThreads([
      row('one', inch),
      row('one', { ...inch, hand: 'left' }),
      row('one', { designation: 'M10', nominalDiameterMm: datum(10) }),
    ]);
    expect(threads.map(({ id }) => id)).toEqual(['1-2-in-x-20-tpi', '1-2-in-x-20-tpi-left', 'm10']);
    // 25.4 mm an inch, exactly.
    expect(threads[0]?.pitchesMm[0]).toBeCloseTo(1.27, 12);
    expect(threads[0]?.metric).toBe(false);
    expect(threads[2]?.pitchesMm).toEqual([]);
  });
});

describe('threadList', () => {
  const threads = threadList();

  it('has every fixing, puller, pedal, shell and chainring thread of the records', () => {
    const ids = threads.map(({ id }) => id);
    const wanted = [
      'm8x1',
      'm10x1-25',
      'm12x1',
      'm15x1',
      'm6x1',
      'm8x0-75',
      'm22x1',
      'm23x1',
      'm14x1-25',
      'm14x1-25-left',
    ];
    expect(ids).toEqual(expect.arrayContaining([...wanted, 'm35x1', 'm35x1-left', 'm47x1']));
    expect(new Set(ids).size).toBe(ids.length);
    // Inch threads by size: three pedals and cups of two shells, a right and a left each, and the Italian cups.
    const inch = threads.filter(({ metric }) => !metric);
    expect(inch.map(({ diametersMm }) => diametersMm[0]?.value ?? 0).sort((a, b) => a - b)).toEqual(
      expect.arrayContaining([12.7, 12.7, 14.2875, 14.2875, 34.798, 34.798, 36]),
    );
  });

  it('keeps the three sizes of the odd puller thread', () => {
    const odd = threads.find(({ diametersMm }) => diametersMm.some(({ value }) => value === 23.35));
    // Sources puller-threads-fr-wiki (23.35) and puller-threads-odd (23.15, 23.2).
    expect(odd?.diametersMm.map(({ value }) => value).sort()).toEqual([23.15, 23.2, 23.35]);
  });
});

import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { threadSeries } from './data.ts';
import { metricThread } from './metric-thread.ts';
import { threadFor } from './thread-for.ts';

describe('threadFor', () => {
  it.each([
    ['M8x1', 'M8x1', 8, 1],
    ['M14 x 1.25', 'M14x1.25', 14, 1.25],
    ['m8×1,25', 'M8x1.25', 8, 1.25],
    ['M8', 'M8x1.25', 8, 1.25],
    ['M 10*1.25', 'M10x1.25', 10, 1.25],
    ['M8x1-6g', 'M8x1', 8, 1],
    ['M8-5g6g', 'M8x1.25', 8, 1.25],
    ['M23.35x1', 'M23.35x1', 23.35, 1],
    ['35 mm x 1 mm', 'M35x1', 35, 1],
    ['9/16-20 UN', '9/16-20 UN', 14.2875, 1.27],
    ['9/16 x 20', '9/16-20 UN', 14.2875, 1.27],
    ['9/16 in x 20 tpi', '9/16-20 UN', 14.2875, 1.27],
    ['1/2-20', '1/2-20 UNF', 12.7, 1.27],
    ['1/2-20UNF-2A', '1/2-20 UNF', 12.7, 1.27],
    ['1/2 UNF', '1/2-20 UNF', 12.7, 1.27],
    ['.5-20', '1/2-20 UNF', 12.7, 1.27],
    ['#10-32', '#10-32 UNF', 4.826, 0.79375],
    ['10-32', '#10-32 UNF', 4.826, 0.79375],
    ['1-8 UNC', '1-8 UNC', 25.4, 3.175],
    ['1.37 in x 24', '1.37 in x 24', 34.798, 25.4 / 24],
    ['1.37" x 24 tpi', '1.37 in x 24', 34.798, 25.4 / 24],
    ['1 3/8 inch x 26', '1 3/8 in x 26', 34.925, 25.4 / 26],
    ['1-3/8 in - 26', '1 3/8 in x 26', 34.925, 25.4 / 26],
    ['36 mm x 24 tpi', '36 mm x 24 tpi', 36, 25.4 / 24],
    ['\tM8x1 ', 'M8x1', 8, 1],
    // One thing that tells inches is enough: the sign, the threads per inch, the letters, a fraction.
    ['1.5 in x 12', '1 1/2-12 UN', 38.1, 25.4 / 12],
    ['1.5 x 12 tpi', '1 1/2-12 UN', 38.1, 25.4 / 12],
    ['1.5 x 12 UN', '1 1/2-12 UN', 38.1, 25.4 / 12],
    ['1 1/2 x 12', '1 1/2-12 UN', 38.1, 25.4 / 12],
    ['2 in x 24', '2 in x 24', 50.8, 25.4 / 24],
    // Letters that claim no series fit any thread, of a series or not.
    ['1/2-24 UNS', '1/2 in x 24', 12.7, 25.4 / 24],
    ['1/2-13 UNS', '1/2-13 UNC', 12.7, 25.4 / 13],
    // Below 1/4 in there is no series of constant pitch.
    ['3/16-32', '3/16 in x 32', 4.7625, 25.4 / 32],
  ])('reads %s as %s', (text, designation, majorDiameterMm, pitchMm) => {
    const thread = threadFor(text);
    expect(thread.designation).toBe(designation);
    expect(thread.majorDiameterMm).toBeCloseTo(majorDiameterMm, 9);
    expect(thread.pitchMm).toBeCloseTo(pitchMm, 9);
    expect(thread.hand).toBe('right');
    expect(threadFor(designation)).toEqual(thread);
  });

  it.each([
    ['M8x1-LH', 'M8x1-LH'],
    ['M8 lh', 'M8x1.25-LH'],
    ['9/16-20 UN LH', '9/16-20 UN LH'],
    ['1.37 in x 24 - LH', '1.37 in x 24 LH'],
    ['36 mm x 24 tpi LH', '36 mm x 24 tpi LH'],
  ])('reads the left hand of %s', (text, designation) => {
    const thread = threadFor(text);
    expect([thread.hand, thread.designation]).toEqual(['left', designation]);
    expect(threadFor(designation)).toEqual(thread);
  });

  it('takes RH as what it is', () => {
    expect(threadFor('M8x1 RH')).toEqual(threadFor('M8x1'));
  });

  it('reads every designation of the series back', () => {
    for (const row of threadSeries) expect(threadFor(row.id).designation).toBe(row.id);
  });

  it('gives the geometry of metricThread', () => {
    expect(threadFor('M8x1')).toEqual(metricThread({ nominalDiameterMm: 8, pitchMm: 1 }));
  });

  it.each([
    ['N8x1', 'M8x1'],
    ['14 x 1.25', 'M14x1.25'],
    ['M8.5', 'M8x1.25'],
    ['1/2-20 UNC', '1/2-20 UNF'],
    ['9/16-20 UNF', '9/16-20 UN'],
    ['M8x1x2', 'M8x1.25'],
    // Blanks about the sign count for no fault.
    ['NN8 x1', 'M8x1'],
    ['NN8x 1', 'M8x1'],
    // A diameter of the fine series only has no coarse pitch to fall back on.
    ['M15', 'M14x2'],
    ['M5.5', 'M5x0.8'],
  ])('refuses %s and points to %s', (text, nearest) => {
    const error = refusal(() => threadFor(text));
    expect(error.nearest).toBe(nearest);
    expect(error.allowed).toContain('M14 x 1.25');
  });

  it.each([
    '',
    'foo',
    '1.5 x 12',
    '2 x 24',
    '0.3 UNF',
    '3/16 UNC',
    'M8x1 LHS',
    'M8x1 LH 2',
    '8-32 x',
    '7-3',
    '5/16 UNS',
    'M',
    'M8x',
    '9/16',
    'LH',
    8,
    null,
    undefined,
  ])('refuses %j', (text) => {
    expect(refusal(() => threadFor(text as never)).path).toBe('designation');
  });

  it('reads names of up to sixty signs', () => {
    expect(threadFor('M8x1'.padEnd(60))).toEqual(threadFor('M8x1'));
    expect(refusal(() => threadFor('M8x1'.padEnd(61))).path).toBe('designation');
  });

  it('refuses a name of endless length at once, and quotes its beginning only', () => {
    const refused = (): unknown => threadFor(`M${'-'.repeat(1_000_000)}`);
    expect(refused).toThrow(/received "M-{59}"; allowed/);
  });

  it('leaves impossible pitches to the geometry', () => {
    expect(refusal(() => threadFor('M8x10')).path).toBe('pitchMm');
    expect(refusal(() => threadFor('M0x1')).path).toBe('nominalDiameterMm');
  });
});

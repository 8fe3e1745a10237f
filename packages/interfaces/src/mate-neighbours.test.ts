import { describe, expect, it } from 'vitest';
import { checkMate, type MateResult } from './check-mate.ts';
import { getInterface } from './get-interface.ts';
import { getNeighbour } from './get-neighbour.ts';
import { listInterfaces } from './list-interfaces.ts';
import { listNeighbours } from './list-neighbours.ts';
import type { NeighbourKind } from './neighbour.ts';
import type { MateVerdict } from './record.ts';
import { mateResultSchema } from './schema.ts';

const LETTERS: Record<MateVerdict, string> = {
  mates: 'm',
  'mates-with-shift': 's',
  'starts-then-fails': 'f',
  'does-not-mate': 'x',
  unknown: '?',
};
const of = (male: string, female: string, more: object = {}): MateResult =>
  checkMate({ male: getNeighbour(male), female: getNeighbour(female), ...more });
const codes = (result: MateResult): string[] => result.findings.map(({ code }) => code);

// Rows are what goes in, columns what takes it, both in the order of the ids; by reasoning, not by running.
const MATRICES: Partial<Record<NeighbourKind, string>> = {
  // 24 and 26 threads an inch and a millimetre bind in each other; hands of the right cup part French from Swiss and
  // British; 47 mm and 36 mm are other diameters; 35 mm does not start in 34.8 mm.
  'shell-thread': `
    shell-bsc mxxffx
    shell-french xmxxxx
    shell-italian xxmxxx
    shell-old-british fxxmfx
    shell-swiss xxxfmx
    shell-t47 xxxxxm`,
  // 22 in 23 drops in, 23 in 23.15 to 23.35 starts and strips, a larger one does not start, 24 mm has no pitch.
  'puller-thread': `
    puller-m22x1 mxx?
    puller-m23x1 xmf?
    puller-odd-french xxm?
    puller-repair-24 xxx?`,
  // 14 mm in 9/16 in starts and binds; 9/16 in is larger than 14 mm; 1/2 in drops into both.
  'pedal-thread': `
    pedal-1-2 mxx
    pedal-14x1-25 xmf
    pedal-9-16 xxm`,
  // Bolts with bolts, nuts with nuts; the M10 has no pitch, so nothing smaller can be said of it.
  fixing: `
    bolt-m10 ???xxxxx
    bolt-m12x1 xmxxxxxx
    bolt-m15x1 xxmxxxxx
    bolt-m8x1 ?xxmxxxx
    chainring-bolt-m8x0-75 xxxxmxxx
    nut-m10x1-25 xxxxxmxx
    nut-m8x1-25 xxxxxxmx
    pinch-bolt-m6x1 xxxxxxxm`,
  // The two shells of 37 mm take a bearing alike; those of 41 mm and of 35 mm differ in the seat.
  'shell-bore': `
    shell-american mxxxxxxxxx
    shell-bore-37 xmxxxxxxx?
    shell-bore-41 xxmxxxxxxx
    shell-bore-42 xxxmxxxxxx
    shell-bore-46 xxxxmxxxxx
    shell-childrens xxxxxmxxxx
    shell-clamped xxxxxxmxxx
    shell-middle xxxxxxxmxx
    shell-plain xxxxxxxxmx
    shell-spanish x?xxxxxxxm`,
};

describe('checkMate beside the joint', () => {
  it.each(Object.entries(MATRICES))('%s: every pair', (kind, matrix) => {
    const records = listNeighbours({ kind: kind as NeighbourKind });
    const rows = matrix
      .trim()
      .split('\n')
      .map((line) => line.trim().split(' '));
    expect(rows.map(([id]) => id)).toEqual(records.map(({ id }) => id));
    for (const [index, male] of records.entries()) {
      const results = records.map((female) => checkMate({ male, female }));
      expect(results.map(({ verdict }) => LETTERS[verdict]).join(''), male.id).toBe(rows[index]?.[1]);
      for (const result of results) {
        expect(mateResultSchema.parse(result)).toEqual(JSON.parse(JSON.stringify(result)));
        expect(result.findings.some(({ message }) => message.includes('{'))).toBe(false);
        expect(result.consequence.length).toBeGreaterThan(10);
      }
    }
  });

  it('takes a ring on an arm of its own circle and no other', () => {
    const circles = listNeighbours({ kind: 'bolt-circle' });
    expect(circles).toHaveLength(19);
    for (const male of circles) {
      for (const female of circles) {
        const { verdict, findings } = checkMate({ male, female });
        expect(verdict).toBe(male === female ? 'mates' : 'does-not-mate');
        expect(findings[0]?.code).toBe(male === female ? 'bolt-circles-agree' : 'bolt-circles-differ');
      }
    }
    // Printed: 110 mm with 34 teeth.
    expect(of('bolt-circle-110x5', 'bolt-circle-110x5').findings[0]?.values.teeth).toBe(34);
  });

  it('warns of the puller that starts and strips, by its sources', () => {
    const result = of('puller-m23x1', 'puller-odd-french');
    expect(result.verdict).toBe('starts-then-fails');
    expect(result.sources).toEqual(['puller-threads-fr-wiki', 'puller-threads-odd']);
    expect(result.cautions[0]?.code).toBe('do-not-force');
  });

  it('tells the hands of cups apart, side by side', () => {
    expect(codes(of('shell-swiss', 'shell-french'))).toContain('hands-differ');
    expect(of('shell-swiss', 'shell-french', { maleSide: 'left' }).verdict).toBe('mates');
    expect(of('shell-swiss', 'shell-french', { femaleSide: 'right' }).verdict).toBe('does-not-mate');
    // A left cup has a right-hand thread, so it would go into an Italian right side but for its size.
    expect(codes(of('shell-bsc', 'shell-bsc', { maleSide: 'left', femaleSide: 'right' }))).toEqual(['hands-differ']);
  });

  it('keeps a left pedal out of a right arm', () => {
    const wrong = of('pedal-9-16', 'pedal-9-16', { maleSide: 'left', femaleSide: 'right' });
    expect([wrong.verdict, ...codes(wrong)]).toEqual(['does-not-mate', 'hands-differ']);
    expect(of('pedal-9-16', 'pedal-9-16', { maleSide: 'left', femaleSide: 'left' }).verdict).toBe('mates');
  });

  it('says of things that are no pair that they are none', () => {
    expect(codes(of('pedal-9-16', 'shell-bsc'))).toEqual(['kinds-differ']);
    expect(of('pedal-9-16', 'shell-bsc').verdict).toBe('does-not-mate');
  });
});

describe('checkMate of parts beside a joint with the joint', () => {
  const joints = listInterfaces();
  // In the order of the ids of the joints.
  const FIXINGS: [string, string][] = [
    ['bolt-m8x1', 'xx?xx?xxmm?xmxxx?x?x'],
    ['bolt-m12x1', 'xx?x????xx?xxxxx?x?x'],
    ['bolt-m15x1', 'xx?x????xx?xxxxx?x?x'],
    ['pinch-bolt-m6x1', 'xxxxxxxxxxxxx??mxmxm'],
    ['puller-m22x1', 'xxxxmxmmmmmmmxxxxxxx'],
    ['puller-m23x1', 'xxxxxxxx??xxxxxxxxxx'],
    ['pedal-9-16', '????????????????????'],
  ];
  it.each(FIXINGS)('%s in every joint', (id, row) => {
    const male = getNeighbour(id);
    expect(joints.map((female) => LETTERS[checkMate({ male, female }).verdict]).join('')).toBe(row);
  });

  it('puts a nut on a stud and nowhere else', () => {
    const female = getNeighbour('nut-m10x1-25');
    const verdict = (id: string): MateVerdict => checkMate({ male: getInterface(id), female }).verdict;
    // Sources give two threads for the stud, and none of them as the usual one.
    expect(verdict('square-taper-nutted')).toBe('unknown');
    expect(codes(checkMate({ male: getInterface('square-taper-nutted'), female }))[0]).toBe('threads-vary');
    expect(verdict('spline-10')).toBe('does-not-mate');
    expect(codes(checkMate({ male: getInterface('spline-10'), female: getNeighbour('shell-bsc') }))).toEqual([
      'interface-does-not-tell',
    ]);
  });

  it('reminds of the tip of the puller, by the joint', () => {
    const tip = (id: string): string | undefined =>
      checkMate({ male: getNeighbour('puller-m22x1'), female: getInterface(id) }).findings.find(
        ({ code }) => code === 'puller-tip',
      )?.message;
    expect(tip('square-taper-jis')).toContain('pass the square hole');
    expect(tip('spline-10')).toContain('too small');
  });

  it('says that the usual thread is not the only one', () => {
    const result = checkMate({ male: getNeighbour('bolt-m8x1'), female: getInterface('square-taper-jis') });
    expect(codes(result)).toEqual(['thread-agrees', 'threads-vary']);
  });
});

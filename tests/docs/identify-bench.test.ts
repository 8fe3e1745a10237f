// What the identify page says, asked of its bench: of readings that somebody took, with their uncertainty, and of no others.
import { identifyBore, identifySpindle, identifyThread } from '@spindlewright/interfaces';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerOf, type Block, readState, type State, writeState } from '../../docs/bench/logic/bench.ts';
import { identifyBench } from '../../docs/bench/logic/identify-bench.ts';
import { seatBench } from '../../docs/bench/logic/seat-bench.ts';
import { toField } from '../../docs/bench/logic/units.ts';
import { idsIn, textsOf } from './bench-texts.ts';

const { defaults } = identifyBench;
const PARTS = ['spindle', 'bore', 'thread'] as const;
const ask = (filled: State, units: 'metric' | 'inch' = 'metric'): readonly Block[] =>
  answerOf(identifyBench, { state: { ...defaults, ...filled }, units });
const headline = (blocks: readonly Block[]) => blocks.find((block) => block.kind === 'headline');
const values = (blocks: readonly Block[]) => blocks.flatMap((block) => (block.kind === 'values' ? block.rows : []));
const action = (blocks: readonly Block[]) =>
  blocks.flatMap((block) => (block.kind === 'actions' ? block.actions : []))[0] ?? { label: '', set: {} };
const shares = (blocks: readonly Block[]) =>
  blocks.flatMap((block) => (block.kind === 'bars' ? block.rows.map(({ share }) => share) : []));
const seatSearch = (blocks: readonly Block[]): string =>
  blocks
    .flatMap((block) => (block.kind === 'links' ? block.links : []))
    .find(({ href }) => href.startsWith('./seat.html'))?.href ?? '';
const fieldsOf = (filled: State) =>
  identifyBench.groups({ state: { ...defaults, ...filled }, units: 'metric' }).flatMap(({ fields }) => fields);
const refusal = 'This does not go together yet';

describe('the identify page', () => {
  it.each(PARTS)('starts with nothing that nobody read: %s', (what) => {
    expect(Object.entries(defaults).filter(([, text]) => text !== '')).toEqual([['what', 'spindle']]);
    const blocks = ask({ what });
    expect(headline(blocks)).toMatchObject({ tone: 'plain', text: 'Fill in one reading to begin' });
    expect(shares(blocks)).toEqual([]);
    for (const other of PARTS) if (other !== what) expect(textsOf(ask({ what: other }))).not.toEqual(textsOf(blocks));
  });

  it.each(PARTS)('says of an example that it is one, as long as any of it stands: %s', (what) => {
    const { label, set } = action(ask({ what }));
    expect(label).toBe('try it with an invented example');
    const state = readState(writeState({ ...defaults, what, ...set }, defaults, 'metric'), defaults);
    const blocks = ask(state);
    expect(headline(blocks)?.text).toMatch(/^Invented example: /);
    expect(headline(blocks)?.tone).toBe('care');
    expect(seatSearch(blocks)).toBe('');
    expect(headline(ask({ ...state, ...action(blocks).set }))?.text).toBe('Fill in one reading to begin');
    expect(headline(ask({ ...state, example: '' }))?.text).not.toContain('example');

    const [first = '', second = ''] = Object.keys(set);
    const partly = { ...state, [first]: String(Number(set[first]) + 0.01) };
    const said = headline(ask(partly));
    expect(said?.text).toMatch(/^Partly an invented example: /);
    const label2 =
      fieldsOf(partly)
        .find(({ key }) => key === second)
        ?.label.toLowerCase() ?? 'none';
    expect(said?.detail).toContain(label2);
    const search = new URLSearchParams(seatSearch(ask(partly)).split('?')[1]);
    expect([...search.values()]).toEqual(what === 'thread' ? [] : [partly[first]]);
  });

  it('hands to the seat what was read at the end or mouth, by keys that it knows', () => {
    const search = (filled: State) => Object.fromEntries(new URLSearchParams(seatSearch(ask(filled)).split('?')[1]));
    expect(search({ flats: '12.65', length: '15' })).toEqual({ sEnd: '12.65', sFlats: '15' });
    expect(search({ flats: '12.9', at: '4' })).toEqual({});
    expect(search({ flats: '12.9', at: '4', flats2: '12.65', at2: '0' })).toEqual({ sEnd: '12.65' });
    expect(search({ what: 'bore', mouth: '13.55', bore: '15.5' })).toEqual({ aMouth: '13.55', aBore: '15.5' });
    expect(search({ what: 'bore', mouth: '13.5', mouthAt: '2' })).toEqual({});
    expect(search({ what: 'bore', diameter: '24' })).toEqual({});
    for (const key of ['sEnd', 'sFlats', 'aMouth', 'aBore']) expect(seatBench.defaults).toHaveProperty(key, '');
  });

  it('gives every reading the uncertainty that was filled in, and says which it took where none was', () => {
    const spindle = { flats: '12.65', at: '1', flats2: '12.93', at2: '5', length: '15' };
    const filled = ask({ ...spindle, u: '0.02', uDepth: '0.3' });
    const about = (value: number, standardUncertainty: number) => ({ value, standardUncertainty });
    const { candidates } = identifySpindle({
      acrossFlatsMm: about(12.65, 0.02),
      atMm: about(1, 0.3),
      readings: [{ acrossFlatsMm: about(12.93, 0.02), atMm: about(5, 0.3) }],
      flatLengthMm: about(15, 0.3),
    });
    expect(shares(filled)).toEqual(
      candidates.filter(({ probability }, index) => index < 2 || probability >= 0.01).map((one) => one.probability),
    );
    expect(values(filled).map(({ note }) => note)).toEqual(
      [0.02, 0.3, 0.02, 0.3, 0.3].map((u) => `standard uncertainty ${u} mm, as filled in`),
    );
    expect(values(ask({ flats: '12.65', u: '0.02' })).map(({ note }) => note)).toEqual([
      'standard uncertainty 0.02 mm, as filled in',
      'standard uncertainty 0.5 mm, a judgement, since none was filled in',
    ]);
    expect(values(ask({ what: 'thread', threadDiameter: '14.2' }))[1]?.value).toBe(
      '4 mm, taken for what was left empty',
    );
    // 0.02 mm of 1.27 mm is as much of 20 threads: 20 x 0.02/1.27 = 0.315.
    expect(values(ask({ what: 'thread', tpi: '20', uPitch: '0.02' }))[0]?.note).toMatch(
      /^standard uncertainty 0\.315 ?,/,
    );
  });

  it('takes for an uncertainty that is not filled in what the library itself would take', () => {
    const plain: [State, readonly { probability: number }[]][] = [
      [
        { flats: '12.6', at: '2', length: '14' },
        identifySpindle({ acrossFlatsMm: 12.6, atMm: 2, flatLengthMm: 14 }).candidates,
      ],
      [
        { what: 'bore', mouth: '13.5', mouthAt: '1', bore: '16' },
        identifyBore({ acrossFlatsMm: 13.5, atMm: 1, boreLengthMm: 16 }).candidates,
      ],
      [{ what: 'bore', diameter: '24' }, identifyBore({ diameterMm: 24 }).candidates],
      ...(['internal', 'external', ''] as const).map((kind): [State, readonly { probability: number }[]] => [
        { what: 'thread', threadDiameter: '13.9', pitch: '1.25', kind },
        identifyThread({ diameterMm: 13.9, pitchMm: 1.25, ...(kind === '' ? {} : { kind }) }).candidates,
      ]),
      [
        { what: 'thread', threadDiameter: '14.2', threadAt: '2', tpi: '20' },
        identifyThread({ diameterMm: 14.2, atMm: 2, threadsPerInch: 20 }).candidates,
      ],
    ];
    for (const [filled, candidates] of plain) {
      const blocks = ask(filled);
      shares(blocks).forEach((share, index) => {
        expect(share).toBeCloseTo(candidates[index]?.probability ?? Number.NaN, 12);
      });
      expect(shares(blocks).length).toBeGreaterThan(1);
      expect(textsOf(blocks).join('\n')).not.toContain('without an uncertainty');
    }
  });

  it('names by its label what cannot be', () => {
    expect(values(ask({ flats: '-1', at: 'abc', length: '15' }))).toEqual([
      { label: 'Across flats', value: '−1 is out of range: 8 to 20 mm' },
      { label: 'Depth of the jaws from the end', value: '“abc” is not a number' },
    ]);
    // Its field shows it as it came, instead of taking the page down.
    for (const text of ['abc', '1e999']) expect(toField(text, 'length', 'inch')).toBe(text);
    expect(values(ask({ flats: '-1' }, 'inch'))[0]?.value).toBe('−0.0394 is out of range: 0.315 to 0.7874 in');
    const says: [State, string, string][] = [
      [{ flats: '8.05' }, 'Across flats', '8.05 mm with three times its uncertainty of 0.03 mm is out of range'],
      [{ length: '15', at: '2' }, 'Depth of the jaws from the end', 'fill in “Across flats” as well'],
      [{ what: 'bore', diameter: '24', mouth: '13' }, 'Diameter of a round bore', 'empty one of the two'],
      [{ what: 'bore', toothed: 'yes', bore: '15' }, 'Wall of a round bore', 'empty one of the two'],
      [{ what: 'thread', pitch: '1', tpi: '24' }, 'Pitch', 'stands beside “Threads per inch”'],
      [{ what: 'thread', threadDiameter: '6', tpi: '8' }, 'Threads per inch', '3.175 mm on a diameter of 6 mm'],
      [{ what: 'thread', pitch: '1', hand: 'both' }, 'It tightens', '“both” is none of its answers'],
      [{ what: 'pedal' }, 'Part', '“pedal” is none of its answers'],
      [{ flats: '12.65', u: '-0.1' }, 'Uncertainty across flats', '−0.1 is out of range: 0 to 3 mm'],
    ];
    for (const [filled, label, value] of says) {
      expect(headline(ask(filled))?.text).toBe(refusal);
      const rows = values(ask(filled));
      expect(rows.map((row) => row.label)).toContain(label);
      expect(rows.find((row) => row.label === label)?.value).toContain(value);
    }
  });

  it('answers or refuses in words whatever an address holds', () => {
    const numbers = ['0', '0.5', '1.27', '4', '8.5', '12.65', '14.2', '15', '24', '39'];
    const others = ['', ' ', 'abc', '-1', '1e9', 'Infinity', 'yes', 'left', 'external'];
    const text = fc.oneof(fc.constantFrom(...numbers), fc.constantFrom(...numbers, ...others));
    // Few fields of a part at a time, or all that there are: with many of them nearly every case is refused.
    const filling = fc.constantFrom(...PARTS).chain((what) => {
      const own = fieldsOf({ what }).flatMap(({ key }) => (key === 'what' ? [] : [key]));
      const filled = (list: readonly string[]) => fc.record(Object.fromEntries(list.map((key) => [key, text])));
      return fc
        .oneof(fc.subarray(own, { minLength: 1, maxLength: 3 }), fc.subarray(Object.keys(defaults)))
        .chain(filled)
        .map((some): State => ({ ...some, what }));
    });
    const keys = new Set(Object.keys(defaults));
    let refused = 0;
    let named = 0;
    fc.assert(
      fc.property(filling, (state) => {
        const blocks = identifyBench.answer({ state: { ...defaults, ...state }, units: 'metric' });
        const labels = fieldsOf(state).map(({ label }) => label);
        if (headline(blocks)?.text === refusal) {
          refused += 1;
          expect(values(blocks).length).toBeGreaterThan(0);
          expect(values(blocks).filter(({ label }) => !labels.includes(label))).toEqual([]);
        } else if (shares(blocks).length > 0) named += 1;
        expect(idsIn(textsOf(blocks), keys)).toEqual([]);
        expect(textsOf(blocks).join('\n')).not.toMatch(/NaN|undefined|Infinity mm/);
      }),
      { numRuns: 1000 },
    );
    expect(refused).toBeGreaterThan(50);
    expect(named).toBeGreaterThan(50);
  });

  it('takes readings as far as the library does with their uncertainty, and no farther', () => {
    for (const what of PARTS) {
      const fields = fieldsOf({ what }).filter(({ type, key }) => type === 'number' && !/^u/.test(key));
      expect(fields.length).toBeGreaterThanOrEqual(4);
      for (const { key, min = Number.NaN, max = Number.NaN } of fields) {
        const size = { at: 'flats', at2: 'flats2', mouthAt: 'mouth', threadAt: 'threadDiameter' }[key];
        const exact: State = {
          what,
          u: '0.001',
          uDepth: '0.001',
          uPitch: '0.000001',
          ...(size ? { [size]: '12.65' } : {}),
        };
        const near = 0.004;
        const start = size === undefined ? min + near : min;
        for (const value of [start, max - near])
          expect(headline(ask({ ...exact, [key]: String(value) }))?.text).not.toBe(refusal);
        for (const value of [min - near, max + near])
          expect(headline(ask({ ...exact, [key]: String(value) }))?.text).toBe(refusal);
      }
    }
  });

  it('calls an interface by its title', () => {
    const blocks = ask({ what: 'bore', diameter: '24', toothed: 'yes' });
    expect(textsOf(blocks).join('\n')).toContain('through spindle of 24 mm');
    expect(textsOf(blocks).join('\n')).not.toMatch(/spline-48|through-spindle-/);
  });
});

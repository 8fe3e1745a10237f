import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { screenedPartSchema, screenSummarySchema } from '../schema.ts';
import type { Mapping } from './mapping.ts';
import type { Need } from './need.ts';
import { screenParts } from './screen-parts.ts';
import type { ScreenedPart } from './screened.ts';

const ARM: Need = { format: 'spindlewright-need-1', for: 'arm', interface: 'square-taper-jis', side: 'drive' };
const part = { partId: 'P', kind: 'arm', interface: 'square-taper-jis', side: 'drive' };

async function screen(need: Need, rows: readonly unknown[], mapping?: Mapping) {
  const screening = screenParts({ need, parts: rows, ...(mapping === undefined ? {} : { mapping }) });
  const told: ScreenedPart[] = [];
  for await (const one of screening) told.push(one);
  return { told, summary: screening.summary() };
}

const stateOf = async (need: Need, row: object, mapping?: Mapping): Promise<string> => {
  const [one] = (await screen(need, [{ partId: 'P', ...row }], mapping)).told;
  return `${one?.state} ${one?.missingFact ?? one?.reasons[0]?.code}`;
};

describe('screenParts: arms by their names', () => {
  // By reasoning on the row: what rules out outweighs what is missing, and the first missing fact is named.
  it.each<[string, object, string]>([
    ['the same joint', part, 'fits meant-to-interchange'],
    ['another square', { ...part, interface: 'square-taper-iso' }, 'cannot-tell trialFit.shoulderGapMm'],
    ['another family', { ...part, interface: 'spline-10' }, 'does-not-fit families-differ'],
    ['another kind', { ...part, kind: 'bolt' }, 'does-not-fit another-kind'],
    ['no kind', { interface: 'square-taper-jis' }, 'cannot-tell kind'],
    ['no joint', { kind: 'arm', side: 'drive' }, 'cannot-tell interface'],
    ['no joint, other side', { kind: 'arm', side: 'non-drive' }, 'does-not-fit another-side'],
    ['no side', { kind: 'arm', interface: 'square-taper-jis' }, 'cannot-tell side'],
    ['a pair', { ...part, side: 'pair' }, 'fits meant-to-interchange'],
    ['both sides in one cell', { ...part, side: 'L/R' }, 'fits meant-to-interchange'],
    ['several joints, one of which would fit', { ...part, interface: 'JIS/ISO' }, 'cannot-tell interface'],
    [
      'several joints, none of which would',
      { ...part, interface: ['spline-10', 'cottered-metric'] },
      'does-not-fit families-differ',
    ],
    ['the joint in the title only', { ...part, interface: '', title: 'Arm, JIS' }, 'fits meant-to-interchange'],
    [
      'a title that narrows the cell',
      { ...part, interface: 'square taper', title: 'JIS' },
      'fits meant-to-interchange',
    ],
    ['a title that contradicts the cell', { ...part, title: 'Arm ISO' }, 'cannot-tell interface'],
    ['a title that denies', { ...part, interface: '', title: 'not for JIS' }, 'cannot-tell interface'],
    ['N/A', { ...part, interface: 'N/A' }, 'cannot-tell interface'],
    ['a word that nobody explained', { ...part, interface: 'Typ 7' }, 'cannot-tell interface'],
    ['an id that is a method of every object', { ...part, interface: 'constructor' }, 'cannot-tell interface'],
  ])('%s', async (_name, row, wanted) => {
    expect(await stateOf(ARM, row)).toBe(wanted);
  });

  it.each<[unknown, string]>([
    ['170', 'fits meant-to-interchange'],
    ['170,0 mm', 'fits meant-to-interchange'],
    ['17 cm', 'fits meant-to-interchange'],
    [170, 'fits meant-to-interchange'],
    ['6.693"', 'fits meant-to-interchange'],
    ['172,5 mm', 'does-not-fit another-arm-length'],
    ['1.7E+02', 'cannot-tell armLengthMm'],
    ['17. Jan', 'cannot-tell armLengthMm'],
    ['170/175', 'cannot-tell armLengthMm'],
    ['1,700', 'cannot-tell armLengthMm'],
    ['17', 'cannot-tell armLengthMm'],
    [{ deep: [] }, 'cannot-tell armLengthMm'],
    ['', 'cannot-tell armLengthMm'],
  ])('length %s', async (armLengthMm, wanted) => {
    expect(await stateOf({ ...ARM, armLengthMm: 170 }, { ...part, armLengthMm })).toBe(wanted);
  });
});

describe('screenParts: other kinds', () => {
  const need = (rest: object): Need => ({ format: 'spindlewright-need-1', for: 'arm', ...rest }) as Need;
  it.each<[Need, object, string]>([
    [need({ for: 'bolt', interface: 'square-taper-jis' }), { kind: 'bolt', thread: 'M8 x 1' }, 'fits thread-agrees'],
    [
      need({ for: 'bolt', interface: 'square-taper-jis' }),
      { kind: 'bolt', thread: 'M15x1' },
      'does-not-fit thread-too-large',
    ],
    [need({ for: 'bolt', thread: 'bolt-m8x1' }), { kind: 'bolt' }, 'cannot-tell thread'],
    [need({ for: 'pedals', thread: 'pedal-9-16' }), { kind: 'pedals', thread: '9/16"' }, 'fits thread-agrees'],
    [need({ for: 'pedals', thread: 'pedal-9-16' }), { kind: 'pedals', thread: '16. Sep' }, 'cannot-tell thread'],
    [need({ for: 'puller', interface: 'square-taper-iso' }), { kind: 'puller', thread: 'M22x1' }, 'fits thread-agrees'],
    [
      need({ for: 'chainring', boltCircle: 'bolt-circle-110x5' }),
      { kind: 'chainring', boltCircleMm: 110, boltCount: 5 },
      'fits same-bolt-circle',
    ],
    [
      need({ for: 'chainring', boltCircle: 'bolt-circle-110x5' }),
      { kind: 'chainring', boltCircleMm: 130 },
      'does-not-fit another-bolt-circle',
    ],
    [
      need({ for: 'chainring', boltCircle: 'bolt-circle-110x5' }),
      { kind: 'chainring', boltCircleMm: '110' },
      'cannot-tell boltCount',
    ],
    // The record of 110 mm, five arms: the smallest ring has 34 teeth.
    [
      need({ for: 'chainring', boltCircle: 'bolt-circle-110x5' }),
      { kind: 'chainring', boltCircleMm: 110, boltCount: 5, toothCount: 30 },
      'does-not-fit ring-too-small',
    ],
    [
      need({ for: 'spindle', interface: 'square-taper-jis', shell: 'shell-bsc' }),
      { kind: 'spindle', interface: 'JIS', shell: 'Italian' },
      'does-not-fit thread-too-large',
    ],
  ])('%o, %o', async (wanted, row, told) => {
    expect(await stateOf(wanted, row)).toBe(told);
  });

  it('reckons the chainline of a symmetric spindle by half of its change', async () => {
    const spindle = need({ for: 'spindle', interface: 'square-taper-jis', spindleLengthMm: 115 });
    const { told } = await screen(spindle, [
      { partId: 'S', kind: 'spindle', interface: 'JIS', spindleLengthMm: '122,5 mm' },
    ]);
    // (122.5 - 115) / 2
    expect(told[0]?.chainlineEffectMm?.nominal).toBeCloseTo(3.75, 12);
  });

  it('lets stated sizes outweigh names', async () => {
    const read = { ...ARM, spindle: { flats: [{ acrossFlatsMm: 12.73, atMm: 0, pair: 'a' as const }] } };
    const { told } = await screen(read, [
      { ...part, acrossFlatsAtMouthMm: 14.2, boreLengthMm: 20 },
      { ...part, partId: 'Q', side: 'non-drive', acrossFlatsAtMouthMm: 13.6, boreLengthMm: 20 },
    ]);
    // 14.2 - 12.73 at 0.0698 mm a millimetre is 21 mm: past any flat of 16 mm.
    expect([told[0]?.state, told[0]?.basis, told[0]?.reasons[0]?.code]).toEqual([
      'does-not-fit',
      'sizes',
      'seat-by-readings',
    ]);
    expect(told[1]?.state).toBe('does-not-fit');
  });
});

describe('screenParts: rows', () => {
  it('counts everything and drops nothing', async () => {
    const rows = [
      part,
      part,
      { ...part, partId: '' },
      { ...part, partId: '1.2E+10' },
      null,
      'x',
      [1],
      { ...part, partId: 'Z', kind: 'bell' },
    ];
    const { told, summary } = await screen(ARM, rows);
    expect(told.map(({ state }) => state)).toEqual([
      'fits',
      'fits',
      'refused',
      'refused',
      'refused',
      'refused',
      'refused',
      'cannot-tell',
    ]);
    expect(summary.fitsCount + summary.doesNotFitCount + summary.cannotTellCount + summary.refusedCount).toBe(
      rows.length,
    );
    expect([summary.rowCount, summary.duplicateCount]).toEqual([rows.length, 1]);
    expect(summary.unmappedWords).toEqual([{ field: 'kind', word: 'bell', rowCount: 1 }]);
    expect(told[1]?.reasons.at(-1)?.code).toBe('duplicate-part-id');
    for (const one of told) expect(screenedPartSchema.parse(one)).toEqual(JSON.parse(JSON.stringify(one)));
    expect(screenSummarySchema.parse(summary)).toEqual(JSON.parse(JSON.stringify(summary)));
  });

  it('notices zeros that an id has lost', async () => {
    const mapping: Mapping = {
      format: 'spindlewright-mapping-1',
      columns: { partId: { column: 'partId', digitCount: 8 } },
    };
    const { told } = await screen(ARM, [{ partId: '123' }, { partId: '00000123' }], mapping);
    expect(told.map(({ state }) => state)).toEqual(['refused', 'cannot-tell']);
  });

  it('takes an async iterable', async () => {
    async function* rows() {
      yield part;
    }
    const told = [];
    for await (const one of screenParts({ need: ARM, parts: rows() })) told.push(one.state);
    expect(told).toEqual(['fits']);
  });

  it.each<[string, object, string]>([
    ['a need for a joint that is none', { need: { ...ARM, interface: 'square-taper-jsi' } }, 'interface'],
    ['a need without a joint', { need: { format: ARM.format, for: 'arm' } }, 'interface'],
    [
      'a mapping of an unknown field',
      { need: ARM, mapping: { format: 'spindlewright-mapping-1', columns: { partId: 'a', colour: 'b' } } },
      'columns.colour',
    ],
    [
      'a mapping without an id',
      { need: ARM, mapping: { format: 'spindlewright-mapping-1', columns: {} } },
      'columns.partId',
    ],
  ])('refuses %s', (_name, input, path) => {
    try {
      screenParts({ parts: [], ...input } as never);
      expect.unreachable();
    } catch (error) {
      if (!isDomainError(error)) throw error;
      expect(error.path).toBe(path);
    }
  });
});

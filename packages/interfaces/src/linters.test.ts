import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type LintException, lint, linters } from '../scripts/linters.ts';
import { type RawData, readRawData } from '../scripts/raw-data.ts';

const exceptions: LintException[] = JSON.parse(
  readFileSync(new URL('../scripts/lint-exceptions.json', import.meta.url), 'utf8'),
);
const raw = readRawData();
const seeded = (change: (data: RawData) => void): RawData => {
  const data = structuredClone(raw);
  change(data);
  return data;
};
const joint = (data: RawData, id: string) => find(data.records, id);
const part = (data: RawData, id: string) => find(data.neighbours, id);
function find<T extends { id: string }>(records: readonly T[], id: string): T {
  const record = records.find((one) => one.id === id);
  if (record === undefined) throw new Error(`no record ${id}`);
  return record;
}

describe('linters of the data', () => {
  it('find nothing that no exception covers', () => {
    expect(lint(raw, exceptions)).toEqual([]);
  });

  // One fault for each linter, so that it is known to bite, and where it bites.
  const FAULTS: Record<string, [(data: RawData) => void, string]> = {
    'no-bare-numbers': [(data) => Object.assign(part(data, 'tread'), { widthMm: 150 }), 'tread.widthMm'],
    'sources-known': [
      (data) => Object.assign(joint(data, 'spline-10').interchange, { sources: ['no-such-page'] }),
      'spline-10.interchange',
    ],
    'standing-sourced': [
      (data) => Object.assign(joint(data, 'spline-10').interchange, { standing: 'secondary', sources: [] }),
      'spline-10.interchange',
    ],
    'editions-named': [
      (data) => Object.assign(joint(data, 'spline-10').interchange, { standing: 'standard' }),
      'spline-10.interchange',
    ],
    'ids-unique': [(data) => Object.assign(part(data, 'tread'), { id: 'arm-lengths' }), 'records'],
    'no-proper-names': [(data) => Object.assign(part(data, 'tread'), { title: 'Tread by Example' }), 'tread.title'],
    'plausible-ranges': [
      (data) => {
        const record = part(data, 'bolt-circle-110x5');
        if (record.kind === 'bolt-circle') record.boltCircleDiameterMm.value = 11;
      },
      'bolt-circle-110x5:boltCircleDiameterMm',
    ],
    'inner-below-outer': [
      (data) => {
        const record = joint(data, 'spline-10');
        if (record.family === 'spline') Object.assign(record.geometry.minorDiameterMm ?? {}, { value: 23 });
      },
      'spline-10 minor, major',
    ],
    'thread-geometry': [
      (data) => {
        const record = part(data, 'bolt-m12x1');
        // As one page prints it, against its own formula.
        if (record.kind === 'fixing') Object.assign(record.thread.stressAreaMm2 ?? {}, { value: 98 });
      },
      'bolt-m12x1:thread.stressAreaMm2',
    ],
    'hole-spacing': [
      (data) => {
        const record = part(data, 'bolt-circle-130x5');
        if (record.kind === 'bolt-circle') record.holeSpacingMm.value = 76.5;
      },
      'bolt-circle-130x5:holeSpacingMm',
    ],
    'one-edition': [(data) => Object.assign(part(data, 'tread'), { dataEdition: '2025.01' }), 'tread'],
    'rules-of-mating': [
      (data) => Object.assign(joint(data, 'cottered-inch').mating[0] ?? {}, { arm: 'cottered-imperial' }),
      'cottered-inch:mating[metric-arm-on-inch-spindle]',
    ],
    'observations-complete': [
      (data) =>
        Object.assign(data.observations.find(({ family }) => family === 'cottered')?.meanings[0] ?? {}, {
          check: 'smell',
        }),
      'observations-cottered:meanings[arm-alignment-one-step-off]',
    ],
  };

  it('have a seeded fault each', () => {
    expect(Object.keys(FAULTS)).toEqual(linters.map(({ id }) => id));
  });

  it.each(Object.entries(FAULTS))('%s finds its fault', (id, [change, place]) => {
    const faults = lint(seeded(change), exceptions).filter(({ linter }) => linter === id);
    expect(faults.map((fault) => fault.place)).toContain(place);
  });

  it('refuse what is invented, a unit that is another, a number of no known kind and a designation that says another pitch', () => {
    const places = (change: (data: RawData) => void): string[] =>
      lint(seeded(change), exceptions).map(({ place }) => place);
    expect(places((data) => Object.assign(joint(data, 'one-piece').interchange, { standing: 'invented' }))).toEqual([
      'one-piece.interchange',
    ]);
    const circle = (change: object) => (data: RawData) => {
      const record = part(data, 'bolt-circle-110x5');
      if (record.kind === 'bolt-circle') Object.assign(record.smallestRing, change);
    };
    expect(places(circle({ unit: 'mm' }))).toEqual(['bolt-circle-110x5:smallestRing']);
    const odd = { colour: { value: 3, unit: 'mm', standing: 'judgement', sources: [] } };
    expect(places((data) => Object.assign(part(data, 'tread'), odd))).toEqual(['tread:colour']);
    const bolt = (data: RawData): void => {
      const record = part(data, 'bolt-m8x1');
      if (record.kind === 'fixing') record.thread.designation = 'M8';
    };
    expect(places(bolt)).toEqual(['bolt-m8x1:thread.designation']);
  });
});

describe('exceptions of the linters', () => {
  it('have an end, and are faults after it', () => {
    const ended = lint(raw, exceptions, '2028.11');
    expect(ended.filter(({ message }) => message.includes('ended')).map(({ place }) => place)).toEqual(
      exceptions.map(({ place }) => place),
    );
    // What they covered comes back as well.
    expect(ended).toHaveLength(2 * exceptions.length);
  });

  it('are faults when they cover nothing', () => {
    const idle = { linter: 'hole-spacing', place: 'nowhere', why: 'none', until: '2099.01' };
    expect(lint(raw, [...exceptions, idle])).toEqual([
      { linter: 'hole-spacing', place: 'nowhere', message: 'the exception covers nothing' },
    ]);
  });

  it('say why', () => {
    for (const { why, until } of exceptions) {
      expect(why.length).toBeGreaterThan(20);
      expect(until).toMatch(/^\d{4}\.\d{2}$/);
    }
  });
});

import { describe, expect, it } from 'vitest';
import { isDomainError } from './domain-error.ts';
import { sourceSchema } from './schema.ts';
import register from './sources.json' with { type: 'json' };
import { getSource, listSources, toBibtex, toCslJson } from './sources.ts';

const ids = listSources().map(({ id }) => id);
const refusal = (issue: object): Error => expect.objectContaining({ name: 'DomainError', issues: [issue] }) as Error;

describe('the register', () => {
  it('follows the schema, record by record', () => {
    const faults = listSources().flatMap((source) => {
      const { error } = sourceSchema.safeParse(source);
      return error === undefined ? [] : [`${source.id}: ${error.message}`];
    });
    expect(faults).toEqual([]);
  });

  it('has each id and each title with its place once', () => {
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    const places = listSources().map(({ title, edition, locator }) => `${title} | ${edition} | ${locator}`);
    expect(places.filter((place, index) => places.indexOf(place) !== index)).toEqual([]);
  });

  it('is sorted by id, so that additions do not collide', () => {
    expect(ids).toEqual([...ids].sort());
  });

  it('has no stray blanks and no leftover', () => {
    const texts = listSources().flatMap((source) => Object.values(source) as string[]);
    expect(texts.filter((text) => text !== text.trim() || /\s\s|TODO|TBD|\?\?/i.test(text))).toEqual([]);
  });
});

describe('listSources', () => {
  it('lists the whole register', () => {
    expect(listSources()).toEqual(register);
    expect(ids.length).toBeGreaterThan(100);
  });

  it('gives records that can be changed without harm', () => {
    const [first] = listSources();
    if (first === undefined) throw new Error('the register is empty');
    const { title } = first;
    first.title = 'changed';
    expect(listSources()[0]?.title).toBe(title);
    expect(getSource(first.id).title).toBe(title);
  });
});

describe('getSource', () => {
  it('finds every id', () => {
    for (const source of listSources()) expect(getSource(source.id)).toEqual(source);
  });

  it('gives a record that can be changed without harm', () => {
    getSource('shigley-9').publisher = 'changed';
    expect(getSource('shigley-9').publisher).toBe('McGraw-Hill');
  });

  it('refuses an unknown id with the nearest one', () => {
    expect(() => getSource('shigly-9')).toThrow(
      refusal({
        path: 'id',
        received: '"shigly-9"',
        allowed: 'an id that listSources() gives',
        nearest: 'shigley-9',
      }),
    );
  });

  it.each<[unknown, string]>([
    ['nothing-like-it-at-all', '"nothing-like-it-at-all"'],
    ['', '""'],
    [undefined, 'nothing'],
    [0, '0'],
    [['shigley-9'], 'a list of 1'],
  ])('refuses %o', (id, received) => {
    expect(() => getSource(id as string)).toThrow(
      refusal({ path: 'id', received, allowed: 'an id that listSources() gives' }),
    );
  });
});

describe('toCslJson', () => {
  it('gives one item an id, in the order asked', () => {
    expect(toCslJson(['shigley-9', 'iso-68-1'])).toEqual([
      {
        id: 'shigley-9',
        type: 'document',
        title: "Shigley's Mechanical Engineering Design",
        edition: '9th edition',
        publisher: 'McGraw-Hill',
        note: getSource('shigley-9').locator,
      },
      {
        id: 'iso-68-1',
        type: 'document',
        title: 'ISO 68-1: ISO general purpose screw threads, basic profile, metric',
        publisher: 'ISO',
        note: getSource('iso-68-1').locator,
      },
    ]);
  });

  it('leaves out what is not known, and gives nothing for nothing', () => {
    expect(Object.keys(toCslJson(['taper-tech-notes'])[0] ?? {})).toEqual(['id', 'type', 'title', 'note']);
    expect(toCslJson([])).toEqual([]);
  });

  it('takes the whole register', () => {
    const items = toCslJson(ids);
    expect(items.map(({ id }) => id)).toEqual(ids);
    expect(JSON.parse(JSON.stringify(items))).toEqual(items);
  });
});

describe('toBibtex', () => {
  it('writes an entry', () => {
    expect(toBibtex(['nist-sp-811'])).toBe(
      [
        '@misc{nist-sp-811,',
        '  title = {NIST Special Publication 811: guide for the use of the SI},',
        '  edition = {2008},',
        '  publisher = {NIST},',
        '  note = {NIST SP 811, appendix B}',
        '}',
        '',
      ].join('\n'),
    );
  });

  it('escapes what TeX would take as a command', () => {
    expect(toBibtex(['metric-stress-areas'])).toContain('ux.uis.no/\\textasciitilde{}hirpa/6KdB/ME/StressArea.htm');
    expect(toBibtex(['openscad-mcad'])).toContain('nuts\\_and\\_bolts.scad');
  });

  it('closes every brace over the whole register, one entry an id', () => {
    const text = toBibtex(ids);
    const keys = [...text.matchAll(/^@misc\{([^,]+),$/gm)].map(([, key]) => key);
    expect(keys).toEqual(ids);
    const bare = text.replace(/\\[{}]/g, '');
    expect(bare.split('{').length).toBe(bare.split('}').length);
    expect(text).not.toMatch(/(^|[^\\])[%&$#]/);
  });

  it('gives nothing for nothing', () => {
    expect(toBibtex([])).toBe('');
  });
});

describe.each([
  ['toCslJson', toCslJson],
  ['toBibtex', toBibtex],
] as const)('%s', (_name, cite) => {
  it('names the place of an unknown id in the list', () => {
    expect(() => cite(['shigley-9', 'iso-681'])).toThrow(
      refusal({
        path: 'ids[1]',
        received: '"iso-681"',
        allowed: 'an id that listSources() gives',
        nearest: 'iso-68-1',
      }),
    );
  });

  it.each<[unknown, string]>([
    ['shigley-9', '"shigley-9"'],
    [undefined, 'nothing'],
    [new Set(['shigley-9']), 'an empty object'],
  ])('refuses %o, which is no list', (input, received) => {
    expect(() => cite(input as string[])).toThrow(refusal({ path: 'ids', received, allowed: 'a list of ids' }));
  });

  it('gives no nearest id where none is near, rather than an undefined one', () => {
    try {
      cite(['nothing-like-it-at-all']);
      expect.unreachable();
    } catch (error) {
      expect(isDomainError(error) && Object.keys(error.issues[0] ?? {})).toEqual(['path', 'received', 'allowed']);
    }
  });

  it('sees a hole in the list', () => {
    const holed = ['shigley-9'];
    holed[2] = 'iso-68-1';
    expect(() => cite(holed)).toThrow(
      refusal({ path: 'ids[1]', received: 'nothing', allowed: 'an id that listSources() gives' }),
    );
  });
});

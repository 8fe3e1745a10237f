import { describe, expect, it } from 'vitest';
import { checkInput, type FieldSpec, type FieldSpecs } from './check-input.ts';
import { type DomainIssue, isDomainError } from './domain-error.ts';

function issuesOf(value: unknown, fields: FieldSpecs): readonly DomainIssue[] {
  try {
    checkInput({ where: 'demo', value, fields });
  } catch (error) {
    if (!isDomainError(error)) throw error;
    expect(error.message.startsWith('demo: ')).toBe(true);
    return error.issues;
  }
  return [];
}

const one = (value: unknown, spec: FieldSpec): readonly DomainIssue[] => issuesOf({ field: value }, { field: spec });

describe('checkInput', () => {
  const fields = {
    faceAngleDeg: { type: 'number', unit: 'deg', above: 0, max: 10 },
    note: { type: 'text', optional: true },
  } as const satisfies FieldSpecs;

  it.each<[string, unknown]>([
    ['every field', { faceAngleDeg: 2, note: '' }],
    ['no optional field', { faceAngleDeg: 2 }],
    ['an optional field that is undefined', { faceAngleDeg: 2, note: undefined }],
    ['another order', { note: 'x', faceAngleDeg: 2 }],
    ['an object without prototype', Object.assign(Object.create(null), { faceAngleDeg: 2 })],
    ['a frozen object', Object.freeze({ faceAngleDeg: 2 })],
  ])('accepts %s', (_name, value) => {
    expect(issuesOf(value, fields)).toEqual([]);
  });

  it.each<[unknown, string]>([
    [undefined, 'nothing'],
    [null, 'null'],
    [2, '2'],
    ['x', '"x"'],
    [[{ faceAngleDeg: 2 }], 'a list of 1'],
    [() => 1, 'a function'],
  ])('refuses %o, which is no object', (value, received) => {
    expect(issuesOf(value, fields)).toEqual([{ path: '', received, allowed: 'an object with faceAngleDeg, note' }]);
  });

  it('refuses a required field that is absent, undefined or inherited', () => {
    const missing = { path: 'faceAngleDeg', received: 'nothing', allowed: 'a finite number above 0 to 10 deg' };
    expect(issuesOf({}, fields)).toEqual([missing]);
    expect(issuesOf({ faceAngleDeg: undefined }, fields)).toEqual([missing]);
    expect(issuesOf(Object.create({ faceAngleDeg: 2 }), fields)).toEqual([missing]);
    expect(issuesOf(new Map([['faceAngleDeg', 2]]), fields)).toEqual([missing]);
  });

  it('refuses null, also for an optional field', () => {
    expect(issuesOf({ faceAngleDeg: 2, note: null }, fields)).toEqual([
      { path: 'note', received: 'null', allowed: 'a text' },
    ]);
  });

  it('refuses unknown keys with the nearest one, after the fields', () => {
    expect(issuesOf({ faceAngelDeg: 2, colour: 'x' }, fields)).toStrictEqual([
      { path: 'faceAngleDeg', received: 'nothing', allowed: 'a finite number above 0 to 10 deg' },
      {
        path: 'faceAngelDeg',
        received: 'an unknown key with 2',
        allowed: 'an object with faceAngleDeg, note',
        nearest: 'faceAngleDeg',
      },
      { path: 'colour', received: 'an unknown key with "x"', allowed: 'an object with faceAngleDeg, note' },
    ]);
  });

  it('refuses an unknown key even when it is undefined', () => {
    expect(issuesOf({ faceAngleDeg: 2, nota: undefined }, fields)).toEqual([
      {
        path: 'nota',
        received: 'an unknown key with nothing',
        allowed: 'an object with faceAngleDeg, note',
        nearest: 'note',
      },
    ]);
  });

  it('refuses keys of the prototype that JSON made into own ones', () => {
    const value: unknown = JSON.parse('{"faceAngleDeg": 2, "__proto__": {"note": 1}, "constructor": 1}');
    expect(issuesOf(value, fields).map(({ path }) => path)).toEqual(['__proto__', 'constructor']);
  });

  it('reports every fault in the order of the fields', () => {
    const paths = issuesOf({ note: 1, faceAngleDeg: 0, x: 1, y: 2 }, fields).map(({ path }) => path);
    expect(paths).toEqual(['faceAngleDeg', 'note', 'x', 'y']);
  });

  it('takes a description without fields', () => {
    expect(issuesOf({}, {})).toEqual([]);
    expect(issuesOf({ a: 1 }, {})).toEqual([
      { path: 'a', received: 'an unknown key with 1', allowed: 'an object without keys' },
    ]);
  });

  it('lets what a getter throws come through', () => {
    const value = {
      get faceAngleDeg(): number {
        throw new RangeError('not now');
      },
    };
    expect(() => checkInput({ where: 'demo', value, fields })).toThrow(RangeError);
  });
});

describe('numbers, limits and measurands', () => {
  it('go through the same checks, under the path of the field', () => {
    const nested: FieldSpecs = {
      arm: { type: 'object', fields: { boreLengthMm: { type: 'measurand', unit: 'mm', above: 0 } } },
    };
    expect(issuesOf({ arm: { boreLengthMm: { lower: 0, nominal: 1, upper: 2 } } }, nested)).toEqual([
      { path: 'arm.boreLengthMm.lower', received: '0', allowed: 'a finite number above 0 mm' },
    ]);
    expect(issuesOf({ arm: { boreLengthMm: { value: 2, standardUncertainty: 0.5 } } }, nested)).toEqual([]);
  });
});

describe('texts, flags, choices, objects and lists', () => {
  it.each<[FieldSpec, string]>([
    [{ type: 'number', unit: 'mm', min: 0 }, 'a finite number from 0 mm'],
    [{ type: 'text' }, 'a text'],
    [{ type: 'flag' }, 'true or false'],
    [{ type: 'choice', values: ['greased', 'dry'] }, 'greased, dry'],
    [{ type: 'object', fields: { a: { type: 'flag' } } }, 'an object with a'],
    [{ type: 'list', item: { type: 'flag' } }, 'a list, each true or false'],
    [{ type: 'list', item: { type: 'text' }, minLength: 2 }, 'a list of at least 2, each a text'],
  ])('%o reads in words', (spec, allowed) => {
    expect(one(Symbol('x'), spec)).toEqual([{ path: 'field', received: 'a symbol', allowed }]);
    expect(issuesOf({}, { field: spec })).toEqual([{ path: 'field', received: 'nothing', allowed }]);
  });

  it.each<[FieldSpec, unknown]>([
    [{ type: 'text' }, ''],
    [{ type: 'flag' }, false],
    [{ type: 'choice', values: ['greased', 'dry'] }, 'dry'],
    [{ type: 'object', fields: { a: { type: 'flag' } } }, { a: true }],
    [{ type: 'list', item: { type: 'flag' } }, []],
    [{ type: 'list', item: { type: 'flag' }, minLength: 1 }, [true]],
    [{ type: 'list', item: { type: 'list', item: { type: 'text' } } }, [['a'], []]],
  ])('accept %o from %o', (spec, value) => {
    expect(one(value, spec)).toEqual([]);
  });

  it.each<[FieldSpec, unknown]>([
    [{ type: 'text' }, 1],
    [{ type: 'flag' }, 'true'],
    [{ type: 'flag' }, 0],
    [{ type: 'choice', values: ['greased', 'dry'] }, 'length'],
    [{ type: 'choice', values: ['greased', 'dry'] }, ['dry']],
    [{ type: 'object', fields: {} }, []],
    [
      { type: 'list', item: { type: 'flag' } },
      { 0: true, length: 1 },
    ],
    [{ type: 'list', item: { type: 'number', unit: '' } }, Float64Array.of(1)],
    [{ type: 'list', item: { type: 'flag' }, minLength: 2 }, [true]],
  ])('refuse %o from %o', (spec, value) => {
    expect(one(value, spec).map(({ path }) => path)).toEqual(['field']);
  });

  it('guess the choice that was meant', () => {
    const spec: FieldSpec = { type: 'choice', values: ['corner-in-line', 'flat-in-line'] };
    expect(one('corner-inline', spec)).toEqual([
      {
        path: 'field',
        received: '"corner-inline"',
        allowed: 'corner-in-line, flat-in-line',
        nearest: 'corner-in-line',
      },
    ]);
    expect(one('sideways', spec)).toStrictEqual([
      { path: 'field', received: '"sideways"', allowed: 'corner-in-line, flat-in-line' },
    ]);
  });

  it('give the path through objects and lists', () => {
    const spec: FieldSpec = {
      type: 'list',
      item: { type: 'object', fields: { flats: { type: 'list', item: { type: 'number', unit: 'mm' } } } },
    };
    expect(one([{ flats: [1] }, { flats: [2, 'x'] }, {}], spec).map(({ path }) => path)).toEqual([
      'field[1].flats[1]',
      'field[2].flats',
    ]);
  });

  it('see the holes of a list', () => {
    const holed: unknown[] = [1];
    holed[2] = 3;
    expect(one(holed, { type: 'list', item: { type: 'number', unit: 'mm' } })).toEqual([
      { path: 'field[1]', received: 'nothing', allowed: 'a finite number mm' },
    ]);
  });

  it('hold out against a long list of faults and a value that holds itself', () => {
    const long = Array.from({ length: 200_000 }, () => 'x');
    expect(one(long, { type: 'list', item: { type: 'number', unit: 'mm' } })).toHaveLength(200_000);
    const cyclic: Record<string, unknown> = {};
    cyclic.field = cyclic;
    expect(issuesOf(cyclic, { field: { type: 'object', fields: {} } }).map(({ path }) => path)).toEqual([
      'field.field',
    ]);
  });
});

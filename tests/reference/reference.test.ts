import { getSource } from '@spindlewright/quantity/sources';
import { describe, expect, it } from 'vitest';
import { entries, filesOf } from '../workspace.ts';
import type { Row } from './adapter.ts';
import {
  compareRow,
  describeComparison,
  folderOf,
  isProved,
  packageOf,
  type ReferenceFile,
  readAdapters,
  readReferenceFile,
  referenceFile,
  referencePaths,
  rowName,
} from './reference-file.ts';

// While faults are planted in one package, its own rows alone: what all packages use would run every row else.
const subject = process.env.MUTATE;
const isAsked = (path: string): boolean => subject === undefined || packageOf(folderOf(path)) === subject;

const paths = referencePaths().filter(isAsked);
const folders = [...new Set([...paths, ...filesOf('tests/reference/*/adapters.ts').filter(isAsked)].map(folderOf))];

it('each reference file has an id of its own', () => {
  const ids = paths.map((path) => readReferenceFile(path).id);
  expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
});

describe.each(folders)('%s', async (folder) => {
  const adapters = await readAdapters(folder);
  const own = paths.filter((path) => folderOf(path) === folder);

  it('uses every adapter', () => {
    const ids = own.map((path) => readReferenceFile(path).id);
    expect(Object.keys(adapters).filter((id) => !ids.includes(id))).toEqual([]);
  });

  describe.each(own)('%s', async (path) => {
    const file = readReferenceFile(path);

    it('cites a source of the register', () => {
      expect(getSource(file.origin.source).id).toBe(file.origin.source);
    });

    it(`speaks of ${file.function}, which the package exports`, async () => {
      const modules = await Promise.all(
        entries
          .filter((entry) => entry.folder === packageOf(folder))
          .map((entry) => import(/* @vite-ignore */ entry.specifier)),
      );
      expect(modules.some((module) => typeof module[file.function] === 'function')).toBe(true);
    });

    it('has an adapter', () => {
      expect(Object.keys(adapters)).toContain(file.id);
    });

    const adapter = adapters[file.id];
    if (adapter === undefined) return;
    const rows = file.rows.map((row, index): [string, Row] => [rowName(row, index), row]);
    const verb = file.origin.kind === 'erratum' ? 'must not be met' : 'is met';
    it.each(rows)(`row %s ${verb}`, (_name, row) => {
      const comparisons = compareRow(file, row, adapter);
      const report = `${JSON.stringify(row)}\n${comparisons.map(describeComparison).join('\n')}`;
      expect(isProved(file, comparisons), report).toBe(true);
    });
  });
});

describe('the runner itself', () => {
  const good: ReferenceFile = {
    id: 'inch-in-mm',
    title: 'The inch',
    function: 'convert',
    columns: { inches: 'in', lengthMm: 'mm', word: 'text' },
    expected: ['lengthMm', 'word'],
    rows: [{ inches: 2, lengthMm: 50.8, word: 'two' }],
    tolerance: { lengthMm: { rtol: 1e-15, atol: 0, why: 'one rounding of a double' } },
    origin: { kind: 'standard', source: 'nist-sp-811', citation: 'appendix B.8' },
  };
  const row = good.rows[0] ?? {};
  const faultsOf = (change: object): string[] =>
    (referenceFile.safeParse({ ...good, ...change }).error?.issues ?? []).map((issue) => issue.message);

  it('accepts a good file and refuses faulty ones', () => {
    expect(faultsOf({})).toEqual([]);
    expect(faultsOf({ tolerance: {} })).toEqual(['no tolerance for the numbers of lengthMm']);
    expect(faultsOf({ tolerance: { lengthMm: { rtol: 0, atol: 60, why: 'far too wide a bound' } } })).toEqual([
      'is so wide that 0 would pass every row',
    ]);
    expect(faultsOf({ tolerance: { lengthMm: { rtol: 0, atol: 0, why: '' } } })).toHaveLength(1);
    expect(faultsOf({ rows: [{ inches: 2, lengthMm: 50.8, words: 'two' }] })).toEqual([
      'is no column',
      'lacks expected column word',
    ]);
    expect(faultsOf({ expected: ['widthMm'], rows: [{ widthMm: 1 }], tolerance: {} })).not.toEqual([]);
    expect(faultsOf({ origin: { kind: 'own-output', source: 'x', citation: 'y' } })).toHaveLength(1);
    expect(faultsOf({ origin: { kind: 'other-tool', source: 'x', citation: 'y' } })).toHaveLength(1);
    expect(faultsOf({ remark: 'x' })).toHaveLength(1);
  });

  it('misses a row by as little as the tolerance asks', () => {
    const outcome = (lengthMm: number, word: string): boolean =>
      isProved(
        good,
        compareRow(good, row, () => ({ lengthMm, word })),
      );
    expect(outcome(50.8, 'two')).toBe(true);
    expect(outcome(50.8 * (1 + 4e-15), 'two')).toBe(false);
    expect(outcome(50.8, 'Two')).toBe(false);
  });

  it('demands that an erratum is not met', () => {
    const erratum: ReferenceFile = { ...good, origin: { ...good.origin, kind: 'erratum' } };
    expect(
      isProved(
        erratum,
        compareRow(erratum, row, () => ({ lengthMm: 50.8, word: 'two' })),
      ),
    ).toBe(false);
    expect(
      isProved(
        erratum,
        compareRow(erratum, row, () => ({ lengthMm: 50.4, word: 'two' })),
      ),
    ).toBe(true);
  });

  it('throws for values that are missing or not finite', () => {
    expect(() => compareRow(good, row, () => ({ lengthMm: 50.8 }))).toThrow('gives no word');
    expect(() => compareRow(good, row, () => ({ lengthMm: Number.NaN, word: 'two' }))).toThrow('lengthMm is NaN');
  });
});

import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { squareTaperJis } from '@spindlewright/interfaces/records';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../../../test/demo-job.ts';
import { runCheckData } from './index.ts';

const folder = mkdtempSync(join(tmpdir(), 'spindlewright-check-'));
const file = (name: string, content: unknown): string => {
  const path = join(folder, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content, null, 2));
  return path;
};

async function check(...args: string[]) {
  let out = '';
  let err = '';
  const code = await runCheckData(args, {
    readText: (path) => readFileSync(path, 'utf8'),
    writeText() {
      throw new Error('nothing is written');
    },
    print(text) {
      out += text;
    },
    complain(text) {
      err += text;
    },
  });
  return { code, out, err };
}
const report = async (...args: string[]) => {
  const { code, out } = await check(...args, '--json');
  const [first] = JSON.parse(out).files;
  return { code, ...first };
};
const places = ({ faults }: { faults: { line?: number; path: string }[] }): [number | undefined, string][] =>
  faults.map(({ line, path }) => [line, path]);

const job = {
  ...demoJob,
  trialFit: { endGapMm: 5, shoulderGapMm: 5 },
};
const need = { format: 'spindlewright-need-1', for: 'arm', interface: 'square-taper-jis' };
const mapping = { format: 'spindlewright-mapping-1', columns: { partId: 'SKU', kind: { always: 'arm' } } };
const readings = { format: 'spindlewright-readings-1', part: 'thread', diameterMm: '5/16 in' };

describe('check-data', () => {
  it('finds no fault in what is sound, and knows each file by what it says', async () => {
    const files = [
      ['job.json', job],
      ['need.json', need],
      ['mapping.json', mapping],
      ['readings.json', readings],
      ['record.json', squareTaperJis],
    ].map(([name, content]) => file(String(name), content));
    const { code, out } = await check(...files);
    expect(code).toBe(0);
    expect(out.match(/: (\w+), no faults/g)?.map((text) => text.split(/[ ,]+/)[1])).toEqual([
      'job',
      'need',
      'mapping',
      'readings',
      'record',
    ]);
  });

  // Lines as JSON.stringify breaks them: one field a line, after the brace.
  it.each<[string, unknown, [number, string][]]>([
    ['a misspelt field', { ...job, trialFit: { endGapMm: 5, sholderGapMm: 5 } }, [[13, 'trialFit.sholderGapMm']]],
    [
      'two wrong values',
      { ...job, side: 'left', trialFit: { endGapMm: '5 kg' } },
      [
        [6, 'side'],
        [12, 'trialFit.endGapMm'],
      ],
    ],
    [
      'what only working the job finds',
      { ...job, fixing: { thread: 'M8y1', lubrication: 'dry' } },
      [[16, 'fixing.thread']],
    ],
    ['a need of nothing', { ...need, interface: 'square-taper-jsi' }, [[4, 'interface']]],
    [
      'a mapping of an unknown field',
      { ...mapping, columns: { partID: 'SKU' } },
      [
        [3, 'columns.partId'],
        [4, 'columns.partID'],
      ],
    ],
    ['readings in a wrong unit', { ...readings, diameterMm: '5/16 Nm' }, [[4, 'diameterMm']]],
    ['a file that does not say what it is', { title: 'x' }, [[1, 'format']]],
  ])('tells the line and path of %s', async (_name, content, wanted) => {
    const found = await report(file('faulty.json', content));
    expect(found.code).toBe(2);
    expect(places(found)).toEqual(wanted);
  });

  it('tells the faults of a record, and sources of its own as worth a look', async () => {
    const { title: _title, ...rest } = squareTaperJis;
    const record = { ...rest, id: 'My Taper', colour: 'red', documents: [] };
    const found = await report(file('own.json', record));
    expect(
      places(found)
        .map(([, path]) => path)
        .sort(),
    ).toEqual(['colour', 'id', 'title']);
    expect(found.faults.find(({ path }: { path: string }) => path === 'title').received).toBe('nothing');
    const ours = JSON.parse(JSON.stringify(squareTaperJis).replaceAll('taper-de-wiki', 'my-own-notes'));
    const own = await report(file('sources.json', ours));
    expect(own.code).toBe(0);
    expect(own.cautions.join()).toContain('my-own-notes');
    expect((await report(file('family.json', { ...squareTaperJis, family: 'bayonet' }))).faults[0].path).toBe('family');
  });

  it('tells a field that comes twice, which JSON itself lets pass', async () => {
    const found = await report(
      file('twice.json', '{"format":"spindlewright-need-1",\n"for":"arm",\n"interface":"spline-10",\n"for":"arm"}'),
    );
    expect(places(found)).toEqual([[4, 'for']]);
  });

  it('tells where a text stops being JSON', async () => {
    const found = await report(file('broken.json', '{"a":1,\n"b":,}'));
    expect(places(found)).toEqual([[2, '']]);
    expect((await check(file('broken.json', '{'))).out).toContain('no JSON');
  });

  it('looks at the rows of a catalogue with its mapping', async () => {
    const rows = 'SKU;Title\nA1;one\n;two\nA1;three\nA4;four;more\n';
    const path = file('parts.csv', rows);
    const found = await report(path, '--mapping', file('mapping.json', mapping));
    expect(found.code).toBe(2);
    expect(found.rowCount).toBe(4);
    expect(places(found)).toEqual([
      [3, 'part-id-missing'],
      [5, 'row-columns-differ'],
    ]);
    expect(found.cautions.join()).toContain('1 row repeats');
    const other = { ...mapping, columns: { partId: 'Artikel' } };
    expect((await check(path, '--mapping', file('other.json', other))).out).toContain('no column "Artikel"');
    expect((await report(path, '--rows', '1', '--mapping', join(folder, 'mapping.json'))).code).toBe(0);
  });

  it('takes a catalogue without rows for faulty', async () => {
    expect((await check(file('none.ndjson', '\n\n'))).out).toContain('no row');
    expect((await check(file('empty.csv', ''))).code).toBe(2);
  });

  it('shows faults alike once, with their lines', async () => {
    const rows = `SKU\n${'x\n'.repeat(150)}`;
    const { out } = await check(file('many.csv', rows));
    expect(out).toContain('150 rows, 150 faults');
    expect(out).toContain('and 97 more like it, in lines 5, 6, 7');
    expect(out).toContain('50 faults more');
    expect(out.split('\n').length).toBeLessThan(25);
  });

  it('tells what cannot be read, looks at the rest, and refuses wrong flags', async () => {
    const { code, out, err } = await check(
      join(folder, 'none.json'),
      join(folder, 'none.csv'),
      file('need.json', need),
    );
    expect(code).toBe(1);
    expect(err).toContain('none.json');
    expect(err).toContain('none.csv');
    expect(out).toContain('need, no faults');
    expect((await check()).err).toContain('FILE is missing');
    expect((await check('a.json', '--rows', '0')).code).toBe(2);
    expect((await check('a.json', '--mapping', join(folder, 'none.json'))).code).toBe(1);
    expect((await check('--help')).out).toContain('exit codes');
  });
});

import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough, Readable, Writable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { runScreen } from './index.ts';

const folder = mkdtempSync(join(tmpdir(), 'spindlewright-screen-'));
const file = (name: string, content: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};
const need = file(
  'need.json',
  JSON.stringify({ format: 'spindlewright-need-1', for: 'arm', interface: 'square-taper-jis', side: 'drive' }),
);

async function screen(args: readonly string[], stdin: Readable = Readable.from([]), interruptAfterMs?: number) {
  let out = '';
  let err = '';
  let stop = (): void => {};
  const stdout = new Writable({
    write(chunk, _encoding, done) {
      out += chunk;
      done();
    },
  });
  const stderr = new Writable({
    write(chunk, _encoding, done) {
      err += chunk;
      done();
    },
  });
  const code = await runScreen(args, {
    stdin,
    stdout,
    stderr,
    onInterrupt(callback) {
      stop = callback;
      if (interruptAfterMs !== undefined) setTimeout(() => stop(), interruptAfterMs);
      return () => {
        stop = () => {};
      };
    },
  });
  return { code, out, err };
}

const CSV = [
  'partId;kind;interface;side;title',
  'A1;arm;square-taper-jis;drive;plain',
  'A2;arm;"square-taper-jis";pair;"two\nlines"',
  '=HYPERLINK("x");arm;square-taper-iso;drive;a formula',
  'A4;arm;through-spindle-24;drive;other joint',
  'A5;arm;;drive;no standard',
  'A6;arm;square-taper-jis;drive;one;too many',
  ';arm;square-taper-jis;drive;no id',
].join('\n');

describe('runScreen', () => {
  it('judges every row of a table and counts every row', async () => {
    const path = file('a.csv', CSV);
    const { code, out, err } = await screen(['--need', need, path, '--format', 'ndjson']);
    const rows = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(code).toBe(0);
    expect(rows.map(({ line, state, missingFact }) => [line, state, missingFact ?? ''])).toEqual([
      [2, 'fits', ''],
      [3, 'fits', ''],
      [5, 'cannot-tell', 'trialFit.shoulderGapMm'],
      [6, 'does-not-fit', ''],
      [7, 'cannot-tell', 'interface'],
      [8, 'refused', ''],
      [9, 'refused', ''],
    ]);
    expect(err).toContain('7 rows');
  });

  it('disarms formulas in tables', async () => {
    const { out } = await screen(['--need', need, file('b.csv', CSV), '--format', 'csv']);
    expect(out).toContain(`"'=HYPERLINK(""x"")"`);
    expect(out).not.toMatch(/(^|,)"?=/m);
  });

  it('writes JSON under its name only when it is whole', async () => {
    const out = join(folder, 'c.json');
    const { code } = await screen(['--need', need, file('c.csv', CSV), '--format', 'json', '--out', out]);
    const document = JSON.parse(readFileSync(out, 'utf8'));
    expect(code).toBe(0);
    expect(document.parts).toHaveLength(7);
    expect(document.summary.rowCount).toBe(7);
    expect(document.shortlist.map(({ partId }: { partId: string }) => partId)).toEqual([
      'A1',
      'A2',
      '=HYPERLINK("x")',
      'A5',
    ]);
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it.each(['ndjson', 'csv', 'json'])('leaves whole rows or nothing when interrupted: %s', async (format) => {
    const endless = new PassThrough();
    const row = `${JSON.stringify({ partId: 'A', kind: 'arm', interface: 'square-taper-jis', side: 'drive' })}\n`;
    endless.write(row.repeat(5000));
    const path = join(folder, `endless-${format}`);
    const { code, err } = await screen(
      ['--need', need, '--form', 'ndjson', '--format', format, '--out', path],
      endless,
      50,
    );
    expect(code).toBe(130);
    expect(err).toContain('interrupted after');
    if (format === 'json') {
      expect(readdirSync(folder).filter((name) => name.startsWith('endless-json'))).toEqual([]);
      return;
    }
    const printed = readFileSync(path, 'utf8');
    expect(printed.endsWith('\n')).toBe(true);
    const lines = printed.trim().split('\n');
    expect(lines.length).toBeGreaterThan(10);
    if (format === 'ndjson') for (const line of lines) JSON.parse(line);
    else expect(new Set(lines.slice(1).map((line) => line.split(',').slice(1, 3).join())).size).toBeLessThan(3);
  });

  it('reads every encoding alike', async () => {
    const text = 'partId,kind,interface,side,title\nA\u00e41,arm,square-taper-jis,drive,"na\u00efve \u00e9"\n';
    const wide = Buffer.from(`\ufeff${text}`, 'utf16le');
    const turned = Buffer.from(wide).swap16();
    const results = [];
    for (const bytes of [Buffer.from(text), Buffer.from(`\ufeff${text}`), Buffer.from(text, 'latin1'), wide, turned]) {
      results.push((await screen(['--need', need, file('d.csv', bytes), '--format', 'ndjson'])).out);
    }
    expect(new Set(results).size).toBe(1);
    expect(results[0]).toContain('A\u00e41');
  });

  it('drafts a mapping that can be used', async () => {
    const shop = file('e.csv', 'SKU;Category;Taper;Side;Arm length (mm)\nK1;Kurbelarm;JIS;rechts;170\nK2;Klingel;;;\n');
    const mapping = join(folder, 'mapping.json');
    const draft = await screen(['--draft-mapping', shop, '--out', mapping]);
    expect(draft.code).toBe(0);
    expect(draft.err).toMatch(/1 {2}kind: Klingel/);
    const { out } = await screen(['--need', need, '--mapping', mapping, shop, '--format', 'ndjson']);
    expect(JSON.parse(out.split('\n')[0] ?? '').state).toBe('fits');
  });

  it.each<[string, readonly string[], number, RegExp]>([
    ['no need', [], 2, /either --need FILE or --job FILE/],
    ['an unknown option', ['--nede', 'x'], 2, /--help/],
    ['a need that is not there', ['--need', join(folder, 'none.json')], 1, /cannot read/],
    ['a catalogue that is not there', ['--need', need, join(folder, 'none.csv')], 1, /none.csv/],
    ['an unknown form of output', ['--need', need, '--format', 'xml'], 2, /allowed text/],
    ['a binary file', ['--need', need, file('f.bin', Buffer.from([0x50, 0x4b, 3, 4, 0, 0, 1, 2, 0, 7]))], 2, /binary/],
    ['an empty file', ['--need', need, file('g.csv', '')], 2, /empty/],
    ['itself as output', ['--need', need, '--out', need], 2, /--out names/],
    [
      'a need for a joint that is none',
      ['--need', file('h.json', '{"format":"spindlewright-need-1","for":"arm","interface":"square-taper-jsi"}')],
      2,
      /square-taper-jis/,
    ],
  ])('refuses %s', async (_name, args, code, message) => {
    const result = await screen(args);
    expect(result.code).toBe(code);
    expect(result.err).toMatch(message);
    expect(result.out).toBe('');
  });

  it('names a column of the mapping that the catalogue does not have, with the nearest', async () => {
    const shop = file('misspelt.csv', 'Artikelnummer,Aufnahme\n1,JIS\n');
    const columns = { partId: 'Artikelnumer', kind: { always: 'arm' } };
    const mapping = file('misspelt.json', JSON.stringify({ format: 'spindlewright-mapping-1', columns }));
    const { err } = await screen(['--need', need, '--mapping', mapping, shop]);
    expect(err).toContain('a column "Artikelnumer" that the first rows do not have; nearest: "Artikelnummer"');
    expect((await screen(['--need', need, '--mapping', mapping, shop, '--quiet'])).err).toBe('');
  });

  it('names a missing file and a file of another kind in words', async () => {
    const gone = await screen(['--need', join(folder, 'gone.json'), need]);
    expect([gone.code, gone.err]).toEqual([1, expect.stringContaining('there is no such file')]);
    const noCatalogue = await screen(['--need', need, join(folder, 'gone.csv')]);
    expect([noCatalogue.code, noCatalogue.err]).toEqual([1, expect.stringMatching(/gone\.csv: there is no such file/)]);
    const other = await screen(['--job', need, need]);
    expect([other.code, other.err]).toEqual([2, expect.stringContaining('is a need and no job')]);
  });

  it('says what to do when no row could be used for want of a mapping', async () => {
    const shop = file('i.csv', 'SKU;Taper\nK1;JIS\nK2;ISO\n');
    expect((await screen(['--need', need, shop])).err).toContain('screen --draft-mapping');
    expect((await screen(['--need', need, shop, '--quiet'])).err).toBe('');
  });

  it('helps', async () => {
    const { code, out } = await screen(['--help']);
    expect(code).toBe(0);
    expect(out).toContain('exit codes');
  });
});

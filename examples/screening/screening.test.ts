import { readFileSync } from 'node:fs';
import { Readable, Writable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { runScreen } from '../../packages/spindlewright/src/cli/screen/index.ts';
import { samples } from './write-samples.ts';

const path = (name: string): string => fileURLToPath(new URL(name, import.meta.url));

async function screen(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  const said = { out: '', err: '' };
  const into = (name: 'out' | 'err'): Writable =>
    new Writable({
      write(chunk, _encoding, done) {
        said[name] += chunk;
        done();
      },
    });
  const io = { stdin: Readable.from([]), stdout: into('out'), stderr: into('err'), onInterrupt: () => () => {} };
  const code = await runScreen(args, io);
  return { code, ...said };
}

it.each(Object.entries(samples()))('%s is what the generator writes', (name, content) => {
  expect(readFileSync(path(name)).equals(Buffer.from(content))).toBe(true);
});

it('answers the table and the lines of the same shop alike, row by row', async () => {
  const files = ['--need', path('need.json'), '--mapping', path('mapping.json'), '--format', 'ndjson'];
  const answers = async (name: string) =>
    (await screen(...files, path(name))).out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line))
      .map(({ partId, state, missingFact }) => [partId, state, missingFact]);
  const ofTable = await answers('parts.csv');
  expect(ofTable).toEqual(await answers('parts.ndjson'));
  expect(ofTable).toHaveLength(300);
  expect(new Set(ofTable.map(([, state]) => state))).toEqual(
    new Set(['fits', 'does-not-fit', 'cannot-tell', 'refused']),
  );
});

it('drafts a mapping of a shop that it has never seen, and lists what it does not understand', async () => {
  const { code, out, err } = await screen('--draft-mapping', path('parts.csv'));
  const { columns } = JSON.parse(out);
  expect(code).toBe(0);
  expect(columns.partId).toEqual({ column: 'Artikelnummer', digitCount: 8 });
  expect(columns.kind.values).toMatchObject({ Kurbelarm: 'arm', Innenlager: 'spindle', Sattel: '' });
  expect(columns.interface.values).toMatchObject({ '4-kant JIS': 'square-taper-jis', 'Hohlwelle 24': '' });
  expect(columns.armLengthMm).toEqual({ column: 'L\u00e4nge (mm)', unit: 'mm' });
  expect(err).toMatch(/csv, windows-1252/);
  expect(err).toMatch(/\d+ {2}interface: Hohlwelle 24/);
});

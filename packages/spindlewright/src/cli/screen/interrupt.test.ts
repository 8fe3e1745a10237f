import { spawn } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const main = fileURLToPath(new URL('../main.ts', import.meta.url));
const need = join(mkdtempSync(join(tmpdir(), 'spindlewright-interrupt-')), 'need.json');
writeFileSync(need, '{"format":"spindlewright-need-1","for":"arm","interface":"square-taper-jis","side":"drive"}');

const INTERFACES = ['square-taper-jis', 'square-taper-iso', 'through-spindle-24', '', 'odd'];
const rowsFrom = (start: number): string =>
  Array.from({ length: 2000 }, (_, index) => {
    const id = start + index;
    return `${JSON.stringify({ partId: `A"${id}`, kind: 'arm', interface: INTERFACES[id % 5], side: 'drive' })}\n`;
  }).join('');

/** Runs the real command on rows that do not end, and presses Ctrl-C once a quarter of a megabyte of answers has come. */
function interrupted(format: string): Promise<{ code: number | null; out: string; err: string }> {
  return new Promise((resolve, reject) => {
    const args = ['screen', '--need', need, '--form', 'ndjson', '--format', format];
    const child = spawn(process.execPath, ['--conditions=@spindlewright/source', main, ...args]);
    let next = 0;
    let open = true;
    const feed = (): void => {
      while (open) {
        const more = child.stdin.write(rowsFrom(next));
        next += 2000;
        if (!more) break;
      }
    };
    // It stops reading once it is interrupted, and what was on its way meets a closed pipe.
    child.stdin.on('error', () => {
      open = false;
    });
    child.stdin.on('drain', feed);
    let out = '';
    let err = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      out += text;
      if (out.length > 1 << 18 && open) {
        open = false;
        child.kill('SIGINT');
      }
    });
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      err += text;
    });
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, out, err }));
    feed();
  });
}

describe.skipIf(process.platform === 'win32')('screen, interrupted while it runs', () => {
  it('leaves whole rows, says how many, and exits with 130', async () => {
    const [ndjson, csv] = await Promise.all([interrupted('ndjson'), interrupted('csv')]);
    for (const { code, err } of [ndjson, csv]) {
      expect(err).toMatch(/interrupted after \d+ rows/);
      expect(code).toBe(130);
    }
    const count = ({ err }: { err: string }): number => Number(/after (\d+) rows/.exec(err)?.[1]);

    const objects = ndjson.out.split('\n');
    expect(objects.pop()).toBe('');
    const parsed = objects.map((line) => JSON.parse(line) as { line: number; partId: string });
    expect(parsed.length).toBeGreaterThan(1000);
    // Every row to the last in its order: none lost, none cut off.
    expect(parsed.every(({ line, partId }, index) => line === index + 1 && partId === `A"${index}`)).toBe(true);
    expect(count(ndjson)).toBe(parsed.length);

    const lines = csv.out.split('\r\n');
    expect(lines.pop()).toBe('');
    const [, ...rows] = lines;
    expect(rows.every((row, index) => row.startsWith(`${index + 1},"A""${index}",`))).toBe(true);
    // What a spreadsheet would count: fields outside quotes are parted by as many commas as in the header.
    const commas = (row: string): number => row.replace(/"(?:[^"]|"")*"/g, '').split(',').length;
    expect(new Set(lines.map(commas)).size).toBe(1);
    expect(count(csv)).toBe(rows.length);
  });
});

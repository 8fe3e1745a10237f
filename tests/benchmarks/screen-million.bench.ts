// A million invented parts as NDJSON against reading, JSON.parse and JSON.stringify of the same rows, each in a process of
// its own on built code. Wanted: within 2 times its wall time, and a peak of resident memory of at most 200 MB. Rounds
// alternate, and the best of each counts, since a shared machine only ever makes a run longer. SCREEN_ROWS sets the rows.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildSync } from 'esbuild';
import { expect, it } from 'vitest';
import { shopMapping } from '../../examples/screening/generate.ts';

const ROWS = Number(process.env.SCREEN_ROWS ?? 1_000_000);
const ROUNDS = 3;
/** What the memory of ids may take beyond a million rows. */
const BYTES_A_ROW = 16;

it(`screens ${ROWS} parts`, { timeout: 1_800_000 }, ({ task }) => {
  const folder = mkdtempSync(join(tmpdir(), 'spindlewright-bench-'));
  try {
    const path = (name: string): string => join(folder, name);
    buildSync({
      entryPoints: [fileURLToPath(new URL('./screen-runner.ts', import.meta.url))],
      bundle: true,
      platform: 'node',
      format: 'esm',
      conditions: ['@spindlewright/source'],
      outfile: path('run.mjs'),
      logLevel: 'error',
    });
    const run = (...args: string[]): { ms: number; peakMB: number } => {
      const { stderr, status } = spawnSync(process.execPath, [path('run.mjs'), ...args], { encoding: 'utf8' });
      expect(status, stderr).toBe(0);
      return JSON.parse(stderr.trim().split('\n').at(-1) ?? '');
    };
    const need = {
      format: 'spindlewright-need-1',
      for: 'arm',
      interface: 'square-taper-jis',
      side: 'drive',
      armLengthMm: 170,
    };
    writeFileSync(path('need.json'), JSON.stringify(need));
    writeFileSync(path('mapping.json'), JSON.stringify(shopMapping));
    run('write', path('parts.ndjson'), String(ROWS));
    const files = ['--need', path('need.json'), '--mapping', path('mapping.json'), path('parts.ndjson')];
    const rounds = Array.from({ length: ROUNDS }, () => ({
      baseline: run('baseline', path('parts.ndjson'), path('copy.ndjson')),
      ours: run('screen', ...files, '--format', 'ndjson', '--quiet', '--out', path('answers.ndjson')),
    }));
    const baselineMs = Math.min(...rounds.map(({ baseline }) => baseline.ms));
    const oursMs = Math.min(...rounds.map(({ ours }) => ours.ms));
    const peakMB = Math.max(...rounds.map(({ ours }) => ours.peakMB));
    const ratio = oursMs / baselineMs;
    task.meta.rows = [
      {
        what: `a catalogue of ${ROWS} parts screened, peak ${peakMB.toFixed(0)} MB`,
        baseline: 'the same rows read, parsed and written',
        unit: 'ms',
        value: oursMs,
        baselineValue: baselineMs,
      },
    ];
    expect(ratio).toBeLessThan(2);
    expect(peakMB).toBeLessThan(200 + (Math.max(0, ROWS - 1_000_000) * BYTES_A_ROW) / 1e6);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

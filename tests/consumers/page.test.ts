// A page and a worker built by Vite, and a runtime at the edge, from what the registry gives. Part of the rehearsal of a
// release alone: it wants a browser.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { build } from 'esbuild';
import { describe, expect, inject, it } from 'vitest';
import { startBrowser } from '../browser/browser.ts';
import { entries } from '../workspace.ts';

const project = inject('withZod');
const specifiers = entries.map(({ specifier }) => specifier).filter((specifier) => !specifier.endsWith('/cli'));

/** Loads every entry, calls one function, and leaves the answer to whoever is told. */
const program = (
  tell: string,
): string => `${specifiers.map((name, k) => `import * as m${k} from '${name}';`).join('\n')}
import { predictSeat } from '@spindlewright/taper';
import { threadFor } from '@spindlewright/torque';
const names = [${specifiers.map((_, k) => `m${k}`).join(', ')}].map((entry) => Object.keys(entry).length);
const seat = predictSeat({
  spindle: { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 15 },
  arm: { acrossFlatsAtMouthMm: 13.4, faceAngleDeg: 2, boreLengthMm: 15 },
});
${tell}({ names, mouth: seat.handFit.mouthFromEndMm.nominal, pitch: threadFor('M8x1').pitchMm });
`;

interface Told {
  names: number[];
  mouth: number;
  pitch: number;
}

function right(told: Told): void {
  expect(told.names.length).toBe(specifiers.length);
  expect(Math.min(...told.names)).toBeGreaterThan(0);
  // (13.4 - 12.6) / (2 tan 2 deg), from a table of tangents: tan 2 deg = 0.0349208.
  expect(told.mouth).toBeCloseTo(0.8 / (2 * 0.0349208), 3);
  expect(told.pitch).toBe(1);
}

describe.runIf(process.env.REHEARSAL !== undefined)('what the registry gives', () => {
  it('works in a page and in a worker built by Vite, in a browser', async () => {
    const site = join(project, 'page');
    mkdirSync(join(site, 'src'), { recursive: true });
    writeFileSync(
      join(site, 'index.html'),
      '<!doctype html><title>Page</title><script type="module" src="/src/page.js"></script>',
    );
    writeFileSync(join(site, 'src/worker.js'), program('self.postMessage'));
    writeFileSync(
      join(site, 'src/page.js'),
      `${program('const told = (value) => { globalThis.fromPage = value; }; told')}
const worker = new Worker(new URL('./worker.js', import.meta.url), { type: 'module' });
worker.onmessage = ({ data }) => { globalThis.fromWorker = data; };
`,
    );
    writeFileSync(join(site, 'vite.config.js'), "export default { worker: { format: 'es' }, logLevel: 'warn' };\n");
    install(['vite@8']);
    const vite = join(project, 'node_modules/vite/bin/vite.js');
    const built = spawnSync(process.execPath, [vite, 'build'], { cwd: site, encoding: 'utf8' });
    expect(built.status, built.stdout + built.stderr).toBe(0);

    const TYPES: Readonly<Record<string, string>> = { '.html': 'text/html', '.js': 'text/javascript' };
    const server = createServer((request, response) => {
      const path = join(site, 'dist', request.url === '/' ? 'index.html' : (request.url ?? ''));
      response.writeHead(existsSync(path) ? 200 : 404, { 'content-type': TYPES[extname(path)] ?? 'text/plain' });
      response.end(existsSync(path) ? readFileSync(path) : '');
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    const browser = await startBrowser();
    try {
      const page = await browser.newPage();
      await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
      for (const from of ['fromPage', 'fromWorker']) {
        const told = await page.waitForFunction((name) => (globalThis as Record<string, unknown>)[name], from);
        right((await told.jsonValue()) as Told);
      }
    } finally {
      await browser.close();
      server.close();
    }
  });

  it('works in a runtime at the edge, which has no Node', async () => {
    install(['@edge-runtime/vm@5']);
    const { outputFiles } = await build({
      stdin: { contents: program('const told = (value) => { globalThis.answer = value; }; told'), resolveDir: project },
      bundle: true,
      write: false,
      format: 'iife',
      platform: 'neutral',
      mainFields: ['module', 'main'],
      conditions: ['edge-light', 'import'],
    });
    writeFileSync(join(project, 'edge-bundle.js'), outputFiles[0]?.text ?? '');
    writeFileSync(
      join(project, 'edge.cjs'),
      `const { EdgeVM } = require('@edge-runtime/vm');
const code = require('node:fs').readFileSync('edge-bundle.js', 'utf8');
const vm = new EdgeVM();
vm.evaluate(code);
console.log(vm.evaluate('JSON.stringify(globalThis.answer)'));
`,
    );
    const ran = spawnSync(process.execPath, ['edge.cjs'], { cwd: project, encoding: 'utf8' });
    expect(ran.status, ran.stdout + ran.stderr).toBe(0);
    right(JSON.parse(ran.stdout) as Told);
  });
});

function install(things: string[]): void {
  const ran = spawnSync('npm', ['install', '--no-audit', '--no-fund', '--loglevel=error', ...things], {
    cwd: project,
    encoding: 'utf8',
  });
  if (ran.status !== 0) throw new Error(ran.stdout + ran.stderr);
}

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { packages } from '../../scripts/package-shape.mjs';
import { importsOf, parse } from '../repo/source-rules.ts';
import { entries, folders, readText, root } from '../workspace.ts';

const packed = inject('packed');

it('every package is packed', () => {
  expect(Object.keys(packed)).toEqual(folders);
});

describe.each(Object.keys(packed))('the tarball of %s', (folder) => {
  const tarball = packed[folder]?.tarball ?? '';
  const files = packed[folder]?.files ?? [];
  let unpacked = '';
  beforeAll(() => {
    unpacked = mkdtempSync(join(tmpdir(), 'tarball-'));
    const run = spawnSync('tar', ['-xzf', join(root, tarball), '-C', unpacked], { encoding: 'utf8' });
    if (run.status !== 0) throw new Error(run.stderr);
  });
  afterAll(() => rmSync(unpacked, { recursive: true, force: true }));
  const read = (path: string): string => readFileSync(join(unpacked, 'package', path), 'utf8');
  const built = (pattern: RegExp): string[] => files.filter((path) => path.startsWith('dist/') && pattern.test(path));

  it('passes publint', async () => {
    const data = readFileSync(join(root, tarball));
    const buffer = data.buffer.slice(data.byteOffset, data.byteOffset + data.byteLength) as ArrayBuffer;
    const { messages } = await publint({ pack: { tarball: buffer }, level: 'suggestion', strict: true });
    const manifest = JSON.parse(read('package.json')) as Record<string, unknown>;
    expect(messages.map((message) => formatMessage(message, manifest))).toEqual([]);
  });

  it('passes attw', () => {
    const run = spawnSync(
      process.execPath,
      [
        join(root, 'node_modules/@arethetypeswrong/cli/dist/index.js'),
        join(root, tarball),
        '--profile',
        'node16',
        '--format',
        'ascii',
        '--no-color',
      ],
      { encoding: 'utf8' },
    );
    expect(run.status, run.stdout + run.stderr).toBe(0);
  });

  it('has code and types of every entry in both formats', () => {
    const wanted = entries
      .filter((entry) => entry.folder === folder)
      .map((entry) => entry.source.replace(/^.*[\\/]src[\\/]/, '').replace(/\.ts$/, ''))
      .flatMap((name) => ['js', 'cjs', 'd.ts', 'd.cts'].map((suffix) => `dist/${name}.${suffix}`));
    expect(wanted.filter((path) => !files.includes(path))).toEqual([]);
  });

  it('holds no tests and nothing but what the manifest lists', () => {
    expect(files.filter((path) => path.includes('.test.'))).toEqual([]);
    const top = [...new Set(files.map((path) => path.split('/')[0]))].filter(
      (name) => !/^(README\.md|CHANGELOG\.md)$/.test(name ?? ''),
    );
    const data = packages[folder]?.data === true ? ['data'] : [];
    expect(top.sort()).toEqual(['LICENSE', ...data, 'dist', 'package.json', 'picture.svg', 'src'].sort());
    expect(read('LICENSE')).toBe(readText('LICENSE'));
  });

  it('imports built files and declared packages only: no .ts, no .json, no path outside', () => {
    const manifest = JSON.parse(read('package.json')) as {
      name: string;
      dependencies?: object;
      peerDependencies?: object;
    };
    const declared = Object.keys({ ...manifest.dependencies, ...manifest.peerDependencies });
    const faults = built(/\.(c?js|d\.c?ts)$/).flatMap((path) =>
      importsOf(parse(path, read(path)))
        .filter((specifier) => {
          if (specifier.startsWith('./') || specifier.startsWith('../')) return !/\.c?js$/.test(specifier);
          if (specifier.startsWith('node:')) return !path.startsWith('dist/cli/') && !path.startsWith('dist/chunk-');
          return !declared.some((name) => specifier === name || specifier.startsWith(`${name}/`));
        })
        .map((specifier) => `${path}: ${specifier}`),
    );
    expect(faults).toEqual([]);
  });

  it('speaks of no path of the machine that built it', () => {
    const faults = readdirSync(join(unpacked, 'package', 'dist'), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .filter((path) => readFileSync(path, 'utf8').includes(root));
    expect(faults).toEqual([]);
  });
});

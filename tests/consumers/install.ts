// Installs the tarballs once, outside the workspace, the way a consumer would: nothing is found by accident there.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { packages } from '../../scripts/package-shape.mjs';
import { root } from '../workspace.ts';

/** What scripts/pack.mjs says about one tarball. */
interface Packed {
  tarball: string;
  size: number;
  unpackedSize: number;
  files: string[];
}

declare module 'vitest' {
  interface ProvidedContext {
    /** By folder under packages/. */
    packed: Record<string, Packed>;
    /** A project with every package and zod. */
    withZod: string;
    /** Executables to try the tarballs on: the Node of the workspace and the oldest major promised. */
    nodes: string[];
    /** A project with the packages whose zod is optional, and no zod. */
    withoutZod: string;
  }
}

/** Makes an empty project and installs things into it with npm's ordinary settings. */
function install(base: string, name: string, things: readonly string[]): string {
  const folder = join(base, name);
  mkdirSync(folder);
  writeFileSync(join(folder, 'package.json'), `${JSON.stringify({ name, private: true, version: '0.0.0' })}\n`);
  const run = spawnSync(
    process.platform === 'win32' ? 'npm.cmd' : 'npm',
    ['install', '--prefer-offline', '--no-audit', '--no-fund', '--loglevel=error', ...things],
    { cwd: folder, encoding: 'utf8' },
  );
  if (run.status !== 0) throw new Error(`npm install in ${name} failed\n${run.stdout}\n${run.stderr}`);
  return folder;
}

/** The oldest major of Node that the manifests promise. */
export const OLDEST_MAJOR = 20;

const versionOf = (node: string): string => spawnSync(node, ['-v'], { encoding: 'utf8' }).stdout.trim();

/** Majors that a rehearsal of a release tries besides the oldest and the pinned one. */
const OTHER_MAJORS = [22, 24];

/** A Node of a major: the host's own if it is one, else one from the registry. */
function nodeOf(major: number, base: string): string {
  const executable = process.platform === 'win32' ? 'node.exe' : 'node';
  const found = (process.env.PATH ?? '')
    .split(delimiter)
    .map((folder) => join(folder, executable))
    .find((path) => existsSync(path) && versionOf(path).startsWith(`v${major}.`));
  if (found !== undefined) return found;
  const system = process.platform === 'win32' ? 'win' : process.platform;
  const name = `node-${system === 'darwin' && process.arch === 'arm64' ? 'bin-' : ''}${system}-${process.arch}`;
  return join(install(base, `node-${major}`, [`${name}@${major}`]), 'node_modules', name, 'bin', executable);
}

const versionIn = (folder: string): string =>
  (JSON.parse(readFileSync(`${root}/packages/${folder}/package.json`, 'utf8')) as { version: string }).version;

export default function setup(project: TestProject): () => void {
  const packed = JSON.parse(readFileSync(`${root}/tests/.out/tarballs/packed.json`, 'utf8')) as Record<string, Packed>;
  // A rehearsal has the packages in a registry, which npm is set to; else they come as the files that were packed.
  const rehearsal = process.env.REHEARSAL !== undefined;
  const thing = (folder: string): string =>
    rehearsal ? `${packages[folder]?.name}@${versionIn(folder)}` : join(root, packed[folder]?.tarball ?? '');
  const all = Object.keys(packed);
  const zodVersion = (JSON.parse(readFileSync(`${root}/package.json`, 'utf8')) as { devDependencies: { zod: string } })
    .devDependencies.zod;
  const base = mkdtempSync(join(tmpdir(), 'consumers-'));
  project.provide('packed', packed);
  project.provide('withZod', install(base, 'with-zod', [...all.map(thing), `zod@${zodVersion}`]));
  const leaves = all.filter((folder) => packages[folder]?.dependencies?.zod === undefined);
  project.provide('withoutZod', install(base, 'without-zod', leaves.map(thing)));
  const majors = [OLDEST_MAJOR, ...(rehearsal ? OTHER_MAJORS : [])];
  project.provide('nodes', [process.execPath, ...majors.map((major) => nodeOf(major, base))]);
  return () => rmSync(base, { recursive: true, force: true });
}

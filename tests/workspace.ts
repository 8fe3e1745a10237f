// What the checks of the repository, the docs and the tarballs need to know about the packages.
import { existsSync, globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { packages } from '../scripts/package-shape.mjs';

/** Absolute path of the repository, without a slash at its end. */
export const root = fileURLToPath(new URL('..', import.meta.url)).replace(/[\\/]$/, '');

/** One importable entry of a package. */
export interface Entry {
  /** Folder under packages/. */
  folder: string;
  /** Name of the package. */
  packageName: string;
  /** What a consumer imports, such as `@spindlewright/quantity/schema`. */
  specifier: string;
  /** Its source file, absolute. */
  source: string;
}

/** Folders of the packages, in the order of the shape file. */
export const folders = Object.keys(packages);

/** Every entry that the shape file promises. */
export const entries: readonly Entry[] = Object.entries(packages).flatMap(([folder, spec]) =>
  Object.entries(spec.entries).map(([entry, source]) => ({
    folder,
    packageName: spec.name,
    specifier: spec.name + entry.slice(1),
    source: join(root, 'packages', folder, source),
  })),
);

/** The entries whose source exists. */
export const presentEntries = (): Entry[] => entries.filter((entry) => existsSync(entry.source));

/** Paths, relative to the repository and sorted, that match a glob; installed and generated folders left out. */
export const filesOf = (pattern: string): string[] =>
  globSync(pattern, { cwd: root, exclude: (path) => /(^|[\\/])(node_modules|dist|\.out)$/.test(path) })
    .map((path) => path.replaceAll('\\', '/'))
    .sort();

/** Text of a file of the repository. */
export const readText = (path: string): string => readFileSync(join(root, path), 'utf8');

/** The published sources of a package: no tests. */
export const publishedSources = (folder: string): string[] =>
  filesOf(`packages/${folder}/src/**/*.ts`).filter((path) => !path.endsWith('.test.ts'));

import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  manifestOf,
  packages,
  tsconfigOf,
  tsupConfigOf,
  typedocOf,
  versionSourceOf,
} from '../../scripts/package-shape.mjs';
import { filesOf, folders, readText } from '../workspace.ts';

const ownRanges = (manifest: { dependencies?: Record<string, string> }): [string, string][] =>
  Object.entries(manifest.dependencies ?? {}).filter(([name]) => name.startsWith('@spindlewright/'));

/** Caret rule of npm for plain versions: the leftmost number that is not 0 must be the same, the rest at least as high. */
function inCaretRange(version: string, range: string): boolean {
  const numbers = (text: string): number[] => text.replace('^', '').split('.').map(Number);
  const [major = 0, minor = 0, patch = 0] = numbers(version);
  const [fromMajor = 0, fromMinor = 0, fromPatch = 0] = numbers(range);
  if (major !== fromMajor) return false;
  if (major > 0) return minor > fromMinor || (minor === fromMinor && patch >= fromPatch);
  return minor === fromMinor && (minor > 0 ? patch >= fromPatch : patch === fromPatch);
}

describe('the one shape of every package (scripts/package-shape.mjs writes it)', () => {
  it('lists every folder under packages, and no other', () => {
    const found = filesOf('packages/*/package.json').map((path) => path.split('/')[1]);
    expect(found).toEqual([...folders].sort());
  });

  describe.each(folders)('packages/%s', (folder) => {
    const text = readText(`packages/${folder}/package.json`);
    const manifest = JSON.parse(text) as { version: string; dependencies?: Record<string, string> };

    it('has the manifest of the shape file, byte for byte', () => {
      expect(text).toBe(`${JSON.stringify(manifestOf(folder, manifest), null, 2)}\n`);
    });

    it('asks for versions of our own packages that stand in this workspace', () => {
      for (const [name, range] of ownRanges(manifest)) {
        expect(range).toMatch(/^\^\d+\.\d+\.\d+$/);
        const other = folders.find((entry) => packages[entry]?.name === name) ?? '';
        const { version } = JSON.parse(readText(`packages/${other}/package.json`)) as { version: string };
        expect(inCaretRange(version, range), `${name} ${version} in ${range}`).toBe(true);
      }
    });

    it('has the tsup, TypeScript and typedoc settings of the shape file', () => {
      expect(readText(`packages/${folder}/tsup.config.ts`)).toBe(tsupConfigOf(folder));
      expect(readText(`packages/${folder}/tsconfig.json`)).toBe(tsconfigOf(folder));
      expect(readText(`packages/${folder}/typedoc.json`)).toBe(typedocOf(folder));
    });

    it('has the licence of the repository', () => {
      expect(readText(`packages/${folder}/LICENSE`)).toBe(readText('LICENSE'));
    });

    it('has a source for every entry', () => {
      const sources = Object.values(packages[folder]?.entries ?? {}).map((path) => `packages/${folder}/${path}`);
      expect(sources.filter((path) => !existsSync(path))).toEqual([]);
    });

    it('tells in its change log what its version brings', () => {
      const [, version, text = ''] =
        /^# Changes\n\n## (\S+)\n\n([\s\S]+?)(?=\n## |$)/.exec(readText(`packages/${folder}/CHANGELOG.md`)) ?? [];
      expect(version).toBe(manifest.version);
      expect(text).toContain('**Not claimed.**');
      // Names of functions are those that an entry offers today.
      const offered = filesOf(`packages/${folder}/api/*.md`).map(readText).join('');
      const named = [...text.matchAll(/`([a-z]+[A-Z]\w*)`/g)].map(([, name = '']) => name);
      expect(
        named.filter((name) => !offered.includes(`function ${name}(`) && !offered.includes(`const ${name}:`)),
      ).toEqual([]);
    });

    it('states the version of its manifest in its results', () => {
      expect(readText(`packages/${folder}/src/version.ts`)).toBe(versionSourceOf(manifest.version));
    });

    it('tells what it is at the top of its index', () => {
      expect(readText(`packages/${folder}/src/index.ts`)).toMatch(/^\/\*\*[\s\S]*?@packageDocumentation[\s\S]*?\*\//);
    });

    it('ships raw data if the shape file says so, and only then', () => {
      const data = filesOf(`packages/${folder}/data/**/*.*`);
      expect(data.length > 0).toBe(packages[folder]?.data === true);
    });
  });
});

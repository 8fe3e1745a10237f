import { describe, expect, it } from 'vitest';
import { filesOf, readText } from '../workspace.ts';

interface RootManifest {
  scripts: Record<string, string>;
  engines: { node: string };
  optionalDependencies: Record<string, string>;
  devDependencies: Record<string, string>;
}
const manifest = JSON.parse(readText('package.json')) as RootManifest;

describe('settings of the workspace', () => {
  it.each(['package-lock.json', 'tests/release/package-lock.json'])(
    'keeps the address of a registry out of %s',
    (path) => {
      const lockfile = readText(path);
      expect(lockfile).not.toContain('"resolved": "http');
      expect(lockfile.match(/https?:\/\/registry/g)).toBeNull();
    },
  );

  it('locks every installed package by its integrity', () => {
    const { packages } = JSON.parse(readText('package-lock.json')) as {
      packages: Record<string, { integrity?: string; link?: boolean }>;
    };
    const unlocked = Object.entries(packages)
      .filter(([path, entry]) => path.includes('node_modules/') && entry.link !== true && !entry.integrity)
      .map(([path]) => path);
    expect(unlocked).toEqual([]);
  });

  it('keeps the lockfile in step with the manifests, so that npm ci goes through', () => {
    const { packages: locked } = JSON.parse(readText('package-lock.json')) as {
      packages: Record<string, { version?: string; dependencies?: object; devDependencies?: object; link?: boolean }>;
    };
    expect(locked['']?.devDependencies).toEqual(manifest.devDependencies);
    for (const path of filesOf('packages/*/package.json')) {
      const own = JSON.parse(readText(path)) as { name: string; version: string; dependencies?: object };
      const { version, dependencies } = locked[path.replace('/package.json', '')] ?? {};
      expect({ version, dependencies }).toEqual({ version: own.version, dependencies: own.dependencies });
      expect(locked[`node_modules/${own.name}`]?.link).toBe(true);
    }
  });

  it('tells npm to write no addresses and to stay quiet', () => {
    const lines = readText('.npmrc').trim().split('\n');
    expect(lines).toEqual(expect.arrayContaining(['omit-lockfile-registry-resolved=true', 'loglevel=error']));
    expect(lines.filter((line) => /registry\s*=|_auth|token/i.test(line))).toEqual([]);
  });

  it('pins one Node for every platform, exactly', () => {
    const versions = Object.values(manifest.optionalDependencies);
    expect(Object.keys(manifest.optionalDependencies)).toHaveLength(5);
    expect(new Set(versions).size).toBe(1);
    expect(versions[0]).toMatch(/^\d+\.\d+\.\d+$/);
  });

  it('pins every tool exactly', () => {
    const loose = Object.entries(manifest.devDependencies).filter(
      ([, version]) => !/^(npm:.*@)?\d+\.\d+\.\d+(-r\.\d+)?$/.test(version),
    );
    expect(loose).toEqual([]);
  });
});

/** Code spans and fences of a Markdown page: prose may speak of npm without naming a script. */
const codeOf = (markdown: string): string =>
  [...markdown.matchAll(/^```[\s\S]*?^```|`[^`\n]+`/gm)].map(([code]) => code).join('\n');

const NPM_BUILTINS = ['ci', 'install', 'exec', 'pack', 'version', 'publish', 'link', 'view', 'help'];

describe('what the pages tell a reader to run exists', () => {
  const pages = filesOf('{README,DEVELOPERS}.md').concat(
    filesOf('{docs,examples,packages}/**/*.md').filter(
      (path) => !/^docs\/(api|atlas|codes|data|validation)\//.test(path),
    ),
  );

  it.each(pages)('npm scripts in %s', (page) => {
    const named = [...codeOf(readText(page)).matchAll(/\bnpm (?:(run)\s+)?([a-z][\w:-]*)/g)].map(
      ([, run, name = '']) => ({
        name,
        builtin: run === undefined && NPM_BUILTINS.includes(name),
      }),
    );
    const missing = named.filter(({ name, builtin }) => !builtin && !Object.hasOwn(manifest.scripts, name));
    expect(missing.map(({ name }) => name)).toEqual([]);
  });

  it.each(pages)('files that %s links to', (page) => {
    const folder = page.split('/').slice(0, -1).join('/');
    const linked = [...readText(page).matchAll(/\]\((?!https?:|mailto:|#|\/)([^)#\s]+)/g)].map(
      ([, target = '']) => target,
    );
    const missing = linked.filter((target) => {
      const path = new URL(target, `file:///${folder === '' ? '' : `${folder}/`}`).pathname.slice(1);
      // Written by `npm run docs`, so not there in a clean clone.
      if (/^docs\/(api|atlas|codes|data|validation)\//.test(path)) return false;
      return filesOf(path).length + filesOf(`${path}.md`).length + filesOf(`${path}/*`).length === 0;
    });
    expect(missing).toEqual([]);
  });
});

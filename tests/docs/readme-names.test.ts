import { existsSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { folders, presentEntries, readText } from '../workspace.ts';

/** Names of a package that its README does not name, each in backticks of its own. */
const unnamed = (names: Iterable<string>, readme: string): string[] =>
  [...names].filter((name) => !readme.includes(`\`${name}\``));

/** Names in the tables of functions, those whose heads speak of functions, that the package does not offer. */
function strangers(names: ReadonlySet<string>, readme: string): string[] {
  const tables = readme.split(/\n\s*\n/).filter((block) => /^\|.*\bfunction\b.*\|$/m.test(block.split('\n')[0] ?? ''));
  const named = tables.flatMap((table) => [...table.matchAll(/`([A-Za-z]\w+)`/g)].map(([, name]) => name ?? ''));
  return [...new Set(named)].filter((name) => !names.has(name));
}

// Records stand under names of their own, more than eighty of them, and the atlas shows them; schemas are named after
// what they describe; the version of a package is the one name that every package has.
const inAtlas = /\/(records|schema|messages\/\w+)$/;

describe.each(folders.filter((folder) => existsSync(`packages/${folder}/README.md`)))('the README of %s', (folder) => {
  it('names every function, class and constant that the package offers, and no other in its table', async () => {
    const readme = readText(`packages/${folder}/README.md`);
    const functions = new Set<string>();
    const constants = new Set<string>();
    for (const { source, specifier } of presentEntries().filter((entry) => entry.folder === folder)) {
      const offered = Object.entries<unknown>(await import(pathToFileURL(source).href));
      for (const [name, value] of offered) {
        if (typeof value === 'function') functions.add(name);
        else if (name !== 'version' && name !== 'messages' && !inAtlas.test(specifier)) constants.add(name);
      }
    }
    expect(functions.size).toBeGreaterThan(0);
    expect(unnamed([...functions, ...constants], readme)).toEqual([]);
    expect(strangers(functions, readme)).toEqual([]);
  });
});

describe('the check itself', () => {
  const table =
    '| to do | function |\n| ----- | -------- |\n| draw  | `draw`   |\n|       | `sketch` |\n\nSee `paint`.\n';

  it('is content with a good sample', () => {
    expect(unnamed(['draw', 'sketch'], table)).toEqual([]);
    expect(strangers(new Set(['draw', 'sketch']), table)).toEqual([]);
  });

  it('reports what the README leaves out, also where a longer name holds it', () => {
    expect(unnamed(['draw', 'ske', 'erase'], table)).toEqual(['ske', 'erase']);
  });

  it('reports what the table names and the package does not offer', () => {
    expect(strangers(new Set(['draw']), table)).toEqual(['sketch']);
  });
});

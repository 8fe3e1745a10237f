// Every result of every public function equals its round trip through JSON and survives structuredClone. The calls are
// those of the docstring examples, so a new function is covered as soon as it is documented, and must be.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { parseDocBlock } from '../../docs/doc-block.ts';
import { fencesOf } from '../../docs/fences.ts';
import { entries, folders, publishedSources, readText, root } from '../../workspace.ts';

/** Functions whose result is no plain data, with the reason. */
const EXEMPT: Readonly<Record<string, string>> = {
  checkInput: 'returns nothing',
  createFitChecker: 'a checker to be called; its answers are plain and tested beside it',
  screenParts: 'to be looped over; parts and summary are plain and tested beside it',
  preloadFromTorqueColumns: 'typed arrays, which JSON does not keep',
  torqueFromPreloadColumns: 'typed arrays, which JSON does not keep',
  screenSeats: 'typed arrays, which JSON does not keep',
};

const out = `${root}/tests/.out/round-trip-${process.pid}`;
mkdirSync(out, { recursive: true });
afterAll(() => rmSync(out, { recursive: true, force: true }));

interface Call {
  name: string;
  result: unknown;
}

const calls: Call[] = [];
const seen = new Set<string>();
Object.assign(globalThis, {
  __record: (module: Record<string, unknown>): Record<string, unknown> =>
    Object.fromEntries(
      Object.entries(module).map(([name, value]) => {
        if (typeof value !== 'function' || /^[A-Z]/.test(name)) return [name, value];
        const wrapped = (...args: unknown[]): unknown => {
          seen.add(name);
          const result: unknown = value(...args);
          calls.push({ name, result });
          return result;
        };
        return [name, wrapped];
      }),
    ),
});

/** Makes the imports of an example go through the recorder. */
const recorded = (code: string): string =>
  code.replace(
    /^import \{([^}]*)\} from '([^']+)';$/gms,
    (_, names: string, specifier: string) =>
      `import * as __m_${specifier.replace(/\W/g, '_')} from '${specifier}';\n` +
      `const {${names.replace(/\btype \w+,?/g, '')}} = __record(__m_${specifier.replace(/\W/g, '_')} as never) as any;`,
  );

const modules = folders.flatMap((folder) =>
  publishedSources(folder).flatMap((path) =>
    [...readText(path).matchAll(/\/\*\*[\s\S]*?\*\//g)].flatMap((block, at) =>
      parseDocBlock(block[0])
        .tags.filter(({ name }) => name === 'example')
        .flatMap((tag) => fencesOf(tag.text))
        .map((fence, index) => ({
          path: `${out}/${path.replace(/\W+/g, '_')}_${at}_${index}.ts`,
          text: `declare const __record: (m: never) => unknown;\n${recorded(fence.code)}`,
        })),
    ),
  ),
);
for (const { path, text } of modules) writeFileSync(path, text);

describe('results of every public function', async () => {
  for (const { path } of modules) await import(/* @vite-ignore */ pathToFileURL(path).pathname);

  it('equal their round trip through JSON and survive structuredClone', () => {
    const faults = calls.flatMap(({ name, result }) => {
      if (result === undefined || Object.hasOwn(EXEMPT, name)) return [];
      const same = (copy: unknown): boolean => {
        try {
          expect(copy).toStrictEqual(result);
          return true;
        } catch {
          return false;
        }
      };
      return same(JSON.parse(JSON.stringify(result))) && same(structuredClone(result)) ? [] : [name];
    });
    expect([...new Set(faults)]).toEqual([]);
    // One result a function at the least, but for those that only throw in their example.
    expect(calls.length).toBeGreaterThan(seen.size);
  });

  it('are met by an example for each function of each entry', async () => {
    const missing: string[] = [];
    for (const { specifier } of entries.filter((entry) => !/\/(cli|schema|messages\/en)$/.test(entry.specifier))) {
      const module = (await import(/* @vite-ignore */ specifier)) as Record<string, unknown>;
      for (const [name, value] of Object.entries(module)) {
        if (typeof value === 'function' && !/^[A-Z]/.test(name) && !seen.has(name))
          missing.push(`${specifier} ${name}`);
      }
    }
    expect(missing).toEqual([]);
  });
});

import { dirname, join, resolve } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { packages } from '../../scripts/package-shape.mjs';
import { filesOf, folders, publishedSources, readText, root } from '../workspace.ts';
import { effectsAtTopLevel, hiddenInputs, importsOf, parse } from './source-rules.ts';

const COMPOSING = 'spindlewright';
const isSchema = (path: string): boolean => path.endsWith('/src/schema.ts');
const isCli = (path: string): boolean => path.startsWith(`packages/${COMPOSING}/src/cli/`);

/** Why an import breaks the layer rule; undefined when it keeps it. */
function importFault(folder: string, path: string, specifier: string): string | undefined {
  if (specifier.startsWith('.')) {
    const target = resolve(root, dirname(path), specifier);
    if (!target.startsWith(join(root, 'packages', folder))) return 'leaves its package by a relative path';
    return /\.(ts|json)$/.test(specifier) ? undefined : 'has no .ts or .json suffix';
  }
  if (specifier === 'zod/v4') return isSchema(path) || isCli(path) ? undefined : 'zod outside schema.ts';
  if (specifier.startsWith('node:')) return isCli(path) ? undefined : 'Node outside the command line';
  const name = specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');
  if (name === packages.quantity?.name && folder !== 'quantity') return undefined;
  const dependencies = Object.keys(packages[COMPOSING]?.dependencies ?? {});
  if (folder === COMPOSING && dependencies.includes(name)) {
    return name.startsWith('@spindlewright/') || isCli(path) ? undefined : 'a foreign package outside the command line';
  }
  return 'is no layer below';
}

const importFaults = (folder: string, path: string, text: string): string[] =>
  importsOf(parse(path, text)).flatMap((specifier) => {
    const fault = importFault(folder, path, specifier);
    return fault === undefined ? [] : [`${path}: '${specifier}' ${fault}`];
  });

describe('layers', () => {
  it.each(folders)('%s imports what its layer allows', (folder) => {
    expect(publishedSources(folder).flatMap((path) => importFaults(folder, path, readText(path)))).toEqual([]);
  });

  it.each(folders)('%s: unit tests reach no sibling either', (folder) => {
    const siblings = folders.filter((other) => other !== folder && other !== 'quantity' && folder !== COMPOSING);
    const faults = filesOf(`packages/${folder}/src/**/*.test.ts`).flatMap((path) =>
      importsOf(parse(path, readText(path)))
        .filter((specifier) =>
          siblings.some(
            (other) => specifier.includes(`../${other}/`) || specifier.startsWith(`${packages[other]?.name}`),
          ),
        )
        .map((specifier) => `${path}: ${specifier}`),
    );
    expect(faults).toEqual([]);
  });

  it('finds a fault when there is one', () => {
    const faults = importFaults(
      'taper',
      'packages/taper/src/seat.ts',
      `import { a } from '@spindlewright/torque';
       import { b } from '../../quantity/src/limits.ts';
       import { readFileSync } from 'node:fs';
       import { z } from 'zod/v4';
       export { c } from './c';
       const d = import('lodash');`,
    );
    expect(faults).toHaveLength(6);
  });
});

describe('cores have no hidden input, no output of their own and no effect when imported', () => {
  it.each(folders)('%s', (folder) => {
    const faults = publishedSources(folder).flatMap((path) => {
      const file = parse(path, readText(path));
      const found = isCli(path) ? [] : hiddenInputs(file);
      if (path !== `packages/${COMPOSING}/src/cli/main.ts`) found.push(...effectsAtTopLevel(file));
      return found.map((fault) => `${path}: ${fault}`);
    });
    expect(faults).toEqual([]);
  });

  it('finds a fault when there is one', () => {
    const file = parse(
      'seat.ts',
      `const here = { process: 1, console: 2 }.process;
       type Process = { console: string };
       export function seat() { console.log(process.argv, Math.random(), Date.now(), new Date(), here); }
       export const when = (date: string) => new Date(date);
       seat();`,
    );
    expect(hiddenInputs(file)).toEqual(['console', 'process', 'Math.random', 'Date.now', 'new Date()']);
    expect(effectsAtTopLevel(file)).toEqual(['seat()']);
  });
});

it('the sources use no enum, namespace or parameter property', () => {
  // erasableSyntaxOnly refuses them; this says that the setting is still on.
  const { config } = ts.parseConfigFileTextToJson('tsconfig.base.json', readText('tsconfig.base.json'));
  expect(config.compilerOptions).toMatchObject({
    erasableSyntaxOnly: true,
    strict: true,
    exactOptionalPropertyTypes: true,
    noUncheckedIndexedAccess: true,
    types: [],
    lib: ['ES2022'],
  });
});

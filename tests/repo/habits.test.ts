import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { createProgram } from '../docs/program.ts';
import { filesOf, folders, presentEntries, readText, root } from '../workspace.ts';

const cores = presentEntries().filter((entry) => entry.specifier === entry.packageName);
const program = createProgram(cores.map((entry) => entry.source));

/** Files that declare the public functions of a core, with the names of those. */
function filesOfFunctions(source: string): Map<string, string[]> {
  const checker = program.getTypeChecker();
  const file = program.getSourceFile(source);
  const module = file && checker.getSymbolAtLocation(file);
  const found = new Map<string, string[]>();
  for (const exported of module ? checker.getExportsOfModule(module) : []) {
    const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
    const declaration = symbol.valueDeclaration;
    if (!declaration || !ts.isFunctionDeclaration(declaration)) continue;
    const path = declaration.getSourceFile().fileName;
    found.set(path, [...(found.get(path) ?? []), symbol.name]);
  }
  return found;
}

describe.each(folders)('%s', (folder) => {
  const [core] = cores.filter((entry) => entry.folder === folder);
  const files = [...filesOfFunctions(core?.source ?? '')].map(([path, names]) => ({
    path: path.replace(`${root}/`, ''),
    names,
  }));

  it('calls every public function in a test: its own, or a whole task', () => {
    const tests = filesOf(`{packages/${folder}/src,examples,tests/properties}/**/*.test.ts`).map(readText).join('\n');
    const called = (name: string): boolean => new RegExp(`\\b${name}\\(`).test(tests);
    expect(files.flatMap(({ names }) => names).filter((name) => !called(name))).toEqual([]);
  });

  it('has one public function a file', () => {
    expect(files.filter(({ names }) => names.length > 1)).toEqual([]);
  });
});

it('no text speaks of the machine it was written on', () => {
  const written = filesOf('{packages,tests,scripts,docs,examples,.ci,.changeset}/**/*.{ts,mts,mjs,json,csv,md}')
    .concat(filesOf('*.{ts,json,md}'))
    .filter((path) => !/^docs\/(api|validation)\//.test(path));
  expect(written.length).toBeGreaterThan(100);
  const here = new RegExp(['/wo', 'rk/|/ro', 'ot/|/ho', 'me/|C:\\\\Users'].join(''));
  expect(written.filter((path) => here.test(readText(path)))).toEqual([]);
});

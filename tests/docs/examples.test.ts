import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import ts from 'typescript';
import { afterAll, describe, expect, it } from 'vitest';
import { filesOf, folders, publishedSources, readText, root } from '../workspace.ts';
import { parseDocBlock } from './doc-block.ts';
import { type PreparedExample, prepareExample } from './example.ts';
import { fencesOf } from './fences.ts';
import { createProgram } from './program.ts';

interface Example extends PreparedExample {
  /** Where it stands: file, and line or function. */
  place: string;
  /** Path of the module written for it. */
  path: string;
}

// A folder of its own, so that two runs at once do not meet.
const out = `${root}/tests/.out/examples-${process.pid}`;
afterAll(() => rmSync(out, { recursive: true, force: true }));

const prepared = (place: string, code: string): Example => ({
  ...prepareExample(code),
  place,
  path: `${out}/${place.replace(/[^\w-]+/g, '_')}.ts`,
});

/** Examples of the docstrings of a file, exported or not: whatever is shown is run. */
function docstringExamples(path: string): Example[] {
  const text = readText(path);
  return [...text.matchAll(/\/\*\*[\s\S]*?\*\//g)].flatMap((match) => {
    const line = text.slice(0, match.index + match[0].length).split('\n').length + 1;
    const examples = parseDocBlock(match[0]).tags.filter((tag) => tag.name === 'example');
    return examples
      .flatMap((tag) => fencesOf(tag.text))
      .filter((fence) => fence.language === 'ts')
      .map((fence, index) => prepared(`${path}:${line}${index === 0 ? '' : `.${index + 1}`}`, fence.code));
  });
}

/** Fences of a page that assert something. */
const pageExamples = (path: string): Example[] =>
  fencesOf(readText(path))
    .filter((fence) => fence.language === 'ts' && fence.code.includes('// =>'))
    .map((fence) => prepared(`${path}:${fence.line}`, fence.code));

const pages = filesOf('{README,DEVELOPERS}.md')
  .concat(filesOf('{docs,examples,packages}/**/*.md'))
  .filter((path) => !/^docs\/(api|atlas|codes|data|validation)\//.test(path));

const groups: [string, Example[]][] = [
  ...folders.map((folder): [string, Example[]] => [
    `docstrings of ${folder}`,
    publishedSources(folder).flatMap(docstringExamples),
  ]),
  ...pages.map((path): [string, Example[]] => [path, pageExamples(path)]),
].filter((group): group is [string, Example[]] => group[1].length > 0);
const all = groups.flatMap(([, examples]) => examples);

mkdirSync(out, { recursive: true });
for (const example of all) writeFileSync(example.path, example.module);

it('every example compiles under the settings of the repository', () => {
  const program = createProgram(all.map((example) => example.path));
  const faults = all.flatMap((example) => {
    const file = program.getSourceFile(example.path);
    const diagnostics = [...program.getSyntacticDiagnostics(file), ...program.getSemanticDiagnostics(file)];
    return diagnostics.map(
      ({ messageText, start }) =>
        `${example.place}, line ${(file?.getLineAndCharacterOfPosition(start ?? 0).line ?? 0) + 1} of the fence: ` +
        ts.flattenDiagnosticMessageText(messageText, '\n'),
    );
  });
  expect(faults).toEqual([]);
}, 60_000);

describe.each(groups)('%s', (_group, examples) => {
  it.each(examples.map((example): [string, Example] => [example.place, example]))('%s', async (_place, example) => {
    expect(example.faults).toEqual([]);
    await check(example);
  });
});

async function check(example: Example): Promise<void> {
  const { __found } = (await import(/* @vite-ignore */ example.path)) as {
    __found: { line: number; actual: unknown }[];
  };
  expect(__found.map(({ line, actual }) => ({ line, value: plain(actual) }))).toStrictEqual(example.expected);
  expect(example.expected.length).toBeGreaterThan(0);
}

/** A list is compared item by item, whatever holds it. */
const plain = (value: unknown): unknown =>
  ArrayBuffer.isView(value) ? Array.from(value as unknown as ArrayLike<number>) : value;

describe('the runner of examples itself', () => {
  const run = async (code: string): Promise<void> => {
    const example = prepared(`self-${Math.random()}`, code);
    expect(example.faults).toEqual([]);
    writeFileSync(example.path, example.module);
    await check(example);
  };

  it('passes what is true, in each form', async () => {
    await run(`
      const twice = (x: number) => 2 * x;
      twice(2); // => 4
      console.log(twice(-1)); // => -2
      const four = twice(2); // => 4
      ({ four, list: [1, 'a', null, undefined], inner: { no: false } });
      // => { four: 4, list: [1, 'a', null, undefined],
      //      inner: { no: false } }
      if (four > 3) {
        twice(
          5,
        ); // => 10
      }
      new Uint8Array([1, 2]); // => [1, 2]
    `);
  });

  it.each([
    ['a wrong number', '1 + 1; // => 3'],
    ['a wrong type', '1 + 1; // => "2"'],
    ['a missing field', '({ a: 1 }); // => { a: 1, b: 2 }'],
    ['a field too many', '({ a: 1, b: undefined }); // => { a: 1 }'],
    ['a negative zero', '-0; // => 0'],
    ['a line that is never reached', 'if (Date.now() < 0) {\n  1; // => 1\n}'],
    ['an example that throws', '(null as unknown as { a: 1 }).a; // => 1'],
    ['nothing asserted', '1 + 1;'],
    ['an expected value that is computed', '2; // => 1 + 1'],
    ['a value that is prose', '2; // => about two'],
    ['an assertion without statement', '// => 2\nconst a = 2;'],
    ['an assertion behind a block', 'if (true) {\n  1;\n} // => 1'],
  ])('fails for %s', async (_name, code) => {
    await expect(run(code)).rejects.toThrow();
  });
});

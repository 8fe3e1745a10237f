import { existsSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { createProgram } from '../docs/program.ts';
import { folders, publishedSources, root } from '../workspace.ts';
import { TextTracer } from './finding-codes.ts';
import { nodesOf } from './source-rules.ts';

const absolute = (path: string): string => `${root}/${path}`;
const program = createProgram(folders.flatMap(publishedSources).map(absolute));

/** Templates of a package, by code. */
async function templatesOf(folder: string): Promise<Readonly<Record<string, string>>> {
  const path = absolute(`packages/${folder}/src/messages/en.ts`);
  if (!existsSync(path)) return {};
  return ((await import(/* @vite-ignore */ path)) as { messages: Record<string, string> }).messages;
}

/** Tells whether the sources, templates left out, write a text: as a literal, or as one with places to fill in. */
function writtenIn(paths: readonly string[]): (text: string) => boolean {
  const tracer = new TextTracer(program, paths.map(absolute));
  const literals = new Set<string>();
  const patterns: RegExp[] = [];
  for (const path of paths.filter((entry) => !entry.includes('/messages/'))) {
    const file = program.getSourceFile(absolute(path));
    for (const node of file ? nodesOf(file) : []) {
      if (ts.isStringLiteralLike(node)) literals.add(node.text);
      const pattern = ts.isTemplateExpression(node) ? tracer.patternOf(node) : undefined;
      if (pattern) patterns.push(pattern);
    }
  }
  return (text) => literals.has(text) || patterns.some((pattern) => pattern.test(text));
}
const writtenAnywhere = writtenIn(folders.flatMap(publishedSources));

describe.each(folders)('findings of %s', async (folder) => {
  const templates = await templatesOf(folder);
  const raised = new TextTracer(program, publishedSources(folder).map(absolute)).raisedCodes();

  it('have codes that the source text tells', () => {
    expect(raised.unclear.map((place) => place.replace(`${root}/`, ''))).toEqual([]);
  });

  it('have a template each', () => {
    expect([...raised.codes].filter((code) => !Object.hasOwn(templates, code))).toEqual([]);
  });

  it('leave no template unused', () => {
    // The lowest layer may keep a template for a code that the layers above raise.
    const written = folder === 'quantity' ? writtenAnywhere : writtenIn(publishedSources(folder));
    expect(Object.keys(templates).filter((code) => !raised.codes.has(code) && !written(code))).toEqual([]);
  });

  it('have codes in lower case with hyphens, and sentences that end', () => {
    expect(Object.keys(templates).filter((code) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(code))).toEqual([]);
    expect([...raised.codes].filter((code) => !/[.!?]$/.test(templates[code] ?? ''))).toEqual([]);
  });
});

it('the search follows helpers and tells when it cannot', () => {
  const path = absolute('tests/repo/sample.ts');
  const sample = createProgram([], {
    [path]: `
      function createFinding(input: { code: string; severity?: string }): object { return input; }
      const helper = (code: string, more: number) => createFinding({ code, severity: String(more) });
      const other = (input: { code: string }) => createFinding({ code: input.code });
      function third({ code: name }: { code: string }) { return createFinding({ code: name }); }
      const fourth = (code: 'g' | 'h') => createFinding({ code });
      createFinding({ code: 'a' });
      const local = Math.PI > 3 ? 'i' : 'j';
      createFinding({ code: local });
      const code = Math.PI > 3 ? 'l' : 'm';
      createFinding({ code });
      const fifth = (kind: 'x' | 'y') => createFinding({ code: \`k-\${kind}\` });
      createFinding({ code: Math.PI > 3 ? 'b' : 'c' });
      helper('d', 1);
      other({ code: 'e' });
      third({ code: 'f' });
      const table: Record<string, string> = { x: 'y' };
      createFinding({ code: table['x'] ?? '' });
    `,
  });
  const { codes, unclear } = new TextTracer(sample, [path]).raisedCodes();
  expect([...codes].sort()).toEqual(['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'j', 'k-x', 'k-y', 'l', 'm']);
  expect(unclear).toHaveLength(1);
});

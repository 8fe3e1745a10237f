import { sourceSchema } from '@spindlewright/quantity/schema';
import { listSources } from '@spindlewright/quantity/sources';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { z } from 'zod/v4';
import { filesOf, folders, publishedSources, readText } from '../workspace.ts';
import { nodesOf, parse } from './source-rules.ts';

const register = listSources();
const ids = new Set(register.map((source) => source.id));

describe('the register of sources', () => {
  it('has the form of its schema', () => {
    const parsed = z.array(sourceSchema).safeParse(register);
    expect(parsed.error && z.prettifyError(parsed.error)).toBeUndefined();
  });

  it('names each source once, in the order of the ids', () => {
    const list = register.map((source) => source.id);
    expect(list).toEqual([...new Set(list)].sort());
  });
});

/** Ids cited in parsed JSON: every `sources` list and every `source` text, however deep. */
function citedInJson(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(citedInJson);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => {
    if (key === 'sources' && Array.isArray(inner)) return inner.map(String);
    return key === 'source' && typeof inner === 'string' ? [inner] : citedInJson(inner);
  });
}

/** Ids cited in source text: `sources: ['a', 'b']`. */
function citedInCode(path: string, text: string): string[] {
  const cited: string[] = [];
  for (const node of nodesOf(parse(path, text))) {
    if (!ts.isPropertyAssignment(node) || node.name.getText() !== 'sources') continue;
    for (const literal of nodesOf(node.initializer)) {
      if (ts.isStringLiteral(literal) && ts.isArrayLiteralExpression(literal.parent)) cited.push(literal.text);
    }
  }
  return cited;
}

/** Ids cited in a table: the cells of a column `source` or `sources`, several of them split by `;` or blanks. */
function citedInCsv(text: string): string[] {
  const [head = '', ...rows] = text.trim().split('\n');
  const column = head.split(',').findIndex((name) => /^sources?$/.test(name.trim()));
  return column < 0 ? [] : rows.flatMap((row) => (row.split(',')[column] ?? '').split(/[;\s]+/).filter(Boolean));
}

describe('every source that is cited stands in the register', () => {
  it.each(folders)('%s', (folder) => {
    const unknown: string[] = [];
    const look = (path: string, cited: readonly string[]): void => {
      unknown.push(...cited.filter((id) => !ids.has(id)).map((id) => `${path}: ${id}`));
    };
    for (const path of filesOf(`packages/${folder}/{data,src}/**/*.json`))
      look(path, citedInJson(JSON.parse(readText(path))));
    for (const path of filesOf(`packages/${folder}/data/**/*.csv`)) look(path, citedInCsv(readText(path)));
    for (const path of publishedSources(folder)) look(path, citedInCode(path, readText(path)));
    expect(unknown).toEqual([]);
  });

  it('finds ids wherever they may stand', () => {
    expect(citedInJson({ a: [{ sources: ['x', 'y'] }], origin: { source: 'z' } })).toEqual(['x', 'y', 'z']);
    expect(citedInCode('a.ts', `f({ sources: ['x'], s: { sources: old ? ['y'] : [] } })`)).toEqual(['x', 'y']);
    expect(citedInCsv('id,sources,value\n1,x;y,2\n2,z,3\n')).toEqual(['x', 'y', 'z']);
  });
});

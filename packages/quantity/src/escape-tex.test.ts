import { describe, expect, it } from 'vitest';
import { escapeTex } from './escape-tex.ts';

describe('escapeTex', () => {
  // The ten special characters of TeX and the form that prints each of them (Knuth, The TeXbook, chapter 7, and the
  // LaTeX text commands).
  it.each([
    ['\\', '\\textbackslash{}'],
    ['{', '\\{'],
    ['}', '\\}'],
    ['%', '\\%'],
    ['&', '\\&'],
    ['$', '\\$'],
    ['#', '\\#'],
    ['_', '\\_'],
    ['~', '\\textasciitilde{}'],
    ['^', '\\textasciicircum{}'],
  ])('%s becomes %s', (text, expected) => {
    expect(escapeTex(text)).toBe(expected);
    expect(escapeTex(`a${text}${text}b`)).toBe(`a${expected}${expected}b`);
  });

  it('escapes once: what it puts in is not escaped again', () => {
    expect(escapeTex('\\{~}')).toBe('\\textbackslash{}\\{\\textasciitilde{}\\}');
  });

  it('leaves everything else', () => {
    const text = 'M\u00fcller\'s 5/8" table (1995), p. 7; <x@y> = 1 + 2*3 | `q` !? \u4e2d';
    expect(escapeTex(text)).toBe(text);
  });
});

import { describe, expect, it } from 'vitest';
import { jsonReason, parsedJson, refuseOtherKind } from './files.ts';
import { fileReason } from './refusal.ts';

const reasonOf = (text: string): string => {
  try {
    parsedJson('a.json', text);
  } catch (error) {
    return error instanceof Error ? error.message : '';
  }
  return 'no fault';
};

describe('what is wrong with a file', () => {
  it.each([
    ['', 'it is empty'],
    ['PK\u0003\u0004\0\0', 'it is a binary file'],
    ['caf\uFFFD', 'it is a binary file, or its text is not UTF-8'],
    ['{"a": 1,}', 'Expected'],
  ])('%j', (text, reason) => {
    expect(reasonOf(text)).toContain(`a.json is not JSON: `);
    expect(reasonOf(text)).toContain(reason);
  });

  it('never hands a command of a stranger to the terminal', () => {
    const text = '{"a": \u001b]0;owned\u0007}';
    expect(reasonOf(text)).not.toMatch(/\p{Cc}/u);
    expect(jsonReason(text, new Error('token \u001b[2J'))).not.toMatch(/\p{Cc}/u);
  });

  it.each([
    ['ENOENT', 'there is no such file'],
    ['EISDIR', 'it is a folder'],
    ['EACCES', 'that is not allowed'],
    ['EWHATEVER', 'as the system says'],
  ])('%s in words', (code, words) => {
    expect(fileReason(Object.assign(new Error('as the system says'), { code }))).toBe(words);
  });

  it('a file of ours of another kind is named, and what takes it', () => {
    const refused = (format: unknown): string => {
      try {
        refuseOtherKind('a.json', { format }, 'job');
      } catch (error) {
        return error instanceof Error ? error.message : '';
      }
      return '';
    };
    expect(refused('spindlewright-need-1')).toBe(
      'a.json is a need and no job; it goes with: spindlewright screen --need FILE',
    );
    for (const format of ['spindlewright-job-1', 'spindlewright-toString-1', 'other', 3, undefined]) {
      expect(refused(format)).toBe('');
    }
  });
});

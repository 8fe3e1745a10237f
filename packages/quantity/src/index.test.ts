import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import * as entry from './index.ts';
import { messages } from './messages/en.ts';
import { version } from './version.ts';

describe('the main entry', () => {
  it('exports these values and no others', () => {
    expect(Object.keys(entry).sort()).toEqual([
      'DomainError',
      'checkInput',
      'convert',
      'createFinding',
      'formatFinding',
      'hardLimits',
      'isDomainError',
      'limits',
      'limitsOf',
      'nearestName',
      'parseQuantity',
      'version',
    ]);
  });

  it('states the version of the manifest', () => {
    const manifest: unknown = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'));
    expect(manifest).toMatchObject({ version });
  });
});

describe('the English templates', () => {
  it('fill in every placeholder from the values they are written for', () => {
    const values = { deprecatedId: 'square-taper', currentId: 'square-taper-jis' };
    const sentences = Object.entries(messages).map(
      ([code, template]) => entry.createFinding({ code, severity: 'note', template, values }).message,
    );
    expect(sentences).toEqual(['The id "square-taper" is kept for old files; its name is now "square-taper-jis".']);
  });
});

import { describe, expect, it } from 'vitest';
import { diagnose } from '../diagnose.ts';
import { explain } from '../explain.ts';
import { ownerWords } from '../owner-words.ts';
import { messages as de } from './de.ts';
import { messages as en } from './en.ts';

const placeholders = (template: string): string[] =>
  [...template.matchAll(/\{(\w+)(?::\d)?\}/g)].map(([, name = '']) => name).sort();

describe('the German table', () => {
  it('has every code of the English one and no other', () => {
    expect(Object.keys(de).sort()).toEqual(Object.keys(en).sort());
  });

  it('says the same values in every template, in other words', () => {
    const differing = Object.keys(en).filter(
      (code) => placeholders(de[code] ?? '').join() !== placeholders(en[code] ?? '').join(),
    );
    expect(differing).toEqual([]);
    expect(Object.keys(en).filter((code) => de[code] === en[code])).toEqual([]);
  });

  it('ends a sentence where the English one does', () => {
    const ends = (template = ''): string => (/[.?)]$/.exec(template.replace(/[\u201c"]$/, '')) ? 'sentence' : 'words');
    expect(Object.keys(en).filter((code) => ends(de[code]) !== ends(en[code]))).toEqual([]);
  });

  it('words a whole explanation and what is said to the owner, with the same values and codes', () => {
    const result = diagnose({
      joint: 'square-taper-jis',
      observations: { 'bolt-on-arrival': 'tight', 'play-after-tightening': 'remains', 'bore-flats': 'rounded' },
    });
    const german = explain({ result, messages: de });
    const english = explain({ result });
    expect(german.map(({ code }) => code)).toEqual(english.map(({ code }) => code));
    expect(german.filter(({ message }, index) => message === english[index]?.message)).toEqual([]);
    expect(german[0]?.message).toBe('Nicht zu fahren, bis dies erledigt und geprüft ist.');
    const { sentences, keep } = ownerWords({ result, messages: de });
    expect(sentences[1].message).toBe('Bitte nicht fahren, bis dies erledigt ist: den Arm ersetzen.');
    expect(keep.map(({ message }) => message).join(' ')).not.toMatch(/\bthe\b/);
  });
});

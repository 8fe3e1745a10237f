import { describe, expect, it } from 'vitest';
import { createFinding } from './finding.ts';
import { formatFinding } from './format-finding.ts';

const finding = createFinding({
  code: 'gap',
  severity: 'note',
  template: 'Gap {endGapMm:1} mm.',
  values: { endGapMm: 1.5 },
});

describe('formatFinding', () => {
  it.each<[string, Record<string, string>, string]>([
    ['another language', { gap: 'Spalt {endGapMm:2} mm.' }, 'Spalt 1.50 mm.'],
    ['a template without values', { gap: 'Spalt.' }, 'Spalt.'],
    ['a placeholder without a value', { gap: '{endGapMm:0} {of}' }, '2 {of}'],
    ['an empty template', { gap: '' }, ''],
    ['no template for the code', { other: 'x' }, 'Gap 1.5 mm.'],
    ['no template at all', {}, 'Gap 1.5 mm.'],
    ['a template that is no text', { gap: 5 as unknown as string }, 'Gap 1.5 mm.'],
  ])('words it by %s', (_name, messages, expected) => {
    expect(formatFinding(finding, messages)).toBe(expected);
  });

  it('does not take a key of the prototype for a template', () => {
    expect(formatFinding({ ...finding, code: 'constructor' }, {})).toBe('Gap 1.5 mm.');
  });
});

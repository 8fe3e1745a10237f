import { describe, expect, test } from 'vitest';
import { styleSheet } from './theme.ts';

// WCAG 2.2, definitions of relative luminance and contrast ratio.
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const channel = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
const contrast = (a: string, b: string): number => {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
};

const sheet = styleSheet('p', { '.a,.b': 'fill:none' });
const values = (block: RegExp): Record<string, string> =>
  Object.fromEntries([...(block.exec(sheet)?.[1] ?? '').matchAll(/--([\w-]+):(#\w{6})/g)].map(([, k, v]) => [k, v]));
const light = values(/\n#p\{(--[^}]*)\}/);
const dark = values(/prefers-color-scheme:dark\)\{#p\{([^}]*)\}/);

describe('style sheet', () => {
  test('the contrast formula gives the ends of its scale', () => {
    expect(contrast('#ffffff', '#000000')).toBeCloseTo(21, 10);
    expect(contrast('#777777', '#777777')).toBe(1);
  });

  // WCAG 2.2: 1.4.3 asks 4.5 of text, 1.4.11 asks 3 of what is needed to understand a graphic.
  test.each([
    ['light', light],
    ['dark', dark],
  ])('text and lines stand out from the paper: %s', (_, tones) => {
    const { paper = '', arm = '', steel = '', bolt = '', ink = '' } = tones;
    for (const tone of ['ink', 'soft', 'hand', 'pressed', 'contact', 'good', 'caution']) {
      expect(contrast(tones[tone] ?? '', paper), tone).toBeGreaterThanOrEqual(4.5);
    }
    for (const ground of [arm, steel, bolt]) expect(contrast(ink, ground)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(tones['arm-hatch'] ?? '', arm)).toBeGreaterThanOrEqual(2.5);
    expect(contrast(tones['steel-hatch'] ?? '', steel)).toBeGreaterThanOrEqual(2.5);
  });

  test('paper is light, and white', () => {
    expect(sheet).toMatch(/@media print\{[^@]*--ink:#1a2227[^@]*--paper:#fff\}\}/);
  });

  test('a page that sets its colour scheme decides, a picture on its own follows the reader', () => {
    expect(sheet).toContain(`--ink:light-dark(${light.ink},${dark.ink})`);
    expect(sheet).toContain('#p:root{color-scheme:light dark}');
  });

  test('every selector of a list is scoped', () => {
    expect(sheet).toContain('#p .a,#p .b{fill:none}');
  });
});

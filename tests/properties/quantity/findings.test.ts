import { createFinding, formatFinding, type Messages } from '@spindlewright/quantity';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bounded } from './arbitraries.ts';

const name = fc.stringMatching(/^[a-z][A-Za-z0-9]{0,11}$/);
const word = fc.string().filter((text) => !/[{}]/.test(text));
const values = fc.dictionary(name, fc.oneof(bounded, word), { minKeys: 1, maxKeys: 5 });

const made = (template: string, given: Record<string, number | string>) =>
  createFinding({ code: 'x', severity: 'note', template, values: given });

describe('a sentence', () => {
  it('has no placeholder left when every value is there', () => {
    fc.assert(
      fc.property(values, fc.nat(9), (given, decimals) => {
        const template = Object.keys(given)
          .map((key) => `a {${key}} b {${key}:${decimals}} c`)
          .join(' ');
        expect(made(template, given).message).not.toMatch(/[{}]\w|\w[}]/);
      }),
    );
  });

  it('keeps texts letter by letter', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (a, b) => {
        expect(made('<{a}|{b}>', { a, b }).message).toBe(`<${a}|${b}>`);
      }),
    );
  });

  it('shows a number to half a unit of its last decimal, as often as it is asked', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.nat(6), (x, decimals) => {
        const { message } = made(`{x:${decimals}}`, { x });
        expect(message).toMatch(decimals === 0 ? /^-?\d+$/ : new RegExp(`^-?\\d+\\.\\d{${decimals}}$`));
        // The half unit, and the nudge of one unit in the last place of the double.
        expect(Math.abs(Number(message) - x)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 4e-16 * Math.abs(x) + 1e-16);
        expect(message).not.toMatch(/^-0(\.0*)?$/);
      }),
    );
  });

  it('rounds a number of few digits as one does on paper', () => {
    // Reference: the whole number of thousandths, rounded half away from zero in whole numbers.
    fc.assert(
      fc.property(fc.integer({ min: -9_999_999, max: 9_999_999 }), (thousandths) => {
        const hundredths = Math.trunc((Math.abs(thousandths) + 5) / 10);
        const sign = thousandths < 0 && hundredths > 0 ? '-' : '';
        const text = `${sign}${Math.trunc(hundredths / 100)}.${String(hundredths % 100).padStart(2, '0')}`;
        expect(made('{x}', { x: thousandths / 1000 }).message).toBe(text);
      }),
    );
  });

  it('in other words is filled from the same values', () => {
    fc.assert(
      fc.property(values, (given) => {
        const keys = Object.keys(given);
        const template = keys.map((key) => `{${key}}`).join('/');
        const other = keys.map((key) => `{${key}}`).join(' und ');
        const finding = made(template, given);
        const messages: Messages = { x: template };
        expect(formatFinding(finding, messages)).toBe(finding.message);
        expect(formatFinding(finding, { x: other })).toBe(made(other, given).message);
        expect(formatFinding(finding, {})).toBe(finding.message);
      }),
    );
  });
});

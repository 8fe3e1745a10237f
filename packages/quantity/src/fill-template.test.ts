import { describe, expect, it } from 'vitest';
import { fillTemplate } from './fill-template.ts';

describe('fillTemplate', () => {
  it.each<[string, string, Record<string, number | string>, string]>([
    ['a text', 'The {part} is worn.', { part: 'arm' }, 'The arm is worn.'],
    ['two decimals by default', '{gapMm} mm', { gapMm: 1.2345 }, '1.23 mm'],
    ['no decimals', '{turns:0} turns', { turns: 2.5 }, '3 turns'],
    ['nine decimals', '{x:9}', { x: 1.5 }, '1.500000000'],
    ['one value twice', '{x:1} of {x:0}', { x: 2 }, '2.0 of 2'],
    ['a text whatever decimals it asks for', '{x:1}', { x: '1.25' }, '1.25'],
    ['an unknown name as it stands', '{y} and {x}', { x: 'a' }, '{y} and a'],
    ['a name of the prototype as it stands', '{constructor} {toString}', {}, '{constructor} {toString}'],
    ['braces that hold no name', '{} {a b} {x:12}', { x: 1 }, '{} {a b} {x:12}'],
    ['a value that looks like a template', '{x}', { x: '{y} $& $1', y: 'no' }, '{y} $& $1'],
    ['an empty template', '', { x: 1 }, ''],
  ])('fills in %s', (_name, template, values, expected) => {
    expect(fillTemplate(template, values)).toBe(expected);
  });

  // Half-way cases go away from zero, as the digits on paper promise, whatever the double below them.
  it.each<[number, number, string]>([
    [1.25, 1, '1.3'],
    [1.35, 1, '1.4'],
    [1.005, 2, '1.01'],
    [8.345, 2, '8.35'],
    [-1.25, 1, '-1.3'],
    [1.2499999, 1, '1.2'],
    [0.5, 0, '1'],
    [0.49999999, 0, '0'],
    [-0.004, 2, '0.00'],
    [-0.005, 2, '-0.01'],
    [-0, 2, '0.00'],
    [0, 0, '0'],
    [999.995, 2, '1000.00'],
    [12000, 0, '12000'],
    [9_000_000_000_000_000, 0, '9000000000000000'],
    [30_000_000_000_000, 2, '30000000000000.00'],
    [1e21, 2, '1e+21'],
    [Number.MAX_VALUE, 2, '1.7976931348623157e+308'],
  ])('rounds %d to %i decimals as %s', (x, decimals, expected) => {
    expect(fillTemplate(`{x:${decimals}}`, { x })).toBe(expected);
  });
});

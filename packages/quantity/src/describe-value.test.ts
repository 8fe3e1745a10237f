import { describe, expect, it } from 'vitest';
import { describeValue } from './describe-value.ts';

describe('describeValue', () => {
  it.each<[string, unknown, string]>([
    ['undefined', undefined, 'nothing'],
    ['null', null, 'null'],
    ['a number', 1.5, '1.5'],
    ['NaN', Number.NaN, 'NaN'],
    ['infinity', Number.NEGATIVE_INFINITY, '-Infinity'],
    ['a flag', false, 'false'],
    ['a text', 'two "deg"', '"two \\"deg\\""'],
    ['a text of 60', 'x'.repeat(60), `"${'x'.repeat(60)}"`],
    ['a text of 61', 'x'.repeat(61), `"${'x'.repeat(57)}..."`],
    ['a bigint', 5n, 'a bigint'],
    ['a symbol', Symbol('x'), 'a symbol'],
    ['a function', () => 1, 'a function'],
    ['a list', [1, 2], 'a list of 2'],
    ['an object', { lower: 1, upper: 2 }, 'an object with lower, upper'],
    ['an empty object', {}, 'an empty object'],
    ['an object without prototype', Object.create(null), 'an empty object'],
    ['six keys', { a: 1, b: 1, c: 1, d: 1, e: 1, f: 1 }, 'an object with a, b, c, d, e, f'],
    ['seven keys', { a: 1, b: 1, c: 1, d: 1, e: 1, f: 1, g: 1 }, 'an object with a, b, c, d, e, f, ...'],
    ['a key with a line break', { 'a\nb': 1 }, 'an object with "a\\nb"'],
    ['a long key', { ['k'.repeat(1000)]: 1 }, `an object with "${'k'.repeat(57)}..."`],
  ])('renders %s', (_name, value, text) => {
    expect(describeValue(value)).toBe(text);
  });

  it('renders a value that holds itself', () => {
    const cyclic: { self?: unknown } = {};
    cyclic.self = cyclic;
    expect(describeValue(cyclic)).toBe('an object with self');
  });

  it('renders proxies that refuse to be looked at', () => {
    const throwing = new Proxy(
      {},
      {
        ownKeys: () => {
          throw new Error('no');
        },
      },
    );
    const revocable = Proxy.revocable([], {});
    revocable.revoke();
    expect(describeValue(throwing)).toBe('an object that cannot be read');
    expect(describeValue(revocable.proxy)).toBe('an object that cannot be read');
  });

  it('does not run getters', () => {
    const value = {
      get trap(): never {
        throw new Error('no');
      },
    };
    expect(describeValue(value)).toBe('an object with trap');
  });
});

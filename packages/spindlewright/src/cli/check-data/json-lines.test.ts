import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonLines } from './json-lines.ts';

describe('jsonLines', () => {
  const text = '{\n  "a": {\n    "b": [1,\n      { "c": "x\\n\\"y" }]\n  },\n  "d": null\n}\n';

  it.each([
    ['a', 2],
    ['a.b', 3],
    ['a.b[0]', 3],
    ['a.b[1]', 4],
    ['a.b[1].c', 4],
    ['d', 6],
    // What is not there is looked for round it.
    ['a.b[1].missing', 4],
    ['a.b[7].c.d', 3],
    ['nothing', 1],
    ['', 1],
  ])('finds %s', (path, line) => {
    expect(jsonLines(text).lineOf(path)).toBe(line);
    expect(jsonLines(text).brokenAt).toBeUndefined();
  });

  it('finds a field that comes twice, though not in two objects', () => {
    expect(jsonLines('{"a":1,\n"b":{"a":2},\n"a":3}').repeated).toEqual([{ path: 'a', line: 3 }]);
    expect(jsonLines('[{"a":1},{"a":2}]').repeated).toEqual([]);
  });

  it.each([
    ['{"a":1,\n"b":,}', 2],
    ['{"a":1\n\n"b":2}', 3],
    ['[1,\n2', 2],
    ['{\n"a": tru }', 2],
    ['{\n"a": "open }', 2],
    ['', 1],
    [`${'['.repeat(5000)}`, 1],
  ])('finds the line where %s breaks', (broken, line) => {
    expect(jsonLines(broken).brokenAt).toBe(line);
  });

  it('reads whatever JSON.stringify writes', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 6 }), (value) => {
        expect(jsonLines(JSON.stringify(value, null, 1)).brokenAt).toBeUndefined();
      }),
      { numRuns: 100 },
    );
  });
});

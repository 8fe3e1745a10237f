// What an import may weigh, compressed: tests/budgets.json is the one place that says so, for each published entry as a
// whole and for the names that pages take alone. Measured with esbuild 0.28; a growth beyond the margin deserves a look.
import { describe, expect, it } from 'vitest';
import { gzippedBytes, only, whole } from '../bundle.ts';
import { entries, readText } from '../workspace.ts';

interface Budgets {
  entries: Record<string, number>;
  names: Record<string, Record<string, number>>;
}
const budgets: Budgets = JSON.parse(readText('tests/budgets.json'));
/** A budget further above what it holds than this is no budget. */
const SLACK = 1.25;

const cases = [
  ...Object.entries(budgets.entries).map(([specifier, bytes]): [string, string, number] => [
    specifier,
    whole(specifier),
    bytes,
  ]),
  ...Object.entries(budgets.names).flatMap(([specifier, names]) =>
    Object.entries(names).map(([name, bytes]): [string, string, number] => [
      `${name} of ${specifier}`,
      only(name, specifier),
      bytes,
    ]),
  ),
];

describe('the budgets of sizes', () => {
  it('are there for each published entry and for no other', () => {
    expect(Object.keys(budgets.entries).sort()).toEqual(entries.map(({ specifier }) => specifier).sort());
  });

  it.each(cases)('hold %s', async (_what, contents, bytes) => {
    const size = await gzippedBytes(contents);
    expect(size).toBeLessThanOrEqual(bytes);
    expect(size * SLACK).toBeGreaterThan(bytes);
  });
});

// What a page pays for the data: a record by its name little more than its own JSON, a lookup only what it looks up.
import { gzipSync } from 'node:zlib';
import * as records from '@spindlewright/interfaces/records';
import { describe, expect, it } from 'vitest';
import { gzippedBytes, only } from '../../bundle.ts';

const gzip = (text: string): number => gzipSync(text, { level: 9 }).length;

const ENTRY = '@spindlewright/interfaces';

describe('one record by its name', () => {
  it.each(Object.entries(records))('%s costs at most 1 kB over its JSON', async (name, record) => {
    const size = await gzippedBytes(only(name, `${ENTRY}/records`));
    expect(size).toBeGreaterThan(0.8 * gzip(JSON.stringify(record)));
    expect(size).toBeLessThanOrEqual(gzip(JSON.stringify(record)) + 1024);
  });
});

describe('functions', () => {
  const together = (...names: string[]): Promise<number> =>
    gzippedBytes(names.map((name) => only(name, ENTRY)).join('\n'));

  it('getInterface does not bring along what stands beside the joints, nor the meanings of observations', async () => {
    const both = await together('getInterface', 'getNeighbour');
    const own = await together('getInterface');
    expect(both).toBeGreaterThan(own + 5000);
    const observed = await together('getInterface', 'listObservations');
    expect(observed).toBeGreaterThan(own + 2000);
  });
});

// What a page pays for the data: a record by its name little more than its own JSON, the lookup of all joints 40 kB.
import { gzipSync } from 'node:zlib';
import * as records from '@spindlewright/interfaces/records';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { root } from '../../workspace.ts';

const gzip = (text: string): number => gzipSync(text, { level: 9 }).length;

const gzipped = async (contents: string): Promise<number> => {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: root },
    bundle: true,
    minify: true,
    format: 'esm',
    write: false,
    conditions: ['@spindlewright/source'],
    logLevel: 'silent',
  });
  return gzip(outputFiles[0]?.text ?? '');
};
const only = (name: string, entry = ''): string =>
  `import { ${name} } from '@spindlewright/interfaces${entry}'; globalThis.kept = ${name};`;

describe('one record by its name', () => {
  it.each(Object.entries(records))('%s costs at most 1 kB over its JSON', async (name, record) => {
    const size = await gzipped(only(name, '/records'));
    expect(size).toBeGreaterThan(0.8 * gzip(JSON.stringify(record)));
    expect(size).toBeLessThanOrEqual(gzip(JSON.stringify(record)) + 1024);
  });
});

describe('functions', () => {
  it('getInterface with every joint fits into 40 kB', async () => {
    const size = await gzipped(only('getInterface'));
    console.log(`getInterface: ${size} bytes gzip`);
    expect(size).toBeLessThanOrEqual(40 * 1024);
    // The joints are in it; a bundle without them would be small for the wrong reason.
    expect(size).toBeGreaterThan(10 * 1024);
  });

  it('getInterface does not bring along what stands beside the joints, nor the meanings of observations', async () => {
    const both = await gzipped(`${only('getInterface')}${only('getNeighbour').replaceAll('kept', 'more')}`);
    const own = await gzipped(only('getInterface'));
    expect(both).toBeGreaterThan(own + 5000);
    const observed = await gzipped(`${only('getInterface')}${only('listObservations').replaceAll('kept', 'more')}`);
    expect(observed).toBeGreaterThan(own + 2000);
  });

  it('checkMate brings no record along that its caller did not name', async () => {
    const size = await gzipped(only('checkMate'));
    console.log(`checkMate: ${size} bytes gzip`);
    expect(size).toBeLessThan(16 * 1024);
  });
});

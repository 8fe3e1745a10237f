// What a page pays for a diagnosis: code, likelihoods and the checks of quantity, without the words of the questions.
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { expect, it } from 'vitest';
import { root } from '../../workspace.ts';

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
  return gzipSync(outputFiles[0]?.text ?? '', { level: 9 }).length;
};
const only = (name: string): string => `import { ${name} } from '@spindlewright/diagnosis'; globalThis.kept = ${name};`;

it('diagnose with the data of every family fits into 14 kB', async () => {
  const size = await gzipped(only('diagnose'));
  console.log(`diagnose: ${size} bytes gzip`);
  expect(size).toBeLessThan(14 * 1024);
});

it('the words are paid for only by who asks for them', async () => {
  const words = await gzipped(only('listActions'));
  expect(await gzipped(only('listJoints'))).toBeLessThan(1024);
  expect(
    await gzipped(`${only('diagnose')}${only('listActions').replace('globalThis.kept', 'globalThis.more')}`),
  ).toBeGreaterThan((await gzipped(only('diagnose'))) + words / 2);
});

// What a bundler makes of single imports: nothing runs on loading, and one function does not drag the others in.
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { root } from '../../workspace.ts';

async function bundle(contents: string): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: root },
    bundle: true,
    minify: true,
    format: 'esm',
    write: false,
    conditions: ['@spindlewright/source'],
    // Looks at the code itself instead of believing the `sideEffects` of the manifest.
    ignoreAnnotations: true,
    logLevel: 'silent',
  });
  return outputFiles[0]?.text ?? '';
}

const only = (name: string): Promise<string> =>
  bundle(`import { ${name} } from '@spindlewright/quantity'; globalThis.kept = ${name};`);

describe('bundles', () => {
  it.each(['', '/sources', '/messages/en'])('of a bare import of quantity%s are empty', async (entry) => {
    expect(await bundle(`import '@spindlewright/quantity${entry}';`)).toBe('');
  });

  it('would show code that runs on loading', async () => {
    expect(await bundle(`import '@spindlewright/quantity'; globalThis.ran = true;`)).not.toBe('');
  });

  // Measured with esbuild 0.28, with a margin of about a tenth: a growth beyond it deserves a look.
  it.each([
    ['isDomainError', 200],
    ['formatFinding', 350],
    ['limits', 1300],
    ['convert', 1750],
    ['hardLimits', 1900],
    ['checkInput', 2500],
    ['parseQuantity', 2500],
    ['createFinding', 3100],
  ])('of %s alone stay below %i bytes, compressed', async (name, budget) => {
    const text = await only(name);
    expect(text.length).toBeGreaterThan(0);
    expect(gzipSync(text, { level: 9 }).length).toBeLessThan(budget);
  });

  it('of the core hold neither the register of sources nor zod', async () => {
    const everything = await bundle(`import * as all from '@spindlewright/quantity'; globalThis.kept = all;`);
    expect(everything).toContain('standardUncertainty');
    expect(everything).not.toMatch(/shigley-9|_zod|ZodType/);
  });
});

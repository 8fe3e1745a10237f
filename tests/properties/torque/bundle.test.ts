// What a bundler makes of single imports: nothing runs on loading, and one function does not drag the tables in.
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { root } from '../../workspace.ts';

async function bundle(contents: string, ignoreAnnotations = true): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: root },
    bundle: true,
    minify: true,
    format: 'esm',
    write: false,
    conditions: ['@spindlewright/source'],
    // Looks at the code itself instead of believing the `sideEffects` of the manifest.
    ignoreAnnotations,
    logLevel: 'silent',
  });
  return outputFiles[0]?.text ?? '';
}

describe('bundles', () => {
  it.each(['', '/bare', '/messages/en'])('of a bare import of torque%s are empty', async (entry) => {
    expect(await bundle(`import '@spindlewright/torque${entry}';`)).toBe('');
  });

  // What a page may pay for one conversion and nothing else.
  it.each(['bareTorqueNm', 'barePreloadN'])('of %s alone stay within 2.5 kB, compressed', async (name) => {
    const text = await bundle(`import { ${name} } from '@spindlewright/torque/bare'; globalThis.kept = ${name};`);
    expect(text).toContain('kept');
    expect(gzipSync(text, { level: 9 }).length).toBeLessThanOrEqual(2500);
  });

  // Measured with esbuild 0.28, with a margin of about a tenth: a growth beyond it deserves a look.
  it.each([
    ['metricThread', 3000],
    ['frustumStiffness', 2800],
    ['wrenchSetting', 3600],
    ['torqueFromPreload', 5700],
    ['threadFor', 7100],
    ['checkFixing', 9300],
    ['assemblyLimit', 7400],
    ['preloadRange', 9500],
  ])('of %s alone stay below %i bytes, compressed', async (name, budget) => {
    const text = await bundle(`import { ${name} } from '@spindlewright/torque'; globalThis.kept = ${name};`);
    expect(text.length).toBeGreaterThan(0);
    expect(gzipSync(text, { level: 9 }).length).toBeLessThan(budget);
  });

  it('of the core hold no trade torque and no zod', async () => {
    const everything = await bundle(`import * as all from '@spindlewright/torque'; globalThis.kept = all;`);
    expect(everything).toContain('washer-missing');
    expect(everything).not.toMatch(/square-taper-dealer|_zod|ZodType/);
  });

  it('of one table hold no other', async () => {
    const one = await bundle(
      `import { frictionClasses } from '@spindlewright/torque/data'; globalThis.kept = frictionClasses;`,
      false,
    );
    expect(one).toContain('friction-class-a');
    expect(one).not.toMatch(/square-taper-dealer|GJL-250|M8x1/);
  });
});

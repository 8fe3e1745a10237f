// What a bundler makes of single imports: nothing runs on loading, and one function does not drag the others in.
import { describe, expect, it } from 'vitest';
import { bundle } from '../../bundle.ts';

/** Looks at the code itself instead of believing the `sideEffects` of the manifest. */
const bare = (contents: string): Promise<string> => bundle(contents, { ignoreAnnotations: true });

describe('bundles', () => {
  it.each(['', '/sources', '/messages/en'])('of a bare import of quantity%s are empty', async (entry) => {
    expect(await bare(`import '@spindlewright/quantity${entry}';`)).toBe('');
  });

  it('would show code that runs on loading', async () => {
    expect(await bare(`import '@spindlewright/quantity'; globalThis.ran = true;`)).not.toBe('');
  });

  it('of the core hold neither the register of sources nor zod', async () => {
    const everything = await bare(`import * as all from '@spindlewright/quantity'; globalThis.kept = all;`);
    expect(everything).toContain('standardUncertainty');
    expect(everything).not.toMatch(/shigley-9|_zod|ZodType/);
  });
});

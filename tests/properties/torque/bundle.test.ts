// What a bundler makes of single imports: nothing runs on loading, and one function does not drag the tables in.
import { describe, expect, it } from 'vitest';
import { bundle } from '../../bundle.ts';

/** Looks at the code itself instead of believing the `sideEffects` of the manifest. */
const bare = (contents: string): Promise<string> => bundle(contents, { ignoreAnnotations: true });

describe('bundles', () => {
  it.each(['', '/bare', '/messages/en'])('of a bare import of torque%s are empty', async (entry) => {
    expect(await bare(`import '@spindlewright/torque${entry}';`)).toBe('');
  });

  it('of the core hold no trade torque and no zod', async () => {
    const everything = await bare(`import * as all from '@spindlewright/torque'; globalThis.kept = all;`);
    expect(everything).toContain('washer-missing');
    expect(everything).not.toMatch(/square-taper-dealer|_zod|ZodType/);
  });

  it('of one table hold no other', async () => {
    const one = await bundle(
      `import { frictionClasses } from '@spindlewright/torque/data'; globalThis.kept = frictionClasses;`,
    );
    expect(one).toContain('friction-class-a');
    expect(one).not.toMatch(/square-taper-dealer|GJL-250|M8x1/);
  });
});

// What the mutants of one package have to survive. Packages are found beside this file, not through node_modules: in the
// copy that Stryker works on those links lead back to the unchanged sources, and no mutant of a sibling would ever run.
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { packages } from '../../scripts/package-shape.mjs';

const subject = process.env.MUTATE ?? '';
const spec = packages[subject];
if (spec === undefined) throw new Error(`MUTATE names no package: "${subject}"`);

const here = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const alias = Object.entries(packages).flatMap(([folder, { name, entries }]) =>
  Object.entries(entries).map(([entry, source]) => ({
    find: new RegExp(`^${name}${entry.slice(1)}$`),
    replacement: here(`packages/${folder}/${source}`),
  })),
);

/** Minutes for each mutant that one of them covers: their own runs are for the sources as they stand. */
const tooSlow: Record<string, readonly string[]> = { taper: ['tests/properties/taper/verdict-sql.test.ts'] };

export default defineConfig({
  root: here('.'),
  resolve: { alias },
  test: {
    setupFiles: [here('tests/setup.ts'), here('tests/mutation/few-runs.ts')],
    // A mutant that loops is killed by Stryker's own clock.
    testTimeout: 60_000,
    include: [
      `packages/${subject}/src/**/*.test.ts`,
      `tests/properties/${subject}/**/*.test.ts`,
      ...(subject === 'taper' ? ['tests/properties/joints/**/*.test.ts'] : []),
      'tests/reference/reference.test.ts',
    ],
    exclude: [
      ...(tooSlow[subject] ?? []),
      ...(process.env.MUTATE_WITHOUT ?? '').split(',').filter((path) => path !== ''),
    ],
    // In Stryker's copy every source is rewritten, so a module cannot be what the generator would write from it.
    testNamePattern: /^(?!.*the packed module is what the files say)/,
  },
});

import { defineConfig } from 'vitest/config';

// The source condition lets every test run on a clean clone, before anything is built.
const conditions = ['@spindlewright/source', 'module', 'import', 'default'];

/** One project a test layer: `npx vitest run --project reference` runs one of them alone. */
const layer = (name: string, include: string[]) => ({ extends: true as const, test: { name, include } });

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    reporters: ['default', ['json', { outputFile: 'tests/.out/test.json' }]],
    setupFiles: ['tests/setup.ts'],
    // No test is timed: this is where a hang ends, on a machine that is busy with other things.
    testTimeout: 60_000,
    // Vitest leaves a core free, which on two cores halves the work done.
    maxWorkers: '100%',
    projects: [
      layer('unit', ['packages/*/src/**/*.test.ts']),
      layer('reference', ['tests/reference/**/*.test.ts']),
      layer('properties', ['tests/properties/**/*.test.ts', 'tests/fuzz/**/*.test.ts']),
      layer('docs', ['tests/docs/**/*.test.ts']),
      layer('examples', ['examples/**/*.test.ts']),
      layer('repo', ['tests/repo/**/*.test.ts']),
    ],
  },
});

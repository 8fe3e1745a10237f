import { globSync, readFileSync } from 'node:fs';
import { defineConfig } from 'vitest/config';
import base from './vitest.config.ts';

/** The properties, run long: `npm run test:long`. */
const { projects: _, reporters: __, ...test } = base.test ?? {};
export default defineConfig({
  ...base,
  test: {
    ...test,
    include: globSync(['packages/*/src/**/*.test.ts', 'tests/properties/**/*.test.ts']).filter((path) =>
      readFileSync(path, 'utf8').includes('fc.assert('),
    ),
    setupFiles: ['tests/setup.ts', 'tests/long/setup.ts'],
    testTimeout: 3_600_000,
  },
});

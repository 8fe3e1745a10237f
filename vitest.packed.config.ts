import { defineConfig } from 'vitest/config';

const conditions = ['@spindlewright/source', 'module', 'import', 'default'];

/** The packed tarballs as a consumer meets them, and the tools that only a build needs. Run `npm run build` first. */
export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    reporters: ['default', ['json', { outputFile: 'tests/.out/packed.json' }]],
    include: ['tests/consumers/**/*.test.ts', 'tests/site/**/*.test.ts'],
    globalSetup: ['tests/consumers/install.ts'],
    testTimeout: 120_000,
    hookTimeout: 300_000,
  },
});

import { defineConfig } from 'vitest/config';

const conditions = ['@spindlewright/source', 'module', 'import', 'default'];

/** Pages and drawings in a real browser; needs Chromium (`CHROMIUM`, else /usr/bin/chromium). */
export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    reporters: ['default', ['json', { outputFile: 'tests/.out/browser.json' }]],
    include: ['tests/browser/**/*.test.ts'],
    testTimeout: 60_000,
    // Vitest leaves a core free, which on two cores makes the files wait for each other.
    maxWorkers: '100%',
    hookTimeout: 60_000,
    // Of itself a poll gives up after a second, which a busy machine needs for less.
    expect: { poll: { timeout: 30_000 } },
  },
});

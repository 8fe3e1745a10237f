import { defineConfig } from 'vitest/config';

/**
 * Benchmarks, one at a time so that they do not disturb each other, and loaded by Node itself: the module runner of the
 * tests reads every import through a getter, which costs more than a conversion.
 */
export default defineConfig({
  test: {
    reporters: ['default', './tests/benchmarks/table.ts'],
    benchmark: { include: ['tests/benchmarks/**/*.bench.ts'] },
    experimental: { viteModuleRunner: false },
    execArgv: ['--conditions=@spindlewright/source'],
    fileParallelism: false,
    testTimeout: 120_000,
  },
});

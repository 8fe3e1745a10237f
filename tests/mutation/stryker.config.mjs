// Mutation testing of one package: MUTATE=torque npm run test:mutation. Slow, and so outside `.ci/run`.
const subject = process.env.MUTATE;
if (subject === undefined) throw new Error('say which package: MUTATE=torque npm run test:mutation');
const packageFolder = `packages/${subject}/src`;

export default {
  testRunner: 'vitest',
  vitest: { configFile: 'tests/mutation/vitest.config.ts', related: false },
  mutate: [
    `${packageFolder}/**/*.ts`,
    `!${packageFolder}/**/*.test.ts`,
    // Data made from records, words and schemas: their tests compare texts, which no mutant may touch anyway.
    `!${packageFolder}/**/*.generated.ts`,
    `!${packageFolder}/messages/**`,
    `!${packageFolder}/schema.ts`,
    `!${packageFolder}/version.ts`,
    `!${packageFolder}/**/index.ts`,
  ],
  // Words may be said otherwise; that each is said is asserted by code, not by spelling.
  mutator: { excludedMutations: ['StringLiteral'] },
  // What runs once when a module loads cannot be switched on and off for one test.
  ignoreStatic: true,
  coverageAnalysis: 'perTest',
  concurrency: 2,
  timeoutMS: 20_000,
  incremental: true,
  incrementalFile: `tests/.out/mutation/${subject}.incremental.json`,
  reporters: ['clear-text', 'json'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  jsonReporter: { fileName: `tests/.out/mutation/${subject}.json` },
  thresholds: { high: 95, low: 90, break: 90 },
  tempDirName: 'tests/.out/stryker',
  ignorePatterns: ['docs', 'tests/.out', 'out', 'packages/*/dist'],
  checkers: [],
  plugins: ['@stryker-mutator/vitest-runner'],
  allowEmpty: false,
  cleanTempDir: 'always',
};

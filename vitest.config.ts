import { defineConfig } from 'vitest/config';

// `npm run test:deep` sets DEEP: the same suites, with the rows that take minutes.
const deep = Boolean(process.env['DEEP']);

const include = deep ? ['tests/**/*.test.ts', 'tests/**/*.deep.ts'] : ['tests/**/*.test.ts'];

/** Suites that put something else in the place of one of our own files, or register a step of their own. */
const alone = ['tests/cli/most-claims.test.ts', 'tests/steps/one-corner/*.test.ts'];

export default defineConfig({
  test: {
    // All cores: by default one is left to others.
    maxWorkers: '100%',
    benchmark: { include: ['bench/**/*.bench.ts'] },
    testTimeout: deep ? 1_800_000 : 60_000,
    // Suites that prove and print before their first row do in a hook what others do in a row.
    hookTimeout: deep ? 1_800_000 : 60_000,
    reporters: ['default', './scripts/count-reporter.ts'],
    projects: [
      // One process for many suites: what all of them load, open and search is loaded, opened and searched once.
      { extends: true, test: { name: 'shared', include, exclude: alone, isolate: false } },
      { extends: true, test: { name: 'alone', include: alone, benchmark: { exclude: ['bench/**'] } } },
    ],
  },
});

import { defineConfig } from 'vitest/config';

// `npm run test:deep` sets DEEP: the same suites, with the rows that take minutes.
const deep = Boolean(process.env['DEEP']);

export default defineConfig({
  test: {
    include: deep ? ['tests/**/*.test.ts', 'tests/**/*.deep.ts'] : ['tests/**/*.test.ts'],
    benchmark: { include: ['bench/**/*.bench.ts'] },
    testTimeout: deep ? 1_800_000 : 60_000,
    // Suites that prove and print before their first row do in a hook what others do in a row.
    hookTimeout: deep ? 1_800_000 : 60_000,
    reporters: ['default', './scripts/count-reporter.ts'],
  },
});

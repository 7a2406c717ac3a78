import { defineConfig } from 'vitest/config';

// `npm run test:deep` sets DEEP: the same suites, with the rows that take minutes.
export default defineConfig({
  test: {
    include: process.env['DEEP'] ? ['tests/**/*.test.ts', 'tests/**/*.deep.ts'] : ['tests/**/*.test.ts'],
    testTimeout: process.env['DEEP'] ? 1_800_000 : 60_000,
  },
});

import { defineConfig } from 'tsdown';

// Packages are bundled with our own code: finding and opening their hundreds of files takes a cold start longer than
// proving and printing a lesson. The fonts stay in their packages.
export default defineConfig({
  entry: ['src/cli/bin.ts'],
  platform: 'node',
  target: 'node20',
  fixedExtension: false,
  dts: false,
  sourcemap: false,
  deps: { alwaysBundle: [/.*/], onlyBundle: false },
});

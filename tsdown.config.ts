import { defineConfig } from 'tsdown';

// Our own modules only: what package.json lists as dependencies is loaded from node_modules.
export default defineConfig({
  entry: ['src/cli/bin.ts'],
  platform: 'node',
  target: 'node20',
  fixedExtension: false,
  dts: false,
  sourcemap: false,
});

// `npm test`: types, lint, tests, and a build of every sample lesson. The tests come last, so that the closing line is
// theirs: how many passed, how many failed.
import { ensureBuilt, ensureInstalled, run, runPackage, samples, startPackage } from './prepare.mjs';

ensureInstalled();
// Types and the build take a core each.
const types = startPackage('tsc', []);
runPackage('biome', ['ci', '--error-on-warnings', '.']);
ensureBuilt();
run(process.execPath, ['dist/bin.js', 'build', ...samples(), '--out', 'out']);
await types;
runPackage('vitest', ['run'], process.argv.includes('--deep') ? { DEEP: '1' } : {});

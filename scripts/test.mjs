// `npm test`: types, lint, tests, and a build of every sample lesson. The tests come last, so that the closing line is
// theirs: how many passed, how many failed.
import { ensureBuilt, ensureInstalled, run, runPackage, samples } from './prepare.mjs';

ensureInstalled();
runPackage('tsc', []);
runPackage('biome', ['ci', '--error-on-warnings', '.']);
ensureBuilt();
run(process.execPath, ['dist/bin.js', 'build', ...samples(), '--out', 'out']);
runPackage('vitest', ['run'], process.argv.includes('--deep') ? { DEEP: '1' } : {});

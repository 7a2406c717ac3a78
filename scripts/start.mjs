// `npm start`: proves the sample course and writes its PDFs to out/.
import { ensureBuilt, ensureInstalled, run, samples } from './prepare.mjs';

ensureInstalled();
ensureBuilt();
run(process.execPath, ['dist/bin.js', 'build', ...samples(), '--out', 'out']);

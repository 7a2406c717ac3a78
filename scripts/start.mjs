// `npm start`: proves the sample course and writes its PDFs to out/.
import { ensureBuilt, ensureInstalled, run, sampleLessons } from './prepare.mjs';

ensureInstalled();
ensureBuilt();
run(process.execPath, ['dist/bin.js', 'build', ...sampleLessons(), '--out', 'out']);

/** Prints the SHA-256 of the sample sheet's file: run by pdf.test.ts under other time zones and locales. */
import { createHash } from 'node:crypto';
import { layOut } from '../../src/layout/layout.ts';
import { writePdf } from '../../src/layout/pdf.ts';
import { everything } from './sample.ts';

const bytes = await writePdf(layOut(everything(), { paper: 'a4' }).pages);
process.stdout.write(`${createHash('sha256').update(bytes).digest('hex')}\n`);

/** The line under a solution that tells why it works. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { auditBuild } from '../../src/audit/audit-build.ts';
import { writePdf } from '../../src/layout/pdf.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import { claimsFile } from '../../src/sheets/claims.ts';
import { type PrintedSheet, printLesson } from '../../src/sheets/printed.ts';
import { bytesOf, SMALL_LESSON } from '../lesson/small-lesson.ts';
import { textOf as printedText } from './printed-text.ts';

const HANDOUT = { paper: 'a4', ink: 'colour', only: [''] } as const;

/** A space stands behind each turn as it is read back. */
const textOf = async (sheet: PrintedSheet): Promise<string> => (await printedText(sheet)).replaceAll(/ (?=[,.])/g, '');

const handoutOf = (text: string) => printLesson(loadLesson('a.yaml', bytesOf(text)).proved!, HANDOUT).sheets[0]!;

const WHY = SMALL_LESSON.replace('family:', 'show: [why]\nfamily:');

describe('why a solution works', () => {
  it('is printed on request, and spoils no claim', async () => {
    const sheet = handoutOf(WHY);
    const text = await textOf(sheet);
    expect(text).toContain("Why: start with L', do U, take L' back, then start with R, do U, take R back.");
    expect(text.match(/Why:/g)).toHaveLength(2);
    const file = claimsFile([sheet], 'a', 'a.yaml');
    const pdfs = new Map([['a.pdf', await writePdf(sheet.pages)]]);
    expect(await auditBuild(JSON.parse(JSON.stringify(file)), pdfs)).toEqual({ claims: 2, faults: [] });
    expect(await textOf(handoutOf(SMALL_LESSON))).not.toContain('Why:');
  });

  it("names the lesson's own triggers", async () => {
    const text = await textOf(handoutOf(WHY.replace('family:', "triggers: { hop: L' U L R }\nfamily:")));
    expect(text).toContain("Why: hop, then U R'.");
  });

  it('tells a turn that two parts share, in a sentence of its own', async () => {
    const text = await textOf(
      handoutOf(`title: Two in one
show: [why]
hold: { cross: white, front: green }
cases:
  - setup: F R' F' R2 U' R'
    solutions: [R U R2 F R F']
`),
    );
    const shared = "Turn 3, R2, is two in one: R' ends a part and R' begins the next.";
    expect(text).toContain(`Why: start with R, do U, take R back, then sledge. ${shared}`);
  });

  it.each(['edge-away', 'standard-pairs'])('fits the narrowest page: %s', (name) => {
    const sample = readFileSync(new URL(`../../lessons/${name}.yaml`, import.meta.url), 'utf8');
    const text = sample.replace(/^show: .*\n/m, '').replace(/^family:/m, 'show: [why]\nfamily:');
    const { proved } = loadLesson(`${name}.yaml`, bytesOf(text), { wide: 'r' });
    expect(proved!.lesson.shows.why).toBe(true);
    expect(printLesson(proved!, { ...HANDOUT, paper: 'a5' }).problems).toEqual([]);
  });
});

/** The chart of rules: laid out, written, read back by the second checker. */
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { auditBuild } from '../../src/audit/audit-build.ts';
import { readPdf } from '../../src/audit/pdf-text.ts';
import { writePdf } from '../../src/layout/pdf.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import type { Variation } from '../../src/lesson/vary.ts';
import { claimsFile } from '../../src/sheets/claims.ts';
import { printLesson } from '../../src/sheets/printed.ts';
import { withRules } from '../lesson/faults.ts';
import { bytesOf } from '../lesson/small-lesson.ts';

const LESSONS = join(dirname(fileURLToPath(import.meta.url)), '../../lessons');

async function chartOf(bytes: Uint8Array, variation: Variation, paper: 'a4' | 'letter' | 'a5', ink: 'colour' | 'mono') {
  const { proved } = loadLesson('a.yaml', bytes, variation);
  const { sheets, problems } = printLesson(proved!, { paper, ink });
  expect(problems).toEqual([]);
  const chart = sheets.find(({ suffix }) => suffix === '-rules')!;
  const file = JSON.parse(JSON.stringify(claimsFile([chart], 'a', 'a.yaml')));
  const pdf = await writePdf(chart.pages);
  const { pages } = await readPdf(pdf);
  const audit = await auditBuild(file, new Map([['a-rules.pdf', pdf]]));
  return { file, audit, text: pages.map((p) => p.text).join('\n'), pages: pages.length };
}

const EXCEPTIONS = withRules(
  '  - see: { cross colour: sideways, edge front and corner top: like }',
  '    with: R or L',
  '    aim: joined',
  '    most: 8',
  '  - aim: top-top',
  '    most: 14',
);

describe('the chart of rules', () => {
  it.each([
    ['edge-away', {}, 'a4', 'colour'],
    ['edge-away', { hand: 'left', cross: 'blue' }, 'letter', 'mono'],
    ['corner-away', { cross: 'green' }, 'a5', 'colour'],
    ['one-at-home', {}, 'a4', 'mono'],
    ['both-away', { hand: 'left' }, 'a4', 'colour'],
  ] as const)(
    'of %s for %j on %s in %s: what it prints is proved again and found',
    async (name, variation, paper, ink) => {
      const bytes = readFileSync(join(LESSONS, `${name}.yaml`));
      const { file, audit, text } = await chartOf(bytes, variation, paper, ink);
      expect(audit.faults).toEqual([]);
      const rules = file.claims.filter((c: { kind: string }) => c.kind === 'rule');
      expect(rules.length).toBeGreaterThan(1);
      // An example is printed with every rule, as a claim of its own.
      expect(audit.claims).toBe(rules.length);
      for (const { exact, page } of rules) expect([exact, page > 0]).toEqual([true, true]);
      expect(text).toContain('always');
    },
  );

  it('is one page for the lesson on a stuck edge', async () => {
    const { pages } = await chartOf(readFileSync(join(LESSONS, 'edge-away.yaml')), {}, 'a4', 'colour');
    expect(pages).toBe(1);
  });

  it('prints the exceptions of a rule beside it, each proved, and what would make it exact', async () => {
    const { file, audit, text } = await chartOf(bytesOf(EXCEPTIONS), {}, 'a4', 'colour');
    expect(audit.faults).toEqual([]);
    // 48 exceptions are twelve cases and sides, each after four turns of U; six are shown.
    const shown = file.claims.filter((c: { kind: string; id: string }) => c.kind === 'solution').length;
    expect(shown).toBe(2 + 6);
    expect(text).toContain('The 12 exceptions');
    expect(text).toContain('And 6 more.');
    expect(text).toContain('in 48 of 96 views, up to 8 turns');
    expect(text).toContain('Without exception if also the sides match when the corner is over the edge.');
  });

  it('asks once what rules in a row have in common', async () => {
    const { text } = await chartOf(readFileSync(join(LESSONS, 'edge-away.yaml')), {}, 'a4', 'colour');
    expect(text.match(/faces sideways/g)).toHaveLength(1);
    expect(text.match(/faces up/g)).toHaveLength(1);
  });
});

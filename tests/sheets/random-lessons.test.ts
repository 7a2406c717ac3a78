/**
 * Lessons by chance, seeded, printed in every way: nothing overlaps, runs off the page or is split, and the second checker
 * finds each claim on its page. A thousand with `npm run test:deep`.
 */
import { describe, expect, it } from 'vitest';
import { auditBuild } from '../../src/audit/audit-build.ts';
import { writePdf } from '../../src/layout/pdf.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import { claimsFile } from '../../src/sheets/claims.ts';
import { printLesson } from '../../src/sheets/printed.ts';
import { overlaps, strays } from '../layout/sample.ts';
import { bytesOf } from '../lesson/small-lesson.ts';
import { randomFrom } from '../random.ts';
import { randomLesson } from './random-lesson.ts';

const SEED = 4_711;
const COUNT = process.env['DEEP'] ? 1000 : 50;
const PAPERS = ['a4', 'letter', 'a5'] as const;
const INKS = ['colour', 'mono'] as const;

describe('lessons by chance', () => {
  it(`${COUNT} of them, from seed ${SEED}`, async () => {
    let cases = 0;
    for (let i = 0; i < COUNT; i++) {
      const text = randomLesson(randomFrom(SEED + i));
      const where = `seed ${SEED + i}`;
      const { proved, problems } = loadLesson('a.yaml', bytesOf(text));
      const errors = problems.filter((p) => p.code !== 'part-empty' && p.code !== 'text-cut-off');
      // The families are not named, so whatever the words of a set-up give is a case; cases may come twice by chance.
      const odd = errors.filter((p) => p.code !== 'case-twice');
      expect(
        odd.map((p) => `${p.code} ${p.message} ${text.slice(p.span.start, p.span.end)}`),
        where,
      ).toEqual([]);
      if (!proved) continue;
      const paper = PAPERS[i % 3]!;
      const ink = INKS[i % 2]!;
      const { sheets, problems: faults } = printLesson(proved, { paper, ink });
      const { pages } = sheets[0]!;
      expect(faults, where).toEqual([]);
      for (const frame of pages.frames) {
        expect(overlaps(frame), where).toEqual([]);
        expect(strays(frame, paper), where).toEqual([]);
      }
      // A panel is whole on one page: each claim is printed on exactly one.
      const printed = pages.frames.flatMap((frame) => frame.claims);
      expect([...printed].sort(), where).toEqual(proved.claims.map((c) => c.id).sort());
      const file = JSON.parse(JSON.stringify(claimsFile([sheets[0]!], 'a', 'a.yaml')));
      const audit = await auditBuild(file, new Map([['a.pdf', await writePdf(pages)]]));
      expect(audit, where).toEqual({ claims: proved.claims.length, faults: [] });
      cases += proved.cases.length;
    }
    expect(cases).toBeGreaterThan(COUNT * 3);
  });
});

/**
 * An independent reading of finished PDFs: each item's text and picture description taken out by pdfjs-dist, answered with
 * the second checker from what is printed alone, and compared with the key. 30 papers; 1,000 with `npm run test:deep`.
 */
import { describe, expect, it } from 'vitest';
import { auditBuild } from '../../src/audit/audit-build.ts';
import { writePdf } from '../../src/layout/pdf.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import { exerciseKinds } from '../../src/lesson/practice.ts';
import type { Student } from '../../src/practice/papers.ts';
import { claimsFile, pdfName } from '../../src/sheets/claims.ts';
import { type PrintedSheet, printLesson } from '../../src/sheets/printed.ts';
import { USUAL_STEP } from '../../src/steps/steps.ts';
import { overlaps, strays } from '../layout/sample.ts';
import { bytesOf } from '../lesson/small-lesson.ts';
import { randomFrom } from '../random.ts';
import { SAMPLES, sampleText } from '../samples.ts';
import { type Counted, faultsOf } from './check-papers.ts';
import { withPractice } from './lessons.ts';
import { type KindName, readKeys, readPapers } from './read-papers.ts';

const EXERCISE_KINDS = exerciseKinds(USUAL_STEP) as readonly KindName[];
const SEED = 20_260;
const PAPERS = process.env['DEEP'] ? 1000 : 30;
const A_CLASS = 5;
/** Two checkers read every page: half a second a paper, on a machine that has other things to do. */
const TIMEOUT = process.env['DEEP'] ? 3_600_000 : 180_000;
const samples = SAMPLES.map(sampleText);

/** Others hold another colour down or lead with the left hand. */
const VARIATIONS = [{}, {}, { hand: 'left' }, { cross: 'green' }, { cross: 'orange', hand: 'left' }] as const;
const LEVELS = [undefined, undefined, 'easy', 'hard'] as const;

const sheetOf = (sheets: readonly PrintedSheet[], suffix: PrintedSheet['suffix']): PrintedSheet =>
  sheets.find((sheet) => sheet.suffix === suffix)!;

const nothingCounted = (): Counted => ({
  items: { likeness: 0, edge: 0, rule: 0, picture: 0, slip: 0, order: 0, place: 0, solve: 0, drill: 0 },
});

describe('finished papers, read and answered from outside', () => {
  it(`${PAPERS} of them, from seed ${SEED}: every answer is that of the key`, { timeout: TIMEOUT }, async () => {
    const counted = nothingCounted();
    let papers = 0;
    for (let round = 0; papers < PAPERS; round++) {
      const r = randomFrom(SEED + round);
      const sample = samples[round % samples.length]!;
      const isOnTop = /^family:.*top-/m.test(sample);
      // Which rule applies is asked where there are several that say by themselves when; parts are ordered where there are three.
      const hasRules = /^family: (top-away|away-top|away-away)/m.test(sample) && /^rules:/m.test(sample);
      const hasParts = /^family: (away-away|\[home-away)/m.test(sample);
      const isThere: Partial<Record<KindName, boolean>> = { likeness: isOnTop, rule: hasRules, order: hasParts };
      const text = withPractice(sample, {
        seed: SEED + round,
        items: Object.fromEntries(
          // Tops are compared where a corner is on top.
          EXERCISE_KINDS.map((kind) => [kind, isThere[kind] === false ? 0 : 1 + r.below(5)]),
        ),
        open: r.below(3),
      });
      const { again } = loadLesson('a.yaml', bytesOf(text));
      const known = VARIATIONS.map((variation) => again(variation).proved!);
      const students: Student[] = Array.from({ length: A_CLASS }, (_, i) => ({
        code: r.chance(0.5) ? `S${i}` : undefined,
        proved: r.pick(known),
        level: r.pick(LEVELS),
      }));
      const paper = r.pick(['a4', 'letter', 'a5'] as const);
      const ink = r.pick(['colour', 'mono'] as const);
      const where = `seed ${SEED + round}, ${paper}, ${ink}`;
      const { sheets, problems } = printLesson(known[0]!, { paper, ink, students, only: ['-practice', '-key'] });
      expect(
        problems.filter((p) => p.code !== 'practice-uneven'),
        where,
      ).toEqual([]);
      for (const frame of sheets.flatMap(({ pages }) => pages.frames)) {
        expect(overlaps(frame), where).toEqual([]);
        expect(strays(frame, paper), where).toEqual([]);
      }
      const files = new Map<string, Uint8Array>();
      for (const sheet of sheets) files.set(pdfName('a', sheet), await writePdf(sheet.pages));
      const read = await readPapers(files.get('a-practice.pdf')!);
      const keys = await readKeys(files.get('a-key.pdf')!);
      expect(faultsOf(read, keys, counted), where).toEqual([]);
      expect(
        read.map((p) => p.student),
        where,
      ).toEqual(students.map((s) => s.code));
      const claims = JSON.parse(JSON.stringify(claimsFile(sheets, 'a', 'a.yaml')));
      expect((await auditBuild(claims, files)).faults, where).toEqual([]);
      // An item is whole on one page: its question is found on exactly one.
      const asked = sheetOf(sheets, '-practice').pages.frames.flatMap((frame) => frame.claims);
      expect(asked.length, where).toBe(new Set(asked).size);
      papers += read.length;
    }
    expect(papers).toBeGreaterThanOrEqual(PAPERS);
    for (const kind of EXERCISE_KINDS) expect(counted.items[kind]).toBeGreaterThan(PAPERS / 4);
  });

  it('would notice a key to another paper', async () => {
    const ofSeed = async (seed: number) => {
      const items = { likeness: 8, picture: 4, slip: 2, place: 2, solve: 2 };
      const text = withPractice(samples.find((sample) => /^family: top-away/m.test(sample))!, { seed, items });
      const { sheets } = printLesson(loadLesson('a.yaml', bytesOf(text)).proved!, {
        paper: 'a4',
        ink: 'colour',
        only: ['-practice', '-key'],
      });
      return {
        papers: await readPapers(await writePdf(sheetOf(sheets, '-practice').pages)),
        keys: await readKeys(await writePdf(sheetOf(sheets, '-key').pages)),
      };
    };
    const [one, other] = [await ofSeed(1), await ofSeed(3)];
    const counted = nothingCounted();
    expect(faultsOf(one.papers, one.keys, counted)).toEqual([]);
    const mixed = one.papers.map((paper, i) => ({ ...paper, code: other.keys[i]!.code }));
    const kinds = faultsOf(mixed, other.keys, counted).map((fault) => /\((\w+)\)/.exec(fault)?.[1]);
    expect(new Set(kinds)).toEqual(new Set(['likeness', 'picture', 'slip', 'place', 'solve']));
  });
});

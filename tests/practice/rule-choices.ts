/**
 * "Name the rule" in numbers: items of the samples that have rules, for classes of all kinds, each answered by the second
 * checker from the words that are printed.
 */
import { expect, it } from 'vitest';
import { auditClaims } from '../../src/audit/audit-claims.ts';
import { COLOURS } from '../../src/cube/colours.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import { makePapers } from '../../src/practice/papers.ts';
import { makingOf } from '../../src/sheets/making.ts';
import { practiceClaims } from '../../src/sheets/practice-claims.ts';
import { bytesOf } from '../lesson/small-lesson.ts';
import { randomFrom } from '../random.ts';
import { SAMPLES, sampleText } from '../samples.ts';
import { withPractice } from './lessons.ts';

const SEED = 1_310;
const ITEMS = 12;
const A_CLASS = 8;
/** A club that has words of its own, one of ours among them. */
const CLUB_WORDS = { edge: 'side', corner: 'edge', slot: 'garage' };

const withRules = SAMPLES.filter((name) => /^rules:/m.test(sampleText(name)) && name !== 'standard-pairs');

/** A row that makes so many items. */
export const namesTheRule = (most: number): void =>
  it(`has one right answer in each of ${most} items "name the rule", from seed ${SEED}`, () => {
    const told: string[] = [];
    let items = 0;
    for (let round = 0; items < most; round++) {
      const r = randomFrom(SEED + round);
      const sample = withRules[round % withRules.length]!;
      const text = withPractice(sampleText(sample), { seed: SEED + round, items: { rule: ITEMS } });
      const { again } = loadLesson(
        'a.yaml',
        bytesOf(r.chance(0.2) ? `${text}\nwords: ${JSON.stringify(CLUB_WORDS)}` : text),
      );
      const { proved } = again({ cross: r.pick(COLOURS), hand: r.pick(['right', 'left'] as const) });
      const students = Array.from({ length: A_CLASS }, () => ({ code: undefined, proved: proved!, level: undefined }));
      const { papers, problems } = makePapers(proved!.lesson.practice!, students);
      expect(
        problems.filter(({ code }) => code !== 'practice-uneven'),
        `seed ${SEED + round}, ${sample}`,
      ).toEqual([]);
      const claims = papers.flatMap((paper) => practiceClaims(paper, makingOf(proved!, 'colour')));
      const audit = auditClaims(JSON.parse(JSON.stringify({ lesson: 'a', file: 'a.yaml', sheets: [], claims })));
      expect(audit.questions.length).toBe(A_CLASS * ITEMS);
      told.push(...audit.faults.map(({ id, fault }) => `seed ${SEED + round}, ${sample}, ${id}: ${fault}`));
      items += audit.questions.length;
    }
    expect(told).toEqual([]);
  });

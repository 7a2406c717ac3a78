/** Papers of a class: alike in difficulty, unlike in the same place, the same for ever. */
import { describe, expect, it } from 'vitest';
import { HANDS } from '../../src/cube/search/hands.ts';
import { writeTurns } from '../../src/cube/turns.ts';
import { type Loaded, loadLesson } from '../../src/lesson/load.ts';
import type { Level } from '../../src/lesson/practice.ts';
import { seeing } from '../../src/practice/difficulty.ts';
import { materialOf, type Taught } from '../../src/practice/material.ts';
import {
  MOST_OFF,
  makePapers,
  PAPER_CODES,
  type PaperItem,
  type Papers,
  paperCode,
  type Student,
} from '../../src/practice/papers.ts';
import { distancesOf } from '../../src/practice/selection.ts';
import { featuresOf } from '../../src/steps/pair/features.ts';
import { asPair } from '../../src/steps/pair/subject.ts';
import { reprovePair } from '../audit/claims.ts';
import { bytesOf, SMALL_LESSON } from '../lesson/small-lesson.ts';
import { provedSample, SAMPLES, sampleText } from '../samples.ts';
import { withPractice } from './lessons.ts';

const ITEMS = { edge: 4, picture: 3, slip: 2, place: 3, solve: 6, drill: 3 };
const SEEDS = process.env['DEEP'] ? 40 : 3;
const CLASS = 25;

const load = (text: string): Loaded => {
  const loaded = loadLesson('a.yaml', bytesOf(text));
  expect(loaded.problems).toEqual([]);
  return loaded;
};
const papersOf = ({ proved }: Pick<Loaded, 'proved'>, students: readonly Partial<Student>[]): Papers =>
  makePapers(
    proved!.lesson.practice!,
    students.map((s) => ({ code: undefined, proved: proved!, level: undefined, ...s })),
  );
const aClass = (count: number, level?: Level): Partial<Student>[] => Array.from({ length: count }, () => ({ level }));

const pairOf = ({ exercise }: Pick<PaperItem, 'exercise'>) => asPair(exercise.subject);
const idOf = ({ exercise }: PaperItem): string => {
  const { address, side, where } = asPair(exercise.subject);
  return [exercise.kind, address, side, ...where.open].join(' ');
};

describe.each(SAMPLES)('papers of %s', (name) => {
  const loaded = Array.from({ length: SEEDS }, (_, seed) =>
    load(withPractice(sampleText(name), { seed, items: ITEMS, open: 2 })),
  );
  /** By seed, the papers of a class, for all rows. */
  const made = loaded.map((one) => papersOf(one, aClass(CLASS)));

  it(`are within ${MOST_OFF} hundredths of their target, item for item of one kind`, () => {
    for (const { papers, problems } of made) {
      expect(problems).toEqual([]);
      for (const { difficulty, target, items } of papers) {
        expect(Math.abs(difficulty - target)).toBeLessThanOrEqual((MOST_OFF * target) / 100);
        expect(items.reduce((sum, i) => sum + i.exercise.difficulty, 0)).toBe(difficulty);
        expect(items.map((i) => i.exercise.kind)).toEqual(papers[0]!.items.map((i) => i.exercise.kind));
      }
    }
  });

  it('are never alike for neighbours in the same place, nor have an item twice', () => {
    for (const { papers } of made) {
      papers.forEach(({ items }, n) => {
        expect(new Set(items.map(idOf)).size).toBe(items.length);
        const before = papers[n - 1]?.items ?? [];
        items.forEach((item, i) => {
          if (before[i]) expect(idOf(item), `item ${i + 1}`).not.toBe(idOf(before[i]));
        });
      });
    }
  });

  it('have no two items of one case with turns to see, none that shows an answer of another, and neighbours other cases', () => {
    const sightOf = ({ exercise: { subject } }: PaperItem): string => `${subject.caseAddress} ${subject.side}`;
    for (const { papers } of made) {
      papers.slice(0, 8).forEach(({ items }, n) => {
        const withTurns = items.filter(({ exercise: { kind } }) =>
          ['picture', 'slip', 'solve', 'drill'].includes(kind),
        );
        expect(new Set(withTurns.map(sightOf)).size).toBe(withTurns.length);
        const before = papers[n - 1]?.items ?? [];
        expect(items.filter((item, i) => before[i] && sightOf(item) === sightOf(before[i]))).toEqual([]);
        const lines = items.flatMap(({ exercise: e }) =>
          e.kind === 'slip' && e.form === 'choice'
            ? e.options.flatMap((o) => (o.says === 'turns' ? [o.turns] : []))
            : [],
        );
        for (const { exercise: e } of items.filter((item) => item.exercise.form === 'solve')) {
          const solving = lines.filter((turns) => {
            const { side, goal } = asPair(e.subject);
            const claim = { setup: writeTurns(e.setup), solution: writeTurns(turns), pair: side, kept: goal.kept };
            return reprovePair(claim).verdict === 'solves';
          });
          expect(solving).toEqual([]);
        }
      });
    }
  });

  it('cover what was taught evenly', () => {
    const { papers } = made[0]!;
    const used = new Map<string, number>();
    for (const { exercise } of papers.flatMap((p) => p.items)) {
      used.set(exercise.subject.side, (used.get(exercise.subject.side) ?? 0) + 1);
    }
    const slots = new Set(loaded[0]!.proved!.cases.map((c) => c.subject.side));
    expect(new Set(used.keys())).toEqual(slots);
    // The easiest and hardest slots are not in the middle window as often; none is left out.
    const fair = (CLASS * 21) / slots.size;
    for (const count of used.values()) expect(count).toBeGreaterThan(fair / 4);
  });

  it('go up with the level', () => {
    const [easy, middle, hard] = (['easy', 'middle', 'hard'] as const).map(
      (level) => papersOf(loaded[0]!, aClass(3, level)).papers[0]!.target,
    );
    expect(easy).toBeLessThan(middle!);
    expect(middle).toBeLessThan(hard!);
  });

  it('come out the same again, and otherwise for another seed', () => {
    const said = (papers: Papers) =>
      papers.papers.map((p) => [
        p.code,
        p.checkWords,
        p.items.map((i) => [idOf(i), i.letters.join(''), writeTurns(i.exercise.setup)]),
      ]);
    const first = said(papersOf(loaded[0]!, aClass(4)));
    expect(first).toEqual(
      said(papersOf(load(withPractice(sampleText(name), { seed: 0, items: ITEMS, open: 2 })), aClass(4))),
    );
    expect(first).not.toEqual(said(papersOf(loaded[1]!, aClass(4))));
  });
});

describe('a paper', () => {
  it('has as many items with a slot open as were asked for', () => {
    const one = load(withPractice(sampleText('edge-away'), { items: { solve: 6 }, open: 2 }));
    for (const { items } of papersOf(one, aClass(5)).papers) {
      expect(items.filter((i) => pairOf(i).where.open.length > 0)).toHaveLength(2);
      for (const { where, goal } of items.map(pairOf))
        for (const slot of where.open) expect(goal.kept).not.toContain(slot);
    }
  });

  it.each([
    ['family', { family: 'home-top' }, (i: PaperItem) => i.exercise.subject.address.startsWith('DFR')],
    ['slot', { slot: 'FL' }, (i: PaperItem) => i.exercise.subject.side === 'FL'],
    ['turns', { turns: 7 }, (i: PaperItem) => i.exercise.form === 'solve' && i.exercise.recommended.length <= 8],
  ] as const)('keeps to the %s that it is told', (_, only, holds) => {
    const one = load(withPractice(sampleText('standard-pairs'), { items: { solve: 8 }, only }));
    const items = papersOf(one, aClass(3)).papers.flatMap((p) => p.items);
    expect(items).toHaveLength(24);
    expect(items.filter((i) => !holds(i))).toEqual([]);
  });

  it('keeps to the foreign slot that it is told', () => {
    const one = load(withPractice(sampleText('edge-away'), { items: { solve: 6 }, only: { stuck: 'BL' } }));
    for (const { exercise } of papersOf(one, aClass(2)).papers.flatMap((p) => p.items)) {
      expect(pairOf({ exercise }).goal.kept).not.toContain('BL');
    }
  });

  it('keeps to the rule that it is told: the first of the table that fits', () => {
    const one = load(withPractice(sampleText('edge-away'), { items: { solve: 6 }, only: { rule: [2, 5] } }));
    const items = papersOf(one, aClass(2)).papers.flatMap((p) => p.items);
    const kinds = items.map((item) => {
      const f = featuresOf(pairOf(item));
      const isSideways = f['cross colour'] !== 'up';
      // As the lesson words its second and its fifth rule, and what comes before them.
      if (isSideways) return f['edge front and corner top'] === 'like' && f['corner over edge'] === 'match' ? 2 : 0;
      return f['corner over edge'] === 'no match' && f.edge === 'bad' ? 5 : 0;
    });
    expect(new Set(kinds)).toEqual(new Set([2, 5]));
  });

  it('keeps to what is to be seen, and to the hand that turns first; mirrored for the left hand', () => {
    const only = { see: { edge: 'bad', 'corner side': 'right' }, hand: 'right' };
    const right = load(withPractice(sampleText('edge-away'), { items: { solve: 4 }, only }));
    for (const [one, side, letter] of [
      [right, 'right', 'R'],
      [right.again({ hand: 'left' }), 'left', 'L'],
    ] as const) {
      for (const { exercise } of papersOf(one, aClass(2)).papers.flatMap((p) => p.items)) {
        if (exercise.form !== 'solve') throw new Error(exercise.form);
        const pair = pairOf({ exercise });
        const f = featuresOf(pair);
        expect([f.edge, f['corner side']]).toEqual(['bad', side]);
        expect(/[RL]/.exec(writeTurns(exercise.recommended))![0]).toBe(letter);
      }
    }
  });

  it('counts what is to be compared, and exceptions, as hard', () => {
    const leading = { hand: 'right', model: HANDS } as const;
    const seenWith = (...rules: readonly string[]) => {
      const text = ['rules:', ...rules, '  - { aim: top-top, most: 14 }', 'family: top-away', '#'].join('\n');
      const { proved } = loadLesson('a.yaml', bytesOf(SMALL_LESSON.replace('family:', text)));
      return materialOf(proved!, leading).taught;
    };
    const points = (one: Taught): number =>
      seeing(one, leading) - seeing({ ...one, comparisons: 0, isException: false }, leading);
    const advice = 'lift: edge, with: R or L, most: 8';
    const compared = seenWith(`  - { see: { edge front and corner top: unlike }, aim: split, ${advice} }`);
    expect(new Set(compared.map(points))).toEqual(new Set([5]));
    // Moved aside, a corner of another colour than the edge is not met by it: an exception.
    const failing = seenWith(`  - { see: { cross colour: sideways }, aim: joined, how: hidden, ${advice} }`);
    expect(new Set(failing.map(points))).toContain(20);
    for (const one of failing) {
      const f = featuresOf(asPair(one.subject));
      const isUnlike = f['cross colour'] !== 'up' && f['edge front and corner top'] === 'unlike';
      if (isUnlike) expect(points(one)).toBe(20);
      if (f['cross colour'] === 'up') expect(points(one)).toBe(0);
    }
  });

  it('brings back cases of earlier lessons, at growing distances', () => {
    expect([0, 1, 2, 3, 4, 7, 8].map((n) => distancesOf(n))).toEqual([
      [],
      [1],
      [1, 2],
      [1, 2],
      [1, 2, 4],
      [1, 2, 4],
      [1, 2, 4, 8],
    ]);
    const one = load(withPractice(sampleText('both-away'), { items: { solve: 9 } }));
    const before = ['one-at-home', 'corner-away', 'edge-away', 'standard-pairs'];
    const earlier = before.map((name) => provedSample(name));
    const { papers, problems } = papersOf(one, [{ earlier }, { earlier }]);
    expect(problems).toEqual([]);
    const families = papers.map(({ items }) => items.slice(-3).map((i) => i.exercise.subject.family));
    // 1, 2 and 4 evenings ago.
    for (const [near, far, farthest] of families) {
      expect(['home-away', 'away-home']).toContain(near);
      expect(far).toBe('away-top');
      expect(['top-top', 'home-top', 'top-home', 'home-home']).toContain(farthest);
    }
    expect(papers[0]!.items.slice(0, 6).map((i) => i.exercise.subject.family)).toEqual(Array(6).fill('away-away'));
  });

  it('is mirrored for the left hand, and as hard', () => {
    const right = load(withPractice(sampleText('edge-away'), { items: { solve: 6, picture: 3 } }));
    const left = right.again({ hand: 'left' });
    const [one, other] = [papersOf(right, aClass(1)), papersOf(left, aClass(1))].map((p) => p.papers[0]!);
    // A case that is its own mirror image is done from one side by either hand: a point or two.
    expect(Math.abs(other!.target - one!.target)).toBeLessThanOrEqual(one!.target / 200);
  });

  it('tells of too few exercises, at the line that asks', () => {
    const lesson = SMALL_LESSON.replace('family:', 'practice:\n  items:\n    likeness: 40\nfamily:');
    const { problems } = papersOf(load(lesson), aClass(1));
    expect(problems).toMatchObject([{ code: 'practice-too-few' }]);
    expect(problems[0]!.message).toMatch(/40 of the kind likeness/);
    expect(lesson.slice(problems[0]!.span.start, problems[0]!.span.end)).toContain('40');
  });

  it('tells once where one item shows an answer of another, for want of others', () => {
    const lesson = SMALL_LESSON.replace('family:', 'practice:\n  items: { slip: 1, solve: 8 }\nfamily:');
    const { papers, problems } = papersOf(load(lesson), aClass(1));
    expect(problems.filter(({ code }) => code !== 'practice-uneven')).toMatchObject([
      {
        code: 'practice-shown',
        message: expect.stringMatching(/^on paper \w{3} item 1 shows an answer to item [2-9]$/),
      },
    ]);
    expect(papers).toHaveLength(1);
  });

  it('tells of papers that are not as hard as the others, for want of others', () => {
    const lesson = SMALL_LESSON.replace('family:', 'practice:\n  items: { solve: 2 }\nfamily:');
    const { papers, problems } = papersOf(load(lesson), aClass(5));
    const off = papers.filter(({ difficulty, target }) => Math.abs(difficulty - target) > (MOST_OFF * target) / 100);
    expect([papers.length, off.length]).toEqual([5, 2]);
    expect(problems).toEqual(
      off.map(({ code, difficulty, target }) =>
        expect.objectContaining({
          code: 'practice-uneven',
          message: `paper ${code} comes to ${difficulty} points of difficulty where ${target} are wanted`,
        }),
      ),
    );
  });

  it('says that it is "only" that leaves too few', () => {
    const one = load(withPractice(sampleText('edge-away'), { items: { solve: 4 }, only: { turns: 2 } }));
    const [problem] = papersOf(one, aClass(1)).problems;
    expect(problem).toMatchObject({ code: 'practice-too-few', hint: 'widen only, or ask for fewer' });
    const { text } = one.proved!.lesson.source;
    expect(text.slice(problem!.span.start, problem!.span.end)).toContain('turns');
  });

  it('tells of a list of check words that does not come out, where it stands', () => {
    const lesson = SMALL_LESSON.replace('family:', 'practice:\n  items: { edge: 7 }\n  words: [SLOT, FRONT]\nfamily:');
    const { problems } = papersOf(load(lesson), aClass(1));
    expect(problems).toMatchObject([{ code: 'practice-words' }]);
    expect(lesson.slice(problems[0]!.span.start, problems[0]!.span.end)).toContain('SLOT');
  });

  it("spells a club's own words", () => {
    const lesson = SMALL_LESSON.replace('family:', 'practice:\n  items: { edge: 4 }\n  words: [slot, corn]\nfamily:');
    for (const { checkWords } of papersOf(load(lesson), aClass(4)).papers)
      expect(['SLOT', 'CORN']).toContain(checkWords.join());
  });

  it('is what it was for one seed, for ever', () => {
    const lesson = SMALL_LESSON.replace(
      'family:',
      'practice: { seed: 11, items: { likeness: 2, edge: 2, picture: 1, slip: 1, place: 1, solve: 2, drill: 1 }, open: 1 }\nfamily:',
    );
    const table = papersOf(load(lesson), aClass(2)).papers.map(({ code, checkWords, difficulty, items }) => ({
      code,
      checkWords: checkWords.join(' '),
      difficulty,
      items: items.map((item) => `${idOf(item)} | ${item.letters.join('')} | ${writeTurns(item.exercise.setup)}`),
    }));
    expect(table).toMatchInlineSnapshot(`
      [
        {
          "checkWords": "CAMERA",
          "code": "3E4",
          "difficulty": 729,
          "items": [
            "likeness UBL:L FL:F FR | CM | L' U R U' R' U' L U'",
            "likeness UBR:B BL:B FR | AR | L U R U' R' U' L'",
            "edge UFL:F FL:F FR | LM | R U L' U L U' R' U'",
            "edge UFR:R BL:B FR | YE | L U R U' R' U' L' U",
            "picture UBL:L FL:F FR | MYRZ | L' U R U' R' U' L U'",
            "slip UFR:R BL:B FR | GHAM | L R U' R' U' L' U",
            "place UFL:F BL:B FR |  | R U L U L' U2 R' U",
            "solve UFL:F FL:F FR |  | L' R U' R' U' L U2",
            "solve UFL:F FL:F FR BL |  | L' R U' R' U' L U2",
            "drill UBR:B BL:B FR |  | L U R U' R' U' L'",
          ],
        },
        {
          "checkWords": "PLANET",
          "code": "G4G",
          "difficulty": 727,
          "items": [
            "likeness UFL:F BL:B FR | HP | R U L U L' U2 R' U",
            "likeness UBL:L FL:F FR | AL | L' U R U' R' U' L U'",
            "edge UBL:L BL:B FR | AS | L U R U' R' U' L' U'",
            "edge UBL:L FL:F FR | NW | L' U R U' R' U' L U'",
            "picture UFL:F BL:B FR | EKSW | R U L U L' U2 R' U",
            "slip UFL:F FL:F FR | HKNT | L' R U' R' U' L U2",
            "place UBR:B FL:F FR |  | L' U R U' R' U' L",
            "solve UFR:R BL:B FR |  | R U L U L' U2 R'",
            "solve UFL:F BL:B FR FL |  | L R U' R' U' L' U2",
            "drill UBL:L FL:F FR |  | L' R U' R' U' L U'",
          ],
        },
      ]
    `);
  });
});

describe('codes of papers', () => {
  it('are all different, without look-alikes', () => {
    const codes = Array.from({ length: PAPER_CODES }, (_, position) => paperCode('A lesson', 7, position));
    expect(new Set(codes).size).toBe(PAPER_CODES);
    expect(codes.join('')).not.toMatch(/[^34679ACEFGHKMNPRTWXY]/);
    expect(paperCode('A lesson', 8, 0)).not.toBe(codes[0]);
    expect(paperCode('Another', 7, 0)).not.toBe(codes[0]);
  });
});

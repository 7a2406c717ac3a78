/**
 * Rules by chance, seeded, printed on every paper: nothing overlaps or runs off the page, each rule stands on the chart or
 * never applies, and the second checker finds every set-up and solution.
 */
import { describe, expect, it } from 'vitest';
import { auditBuild } from '../../src/audit/audit-build.ts';
import { writePdf } from '../../src/layout/pdf.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import { writeCondition } from '../../src/rules/conditions.ts';
import { simpleConditions } from '../../src/rules/narrow.ts';
import { claimsFile } from '../../src/sheets/claims.ts';
import { printLesson } from '../../src/sheets/printed.ts';
import { pairRuleWorld } from '../../src/steps/pair/rule-world.ts';
import { overlaps, strays } from '../layout/sample.ts';
import { bytesOf } from '../lesson/small-lesson.ts';
import { type Random, randomFrom } from '../random.ts';

const SEED = 3_141;
const COUNT = process.env['DEEP'] ? 200 : 12;

const SIMPLE_CONDITIONS = simpleConditions(pairRuleWorld);
const ADVICE = [
  'lift: edge\n    with: R or L\n    aim: split\n    most: 8',
  'lift: edge\n    with: any\n    how: hidden\n    aim: joined\n    most: 9',
  'lift: edge\n    with: F\n    aim: top-top\n    most: 12',
  'turn: cube\n    most: 12',
  "by: R' F R F'\n    aim: split\n    most: 8",
] as const;

function lessonOf(random: Random): string {
  const rules = Array.from({ length: 1 + random.below(7) }, () => {
    const conditions = Array.from({ length: 1 + random.below(2) }, () => random.pick(SIMPLE_CONDITIONS));
    const see = new Map(conditions.map((one) => [one.feature, writeCondition(pairRuleWorld, one)]));
    return `  - see: { ${[...see.values()].join(', ')} }\n    ${random.pick(ADVICE)}\n`;
  });
  const last = '  - lift: edge\n    with: any\n    aim: top-top\n    most: 14\n    say: What is left.\n';
  const setup = "  - setup: R U R' L' U L\n    solutions: [ L' U L R U R' ]\n";
  return `title: Rules by chance
hold: { cross: white, front: green }
family: top-away
plan: { minutes: ${20 + random.below(100)} }
rules:
${rules.join('')}${random.chance(0.7) ? last : ''}cases:
${setup}`;
}

describe('rules by chance', () => {
  it(`${COUNT} tables, from seed ${SEED}`, async () => {
    let printed = 0;
    for (let i = 0; i < COUNT; i++) {
      const where = `seed ${SEED + i}`;
      const { proved, problems } = loadLesson('a.yaml', bytesOf(lessonOf(randomFrom(SEED + i))));
      // Advice by chance can fail everywhere, which is an error; anything else that is told is a warning.
      expect(
        problems.filter(({ code }) => !code.startsWith('rule')),
        where,
      ).toEqual([]);
      if (!proved) continue;
      const paper = (['a4', 'letter', 'a5'] as const)[i % 3]!;
      const { sheets, problems: faults } = printLesson(proved, { paper, ink: i % 2 === 0 ? 'colour' : 'mono' });
      expect(faults, where).toEqual([]);
      expect(
        sheets.map(({ suffix }) => suffix),
        where,
      ).toEqual(['', '-rules', '-plan']);
      for (const { pages } of sheets) {
        for (const frame of pages.frames) {
          expect(overlaps(frame), where).toEqual([]);
          expect(strays(frame, paper), where).toEqual([]);
        }
      }
      const file = claimsFile(sheets, 'a', 'a.yaml');
      const pdfs = await Promise.all(
        sheets.map(async ({ suffix, pages }) => [`a${suffix}.pdf`, await writePdf(pages)] as const),
      );
      const audit = await auditBuild(JSON.parse(JSON.stringify(file)), new Map(pdfs));
      expect(audit.faults, where).toEqual([]);
      const onChart = file.claims.filter(({ kind, sheet }) => kind === 'rule' && sheet === 'a-rules.pdf');
      const applying = proved.rules!.rules.filter((rule) => rule.proved.sightings.length > 0);
      expect(
        onChart.map(({ id }) => id),
        where,
      ).toEqual(applying.map(({ claim }) => claim.id));
      printed++;
    }
    expect(printed).toBeGreaterThan(COUNT / 4);
  });
});

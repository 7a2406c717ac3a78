/** The rules of lessons on paper: read back by the second checker, which knows nothing of rules. */
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { auditBuild } from '../../src/audit/audit-build.ts';
import { writePdf } from '../../src/layout/pdf.ts';
import type { PrintedClaim } from '../../src/lesson/claim.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import type { Variation } from '../../src/lesson/vary.ts';
import type { Feature } from '../../src/rules/world.ts';
import { claimsFile } from '../../src/sheets/claims.ts';
import { type PrintedSheet, printLesson } from '../../src/sheets/printed.ts';
import { wordsIn } from '../../src/steps/languages.ts';
import { FEATURE_NAMES, FEATURES } from '../../src/steps/pair/features.ts';
import { pairWords } from '../../src/steps/pair/words.ts';
import { overlaps, strays } from '../layout/sample.ts';
import { bytesOf, SMALL_LESSON } from '../lesson/small-lesson.ts';
import { provedSample, sampleText } from '../samples.ts';
import { textOf } from './printed-text.ts';

const english = wordsIn('en');

const WITH_RULES = ['edge-away', 'corner-away', 'one-at-home', 'both-away'] as const;
type Paper = 'a4' | 'letter' | 'a5';
type Ink = 'colour' | 'mono';

function printed(bytes: Uint8Array, paper: Paper, ink: Ink, variation: Variation = {}): PrintedSheet[] {
  const { proved } = loadLesson('a.yaml', bytes, variation);
  const { sheets, problems } = printLesson(proved!, { paper, ink });
  expect(problems).toEqual([]);
  return [...sheets];
}

/** The chart alone. */
function chartOfSample(name: string, paper: Paper, ink: Ink, variation: Variation): PrintedSheet {
  const { sheets, problems } = printLesson(provedSample(name, variation), { paper, ink, only: ['-rules'] });
  expect(problems).toEqual([]);
  return sheets[0]!;
}

const chartOf = (sheets: readonly PrintedSheet[]): PrintedSheet => sheets.find(({ suffix }) => suffix === '-rules')!;

/** The claims of one sheet as they go into the file, with what the second checker says of them. */
async function audited(sheet: PrintedSheet): Promise<readonly PrintedClaim[]> {
  const file = claimsFile([sheet], 'a', 'a.yaml');
  const audit = await auditBuild(
    JSON.parse(JSON.stringify(file)),
    new Map([[`a${sheet.suffix}.pdf`, await writePdf(sheet.pages)]]),
  );
  const solutions = file.claims.filter(({ kind }) => kind === 'solution');
  expect(audit).toEqual({ claims: solutions.length, faults: [] });
  expect(file.claims.map(({ id }) => id)).toEqual(sheet.claims.map(({ id }) => id));
  return file.claims;
}

describe.each(WITH_RULES)('the chart of %s', (name) => {
  it.each([
    ['a4', 'colour', {}],
    ['letter', 'mono', { cross: 'orange' }],
    ['a5', 'colour', { hand: 'left', cross: 'yellow', front: 'red' }],
  ] as const)('on %s in %s %o: every claim proved again, and found on its page', async (paper, ink, variation) => {
    const chart = chartOfSample(name, paper, ink, variation);
    const claims = await audited(chart);
    const rules = claims.filter(({ kind }) => kind === 'rule');
    const count = (parse(sampleText(name)) as { rules: unknown[] }).rules.length;
    expect(rules.map(({ id }) => id)).toEqual(Array.from({ length: count }, (_, i) => `rule.${i + 1}`));
    expect(claims.filter(({ kind }) => kind === 'solution')).toHaveLength(count);
    for (const frame of chart.pages.frames) {
      expect(overlaps(frame)).toEqual([]);
      expect(strays(frame, paper)).toEqual([]);
    }
    if (paper !== 'a5') expect(chart.pages.frames).toHaveLength(1);
  });
});

/** Its second rule holds only where the sides match: hiding the corner turns its cross colour down elsewhere (common practice, no source). */
const WITH_EXCEPTIONS = SMALL_LESSON.replace(
  'text: |',
  `rules:
  - see: { cross colour: sideways, edge front and corner top: unlike }
    lift: edge
    with: R or L
    aim: split
    most: 8
  - see: { cross colour: sideways }
    lift: edge
    with: R or L
    how: hidden
    aim: joined
    most: 8
    say: The corner makes room for {green}.
text: |`,
);

describe('the exceptions of a rule', () => {
  const chart = chartOf(printed(bytesOf(WITH_EXCEPTIONS), 'a4', 'colour'));

  it('stand beside it, each proved with a solution; as many as there is room for, and how many more', async () => {
    const claims = await audited(chart);
    const rule = claims.find(({ id }) => id === 'rule.2');
    if (rule?.kind !== 'rule') throw new Error('no rule');
    expect([rule.exact, rule.exceptions.length]).toEqual([false, 48]);
    // After the example of each of the two rules.
    const shown = claims.filter(({ kind }) => kind === 'solution').slice(2);
    expect(shown.map(({ id }) => id)).toEqual(['rules:3.1', 'rules:4.1', 'rules:5.1', 'rules:6.1']);
    const keys = rule.exceptions.map(({ address, seen }) => `${address} ${seen}`);
    for (const claim of shown) {
      if (claim.kind !== 'solution') throw new Error('no solution');
      expect(keys).toContain(`${claim.address} ${(claim as never as { pair: string }).pair}`);
      expect(claim.verdict).toBe('solves');
    }
    // 48 sightings are 12 for a student: four turns of the top each.
    expect(await textOf(chart)).toContain('also after any turn of the top');
    expect(await textOf(chart)).toContain('And 8 more.');
  });

  it('with the condition that would make it exact, and what the coach says of it', async () => {
    const said = await textOf(chart);
    // Hidden, the corner comes back on top whichever way the top is turned between, and one of three is right.
    expect(said).toContain('In 48 of 96 positions some way works');
    expect(said).toContain('Some way always works, if also the sides match when the corner is above the edge.');
    expect(said).toContain('The corner makes room for green.');
    expect(said).toContain('There is no rule for this one');
  });
});

describe('words of a chart', () => {
  it('ask for every feature, and answer with each of its values', () => {
    for (const name of FEATURE_NAMES) {
      const { ask, answers, says } = pairWords(english).rules.features[name];
      expect(ask, name).toMatch(/[.?]$/);
      for (const value of FEATURES[name].values) expect(says(answers[value]!), name).toMatch(/^[a-z{].{8,}[^.]$/);
      const { groups = {} }: Feature = FEATURES[name];
      for (const values of Object.values(groups)) {
        expect(answers[values.join(' or ')], name).toBeDefined();
      }
    }
  });

  it('change with the hand, the colour held down and the club', async () => {
    const rules = `rules:
  - see: { corner side: left, cross colour: sideways }
    lift: edge
    with: R
    aim: top-top
    most: 20
  - lift: edge
    with: any
    aim: top-top
    most: 20
words: { edge: bar, cross: plus }
text: |`;
    const source = bytesOf(SMALL_LESSON.replace('text: |', rules));
    const said = await textOf(chartOf(printed(source, 'a4', 'colour')));
    expect(said).toContain('white on the corner faces to the side');
    expect(said).toContain('The corner is at the left');
    expect(said).toContain('Lift the bar with R');
    const other = await textOf(chartOf(printed(source, 'a4', 'mono', { hand: 'left', cross: 'red' })));
    expect(other).toContain('The corner is at the right');
    expect(other).toContain('Lift the bar with L');
    expect(other).toContain('red on the corner faces to the side');
    expect(other).not.toContain('white on the corner');
  });

  it('flow over pages where the coach has much to say', async () => {
    const long = Array.from({ length: 70 }, (_, i) => `      Sentence ${i} of what is to be said about this rule.\n`);
    const source = bytesOf(
      WITH_EXCEPTIONS.replace('most: 8\n  - see', `most: 8\n    say: |\n${long.join('\n')}  - see`).replace(
        'family:',
        'plan: { minutes: 60 }\nfamily:',
      ),
    );
    const sheets = printed(source, 'a5', 'mono');
    for (const suffix of ['-rules', '-plan']) {
      const sheet = sheets.find((one) => one.suffix === suffix)!;
      expect(await textOf(sheet)).toContain('Sentence 69 of what is to be said');
      await audited(sheet);
    }
  });

  it('are not printed for a lesson without rules', () => {
    expect(printed(bytesOf(SMALL_LESSON), 'a4', 'colour').map(({ suffix }) => suffix)).toEqual(['']);
  });
});

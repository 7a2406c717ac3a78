import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadLesson } from '../../src/lesson/load.ts';
import { PROBLEM_KINDS } from '../../src/lesson/problem.ts';
import { excerpt, placeProblem } from '../../src/lesson/source.ts';
import { FAULTS, withRules } from './faults.ts';
import { bytesOf, SMALL_LESSON, withFacts, withLine } from './small-lesson.ts';

const problemsOf = (text: string) => {
  const { source, problems } = loadLesson('a.yaml', bytesOf(text));
  return problems.map((p) => placeProblem(p, source));
};

/** Told by other rooms, each with the suite that provokes it. */
const TOLD_ELSEWHERE = {
  'file-unreadable': 'cli/commands',
  'course-lesson-missing': 'cli/course',
  'course-lesson-twice': 'cli/course',
  'course-dates': 'cli/course',
  'rule-some-ways': 'lesson/rule-ways',
  'solution-longer': 'lesson/better',
  'solution-harder': 'lesson/better',
  'variation-impossible': 'lesson/vary',
  'colour-in-words': 'lesson/vary',
  'practice-too-few': 'practice/papers',
  'practice-words': 'practice/papers',
  'practice-shown': 'practice/papers',
  'practice-uneven': 'practice/papers',
  'practice-missing': 'cli/roster',
  'roster-unreadable': 'practice/roster',
  'roster-column': 'practice/roster',
  'roster-value': 'practice/roster',
  'roster-twice': 'practice/roster',
  'roster-names': 'practice/roster',
  'roster-hold': 'cli/roster',
  'print-too-wide': 'sheets/faults',
  'print-too-tall': 'sheets/faults',
} as const;

/** Told, and no reason not to print. */
const WARNINGS: readonly { name: string; code: string; text: string; line: number; column: number }[] = [
  {
    name: 'a fact that no sentence says',
    code: 'fact-unsaid',
    text: withFacts('Some are.', '  up: { is: { cross colour: up }, in: some }'),
    line: 8,
    column: 7,
  },
  {
    name: 'words behind a comment sign',
    code: 'text-cut-off',
    text: withLine(18, '    watch: Case #1 and #2'),
    line: 18,
    column: 17,
  },
  {
    name: 'a heading without cases',
    code: 'part-empty',
    text: `${SMALL_LESSON}  - part: And then\n`,
    line: 19,
    column: 11,
  },
  {
    name: 'a rule with exceptions',
    code: 'rule-exceptions',
    text: withRules(
      '  - see: { cross colour: sideways }',
      '    with: R or L',
      '    aim: split',
      '    most: 8',
      '  - aim: top-top',
      '    most: 12',
    ),
    line: 7,
    column: 5,
  },
  {
    name: 'a rule that earlier ones leave nothing',
    code: 'rule-never-applies',
    text: withRules('  - aim: top-top', '    most: 12', '  - see: { edge: bad }', '    aim: split', '    most: 8'),
    line: 9,
    column: 5,
  },
  {
    name: 'a rule whose condition says nothing',
    code: 'rule-empty-condition',
    text: withRules('  - see: { edge: bad }', '    aim: top-top', '    most: 14', '  - aim: top-top', '    most: 14'),
    line: 7,
    column: 5,
  },
  {
    name: 'rules that leave sightings out',
    code: 'rules-leave-out',
    text: withRules(
      '  - see: { cross colour: sideways, edge front and corner top: unlike }',
      '    with: R or L',
      '    aim: split',
      '    most: 8',
    ),
    line: 7,
    column: 5,
  },
];

describe('problems of a lesson', () => {
  it('finds none in the small lesson', () => {
    expect(problemsOf(SMALL_LESSON)).toEqual([]);
  });

  it.each(FAULTS)('$code: $name', ({ text, code, line, column, says }) => {
    const found = problemsOf(text);
    expect(found[0]).toMatchObject({ severity: 'error', code, file: 'a.yaml', line, column });
    expect(`${found[0]!.message} | ${found[0]!.hint}`).toMatch(says);
    expect(found).toHaveLength(1);
  });

  it.each(WARNINGS)('$code: $name', ({ text, code, line, column }) => {
    expect(problemsOf(text)).toMatchObject([{ severity: 'warning', code, line, column }]);
    expect(loadLesson('a.yaml', bytesOf(text)).proved).toBeDefined();
  });

  it('tells of tables a thousand deep though they are indented with tabs', () => {
    const text = Array.from({ length: 1200 }, (_, depth) => `${'\t'.repeat(depth)}a:`).join('\n');
    expect(problemsOf(text).map(({ code, message }) => `${code} ${message}`)).toEqual([
      expect.stringMatching(/^yaml-tab/),
      expect.stringMatching(/^yaml-syntax .*too deep/),
    ]);
  });

  it('reads a line that is longer than a call has room for', () => {
    const text = SMALL_LESSON.replace('# Look', `a\n  ${'b '.repeat(65_000)}`);
    expect(loadLesson('a.yaml', bytesOf(text)).proved).toBeDefined();
  });

  it.each([
    ['lines indented with tabs', '\ta: b\n'.repeat(3000)],
    ['a key that stands many times', `${SMALL_LESSON}${'k: a\n'.repeat(20_000)}`],
    ['many keys that are none', `${SMALL_LESSON}${Array.from({ length: 10_000 }, (_, i) => `k${i}: a\n`).join('')}`],
    ['many quotes that are never closed', `${SMALL_LESSON}${"k: 'a\n".repeat(1500)}`],
  ])('is done soon, and tells no more than anyone mends: %s', (_, text) => {
    const from = process.cpuUsage();
    const found = problemsOf(text);
    // Of the processor's time, since others may keep it busy: each takes about a second, where it took ten and more.
    expect(process.cpuUsage(from).user / 1e6).toBeLessThan(8);
    expect(found.length).toBeGreaterThan(0);
    expect(found.length).toBeLessThan(300);
  });

  it('tells of bytes that are no text', () => {
    const { problems, proved } = loadLesson('a.yaml', Uint8Array.of(0x74, 0xe9, 0x74));
    expect(problems.map((p) => p.code)).toEqual(['file-not-utf8']);
    expect(proved).toBeUndefined();
  });

  it('has a test for every code', () => {
    const tested = new Set<string>([
      ...[...FAULTS, ...WARNINGS].map((f) => f.code),
      ...Object.keys(TOLD_ELSEWHERE),
      'file-not-utf8',
    ]);
    expect(Object.keys(PROBLEM_KINDS).filter((code) => !tested.has(code))).toEqual([]);
  });

  it.each(Object.entries(TOLD_ELSEWHERE))('%s is provoked in %s.test.ts', (code, suite) => {
    const text = readFileSync(new URL(`../${suite}.test.ts`, import.meta.url), 'utf8');
    // As what a row expects, not as what it leaves out.
    const lines = text.split('\n').filter((line) => line.includes(code) && !line.includes('!=='));
    expect(lines.join('\n')).toMatch(new RegExp(`'${code}'|\\[${code}\\\\?\\]`));
    expect([...FAULTS, ...WARNINGS].map((f) => f.code)).not.toContain(code);
  });

  it('proves nothing that has a fault', () => {
    for (const { text } of FAULTS) expect(loadLesson('a.yaml', bytesOf(text)).proved).toBeUndefined();
  });

  it('tells all faults of a file at once', () => {
    const text = SMALL_LESSON.replace('front: green', 'front: gren')
      .replace('family:', 'familie:')
      .replace('{green}', '{gren}')
      .replace("setup: R U R' L' U L", "setup: R U R3 L' U L")
      .replace("turns: L U L' R U R'", "turns: L U L' R U R")
      .replace('watch:', 'wach:');
    expect(problemsOf(text).map((p) => [p.line, p.code])).toEqual([
      [4, 'value-unknown'],
      [5, 'key-unknown'],
      [8, 'text-mark'],
      [11, 'turns-unreadable'],
      [18, 'key-unknown'],
    ]);
    // The case with the unknown key is not read further; its solution is told once the key is mended.
    const rest = withLine(16, "      - turns: L U L' R U R").replace("R U R' L' U L", "R U R' L' U L U3");
    expect(problemsOf(rest).map((p) => p.code)).toEqual(['turns-unreadable', 'solution-fails']);
  });

  it('reads on past lines that YAML cannot read', () => {
    const text = SMALL_LESSON.replace('title: A small', 'title: Small: a')
      .replace('  cross: white', '\tcross: white')
      .replace('family: top-away', 'family: topaway')
      .replace("setup: R U R' L' U L\n", "setup: 'R U R' L' U L'\n")
      .replace("- turns: L U L' R U R'", "- turns: L U L' R3 U R'")
      .replace('watch: A wall', 'watch: *A wall');
    expect(problemsOf(text).map((p) => [p.line, p.code])).toEqual([
      [1, 'yaml-syntax'],
      [3, 'yaml-tab'],
      [5, 'value-unknown'],
      [11, 'yaml-quote'],
      [16, 'turns-unreadable'],
      [18, 'yaml-alias'],
    ]);
  });

  it('keeps its place on lines that end as on other systems, and after a byte-order mark', () => {
    const text = withLine(11, "    setup: R U R3 L' U L").replaceAll('\n', '\r\n');
    expect(problemsOf(`\ufeff${text}`)[0]).toMatchObject({ code: 'turns-unreadable', line: 11, column: 17 });
  });

  it.each([
    ['plain', ["    setup: R U R' L' Q"]],
    ['single quotes', ["    setup: 'R U R'' L'' Q'"]],
    ['a prime first in single quotes', ["    setup: '''R Q'"]],
    ['double quotes', ['    setup: "R U R\' Q"']],
    ['escapes in double quotes', ['    setup: "R U R\\x27 \\u0055 L\' Q"']],
    ['an escaped line end', ['    setup: "R U \\', '      R\' Q"']],
    ['double quotes over lines', ['    setup: "R U', '      R\' Q"']],
    ['plain over lines', ['    setup: R U', "      R' Q"]],
    ['a literal block', ['    setup: |', "      R U R'", '         L Q']],
    ['a folded block', ['    setup: >', '      R U  ', '', "      R' Q"]],
  ])('finds the sign in %s', (_, lines) => {
    const text = withLine(11, ...lines);
    const { problems } = loadLesson('a.yaml', bytesOf(text));
    const wanted = text.includes("'''R") ? text.indexOf("'''R") + 1 : text.indexOf('Q');
    expect(problems[0]).toMatchObject({ code: 'turns-unreadable' });
    expect(problems[0]!.span.start).toBe(wanted);
  });

  it('finds a mark in a text over lines, indented and with trailing blanks', () => {
    const text = withLine(8, '  Lift it  ', '       and {gren} so', '  on with {bleu}.');
    expect(problemsOf(text).map((p) => [p.line, p.column])).toEqual([
      [9, 12],
      [10, 11],
    ]);
  });

  it('points with carets', () => {
    const text = withLine(13, "      - L' U L R U' R'");
    const { source, problems } = loadLesson('a.yaml', bytesOf(text));
    expect(excerpt(problems[0]!.span, source)).toEqual([
      "  13 |       - L' U L R U' R'",
      '     |         ^^^^^^^^^^^^^^',
    ]);
  });
});

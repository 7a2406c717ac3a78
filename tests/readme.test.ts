/** What the README shows is true: its first lesson builds, its example of an error is what is said. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { COMMAND_NAMES } from '../src/cli/options.ts';
import { formatOf } from '../src/lesson/schema.ts';
import { VERDICTS } from '../src/marking/submission.ts';
import { wordsIn } from '../src/steps/languages.ts';
import { DEEDS } from '../src/steps/pair/said.ts';
import { pairWords } from '../src/steps/pair/words.ts';
import { steps, USUAL_STEP } from '../src/steps/steps.ts';
import { command, newFolder, put } from './cli/command.ts';

const english = wordsIn('en');

const README = readFileSync(new URL('../README.md', import.meta.url), 'utf8');
const block = (after: string, fence: string): string =>
  README.slice(README.indexOf(after)).split(`\`\`\`${fence}\n`)[1]!.split('```')[0]!;

describe('the README', () => {
  const lesson = block('## A first lesson', 'yaml');

  it('has a first lesson of ten lines or so that builds', async () => {
    const folder = newFolder();
    const { code, err } = await command(folder, ['build', put(folder, 'my-lesson.yaml', lesson)]);
    expect([code, err.split('\n')[0]]).toEqual([0, 'my-lesson.yaml: 2 cases, 2 solutions proved']);
    expect(lesson.trimEnd().split('\n').length).toBeLessThanOrEqual(11);
  });

  it('shows facts that are so', async () => {
    const folder = newFolder();
    const facts = block('## Sentences that are proved', 'yaml');
    const { code, err } = await command(folder, [
      'check',
      put(folder, 'a.yaml', `${lesson.replace(/^text: .*\n(?: .*\n)*/m, '')}${facts}`),
    ]);
    expect([code, err]).toEqual([0, 'a.yaml: 2 cases, 2 solutions, 2 facts proved\n']);
  });

  it('shows the error that a missing prime gives', async () => {
    const folder = newFolder();
    const slip = lesson.replace("L' U L R U R' ]", "L' U L R U R ]");
    const { code, err } = await command(folder, ['build', put(folder, 'my-lesson.yaml', slip)]);
    expect(code).toBe(1);
    expect(`${err}`).toBe(block('leave out a prime', ''));
  });

  it('shows what marking the sample class says', async () => {
    const folder = newFolder();
    const sample = (name: string): string => readFileSync(new URL(`../lessons/${name}`, import.meta.url), 'utf8');
    await command(folder, ['build', put(folder, 'edge-away.yaml', sample('edge-away.yaml'))]);
    const answers = put(folder, 'answers.csv', sample('class/edge-away-answers.csv'));
    const { out } = await command(folder, ['mark', 'out/edge-away.claims.json', answers]);
    const shown = README.split('edge-away-answers.csv --out out\n')[1]!.split('```\n')[2]!.trim().split('\n');
    expect(shown).toHaveLength(5);
    for (const line of shown) expect(out.split('\n')).toContain(line);
    const own = steps().flatMap(({ marking }) => Object.keys(marking.words(english).slips));
    for (const verdict of [...VERDICTS, ...own]) expect(README).toContain(`| \`${verdict}\` |`);
  });

  it('names commands as they are typed, which the package alone does not put on the path', () => {
    const commands = [...COMMAND_NAMES, 'help'].join('|');
    expect(README.match(new RegExp(`(?<!npx )turnsheet (?:${commands})\\b.*`, 'g'))).toBeNull();
  });

  it('explains every word for a phase', () => {
    const words = DEEDS.map((deed) => pairWords(english).cases.phase([deed], undefined));
    expect(words.filter((word) => !README.includes(`\`${word}\``))).toEqual([]);
  });

  it('explains every key of the format', () => {
    const { lesson, case: ofCase } = formatOf(USUAL_STEP);
    const keys = [...Object.keys(lesson.shape), ...Object.keys(ofCase.shape)];
    const missing = keys.filter((key) => key !== 'language' && !README.includes(`\`${key}\``));
    expect(missing).toEqual([]);
  });
});

/** `turnsheet mark --roster`: papers that were printed for a class, handed in by its students. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { SMALL_LESSON } from '../lesson/small-lesson.ts';
import { command, newFolder, put } from './command.ts';

const LESSON = SMALL_LESSON.replace('family:', 'practice: { items: { edge: 3, solve: 2 } }\nfamily:');

interface Key {
  readonly id: string;
  readonly paper: string;
  readonly kind: string;
  readonly solution: string;
  readonly letters: readonly string[];
}

async function aClass() {
  const folder = newFolder();
  const roster = put(folder, 'class.csv', 'code\nAB\nCD\nEF\n');
  await command(folder, ['build', put(folder, 'a.yaml', LESSON), '--roster', roster, '--out', 'o']);
  const { claims } = JSON.parse(readFileSync(join(folder, 'o/a.claims.json'), 'utf8')) as { claims: Key[] };
  const ofPapers = claims.filter(({ paper }) => paper !== undefined);
  const [one, two, three] = [...new Set(ofPapers.map(({ paper }) => paper))] as [string, string, string];
  const right = (paper: string, number: number): string =>
    claims.find(({ id }) => id === `${paper}.${number}`)!.solution;
  const mark = async (rows: string, roster = 'class.csv') => {
    const answers = put(folder, 'answers.csv', `student,paper,item,answer\n${rows}`);
    const done = await command(folder, ['mark', 'o/a.claims.json', answers, '--roster', roster, '--json']);
    return { ...done, document: JSON.parse(done.out) };
  };
  const letterOf = (paper: string, number: number): string =>
    claims.find(({ id }) => id === `${paper}.${number}`)!.letters[0]!;
  return { folder, one, two, three, right, letterOf, mark };
}

describe('mark with a roster', async () => {
  const { folder, one, two, three, right, letterOf, mark } = await aClass();

  it('takes an answer without a paper for the paper of its student', async () => {
    const { document } = await mark(`CD,,5,${right(two, 5)}\nef,,4,${right(three, 4)}\n`);
    expect(document.rows).toMatchObject([
      { student: 'CD', matched: `${two}.5`, verdict: 'solves' },
      { student: 'ef', matched: `${three}.4`, verdict: 'solves' },
    ]);
    expect(document.problems).toEqual([]);
  });

  it('never sends a student to the paper of another', async () => {
    const { document } = await mark(`CD,,5,${right(one, 5)}\nCD,,1,${letterOf(two, 1)}\n`);
    expect(document.rows[1].says).toContain(two);
    for (const { says, matched } of document.rows) {
      expect(says).not.toContain(one);
      expect(says).not.toContain(three);
      expect(matched).not.toMatch(new RegExp(`^(?:${one}|${three})`));
    }
  });

  it('gives a row without a student to whom the paper belongs', async () => {
    const { document } = await mark(`,${three},5,${right(three, 5)}\n`);
    expect(document.rows).toMatchObject([{ student: 'EF', matched: `${three}.5`, verdict: 'solves' }]);
  });

  it("tells of a paper under another's code and of a student who is not in the roster, once each", async () => {
    const { document } = await mark(`CD,${one},5,R\nCD,${one},4,R\nXY,,5,R\n`);
    expect(document.problems.map(({ row, message }: { row: number; message: string }) => [row, message])).toEqual([
      [2, `paper ${one} is AB's, and CD is named: one of the two is wrong`],
      [4, 'the roster has no student XY'],
    ]);
  });

  it('tells of a roster that is not that of the papers, or none', async () => {
    put(folder, 'other.csv', 'code\nAB\nCD\n');
    put(folder, 'bad.csv', 'colour\nred\n');
    const told = async (roster: string): Promise<[number, string]> => {
      const { code, document } = await mark('AB,,1,B\n', roster);
      return [code, document.problems.map(({ message }: { message: string }) => message).join('; ')];
    };
    expect(await told('other.csv')).toEqual([1, expect.stringMatching(/has 2 students, and the claims 3 papers/)]);
    expect(await told('bad.csv')).toEqual([1, expect.stringMatching(/there is no column "colour"/)]);
    expect(await told('none.csv')).toEqual([1, expect.stringMatching(/no such file/)]);
  });
});

import { describe, expect, it } from 'vitest';
import type { ProblemCode } from '../../src/lesson/problem.ts';
import { placeProblem, sourceOf } from '../../src/lesson/source.ts';
import { readRoster } from '../../src/practice/roster.ts';

const read = (text: string) => {
  const source = sourceOf('class.csv', text);
  const { rows, problems } = readRoster(source);
  return { rows, problems: problems.map((p) => placeProblem(p, source)) };
};
const rowsOf = (text: string) => {
  const { rows, problems } = read(text);
  expect(problems).toEqual([]);
  return rows.map(({ code, variation, level }) => ({ code, ...variation, ...(level && { level }) }));
};

describe('a roster', () => {
  it('says who sits where, and what is otherwise for them', () => {
    const text = 'code,cross,front,hand,level\nAB,,,,\nCD,yellow,red,left,hard\n';
    expect(rowsOf(text)).toEqual([
      { code: 'AB' },
      { code: 'CD', cross: 'yellow', front: 'red', hand: 'left', level: 'hard' },
    ]);
  });

  it('is read as spreadsheets write it', () => {
    const same = [{ code: 'AB' }, { code: 'C,D', hand: 'left' }];
    expect(rowsOf('Initials;Hand\r\nAB;\r\n"C,D";Left\r\n')).toEqual(same);
    expect(rowsOf('hand\tinitials\n\tAB\nleft\tC,D')).toEqual(same);
    expect(rowsOf('\n\ncode,hand\n\n AB , \n"C,D","left"\n,\n')).toEqual(same);
  });

  it('may name the sign between its fields', () => {
    expect(rowsOf('sep=;\r\ncode;hand\r\nAB;left\r\n')).toEqual([{ code: 'AB', hand: 'left' }]);
  });

  it('has a student for each line with fields, empty ones too, but for those at its end', () => {
    expect(rowsOf('code,hand\nA,\n,\nB,left\n,\n,\n')).toEqual([
      { code: 'A' },
      { code: undefined },
      { code: 'B', hand: 'left' },
    ]);
    expect(rowsOf('cross,hand\n,\n,\n')).toEqual([{ code: undefined }, { code: undefined }]);
  });

  it('needs no codes', () => {
    expect(rowsOf('level\neasy\nhard\n')).toEqual([
      { code: undefined, level: 'easy' },
      { code: undefined, level: 'hard' },
    ]);
  });

  it('knows cubes of other colours', () => {
    const scheme = { U: 'white', F: 'red', R: 'green', D: 'yellow', B: 'orange', L: 'blue' };
    expect(rowsOf('code,scheme\nA,white red green yellow orange blue\n')).toEqual([{ code: 'A', scheme }]);
    expect(rowsOf('code,scheme\nA,"white,red,green,yellow,orange,blue"\n')).toEqual([{ code: 'A', scheme }]);
  });

  it.each<[string, string, ProblemCode, number, number, RegExp]>([
    ['nothing at all', '', 'roster-unreadable', 1, 1, /empty/],
    ['headings only', 'code,hand\n', 'roster-unreadable', 1, 1, /no students/],
    ['a heading that is no column', 'code,colour\nA,red\n', 'roster-column', 1, 6, /no column "colour".*cross/s],
    ['a heading nearly right', 'code,corss\nA,red\n', 'roster-column', 1, 6, /"cross" was likely meant/],
    ['a heading twice', 'code,hand,hand\nA,left,left\n', 'roster-column', 1, 11, /second column/],
    ['codes and initials', 'code,initials\nA,B\n', 'roster-column', 1, 6, /keep one/],
    ['a colour that is none', 'code,cross\nA,pink\n', 'roster-value', 2, 3, /"pink".*white, yellow/s],
    ['a hand that is none', 'code,cross,hand\nA,,up\n', 'roster-value', 2, 4, /right or left/],
    ['a level that is none', 'code,level\nA,\nB,harder\n', 'roster-value', 3, 3, /easy, middle or hard/],
    ['after a quoted field', 'code,cross,hand\n"A,a",white,both\n', 'roster-value', 2, 13, /right or left/],
    ['a scheme of five colours', 'code,scheme\nA,white red green yellow blue\n', 'roster-value', 2, 3, /six colours/],
    [
      'a scheme with one twice',
      'scheme\nwhite red green yellow blue red\n',
      'roster-value',
      2,
      1,
      /red stands at two faces/,
    ],
    ['a field under no heading', 'code,hand\nA,left,hard\n', 'roster-value', 2, 8, /no heading/],
    ['a code too long', `code,hand\n${'A'.repeat(25)},left\n`, 'roster-value', 2, 1, /at most 24/],
    ['a code twice', 'code,hand\nA,left\nB,\nA,\n', 'roster-twice', 4, 1, /twice/],
    [
      'a code twice but for capitals',
      'code,hand\nab,left\nAB,\n',
      'roster-twice',
      3,
      1,
      /twice.*capitals do not count/,
    ],
    ['the place behind a named sign', 'sep=;\ncode;hand\nA;up\n', 'roster-value', 3, 3, /right or left/],
    ['a quote never closed behind it', 'sep=;\ncode;hand\n"A;left\n', 'roster-unreadable', 3, 1, /never closed/],
    ['a quote never closed', 'code,hand\n"A,left\n', 'roster-unreadable', 2, 1, /never closed/],
  ])('tells of %s', (_, text, code, line, column, says) => {
    const { problems } = read(text);
    expect(problems[0]).toMatchObject({ file: 'class.csv', severity: 'error', code, line, column });
    expect(`${problems[0]!.message} | ${problems[0]!.hint}`).toMatch(says);
  });

  it('warns of names, at the first of them, and reads on', () => {
    const { rows, problems } = read('code,hand\nAB,left\n"Doe, Jane",\nJane Roe,\n');
    expect(rows).toHaveLength(3);
    expect(problems).toMatchObject([{ code: 'roster-names', severity: 'warning', line: 3, column: 1 }]);
    expect(problems[0]!.message).toMatch(/^2 students have what look like names/);
  });

  it('tells of all that is wrong at once', () => {
    const { problems } = read('code,cross,hand\nA,pink,up\nA,,left\n');
    expect(problems.map((p) => p.code)).toEqual(['roster-value', 'roster-value', 'roster-twice']);
  });
});

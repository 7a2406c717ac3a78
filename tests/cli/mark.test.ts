import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { readPdf } from '../../src/audit/pdf-text.ts';
import { command, newFolder, put } from './command.ts';

const root = (path: string): string => new URL(`../../${path}`, import.meta.url).pathname;
const ANSWERS = readFileSync(root('lessons/class/edge-away-answers.csv'), 'utf8');
let claims = '';

beforeAll(async () => {
  const folder = newFolder();
  writeFileSync(join(folder, 'edge-away.yaml'), readFileSync(root('lessons/edge-away.yaml')));
  await command(folder, ['build', 'edge-away.yaml']);
  claims = readFileSync(join(folder, 'out/edge-away.claims.json'), 'utf8');
});

function classroom(): string {
  const folder = newFolder();
  put(folder, 'edge-away.claims.json', claims);
  put(folder, 'answers.csv', ANSWERS);
  return folder;
}
const MARK = ['mark', 'edge-away.claims.json', 'answers.csv'];
const rowsOf = (out: string): Record<string, unknown>[] => JSON.parse(out).rows;

describe('mark', () => {
  it('tells a verdict for each row, and ends with 0 however wrong the answers are', async () => {
    const { code, out, err } = await command(classroom(), MARK);
    expect(code).toBe(0);
    expect(out.trimEnd().split('\n')).toHaveLength(42);
    expect(out).toMatch(/^B2 {2}1 {3}solves {9}Solves: 6 turns, the shortest there is\.$/m);
    expect(err).toBe(
      '42 answers of 7 students: 14 right, 21 wrong, 2 unreadable, 2 empty, 1 unmatched, 2 marked by you, worth 1.5\n',
    );
  });

  it('gives one JSON document with the fields of the design, and writes no file', async () => {
    const folder = classroom();
    const { out, err } = await command(folder, [...MARK, '--json']);
    expect(err).toBe('');
    const rows = rowsOf(out);
    expect(rows).toHaveLength(42);
    for (const field of [
      'file',
      'row',
      'student',
      'item',
      'answer',
      'verdict',
      'length',
      'over',
      'broken',
      'nearMisses',
    ]) {
      expect(rows[0], field).toHaveProperty(field);
    }
    expect(rows[1]).toMatchObject({
      file: 'answers.csv',
      row: 3,
      student: 'B2',
      item: '2',
      verdict: 'fails',
      over: null,
    });
    expect(JSON.parse(out)).toMatchObject({
      ok: true,
      problems: [],
      files: [],
      submissions: [{ file: 'answers.csv', rows: 42, blank: 0 }],
    });
    expect(readdirSync(folder).sort()).toEqual(['answers.csv', 'edge-away.claims.json']);
  });

  it('writes slips, report and tables, the same bytes each time', async () => {
    const folder = classroom();
    const names = ['edge-away-class.csv', 'edge-away-class.json', 'edge-away-report.pdf', 'edge-away-slips.pdf'];
    const { code } = await command(folder, [...MARK, '--out', 'marked']);
    expect([code, readdirSync(join(folder, 'marked')).sort()]).toEqual([0, names]);
    const before = names.map((name) => readFileSync(join(folder, 'marked', name)));
    await command(folder, [...MARK, '--out', 'marked']);
    names.forEach((name, i) => {
      expect(readFileSync(join(folder, 'marked', name)).equals(before[i]!), name).toBe(true);
    });
    mkdirSync(join(folder, 'deep'));
    put(join(folder, 'deep'), 'answers.csv', ANSWERS);
    await command(folder, ['mark', 'edge-away.claims.json', 'deep/answers.csv', '--out', 'other']);
    expect(readFileSync(join(folder, 'other', names[1]!)).equals(before[1]!)).toBe(true);
  });

  it("keeps the coach's marks in the table, and they win", async () => {
    const folder = classroom();
    const table = join(folder, 'out/edge-away-class.csv');
    await command(folder, [...MARK, '--out', 'out']);
    const text = readFileSync(table, 'utf8');
    // As a spreadsheet saves it elsewhere: semicolons, no byte-order mark, other line ends.
    const marked = text.slice(1).replace("B2,,2,L U L' R U R,,0", "B2,,2,L U L' R U R,0.5,0");
    expect(marked).not.toBe(text.slice(1));
    writeFileSync(table, marked.replaceAll('\r\n', '\n'));
    for (let run = 0; run < 2; run++) {
      const { out } = await command(folder, [...MARK, '--out', 'out', '--json']);
      expect(rowsOf(out)[1]).toMatchObject({ verdict: 'fails', mark: '0.5', points: 0.5 });
      expect(readFileSync(table, 'utf8')).toContain("B2,,2,L U L' R U R,0.5,0.5,fails");
    }
  });

  it("keeps the coach's marks on work that was handed in another time", async () => {
    const folder = classroom();
    const table = join(folder, 'out/edge-away-class.csv');
    put(folder, 'one.csv', 'student,item,answer\nA,1,R U\n');
    put(folder, 'two.csv', 'student,item,answer\nB,1,R\n');
    const run = (...files: string[]) =>
      command(folder, ['mark', 'edge-away.claims.json', ...files, '--out', 'out', '--json']);
    await run('one.csv');
    writeFileSync(table, readFileSync(table, 'utf8').replace('A,,1,R U,,0', 'A,,1,R U,right,0'));
    const { out, code } = await run('two.csv');
    expect(code).toBe(0);
    expect(rowsOf(out).map(({ student }) => student)).toEqual(['B']);
    const kept = readFileSync(table, 'utf8');
    expect(kept).toContain('A,,1,R U,right,1,fails');
    await run('two.csv');
    expect(readFileSync(table, 'utf8')).toBe(kept);
    const both = await run('one.csv', 'two.csv');
    expect(rowsOf(both.out).map(({ student, mark }) => [student, mark])).toEqual([
      ['A', 'right'],
      ['B', ''],
    ]);
  });

  it('does not write over a table whose marks it does not see', async () => {
    const folder = classroom();
    const table = join(folder, 'out/edge-away-class.csv');
    await command(folder, [...MARK, '--out', 'out']);
    const renamed = readFileSync(table, 'utf8').replace(',mark,', ',points,');
    writeFileSync(table, renamed);
    const { code, err } = await command(folder, [...MARK, '--out', 'out']);
    expect([code, readFileSync(table, 'utf8')]).toEqual([1, renamed]);
    expect(err).toMatch(/edge-away-class\.csv: error: it has no column mark: its marks would be lost/);
  });

  it('writes nothing that it cannot read again, whatever signs were handed in', async () => {
    const folder = classroom();
    put(folder, 'odd.yaml', '- {student: A, item: 1, answer: "R\\0U\\x1b[A"}\n');
    for (let run = 0; run < 2; run++) {
      const { code } = await command(folder, ['mark', 'edge-away.claims.json', 'odd.yaml', '--out', 'out']);
      expect(code).toBe(0);
    }
    expect(readFileSync(join(folder, 'out/edge-away-class.csv'), 'utf8')).toContain('A,,1,R U [A,');
  });

  it('takes codes that differ by capitals for one student, and prints those that it can', async () => {
    const folder = classroom();
    put(folder, 'codes.csv', 'student,item,answer\nk7,1,R\nK7,2,R\n中文,1,R\n');
    const { code, err } = await command(folder, ['mark', 'edge-away.claims.json', 'codes.csv', '--out', 'out']);
    expect(code).toBe(0);
    expect(err).toContain('3 answers of 2 students');
    expect(err).toContain(
      'codes.csv:4: warning: the fonts have no sign of the code "中文": its slip is called "Row 4 of',
    );
    const { pages } = await readPdf(readFileSync(join(folder, 'out/edge-away-slips.pdf')));
    const text = pages.map((page) => page.text).join(' ');
    expect(text.match(/k7|K7/g)).toEqual(['k7']);
    expect(text).toContain('Row 4 of the answers');
  });

  it('prints a student who hands in very much', async () => {
    const folder = classroom();
    const rows = Array.from({ length: 900 }, (_, i) => `A,zz${i},R\n`);
    put(folder, 'much.csv', `student,item,answer\n${rows.join('')}A,1,R U\n`);
    const { code, err } = await command(folder, ['mark', 'edge-away.claims.json', 'much.csv', '--out', 'out']);
    expect([code, err]).toEqual([0, expect.stringContaining('edge-away-slips.pdf')]);
  });

  it('prints words of any width', async () => {
    const folder = classroom();
    const words = ['w'.repeat(30), '@'.repeat(24), `${'\u2014'.repeat(24)}x`, 'm'.repeat(26), 'W'.repeat(200)];
    const rows = words.map((word, i) => `${word},${i + 1},${word},${word}\n`);
    put(folder, 'wide.csv', `student,item,answer,mark\n${rows.join('')}`);
    const { code, err } = await command(folder, ['mark', 'edge-away.claims.json', 'wide.csv', '--out', 'out']);
    expect([code, err]).toEqual([0, expect.stringContaining('edge-away-slips.pdf')]);
  });

  it('prints the slip of one student with more unmatched rows than a page holds', async () => {
    const folder = classroom();
    const rows = Array.from({ length: 900 }, (_, i) => `K1,week ${i} exercise,R U\n`);
    put(folder, 'many.csv', `student,item,answer\n${rows.join('')}`);
    const { code, err } = await command(folder, ['mark', 'edge-away.claims.json', 'many.csv', '--out', 'out']);
    expect([code, err]).toEqual([0, expect.not.stringContaining('taller')]);
    const { pages } = await readPdf(readFileSync(join(folder, 'out/edge-away-slips.pdf')));
    const text = pages.map((page) => page.text).join(' ');
    for (const named of ['week 0 exercise', 'week 899 exercise']) expect(text.replaceAll(/\s+/g, ' ')).toContain(named);
  });

  it('does not write over a table that it cannot read', async () => {
    const folder = classroom();
    mkdirSync(join(folder, 'out'));
    writeFileSync(join(folder, 'out/edge-away-class.csv'), 'my,own,notes\n1,2,3\n');
    const { code, err } = await command(folder, [...MARK, '--out', 'out']);
    expect(code).toBe(1);
    expect(err).toMatch(/edge-away-class\.csv: error: .*its marks would be lost/);
    expect(readdirSync(join(folder, 'out'))).toEqual(['edge-away-class.csv']);
  });

  it('reads several files and folders, by name, and not its own table', async () => {
    const folder = classroom();
    mkdirSync(join(folder, 'in'));
    put(join(folder, 'in'), 'b.txt', "Z9 1 L' U L R U R'\n# late\n");
    put(join(folder, 'in'), 'a.yaml', "Y8:\n  1: L' U L R U R\n");
    put(join(folder, 'in'), 'notes.pdf', 'no');
    // As some systems leave them beside each file.
    put(join(folder, 'in'), '._a.csv', '\0\0');
    await command(folder, ['mark', 'edge-away.claims.json', 'in', '--out', 'in']);
    const { out } = await command(folder, [
      'mark',
      'edge-away.claims.json',
      'in',
      'answers.csv',
      '--out',
      'in',
      '--json',
    ]);
    const { submissions } = JSON.parse(out);
    expect(submissions).toEqual([
      { file: join('in', 'a.yaml'), rows: 1, blank: 0 },
      { file: join('in', 'b.txt'), rows: 1, blank: 1 },
      { file: 'answers.csv', rows: 42, blank: 0 },
    ]);
    expect(rowsOf(out)).toHaveLength(44);
  });

  it('takes claims after the submissions too', async () => {
    const folder = classroom();
    mkdirSync(join(folder, 'in'));
    put(folder, join('in', 'a.csv'), ANSWERS);
    const { out } = await command(folder, MARK);
    expect((await command(folder, ['mark', 'answers.csv', 'edge-away.claims.json'])).out).toBe(out);
    expect((await command(folder, ['mark', 'in', 'edge-away.claims.json'])).out).toBe(out);
  });

  it('tells a claim that was changed, marks the rest, and ends with 1', async () => {
    const folder = classroom();
    put(folder, 'edge-away.claims.json', claims.replace(`"solution": "L' U L R U R'"`, `"solution": "L' U L R U R"`));
    const { code, out, err } = await command(folder, [...MARK, '--json']);
    expect(code).toBe(1);
    expect(err).toMatch(
      /^edge-away\.claims\.json:claim 1\.1: error: its solution leaves .* unsolved; its item is not marked: build the sheet again$/m,
    );
    const rows = rowsOf(out);
    expect(rows.filter(({ item }) => item === '1').every(({ verdict }) => verdict === 'unmatched')).toBe(true);
    expect(rows.find(({ item, student }) => item === '3' && student === 'B2')).toMatchObject({ verdict: 'solves' });
  });

  it.each([
    [
      'a claims file that is not there',
      ['mark', 'no.claims.json', 'answers.csv'],
      /no\.claims\.json: error: there is no such file/,
    ],
    [
      'submissions that are not there',
      ['mark', 'edge-away.claims.json', 'no.csv'],
      /no\.csv: error: there is no such file/,
    ],
    [
      'answers for claims',
      ['mark', 'answers.csv', 'answers.csv'],
      /answers\.csv: error: it is a file of answers, not a claims file: name the \.claims\.json that "build" wrote/,
    ],
    [
      'a PDF for claims',
      ['mark', 'edge-away-key.pdf', 'answers.csv'],
      /edge-away-key\.pdf: error: it is a printed sheet, not a claims file: name edge-away\.claims\.json in its place/,
    ],
    [
      'the lesson for claims',
      ['mark', 'edge-away.yaml', 'answers.csv'],
      /edge-away\.yaml: error: it is a lesson or a file of answers, .*: name edge-away\.claims\.json in its place/,
    ],
    ['a file that is no claims file', ['mark', 'a.json', 'answers.csv'], /a\.json: error: it is not JSON/],
    [
      'an empty folder',
      ['mark', 'edge-away.claims.json', 'empty'],
      /empty: error: the folder has no CSV, YAML or text file/,
    ],
  ])('with %s ends with 1 and writes nothing', async (_, args, says) => {
    const folder = classroom();
    mkdirSync(join(folder, 'empty'));
    put(folder, 'edge-away-key.pdf', '%PDF-1.7\n');
    put(folder, 'edge-away.yaml', 'title: The edge is away\n');
    put(folder, 'a.json', 'title');
    const { code, err } = await command(folder, [...args, '--out', 'out']);
    expect(code).toBe(1);
    expect(err).toMatch(says);
    // What could not be marked has no figures.
    expect(err.includes('0 right')).toBe(args[1] === 'edge-away.claims.json');
    expect(readdirSync(folder)).not.toContain('out');
  });

  it.each([
    [['mark'], /needs the claims file that "build" writes/],
    [['mark', 'a.claims.json'], /needs submissions after a\.claims\.json/],
    [['mark', 'a.claims.json', 'b.csv', '--small-letters', 'big'], /--small-letters is wide or outer/],
    [['mark', '--type', 'a.claims.json', 'b.csv', 'c.csv'], /keeps one CSV file/],
  ])('%j ends with 2', async (args, says) => {
    const { code, err } = await command(newFolder(), args);
    expect(code).toBe(2);
    expect(err).toMatch(says);
  });

  it('asks for codes where there are names, and marks them all the same', async () => {
    const folder = classroom();
    put(folder, 'a.csv', 'student,item,answer\nAnna Example,1,R\n"Example, Bo",1,R\nK7,1,R\nABC,1,R\nAnna,1,R\n');
    const { code, out, err } = await command(folder, ['mark', 'edge-away.claims.json', 'a.csv']);
    expect([code, out.trimEnd().split('\n').length]).toEqual([0, 5]);
    expect(err).toMatch(/^a\.csv: warning: 2 students have what look like names: give codes or initials/m);
  });

  it('does not let an answer steer the terminal', async () => {
    const folder = classroom();
    put(folder, 'a.csv', 'student,item,answer\n\u001b[2JK7,1,\u001b]0;x\u0007 R\n');
    const { out } = await command(folder, ['mark', 'edge-away.claims.json', 'a.csv']);
    for (const sign of ['\u001b', '\u0007']) expect(out).not.toContain(sign);
  });
});

describe('papers that differ', () => {
  const students = 5;
  let ofClass = '';
  beforeAll(async () => {
    const folder = newFolder();
    writeFileSync(join(folder, 'edge-away.yaml'), readFileSync(root('lessons/edge-away.yaml')));
    put(folder, 'class.csv', `code\n${Array.from({ length: students }, (_, i) => `S${i}`).join('\n')}\n`);
    await command(folder, ['build', 'edge-away.yaml', '--roster', 'class.csv']);
    ofClass = readFileSync(join(folder, 'out/edge-away.claims.json'), 'utf8');
  });
  interface Key {
    readonly id: string;
    readonly sheet: string;
    readonly paper?: string;
    readonly answer?: string;
    readonly solution?: string;
  }
  const keys = (): Key[] =>
    (JSON.parse(ofClass).claims as Key[]).filter(
      ({ id, sheet }) => /-key\.pdf$/.test(sheet) || (sheet === 'edge-away.pdf' && !id.startsWith('fact.')),
    );

  it('are marked however many of them there are', async () => {
    // As for a class of 150, which is some 5 MB: papers of other codes with the same items.
    const document = JSON.parse(ofClass);
    const papers = (document.claims as Key[]).filter(({ sheet }) => sheet === 'edge-away-key.pdf');
    const more = Array.from({ length: 30 }, (_, i) =>
      papers.map((claim) => ({
        ...claim,
        paper: `${claim.paper}${i}`,
        id: claim.id.replace(claim.paper!, `${claim.paper}${i}`),
      })),
    ).flat();
    const folder = newFolder();
    const json = JSON.stringify({ ...document, claims: [...document.claims, ...more] }, undefined, 2);
    expect(json.length).toBeGreaterThan(4_000_000);
    put(folder, 'edge-away.claims.json', json);
    const { id, answer } = more.findLast((claim) => claim.answer !== undefined)!;
    const [paper, item] = id.split('.');
    put(folder, 'a.csv', `student,paper,item,answer\nK7,${paper},${item},${answer}\nK8,,1,L' U L R U R'\n`);
    const { code, out } = await command(folder, ['mark', 'edge-away.claims.json', 'a.csv']);
    expect(code).toBe(0);
    expect(out.match(/ solves /g)).toHaveLength(2);
  });

  it('whose items name no paper are never marked wrong where they are right', async () => {
    const folder = newFolder();
    put(folder, 'edge-away.claims.json', ofClass);
    const rows = keys().map(({ id, solution, answer }) => ({
      item: id.replace(/^[^.:]{3}\./, '').replace(/\..*/, ''),
      id,
      answer: solution ?? answer,
    }));
    put(folder, 'a.csv', `student,item,answer\n${rows.map(({ item, answer }) => `K7,${item},${answer}`).join('\n')}\n`);
    const { out } = await command(folder, ['mark', 'edge-away.claims.json', 'a.csv', '--json']);
    const marked = rowsOf(out);
    expect(marked).toHaveLength(rows.length);
    const counts = new Map<unknown, number>();
    marked.forEach(({ verdict, matched, says }, i) => {
      const { id } = rows[i]!;
      counts.set(verdict, (counts.get(verdict) ?? 0) + 1);
      expect(['solves', 'solves-turned', 'unmatched'], `${id}: ${says}`).toContain(verdict);
      if (verdict === 'unmatched') expect(says, id).toContain(': which paper? It would be right on paper ');
      else if (/^\d/.test(id)) expect(matched).toBe(id.replace(/\..*/, ''));
    });
    // All of the handout, and more than the 23 questions of choice of each paper.
    expect(counts.get('unmatched')).toBeGreaterThan(20 * students);
    expect(counts.get('solves')! + counts.get('solves-turned')!).toBeGreaterThanOrEqual(31);
  });
});

describe('lines of text', () => {
  it('name the paper before the item, as typed answers do', async () => {
    const folder = classroom();
    const all = JSON.parse(claims).claims as { id: string; asks?: string; answer: string }[];
    const [code, item] = all.find(({ asks }) => asks)!.id.split('.') as [string, string];
    const { answer } = all.find(({ asks }) => asks)!;
    put(folder, 'a.txt', `AB ${code} ${item} ${answer}\nAB ${code}.${item} ${answer}\nAB edge-away 1 L' U L R U R'\n`);
    const { out } = await command(folder, ['mark', 'edge-away.claims.json', 'a.txt', '--json']);
    expect(rowsOf(out)).toMatchObject([
      { paper: code, item, answer, verdict: 'solves', matched: `${code}.${item}` },
      { paper: '', verdict: 'solves', matched: `${code}.${item}` },
      { paper: 'edge-away', item: '1', verdict: 'solves', matched: '1' },
    ]);
  });
});

describe('mark --type', () => {
  const type = (folder: string, typed: readonly string[], args: readonly string[] = []) =>
    command(folder, ['mark', '--type', 'edge-away.claims.json', ...args], { typed });

  it('shows each verdict at once, and keeps the answers', async () => {
    const folder = classroom();
    const { code, err } = await type(folder, [
      ...['K7', '', '1', "L' U L R U R'", '2', 'R U', ''],
      ...['K8', '', '1.1', '', '', ''],
    ]);
    expect(code).toBe(0);
    expect(err).toMatch(
      /student code: K7, paper code \(empty for the handout\): K7, item: K7, 1, answer: {3}Solves: 6 turns/,
    );
    expect(err).toMatch(/K8, 1\.1, answer: {3}No answer\./);
    expect(err).toMatch(/3 answers of 2 students: 1 right, 1 wrong, 1 empty\n {2}edge-away-answers\.csv\n$/);
    expect(readFileSync(join(folder, 'edge-away-answers.csv'), 'utf8')).toBe(
      "\ufeffstudent,paper,item,answer,mark\r\nK7,,1,L' U L R U R',\r\nK7,,2,R U,\r\nK8,,1.1,,\r\n",
    );
  });

  it('goes on with a file, under the columns that it has', async () => {
    const folder = classroom();
    put(folder, 'mine.csv', 'Answer;Note;Code;Item\nR U;late;K1;3\n');
    await type(folder, ['K7', '', '1', 'R', '2', 'L', 'undo', '', ''], ['mine.csv']);
    expect(readFileSync(join(folder, 'mine.csv'), 'utf8')).toBe(
      '\ufeffAnswer;Note;Code;Item\r\nR U;late;K1;3\r\nR;;K7;1\r\n',
    );
    const again = await type(folder, [], ['mine.csv']);
    expect(again.err).toContain('mine.csv: 2 answers so far');
    const { out } = await command(folder, ['mark', 'edge-away.claims.json', 'mine.csv', '--json']);
    expect(rowsOf(out).map(({ student, row }) => [student, row])).toEqual([
      ['K1', 2],
      ['K7', 3],
    ]);
  });

  it('keeps the line that names the delimiter, and none of the keys that write no sign', async () => {
    const folder = classroom();
    put(folder, 'mine.csv', 'sep=;\nstudent;item;answer\nK1;3;R U\n');
    await type(folder, ['K\u00007', '', '1', 'R\u001b[D\u0000U', '', ''], ['mine.csv']);
    const text = readFileSync(join(folder, 'mine.csv'), 'utf8');
    expect(text).toBe('\ufeffsep=;\r\nstudent;item;answer\r\nK1;3;R U\r\nK 7;1;R [D U\r\n');
    const { code, out } = await command(folder, ['mark', 'edge-away.claims.json', 'mine.csv', '--json']);
    expect(code).toBe(0);
    expect(rowsOf(out).map(({ student, row }) => [student, row])).toEqual([
      ['K1', 3],
      ['K 7', 4],
    ]);
  });

  it('keeps the paper of an item, with a column for it or without', async () => {
    const folder = classroom();
    put(folder, 'mine.csv', 'student,item,answer\n');
    await type(folder, ['K7', '', 'K4T 7', 'B', '', ''], ['mine.csv']);
    expect(readFileSync(join(folder, 'mine.csv'), 'utf8')).toContain('K7,K4T.7,B');
    await type(folder, ['K7', '', 'K4T 7', 'B', '', '']);
    expect(readFileSync(join(folder, 'edge-away-answers.csv'), 'utf8')).toContain('K7,K4T,7,B,');
  });

  it('asks for the paper, offers the one that the student had, and asks again for one that there is not', async () => {
    const folder = classroom();
    const [key] = (JSON.parse(claims).claims as { id: string; asks?: string; answer: string }[]).filter(
      ({ asks }) => asks,
    );
    const [code, item] = key!.id.split('.') as [string, string];
    const typed = [...['AB', 'ZZZ', code.toLowerCase(), item, key!.answer, ''], ...['ab', '', item, key!.answer, '']];
    const { err } = await type(folder, [
      ...typed,
      ...['AB', '-', '1', 'R', ''],
      ...['CD', 'edge-away', '1', 'R', '', ''],
    ]);
    expect(err).toContain('There is no paper ZZZ.\nAB, paper code (empty for the handout): ');
    expect(err).toContain(`ab, paper code (empty for ${code} as before, - for the handout): `);
    expect(err.match(/ {2}Right\.\n/g)).toHaveLength(2);
    const kept = readFileSync(join(folder, 'edge-away-answers.csv'), 'utf8').split('\r\n').slice(1);
    const ofPaper = `${code},${item},${key!.answer},`;
    expect(kept).toEqual([`AB,${ofPaper}`, `ab,${ofPaper}`, 'AB,,1,R,', 'CD,edge-away,1,R,', '']);
    // Another time.
    const again = await type(folder, ['CD', '', '']);
    expect(again.err).toContain('CD, paper code (empty for edge-away as before, - for the handout): ');
  });

  it('asks for no paper where the claims have none', async () => {
    const folder = classroom();
    const { claims: all, ...rest } = JSON.parse(claims);
    const handout = all.filter(({ sheet }: { sheet: string }) => sheet === 'edge-away.pdf');
    put(folder, 'edge-away.claims.json', JSON.stringify({ ...rest, claims: handout }));
    const { err } = await type(folder, ['K7', '1', 'R', '', '']);
    expect(err).toMatch(/student code: K7, item: K7, 1, answer: {3}Not solved/);
    expect(err).not.toContain('paper code');
  });

  it('ends where the input ends, with what there was', async () => {
    const folder = classroom();
    expect((await type(folder, ['K7', '', '1', 'R', '2'])).code).toBe(0);
    expect(readFileSync(join(folder, 'edge-away-answers.csv'), 'utf8')).toContain('K7,,1,R,');
  });

  it.each([
    ['notes.txt', 'hello', /keep|ends in \.csv/],
    ['notes.csv', 'a,b\n1,2\n', /no column student, item and answer/],
  ])('does not write into %s', async (file, text, says) => {
    const folder = classroom();
    put(folder, file, text);
    const { code, err } = await type(folder, ['K7', '', '1', 'R'], [file]);
    expect(code).toBe(1);
    expect(err).toMatch(says);
    expect(readFileSync(join(folder, file), 'utf8')).toBe(text);
  });
});

/** Files of submissions as spreadsheets, editors and phones save them; and bytes that nobody would send on purpose. */
import { describe, expect, it } from 'vitest';
import { isUnreadable, type SubmissionsRead } from '../../src/marking/fields.ts';
import { marker } from '../../src/marking/mark.ts';
import { readSubmissions } from '../../src/marking/read-submissions.ts';
import { randomFrom } from '../random.ts';
import { claimsOf, fileOf, optionsOf, proved } from './class.ts';

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
function read(file: string, content: string | Uint8Array): SubmissionsRead {
  const found = readSubmissions(file, typeof content === 'string' ? utf8(content) : content);
  if (isUnreadable(found)) throw new Error(found.unreadable);
  return found;
}
const short = ({ rows }: SubmissionsRead): string[] =>
  rows.map(({ row, student, paper, item, answer, mark }) => [row, student, paper, item, answer, mark].join('|'));

const TWO = ["2|K7||1|R U R'|", "3|K8||2|L' U L|"];

describe('CSV', () => {
  it.each([
    ['as it is', "student,item,answer\nK7,1,R U R'\nK8,2,L' U L\n"],
    ['with a byte-order mark and Windows line ends', "\ufeffstudent,item,answer\r\nK7,1,R U R'\r\nK8,2,L' U L\r\n"],
    ['with semicolons', "student;item;answer\nK7;1;R U R'\nK8;2;L' U L"],
    ['with tabs', "student\titem\tanswer\nK7\t1\tR U R'\nK8\t2\tL' U L"],
    ['with the delimiter named', "sep=;\nstudent;item;answer\nK7;1;R U R'"],
    ['with quotes', '"student","item","answer"\n"K7","1","R U R\'"\n"K8","2","L\' U L"'],
    [
      'with columns in another order, other names, more of them',
      "Time,Answer,Code,Question\n9:00,R U R',K7,1\n9:05,L' U L,K8,2",
    ],
    ['with old line ends', "student,item,answer\rK7,1,R U R'\rK8,2,L' U L"],
    ['with spaces', " Student , ITEM ,Answer\nK7 , 1,  R U R' \n K8,2,L' U L"],
  ])('%s', (_, text) => {
    const rows = short(read('a.csv', text));
    if (text.startsWith('sep')) expect(rows).toEqual(["3|K7||1|R U R'|"]);
    else expect(rows).toEqual(TWO);
  });

  it('in UTF-16 and in Windows-1252, which is told', () => {
    const text = 'student,item,answer\nK7,1,R U R’';
    const utf16 = Uint8Array.from([
      0xff,
      0xfe,
      ...[...text].flatMap((c) => [c.charCodeAt(0) & 255, c.charCodeAt(0) >> 8]),
    ]);
    expect(short(read('a.csv', utf16))).toEqual(['2|K7||1|R U R’|']);
    // 0x92 is ’ in Windows-1252 (WHATWG Encoding Standard, index windows-1252).
    const old = Uint8Array.from([...utf8(text.slice(0, -1)), 0x92]);
    const found = read('a.csv', old);
    expect(short(found)).toEqual(['2|K7||1|R U R’|']);
    expect(found.faults[0]!.message).toMatch(/Windows-1252/);
  });

  it('keeps commas, quotes and line ends inside a cell', () => {
    expect(read('a.csv', 'student,item,answer\nK7,1,"R, U\n""R"""\n').rows[0]!.answer).toBe('R, U\n"R"');
  });

  it('counts rows as a spreadsheet does, and blank ones apart', () => {
    const found = read('a.csv', 'student,item,answer,mark\nK7,1,R,\n,,,\n\nK8,2,L,right\n');
    expect(short(found)).toEqual(['2|K7||1|R|', '5|K8||2|L|right']);
    expect(found.blank).toBe(2);
  });

  it.each([
    ['K7,1,R\n', /no column student, item and answer/],
    ['student,itm,answer\nK7,1,R', /no column item.*"itm" for item\?/],
    ['', undefined],
  ])('%j', (text, why) => {
    const found = readSubmissions('a.csv', utf8(text));
    if (!why) expect(found).toEqual({ rows: [], blank: 0, faults: [] });
    else expect(found).toMatchObject({ unreadable: expect.stringMatching(why) });
  });

  it('tells a quotation mark that is never closed, and loses no row that it can see', () => {
    const found = read('a.csv', 'student,item,answer\nK7,1,"R U\nK8,2,L');
    expect(found.rows).toHaveLength(1);
    expect(found.faults[0]!.message).toMatch(/never closed/);
  });

  it('cuts codes without end, and tells it', () => {
    const found = read('a.csv', `student,item,answer\n${'K'.repeat(5000)},1,R`);
    expect(found.rows[0]!.student).toHaveLength(60);
    expect(found.faults[0]).toEqual({ row: 2, message: 'student is longer than 60 characters and was cut' });
  });

  it('is no file of more rows than a club has', () => {
    const found = readSubmissions('a.csv', utf8(`student,item,answer\n${'K,1,R\n'.repeat(20_001)}`));
    expect(found).toMatchObject({ unreadable: expect.stringMatching(/more than 20000 rows/) });
  });
});

describe('YAML', () => {
  it.each([
    [
      'a list',
      "- { student: K7, item: 1, answer: R U R' }\n- student: K8\n  item: 3.10\n  paper: K4T\n  answer: L\n",
      ["1|K7||1|R U R'|", '2|K8|K4T|3.10|L|'],
    ],
    [
      'by student',
      "K7:\n  paper: K4T\n  1: R U R'\n  3.10: L U\nK8:\n  2:\n",
      ["3|K7|K4T|1|R U R'|", '4|K7|K4T|3.10|L U|', '6|K8||2||'],
    ],
    ['JSON', '[{"student":"K7","item":"1","answer":"R"}]', ['1|K7||1|R|']],
    ['nothing', '# none yet\n', []],
  ])('%s', (_, text, rows) => {
    expect(short(read('a.yaml', text))).toEqual(rows);
  });

  it.each([
    ['K7: { 1: [R, U] }', /the answer is a list/],
    ['- K7', /no table with student, item and answer/],
    ['K7: R U', /K7 has no table of items and answers/],
    ['a: &a { 1: R }\nb: *a', /b has no table/],
  ])('%j keeps its row and tells', (text, why) => {
    const found = read('a.yaml', text);
    expect(found.rows.length).toBeGreaterThan(0);
    expect(found.faults[0]!.message).toMatch(why);
  });

  it.each([
    ['K7: [', 1, /not YAML/],
    ['just words', 1, /neither a list/],
    ['['.repeat(200_000), undefined, /nested too deep/],
    [`a: 1\n- ${': '.repeat(12_000)}x\nb: 2\n`, 2, /nested too deep/],
    [`${'? '.repeat(12_000)}x\nb: 2\n`, 1, /nested too deep/],
    [`${'- '.repeat(12_000)}x\nb: 2\n`, 1, /nested too deep/],
  ])('%.20s cannot be read', (text, row, why) => {
    const found = readSubmissions('a.yaml', utf8(text));
    expect(found).toMatchObject({ unreadable: expect.stringMatching(why), ...(row && { row }) });
  });
});

describe('text', () => {
  it.each([
    ["K7 1 R U R'", "1|K7||1|R U R'|"],
    ["K7: 1: R U R'", "1|K7||1|R U R'|"],
    ["K7, 3.1, R U R'", "1|K7||3.1|R U R'|"],
    ['K7;K4T.2;B', '1|K7||K4T.2|B|'],
    ["K7\tcards:3.1\tR U R'", "1|K7||cards:3.1|R U R'|"],
    ['K7 1', '1|K7||1||'],
    ['K7 1:', '1|K7||1||'],
    ['K7', '1|K7||||'],
  ])('%j', (line, row) => {
    expect(short(read('a.txt', `${line}\n`))).toEqual([row]);
  });

  it.each([
    ['AB 39C 1 O', '1|AB|39C|1|O|'],
    ["AB: 39c, 21, R U R'", "1|AB|39c|21|R U R'|"],
    ["AB edge-away 3 R U R'", "1|AB|edge-away|3|R U R'|"],
    ['AB 39C', '1|AB|39C|||'],
    ['AB 39D 1 O', '1|AB||39D|1 O|'],
    ['39C 1 O', '1|39C||1|O|'],
  ])('with a paper before the item: %j', (line, row) => {
    const isPaper = (word: string): boolean => ['39C', 'EDGE-AWAY'].includes(word.toUpperCase());
    const found = readSubmissions('a.txt', utf8(line), isPaper);
    expect(isUnreadable(found) ? found : short(found)).toEqual([row]);
  });

  it('counts its lines, comments and empty ones apart', () => {
    const found = read('a.txt', '# Tuesday\r\nK7 1 R\r\n\r\nK8 1 L');
    expect(short(found)).toEqual(['2|K7||1|R|', '4|K8||1|L|']);
    expect(found.blank).toBe(2);
  });
});

describe('any bytes', () => {
  const { items } = proved(fileOf(claimsOf('edge-away')));
  const mark = marker(items, optionsOf());
  const SEEDS: Readonly<Record<string, string>> = {
    'a.csv': "student,item,answer,mark\nK7,1,\"L' U L R U R'\",\nK8,2,L U L' R U R,right\n",
    'b.csv': "student;item;answer\nK7;1;L' U L R U R'\n\nK8;2;R U\n",
    'a.yaml': "K7:\n  1: L' U L R U R'\n  2: (R U)3\nK8: { 1: R U R' }\n",
    'a.yml': "- student: K7\n  item: 1\n  answer: L' U L R U R'\n",
    'a.txt': "K7 1 L' U L R U R'\n# a comment\nK8 2 r u Ri\n",
  };
  const SEED = 20261125;

  it(`gives rows or says why not, and marks each row (seed ${SEED})`, () => {
    const r = randomFrom(SEED);
    let rows = 0;
    for (let i = 0; i < 4000; i++) {
      const file = r.pick(Object.keys(SEEDS));
      const bytes = [...utf8(SEEDS[file]!)];
      for (let changes = 1 + r.below(12); changes > 0; changes--) {
        const at = r.below(bytes.length + 1);
        const piece = r.pick([
          [r.below(256)],
          [0],
          [0x22],
          [0x0a],
          [0x0d],
          [0x3a],
          [0x2c],
          [0x28],
          [0x29, 0x39, 0x39],
          [0xef, 0xbb, 0xbf],
          [0xff, 0xfe],
          [0xf0, 0x9f, 0x98],
          [0x26, 0x61, 0x20, 0x2a, 0x61],
        ]);
        if (r.chance(0.3)) bytes.splice(at, 1 + r.below(4));
        else bytes.splice(at, r.chance(0.5) ? piece.length : 0, ...piece);
      }
      const told = `seed ${SEED}, file ${i}`;
      const found = readSubmissions(file, Uint8Array.from(bytes));
      if (isUnreadable(found)) {
        expect(found.unreadable, told).not.toBe('');
        continue;
      }
      const marked = found.rows.map(mark);
      expect(marked, told).toHaveLength(found.rows.length);
      const text = new TextDecoder().decode(Uint8Array.from(bytes));
      const lines = text.split(/\r\n|\r|\n/);
      if (lines.at(-1) === '') lines.pop();
      const isUtf16 = [0xfeff, 0xfffe].includes((bytes[0]! << 8) | bytes[1]!);
      // Of a text each line is a row, or blank; of a table without quotes too, but for the header.
      if (file === 'a.txt' && !isUtf16) expect(found.rows.length + found.blank, told).toBe(lines.length);
      if (file.endsWith('.csv') && !isUtf16 && !text.includes('"')) {
        const before = lines.findIndex((line) => line.replaceAll(/[,;|\s]/g, '') !== '');
        expect(found.rows.length + found.blank, told).toBe(lines.length - before - 1);
      }
      for (const row of marked) {
        expect(row.says, told).not.toBe('');
        expect(row.nearMisses.length > 0 && row.verdict.startsWith('solves'), told).toBe(false);
      }
      rows += marked.length;
    }
    expect(rows).toBeGreaterThan(2000);
  });
});

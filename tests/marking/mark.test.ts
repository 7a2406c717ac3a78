/** Verdicts and what is said, by examples worked out by hand on the sample course and on small claims. */
import { describe, expect, it } from 'vitest';
import { readClaimsText } from '../../src/marking/claims-file.ts';
import { proveClaims } from '../../src/marking/gather-items.ts';
import { marker } from '../../src/marking/mark.ts';
import { choiceOn, claimsOf, fileOf, marked, onPaper, optionsOf, proved, submission } from './class.ts';

const EDGE_AWAY = claimsOf('edge-away');
const { items } = proved(fileOf(EDGE_AWAY));
const CHOICE = choiceOn(EDGE_AWAY[0]!, {
  ...onPaper('K4T', 2),
  asks: 'rule',
  options: ['lift with R', 'lift with L', "R U R'"],
  // White is sideways in the case.
  sees: [['cross colour: up'], ['cross colour: sideways'], ['cross colour: down']],
  answer: 'B',
  sheet: 'a-key.pdf',
  page: 1,
});
const paper = (number: number, claim: object): object => ({ ...claim, ...onPaper('K4T', number), sheet: 'a-key.pdf' });
const withPaper = proved(
  fileOf([
    ...EDGE_AWAY,
    paper(1, EDGE_AWAY[0]!),
    CHOICE,
    // C, A, B one after the other are the solution of the case.
    { ...CHOICE, ...onPaper('K4T', 3), asks: 'order', options: ['R', "U R'", "L' U L"], answer: 'CAB' },
    paper(4, EDGE_AWAY[1]!),
  ]),
).items;

describe('a verdict', () => {
  it.each([
    ["L' U L R U R'", 'solves', 0],
    ["L'U L (R U R')", 'solves', 0],
    ["U U' L' U L R U R'", 'solves', 2],
    ["L' U L R U R' y", 'solves-turned', 0],
    ["y' F' U F L U L'", 'fails', null],
    ["y F' U F R U R' U", 'fails', null],
    ["y B' U B F U F'", 'solves-turned', 0],
    ["L' U L R U R", 'fails', null],
    ["R U R'", 'fails', null],
  ])('of %s is %s', (answer, verdict, over) => {
    const row = marked(items, '1', answer);
    expect([row.verdict, row.over]).toEqual([verdict, over]);
  });

  it('names the kept slot that is disturbed', () => {
    // Solves the pair, then takes the back right slot, which is kept, out.
    const row = marked(items, '1', "L' U L R U R' B U B'");
    expect(row.verdict).toBe('disturbs');
    expect(row.says).toMatch(/^The pair is home, but the back right slot is not solved any more\./);
    expect(row.broken).toEqual(expect.arrayContaining(['BR']));
  });

  it('names the pair that was solved instead', () => {
    // Case 2's other open slot is the one that the edge is stuck in: back left.
    const row = marked(items, '2', "L U L' R U' R'");
    expect([row.verdict, row.length]).toEqual(['other-pair', 6]);
    expect(row.says).toMatch(/^Solves another pair: that of the back left slot\./);
  });

  it('never marks a right answer wrong because it is not the key', () => {
    expect(marked(items, '13', "F2 R' F2 R")).toMatchObject({ verdict: 'solves', length: 4, over: 0, points: 1 });
    expect(marked(items, '13', "F2 R' F2 R").says).toMatch(/The sheet needs 7\./);
  });

  it.each(['', '   ', '-', '?', '–', '...'])('of "%s" is empty', (answer) => {
    expect(marked(items, '1', answer)).toMatchObject({ verdict: 'empty', length: null, points: 0 });
  });

  it.each(['12.4', '12,4 s', '9', '1:02.35', '12.4 11.9 10.2', '12.4 / 11.9', '12.4, 11.9, 10'])(
    'of a time, %s, is empty: it is not marked',
    (answer) => {
      expect(marked(items, '1', answer)).toMatchObject({ verdict: 'empty', says: 'A time; times are not marked.' });
    },
  );

  it.each(['12.4 R U', '1200', 'R2', '2R', '1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1x'])(
    'of what is no time, %s, is not',
    (answer) => {
      expect(marked(items, '1', answer).says).not.toMatch(/time/);
    },
  );

  it('of what cannot be read tells what and what was likely meant', () => {
    const row = marked(items, '1', 'Li U L R U R3');
    expect(row.verdict).toBe('unreadable');
    expect(row.says).toMatch(/^Cannot be read: "i".*Likely meant: `L' U L R U R'`, which solves\.$/);
    expect(row.nearMisses).toMatchObject([{ kind: 'spelling', answer: "L' U L R U R'", turn: 1 }]);
  });

  it('of what cannot be read and would not solve tells the slip in it too', () => {
    const row = marked(items, '1', 'Li U L R U R');
    expect(row.says).toMatch(
      /Likely meant: `L' U L R U R`, which does not solve\. With `R'` instead of `R` as turn 6 it solves\.$/,
    );
    expect(row.nearMisses[0]).toMatchObject({ kind: 'changed', answer: "L' U L R U R'", turn: 6 });
  });

  it('of an answer without end is unreadable, and quickly so', () => {
    expect(marked(items, '1', 'R '.repeat(5000)).says).toMatch(/Longer than 2000 characters/);
    expect(marked(items, '1', '(((((((((R)9)9)9)9)9)9)9)9)9').verdict).toBe('unreadable');
    expect(marked(items, '1', '(R U)150').says).toMatch(/More than 50 turns: too many to look for a slip/);
  });
});

describe('small letters', () => {
  const answer = "l' u l r u r'";
  it('are wide turns, and what they would be as turns of one layer is said', () => {
    const row = marked(items, '1', answer);
    expect([row.verdict, row.nearMisses[0]]).toMatchObject([
      'fails',
      { kind: 'small-letters', answer: "L' U L R U R'" },
    ]);
    expect(row.says).toMatch(/Small letters were read as wide turns/);
  });

  it('count as turns of one layer where the club has set that', () => {
    const row = marker(items, optionsOf('outer'))(submission('1', answer));
    expect([row.verdict, row.over, row.points]).toEqual(['solves', 0, 1]);
    expect(row.says).toMatch(/counted as turns of one layer/);
  });

  it('that are right as wide turns are right either way', () => {
    // Rw is L x: the regulations' identity, article 12a.
    const wide = "l' U l R U R'";
    const asCapitals = "x R' x' U x' R x R U R'";
    expect(marked(items, '1', asCapitals).verdict).toBe(
      marker(items, optionsOf('outer'))(submission('1', asCapitals)).verdict,
    );
    const lettered = "r' x U r x' R U R'";
    for (const small of ['wide', 'outer'] as const) {
      expect(marker(items, optionsOf(small))(submission('1', lettered)).verdict).toBe('solves-turned');
    }
    expect(marked(items, '1', wide).verdict).toBe('fails');
  });
});

describe('near misses', () => {
  const first = (item: string, answer: string) => marked(items, item, answer).nearMisses[0];
  it.each([
    ['1', "L' U L R U R", 'changed', "L' U L R U R'", 6],
    ['1', "L' U L R U R2", 'changed', "L' U L R U R'", 6],
    ['5', "L U' L' F' U' F", 'added', "L U' L' U F' U' F", 4],
    ['1', "L' U L R U", 'added', "L' U L R U R'", 6],
    ['1', "L' U L U R U R'", 'dropped', "L' U L R U R'", 4],
    ['5', "L U' L' F' U U' F", 'swapped', "L U' L' U F' U' F", 4],
    ['1', "R U' R' L' U' L", 'inverted', "L' U L R U R'", 1],
    ['2', "R' U' R L' U' L", 'mirrored', "L U L' R U R'", 1],
    ['1', "B' U B F U F'", 'other-side', "L' U L R U R'", 1],
    ['15', "U R' U R2 U' R'", 'u-first', "U' U R' U R2 U' R'", 1],
    ['1', "L U L' R U R'", 'neighbour', "L U L' R U R'", 1],
  ])('of item %s, %s: %s', (item, answer, kind, right, turn) => {
    expect(first(item, answer)).toMatchObject({ kind, answer: right, turn });
  });

  it('are all told, the likeliest first, each once', () => {
    const { nearMisses } = marked(items, '1', "L' U L R U R");
    const answers = nearMisses.map(({ answer }) => answer);
    expect(new Set(answers).size).toBe(answers.length);
    expect(answers.length).toBeGreaterThan(1);
    for (const answer of answers) expect(marked(items, '1', answer).verdict).toMatch(/^solves/);
  });

  it('where there is none, the last moment at which all was whole is told', () => {
    const row = marked(items, '1', "L' U L U F U F' R");
    expect(row.nearMisses).toEqual([]);
    expect(row.slip).toEqual({ turn: 8, kind: 'unknown' });
    expect(row.says).toMatch(/last whole after turn 7 of 8/);
  });
});

describe('an item', () => {
  it.each([
    ['1', '', '1'],
    ['1.1', '', '1'],
    [' 15.2 ', '', '15'],
    ['K4T.1', '', 'K4T.1'],
    ['k4t.1', '', 'K4T.1'],
    ['1', 'K4T', 'K4T.1'],
    ['4', ' k4t', 'K4T.4'],
    ['3.1', 'K4T', '3'],
    ['#3', '', '3'],
    ['3.', '', '3'],
    ['(3)', '', '3'],
    ['K4T 4', '', 'K4T.4'],
    ['K4T-4', '', 'K4T.4'],
    ['Item 3', '', '3'],
    ['case 03', '', '3'],
    ['Q3', '', '3'],
    ['q. 3', '', '3'],
    ['Case 15.2', '', '15'],
    ['010', '', '10'],
    ['K4T Q4', '', 'K4T.4'],
    ['K4T-04', '', 'K4T.4'],
    ['Question 4', 'K4T', 'K4T.4'],
    ['4)', 'K4T', 'K4T.4'],
  ])('"%s" with paper "%s" is %s', (item, paper, matched) => {
    expect(marked(withPaper, item, 'R', { paper }).matched).toBe(matched);
  });

  it.each([
    ['', '', /No item is named/],
    ['99', '', /There is no item 99/],
    ['K4T.11', '', /K4T\.1 was likely meant/],
    ['1', 'K4', /There is no paper K4; K4T was likely meant/],
    ['9', 'K4T', /Paper K4T has no item 9; it has 1 to 4/],
    // A paper's code is no item, and no item is near to it.
    ['K4T', '', /^K4T is a paper: name an item of it too\.$/],
    ['K4U', '', /^There is no item K4U; if it is a paper, K4T was likely meant/],
    ['39C', '', /^There is no item 39C\.$/],
    ['Q3.1', '', /^There is no item Q3\.1\.$/],
    ['00', '', /^There is no item 00\.$/],
    ['items3', '', /^There is no item items3\.$/],
    ['__proto__', '', /There is no item __proto__/],
  ])('"%s" with paper "%s" is unmatched', (item, paper, says) => {
    const row = marked(withPaper, item, "R U R'", { paper });
    expect([row.verdict, row.points, row.matched]).toEqual(['unmatched', 0, '']);
    expect(row.says).toMatch(says);
  });
});

describe('a row that names no paper', () => {
  const others = proved(
    fileOf([
      ...EDGE_AWAY,
      ...['K4T', 'GXN'].flatMap((code) => [
        { ...paper(2, CHOICE), ...onPaper(code, 2) },
        // The case of item 2 of the handout.
        { ...paper(4, EDGE_AWAY[1]!), ...onPaper(code, 4) },
      ]),
      { ...paper(30, EDGE_AWAY[1]!), ...onPaper('GXN', 30) },
    ]),
  ).items;
  const ASKS = /^Item \S+: which paper\? /;

  it.each([
    // Right on the handout, whatever papers have.
    ['2', "L U L' R U R'", 'solves', '2'],
    ['1', "L' U L R U R'", 'solves', '1'],
    // Wrong everywhere.
    ['4', 'R U', 'fails', '4'],
    ['4', '', 'empty', '4'],
    // Only one paper has it, and it is right there.
    ['30', "L U L' R U R'", 'solves', 'GXN.30'],
  ])('of item %s with %s: %s as %s', (item, answer, verdict, matched) => {
    expect(marked(others, item, answer)).toMatchObject({ verdict, matched });
  });

  it.each([
    ['4', "L U L' R U R'", 'It would be right on paper K4T or GXN; for the handout write a as the paper.'],
    ['#4', "L U L' R U R'", 'It would be right on paper K4T or GXN; for the handout write a as the paper.'],
    ['2', 'b)', 'It would be right on paper K4T or GXN; for the handout write a as the paper.'],
    ['2', 'A', 'It is an item of papers K4T and GXN; for the handout write a as the paper.'],
    ['30', 'R U', 'It is an item of paper GXN.'],
  ])('asks which is meant: item %s, %s', (item, answer, says) => {
    const row = marked(others, item, answer);
    expect([row.verdict, row.matched, row.says.replace(ASKS, '')]).toEqual(['unmatched', '', says]);
    expect(row.says).toMatch(ASKS);
  });

  it('is of the handout or of a paper where the paper says so', () => {
    expect(marked(others, '4', "L U L' R U R'", { paper: 'GXN' })).toMatchObject({
      verdict: 'solves',
      matched: 'GXN.4',
    });
    expect(marked(others, '4', "L U L' R U R'", { paper: 'a' })).toMatchObject({ verdict: 'fails', matched: '4' });
  });

  it('is of the paper where there is but one and no handout', () => {
    const one = proved(fileOf([CHOICE, paper(4, EDGE_AWAY[1]!)])).items;
    expect(marked(one, '2', 'A')).toMatchObject({ verdict: 'fails', matched: 'K4T.2' });
    expect(marked(one, '4', 'R U')).toMatchObject({ verdict: 'fails', matched: 'K4T.4' });
  });
});

describe('items of two claims files', () => {
  const texts = ['edge-away', 'corner-away'].map((name) => {
    const text = readClaimsText(`out/${name}.claims.json`, fileOf(claimsOf(name), name));
    if ('unreadable' in text) throw new Error(text.unreadable);
    return text;
  });
  const both = proveClaims(texts).items;

  it('are told apart by the name of their handout, as the paper', () => {
    expect(proveClaims(texts).falseClaims).toEqual([]);
    const row = marked(both, '1', "L' U L R U R'", { paper: 'edge-away' });
    expect([row.verdict, row.matched]).toEqual(['solves', 'edge-away.1']);
    expect(marked(both, '1.1', 'R', { paper: 'corner-away' }).matched).toBe('corner-away.1');
    expect(marked(both, 'corner-away.1', 'R').matched).toBe('corner-away.1');
    // Only one of the two has so many.
    expect(marked(both, '26', 'R').matched).toBe('26');
  });

  it.each(['1', '1.1'])('are not guessed: %s', (item) => {
    const row = marked(both, item, "L' U L R U R'");
    expect([row.verdict, row.says]).toEqual([
      'unmatched',
      `Item ${item} is in edge-away and corner-away: name one of them as the paper.`,
    ]);
  });
});

describe('a choice', () => {
  it.each([
    ['2', 'B', 'solves'],
    ['2', 'b)', 'solves'],
    ['2', ' (B). ', 'solves'],
    ['2', 'lift with L', 'solves'],
    ['2', 'A', 'fails'],
    ['2', 'E', 'unreadable'],
    ['2', 'AB', 'unreadable'],
    ['2', '', 'empty'],
    ['3', 'cab', 'solves'],
    ['3', 'C, A, B', 'solves'],
    ['3', 'ABC', 'fails'],
    ['3', 'AAB', 'unreadable'],
  ])('item %s, %s: %s', (item, answer, verdict) => {
    expect(marked(withPaper, item, answer, { paper: 'K4T' }).verdict).toBe(verdict);
  });

  it('of more than 2,000 characters is no answer, and is not looked through', () => {
    for (const [item, answer] of [
      ['2', `R6${' '.repeat(140_000)}a`],
      ['2', `B${' '.repeat(2000)}`],
      ['3', `CAB${'.'.repeat(2000)}`],
    ] as const) {
      expect(marked(withPaper, item, answer, { paper: 'K4T' })).toMatchObject({
        verdict: 'unreadable',
        says: expect.stringMatching(/Longer than 2000 characters/),
      });
    }
  });

  // The corner of case 1 is at UBR with white on B (its address, own slot FR); U brings that to UFR and R.
  const place = {
    ...CHOICE,
    ...onPaper('K4T', 5),
    asks: 'place',
    options: [],
    letters: [],
    piece: 'corner',
    turns: 'U',
    answer: 'UFR:R',
  };
  const printed = { ...CHOICE, ...onPaper('K4T', 6), letters: ['P', 'A', 'Q'], answer: 'A' };
  const more = proved(fileOf([place, printed]));

  it.each([
    ['5', 'UFR:R', 'solves'],
    ['5', 'ufr r', 'solves'],
    ['5', 'RUF-R', 'solves'],
    ['5', 'UFR (R)', 'solves'],
    ['5', 'ufr=r', 'solves'],
    ['5', 'UFRR', 'solves'],
    ['5', 'UFR:U', 'fails'],
    ['5', 'UFL:L', 'fails'],
    ['5', 'UFR', 'unreadable'],
    ['5', 'UFR:B', 'unreadable'],
    ['5', 'top front right, white to the right', 'solves'],
    ['5', 'The corner is at the top front right, white to the right.', 'solves'],
    ['5', 'top right front white right', 'solves'],
    ['5', 'top front right, white up', 'fails'],
    ['5', 'top front right', 'unreadable'],
    ['5', "don't know", 'empty'],
    ['5', 'No idea!', 'empty'],
    ['6', 'skip', 'empty'],
    ['6', 'a', 'solves'],
    ['6', 'P', 'fails'],
    ['6', 'B', 'unreadable'],
  ])('with a place, or letters of its own: item %s, %s: %s', (item, answer, verdict) => {
    expect(more.falseClaims).toEqual([]);
    expect(marked(more.items, item, answer, { paper: 'K4T' }).verdict).toBe(verdict);
  });

  // Turn 6 of the solution of case 1 should be R', and is R in the first of the two.
  const slip = {
    ...CHOICE,
    ...onPaper('K4T', 7),
    asks: 'slip',
    options: ["L' U L R U R", "L' U L R U R'"],
    letters: ['N', 'R'],
    answer: 'N',
    turn: 6,
    now: "R'",
  };
  const withSlip = proved(fileOf([slip]));

  it.each([
    ['N', 'solves'],
    ["N 6 R'", 'solves'],
    ["n6r'", 'solves'],
    ['(N), 6: R’', 'solves'],
    ['N 6', 'solves'],
    ['N 5', 'fails'],
    ['N 6 R2', 'fails'],
    ["R 6 R'", 'fails'],
    ["Q 6 R'", 'unreadable'],
    // The habits of writing that are read in solutions are read here.
    ['N 6 R`', 'solves'],
    ['N 6 R´', 'solves'],
    ["N 6 R'.", 'solves'],
    ["N 6 (R')", 'solves'],
    ["N 6 [R']", 'solves'],
    ["N 6 R -> R'", 'solves'],
    ["N 6th R'", 'solves'],
    ['N 6 Ri', 'solves'],
    ['N 6 R3', 'solves'],
    ['N 6 hm', 'unreadable'],
    ['n6r2', 'fails'],
  ])('of a slip may name its turn and the mend: %s: %s', (answer, verdict) => {
    expect(withSlip.falseClaims).toEqual([]);
    const row = marked(withSlip.items, '7', answer, { paper: 'K4T' });
    expect(row.verdict).toBe(verdict);
    if (/^N.*[52]$/.test(answer)) expect(row.says).toBe("N is right; turn 6 in it should be `R'`.");
  });

  it('of a slip says what was not given', () => {
    const says = (answer: string): string => marked(withSlip.items, '7', answer, { paper: 'K4T' }).says;
    expect(says("N 6 R'")).toBe('Right.');
    expect(says('N')).toBe("Right. You did not write the turn: turn 6 should be `R'`.");
    expect(says('N 6 hm')).toContain('"hm" cannot be read as a turn');
  });

  it.each([
    ['B, lift with L', 'solves'],
    ['b) lift with L.', 'solves'],
    ['Lift with L.', 'solves'],
    ['A lift with R', 'fails'],
    // Turns that are an option, in another spelling.
    ['RUR’', 'fails'],
    ['C: R U R′', 'fails'],
    ['A, lift with L', 'unreadable'],
  ])('takes an option in its own words, and the letter with them: %s: %s', (answer, verdict) => {
    expect(marked(withPaper, '2', answer, { paper: 'K4T' }).verdict).toBe(verdict);
  });

  it('says what is right', () => {
    expect(marked(withPaper, '2', 'A', { paper: 'K4T' }).says).toBe('Right is B: lift with L.');
  });
});

describe("the coach's own mark", () => {
  it.each([
    ['right', 1],
    ['0', 0],
    ['0,5', 0.5],
    ['.25', 0.25],
    ['✓', 1],
    ['wrong', 0],
  ])('"%s" counts %d', (mark, points) => {
    expect(marked(items, '1', 'nonsense', { mark })).toMatchObject({ verdict: 'unreadable', mark, points });
  });

  it('that is neither leaves the verdict', () => {
    expect(marked(items, '1', "L' U L R U R'", { mark: 'hm' })).toMatchObject({ points: 1, mark: 'hm' });
  });
});

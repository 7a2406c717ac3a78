/** Claims files that were changed by hand: each claim that does not hold is told, with why, and its item is not marked. */
import { describe, expect, it } from 'vitest';
import { compare } from '../../src/audit/compare.ts';
import { type FaceColours, readScheme } from '../../src/cube/colours.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import { readClaimsText } from '../../src/marking/claims-file.ts';
import { printedOnPage } from '../audit/claims.ts';
import { choiceOn, claimsOf, fileOf, marked, onPaper, proved, sampleBytes } from './class.ts';

const CLAIMS = claimsOf('edge-away');
const RIGHT = CLAIMS[0]!;

describe('claims read from disk', () => {
  it('hold as they were built', () => {
    const { items, falseClaims } = proved(fileOf(CLAIMS));
    expect(falseClaims).toEqual([]);
    expect(items.items).toHaveLength(26);
  });

  it('of an earlier tool, which named no step, are told as a whole, with what to do', () => {
    const { step: _, ...earlier } = RIGHT as never as Record<string, unknown>;
    const read = readClaimsText('a.claims.json', fileOf([CLAIMS[1], earlier]));
    expect('unreadable' in read && read.unreadable).toMatch(/^an earlier turnsheet wrote it.*build the lesson again/);
    const other = fileOf([{ id: 'x', kind: 'of another program' }]);
    expect('unreadable' in readClaimsText('a.claims.json', other)).toBe(false);
  });

  it.each([
    ['solution', { solution: "L' U L R U R" }, /its solution leaves .* unsolved/],
    ['solution, told as failing', { solution: 'R', verdict: 'fails' }, /its solution leaves .* unsolved/],
    ['solution that cannot be read', { solution: 'Q' }, /its solution cannot be read at character 1/],
    ['set-up', { setup: "R U R' L' U2 L" }, /address|its solution/],
    ['set-up that breaks the cross', { setup: 'R' }, /its set-up leaves what should be kept unsolved at/],
    ['set-up that turns the cube over', { setup: "R U R' L' U L x" }, /ends with the cube turned over/],
    ['set-up that cannot be read', { setup: 'R3' }, /its set-up cannot be read at character 2/],
    ['pair', { pair: 'BL' }, /unsolved at|kept/],
    ['kept slots', { kept: ['FL', 'BL', 'BR'] }, /the file says kept BL BR FL, the cube says BL BR/],
    // Marking asks the step what has to be solved; a file that says otherwise to other checkers is told all the same.
    ['base', { base: ['DF', 'DL', 'DB', 'DR'] }, /the file says base DB DF DL DR, the cube says BL BR DB DBL DBR/],
    ['goal', { goal: { home: ['DFR'], top: [], free: null } }, /the file says goal DFR, the cube says DFR FR/],
    [
      'goal up to U',
      { goal: { home: ['FR', 'DFR'], top: [], free: 'U' } },
      /the file says goal DFR FR, up to U, the cube/,
    ],
    ['length', { length: 5 }, /the file says length 5, the cube says 6/],
    ['shortest', { shortest: 5 }, /the file says shortest 5, the cube says 6/],
    ['address', { address: 'UFR:R UB:U' }, /the file says address/],
    ['case', { case: 'UFR:R UB:U' }, /the file says case/],
    ['family', { family: 'top-top' }, /the file says family top-top, the cube says top-away/],
    ['broken', { broken: ['DR'] }, /the file says broken DR, the cube says none/],
    ['cross', { cross: 'green' }, /the file says cross green, the cube says white/],
    ['cross that is none of the hold', { cross: 'red' }, /the file says cross red, the cube says white/],
    ['hold', { hold: { up: 'yellow', front: 'white' } }, /white cannot be in front with yellow up/],
    ['scheme', { scheme: 'white red green blue yellow orange' }, /the file says cross white, the cube says red/],
    ['scheme of five colours', { scheme: 'white red green blue yellow' }, /a scheme has six colours/],
    ['form', { kept: 'BL' }, /it has not the form of a claim \(kept/],
    ['form of a number', { length: -1 }, /it has not the form of a claim \(length/],
  ])('with another %s are told', (_, change, why) => {
    const { items, falseClaims } = proved(fileOf([{ ...RIGHT, ...change }, ...CLAIMS.slice(1)]));
    expect(falseClaims).toMatchObject([{ file: 'a.claims.json', claim: '1.1', why: expect.stringMatching(why) }]);
    for (const item of ['1', '1.1']) {
      const row = marked(items, item, "L' U L R U R'");
      expect(row.verdict).toBe('unmatched');
      expect(row.says).toMatch(/^Item 1\.1 cannot be marked, its claim does not hold: /);
    }
    expect(marked(items, '2', "L U L' R U R'").verdict).toBe('solves');
  });

  it('leaves a case that another of its claims still stands for', () => {
    const both = CLAIMS.filter(({ id }) => id.startsWith('15.'));
    const { items, falseClaims } = proved(fileOf([{ ...both[0], length: 3 }, both[1]]));
    expect(falseClaims.map(({ claim }) => claim)).toEqual(['15.1']);
    expect(marked(items, '15', both[1]!.solution).verdict).toBe('solves');
    expect(marked(items, '15.1', both[1]!.solution).verdict).toBe('unmatched');
  });

  it('tells two claims of one name, and two cases of one number', () => {
    expect(proved(fileOf([RIGHT, RIGHT])).falseClaims).toMatchObject([{ why: 'two claims bear this id' }]);
    const other = { ...CLAIMS[1], id: '1.2', item: '1', nth: 2 };
    expect(proved(fileOf([RIGHT, other])).falseClaims).toMatchObject(
      [{ claim: '1.2', why: /another set-up/ }].map((f) => ({ ...f, why: expect.stringMatching(f.why) })),
    );
  });

  it.each([
    ['choice with no such letter', { answer: 'Z' }],
    ['choice with two letters', { answer: 'AB' }],
    ['choice of an order that misses one', { asks: 'order', answer: 'AB' }],
    [
      'choice of an order in which the parts do not solve',
      { asks: 'order', options: ['R', "U R'", "L' U L"], answer: 'ABC' },
    ],
    ['edge called good that is bad', { asks: 'edge', options: ['bad', 'good'], letters: ['A', 'B'], answer: 'A' }],
    ['likeness that is none', { asks: 'likeness', options: ['like', 'unlike'], letters: ['A', 'B'] }],
    ['choice of a set-up that breaks the base', { setup: 'R' }],
    ['choice with one letter twice', { letters: ['A', 'A', 'B'] }],
    ['place where the piece is not', { asks: 'place', piece: 'corner', turns: 'U', answer: 'UFL:U' }],
    ['picture of another case', { asks: 'picture', options: ["R U R' L' U L U", "R U R' L' U L", 'U'] }],
    ['picture of the case twice', { asks: 'picture', options: ["R U R' L' U L", "R U R' L' U L", 'U'] }],
    ['question with one option twice', { options: ['a', 'A.', 'c'] }],
    ['likeness with one word twice', { asks: 'likeness', options: ['unlike', 'unlike'], letters: ['A', 'B'] }],
    ['question about rules that does not say what they see', { sees: undefined }],
    ['slip without its turn', { asks: 'slip', options: ["L' U L R U R", "L' U L R U R'"], letters: ['A', 'B'] }],
    ['question of a kind that there is not', { asks: 'taste', options: ['R', 'L', 'U'] }],
    ['slip in turns that solve', { asks: 'slip', options: ["L' U L R U R'", 'R', 'U'] }],
    ['slip with a second one beside it', { asks: 'slip', options: ["L' U L R U R", "L' U L R U R'", 'U'] }],
    [
      'slip mended wrongly',
      { asks: 'slip', options: ["L' U L R U R", "L' U L R U R'"], letters: ['A', 'B'], turn: 6, now: 'R2' },
    ],
  ])('tells a %s', (_, change) => {
    const sees = [['cross colour: sideways'], ['cross colour: up'], ['cross colour: down']];
    const rest = { asks: 'rule', options: ['a', 'b', 'c'], sees, answer: 'A' };
    const choice = choiceOn(RIGHT, { ...onPaper('K4T', 1), ...rest });
    expect(proved(fileOf([choice])).falseClaims).toEqual([]);
    expect(proved(fileOf([{ ...choice, ...change }])).falseClaims).toHaveLength(1);
  });

  /** As printed by a build: rules of the lesson, and a question that names one of them. */
  const RULES = [
    {
      id: 'rule.1',
      kind: 'rule',
      step: 'pairs',
      number: 1,
      families: ['top-away'],
      see: ['cross colour: sideways', 'edge front and corner top: unlike'],
    },
    { id: 'rule.2', kind: 'rule', step: 'pairs', number: 2, families: ['top-away'], see: [] },
  ];

  it.each([
    // White is sideways and green, the edge's colour behind, is not the orange on top: by hand.
    ['rule.1', 'rule.1', undefined],
    ['rule.2', undefined, /the file says that rule\.2 applies, the cube says rule\.1/],
    ['rule.7', undefined, /the file says that rule\.7 applies/],
  ])('looks up the rule that a claim names: %s', (rule, named, why) => {
    const { items, falseClaims } = proved(fileOf([...RULES, { ...RIGHT, rule }]));
    expect(falseClaims).toMatchObject(why ? [{ claim: '1.1', why: expect.stringMatching(why) }] : []);
    expect(items.items.map((item) => `rule.${item.rule?.number}`)).toEqual(named ? [named] : []);
  });

  it('takes the mirror of a rule, for papers of the left hand', () => {
    const { claims } = loadLesson('a.yaml', sampleBytes('edge-away'), { hand: 'left' });
    const [right] = claimsOf('edge-away');
    const left = { ...claims[0]!, sheet: 'a-key.pdf', page: 1, ...onPaper('K4T', 1) };
    expect(left.rule).toBe('rule.1');
    const seeLeft = [{ ...RULES[0]!, see: [...RULES[0]!.see, 'corner side: right'] }, RULES[1]!];
    // The corner of the first case is on the right, in the mirror on the left.
    expect(proved(fileOf([...seeLeft, right, left])).falseClaims).toEqual([]);
  });

  it('takes a cube of other colours, by the scheme that its claims name, and so does the second checker', () => {
    const words = ['white', 'yellow', 'red', 'blue', 'green', 'orange'];
    const scheme = readScheme(words) as FaceColours;
    const { claims } = loadLesson('a.yaml', sampleBytes('edge-away'), { scheme, cross: 'blue' });
    const printed = claims.map(printedOnPage);
    // By the scheme: up is opposite to down.
    expect(printed[0]).toMatchObject({ hold: { up: 'white' }, cross: 'blue', scheme: words.join(' ') });
    expect(proved(fileOf(printed)).falseClaims).toEqual([]);
    expect(printed.flatMap(compare)).toEqual([]);
    const { scheme: _, ...unnamed } = printed[0]!;
    expect(proved(fileOf([unnamed])).falseClaims).toMatchObject([{ why: 'yellow cannot be in front with white up' }]);
    expect(compare(unnamed)).toContain("cross: the claim says 'blue', it is 'yellow'");
  });

  it('tells a question about rules of which another fits', () => {
    const sees = [['cross colour: up'], ['cross colour: sideways', 'edge front and corner top: unlike']];
    const rest = { asks: 'rule', options: ['up', 'unlike'], answer: 'B', sees };
    const choice = choiceOn(RIGHT, { ...onPaper('K4T', 1), ...rest });
    expect(proved(fileOf([choice])).falseClaims).toEqual([]);
    for (const [change, why] of [
      [{ answer: 'A' }, 'its answer is option 1, and what is seen fits option 2'],
      [{ sees: [[], sees[1]] }, 'its answer is option 2, and what is seen fits option 1 and 2'],
      [{ sees: [sees[0]] }, 'it does not say what each of its rules sees'],
      [{ sees: [['cross: up'], sees[1]] }, 'one of its rules sees what is no condition'],
    ] as const) {
      expect(proved(fileOf([{ ...choice, ...change }])).falseClaims).toMatchObject([{ why }]);
    }
  });

  it('takes a place, a picture and a slip that are right', () => {
    const { setup } = RIGHT;
    const choice = choiceOn(RIGHT, { options: [], answer: 'A' });
    const all = [
      { ...choice, ...onPaper('K4T', 1), asks: 'place', piece: 'edge', turns: 'U', answer: 'FL:F' },
      { ...choice, ...onPaper('K4T', 2), asks: 'picture', options: [setup, `${setup} U`] },
      { ...choice, ...onPaper('K4T', 3), asks: 'slip', options: ["L' U L R U R", "L' U L R U R'"], turn: 6, now: "R'" },
    ];
    expect(proved(fileOf(all)).falseClaims).toEqual([]);
  });

  it.each([
    ['', /it is not JSON/],
    ['{', /it is not JSON/],
    ['[]', /it is no claims file/],
    ['{"lesson": 1, "claims": []}', /it is no claims file: lesson/],
    [JSON.stringify({ lesson: '', claims: Array.from({ length: 5001 }, () => 0) }), /it is no claims file: claims/],
    [`{"lesson":"a","claims":${'['.repeat(100_000)}${']'.repeat(100_000)}}`, /it is not JSON|no claims file|/],
  ])('a file that is none is told', (text, why) => {
    const read = readClaimsText('a.claims.json', text);
    if ('unreadable' in read) expect(read.unreadable).toMatch(why);
    else expect(read.entries.every(({ kind }) => kind === 'malformed')).toBe(true);
  });
});

/** Every message about turns that cannot be read: where it points, what it says, and that its proposal is readable. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MOST_TURNS, readTurns } from '../../src/cube/notation.ts';
import { writeTurns } from '../../src/cube/turns.ts';

interface Row {
  readonly text: string;
  /** The characters pointed at: [offset, number], in UTF-16 units. */
  readonly at: readonly [number, number];
  readonly message: string;
  readonly hint: string;
  /** What the hint proposes to write. */
  readonly proposes?: readonly string[];
}

const ROWS: readonly Row[] = [
  // amounts
  { text: 'R3', at: [1, 1], message: 'nothing is turned "3" times', hint: "write R'", proposes: ["R'"] },
  { text: 'F U1', at: [3, 1], message: 'nothing is turned "1" times', hint: 'write U', proposes: ['U'] },
  { text: 'Rw3 U', at: [2, 1], message: 'nothing is turned "3" times', hint: "write Rw'", proposes: ["Rw'"] },
  { text: 'R22', at: [1, 2], message: '"22"', hint: "write R, R2 or R'", proposes: ['R', 'R2', "R'"] },
  { text: 'R10 U', at: [1, 2], message: '"10"', hint: "write R, R2 or R'", proposes: ['R', 'R2', "R'"] },
  { text: "R'2", at: [2, 1], message: '"2" stands after the prime', hint: 'R2', proposes: ['R2', "R'"] },
  { text: "R'3", at: [2, 1], message: '"3" stands after the prime', hint: "R'", proposes: ['R2', "R'"] },
  { text: "R2'2", at: [3, 1], message: '"2" stands after the prime', hint: 'R2', proposes: ['R2', "R'"] },
  { text: "B R''", at: [4, 1], message: 'two primes in a row', hint: "write R' for", proposes: ["R'", 'R2'] },
  { text: "B R2''", at: [5, 1], message: 'two primes in a row', hint: 'R2 for a half turn', proposes: ["R'", 'R2'] },
  { text: 'R"', at: [1, 1], message: `'"' is not a prime`, hint: 'R2 for a half turn', proposes: ["R'", 'R2'] },
  { text: 'R″ U', at: [1, 1], message: '"″" is not a prime', hint: 'R2 for a half turn', proposes: ["R'", 'R2'] },
  { text: 'R`', at: [1, 1], message: 'a backtick is not a prime', hint: "write R' with", proposes: ["R'"] },
  { text: 'R`` U', at: [1, 1], message: 'a backtick is not a prime', hint: "write R' with", proposes: ["R'"] },
  { text: 'U Rw´', at: [4, 1], message: '"´" is not a prime', hint: "write Rw' with", proposes: ["Rw'"] },
  { text: 'R2´', at: [2, 1], message: '"´" is not a prime', hint: "write R2' with", proposes: ["R2'"] },
  { text: "R '", at: [2, 1], message: 'a prime without a turn', hint: "right after the letter: R'", proposes: ["R'"] },
  { text: 'Ri', at: [1, 1], message: '"i" is not how a turn back is written', hint: "write R'", proposes: ["R'"] },
  { text: 'U-', at: [1, 1], message: '"-" is not how', hint: "write U'", proposes: ["U'"] },
  { text: 'U2-', at: [2, 1], message: '"-" is not how', hint: 'write U2', proposes: ['U2'] },
  { text: 'R++', at: [1, 1], message: '"+" is not part of a turn', hint: 'write R or R2', proposes: ['R', 'R2'] },
  { text: 'U R²', at: [3, 1], message: '"²" only looks like 2', hint: 'type a plain 2' },
  { text: 'R 2', at: [2, 1], message: '"2" stands alone', hint: 'as in R2', proposes: ['R2'] },
  // wide turns
  { text: "L'w", at: [2, 1], message: '"w" stands too late', hint: "write Lw'", proposes: ["Lw'"] },
  { text: 'R2w U', at: [2, 1], message: '"w" stands too late', hint: 'write Rw2', proposes: ['Rw2'] },
  { text: "rw'", at: [1, 1], message: '"w" belongs to a capital letter', hint: "write Rw'", proposes: ["Rw'"] },
  { text: 'Rww', at: [2, 1], message: '"w" belongs right after the letter of a face', hint: 'leave it out' },
  { text: 'Mw', at: [1, 1], message: '"w" belongs right after the letter of a face', hint: 'leave it out' },
  { text: 'w', at: [0, 1], message: '"w" is not a turn', hint: 'wide Rw', proposes: ['Rw'] },
  { text: '3Rw', at: [0, 1], message: '"3" cannot stand before a turn', hint: 'Rw for two', proposes: ['R', 'Rw'] },
  { text: 'U 1Rw', at: [2, 1], message: '"1" cannot stand before a turn', hint: 'write R for', proposes: ['R', 'Rw'] },
  { text: '2U', at: [0, 1], message: '"2" cannot stand before a turn', hint: 'a half turn is U2', proposes: ['U2'] },
  {
    text: '2f',
    at: [0, 1],
    message: '"2" cannot stand before a turn',
    hint: 'Fw for two',
    proposes: ['F', 'Fw', 'F2'],
  },
  { text: '02Rw', at: [0, 2], message: '"02" cannot stand before a turn', hint: 'Rw for two', proposes: ['Rw'] },
  { text: '2-3Rw', at: [0, 1], message: '"2" stands alone', hint: 'leave it out' },
  // letters
  { text: 'R e', at: [2, 1], message: '"e" is not a turn', hint: 'a capital letter: E', proposes: ['E'] },
  { text: 'Y R', at: [0, 1], message: '"Y" is not a turn', hint: 'a small letter: y', proposes: ['y'] },
  { text: 'RIGHT', at: [1, 1], message: '"I" is not a turn', hint: 'turns are U D R L F B', proposes: ['Rw', 'M'] },
  { text: 'U T', at: [2, 1], message: '"T" is not a turn', hint: 'turns are U D R L F B' },
  { text: 'U В', at: [2, 1], message: '"В" only looks like B', hint: 'type a plain B', proposes: ['B'] },
  { text: 'х', at: [0, 1], message: '"х" only looks like x', hint: 'type a plain x', proposes: ['x'] },
  { text: 'R Ｕ', at: [2, 1], message: '"Ｕ" only looks like U', hint: 'type a plain U', proposes: ['U'] },
  {
    text: 'RÚ',
    at: [1, 1],
    message: 'an accent on a letter',
    hint: "the straight sign ' after the letter",
    proposes: ["R'"],
  },
  { text: 'R\u0301 U', at: [1, 1], message: 'an accent on a letter', hint: "after the letter: R'", proposes: ["R'"] },
  { text: 'R\u200b U', at: [1, 1], message: 'an invisible character', hint: 'delete it' },
  { text: 'R 🎲 U', at: [2, 2], message: '"🎲" is not a turn', hint: 'turns are U D R L F B' },
  { text: '?', at: [0, 1], message: '"?" is not a turn', hint: 'turns are U D R L F B' },
  // what stands between
  { text: 'R, U', at: [1, 1], message: '"," stands between turns', hint: 'part turns by a space only' },
  { text: '(R U, R U)', at: [4, 1], message: '"," stands between turns', hint: 'part turns by a space only' },
  { text: 'R U.', at: [3, 1], message: '"." stands between turns', hint: 'part turns by a space only' },
  { text: '"R U"', at: [0, 1], message: 'a quotation mark among the turns', hint: "type ' once after the letter" },
  // brackets
  { text: '[r]', at: [0, 1], message: '"[" is not read here', hint: 'round brackets' },
  { text: '[R, U]', at: [0, 1], message: '"[" is not read here', hint: 'round brackets' },
  { text: '()', at: [0, 2], message: 'nothing between the brackets', hint: 'leave them out' },
  { text: "U ( )'", at: [2, 3], message: 'nothing between the brackets', hint: 'leave them out' },
  { text: 'U (R F', at: [2, 1], message: 'this bracket is never closed', hint: 'close it: )' },
  { text: 'R U) F', at: [3, 1], message: 'this bracket was never opened', hint: 'open it before the first turn' },
  { text: '(R U)0', at: [5, 1], message: 'repeated 0 times', hint: 'leave the group out' },
  { text: '(R U) 3', at: [6, 1], message: '"3" stands apart from its bracket', hint: '(R U)3', proposes: ['(R U)3'] },
  { text: "(R U)'3", at: [6, 1], message: '"3" stands after the prime', hint: "(R U)3'", proposes: ["(R U)3'"] },
  { text: '(R U)x3', at: [5, 2], message: '"x" is a rotation, not "times"', hint: '(R U)3', proposes: ['(R U)3'] },
  { text: '(R U)×3', at: [5, 1], message: '"×" is not read here', hint: '(R U)3', proposes: ['(R U)3'] },
  { text: '(R U)*3', at: [5, 1], message: '"*" is not read here', hint: '(R U)3', proposes: ['(R U)3'] },
  { text: '(R U)999', at: [5, 3], message: `more than ${MOST_TURNS} turns`, hint: 'repeat the group less often' },
  { text: '((((((((('.padEnd(12, 'R'), at: [8, 1], message: 'more than 8 deep', hint: 'write the turns out' },
];

test.each(ROWS)('$text', ({ text, at, message, hint, proposes = [] }) => {
  const reading = readTurns(text);
  expect(reading).toMatchObject({
    ok: false,
    at: at[0],
    size: at[1],
    message: expect.stringContaining(message),
    hint: expect.stringContaining(hint),
  });
  for (const proposal of proposes) {
    expect(reading).toMatchObject({ hint: expect.stringContaining(proposal) });
    expect(readTurns(proposal)).toMatchObject({ ok: true });
  }
});

test('every turn that a hint tells to write is readable', () => {
  const told = ROWS.flatMap(({ text }) => {
    const { hint } = readTurns(text) as { hint: string };
    return [...hint.matchAll(/(?:write|plain|letter:|, |or|as in) ([^\s,;]+)/g)].map(([, turn]) => turn!);
  }).filter((turn) => /^\(?[A-Z]|^.$/.test(turn) && turn !== '2' && turn !== 'a');
  expect(told.length).toBeGreaterThan(40);
  expect(told.filter((turn) => readOf(turn).length === 0)).toEqual([]);
});

function readOf(text: string) {
  const reading = readTurns(text);
  return reading.ok ? reading.turns : [];
}

describe('limits', () => {
  test(`${MOST_TURNS} turns are read, one more is not`, () => {
    const most = 'R '.repeat(MOST_TURNS);
    expect(readOf(most)).toHaveLength(MOST_TURNS);
    expect(readOf(`(R)${MOST_TURNS}`)).toHaveLength(MOST_TURNS);
    expect(readTurns(`${most}U`)).toMatchObject({ ok: false, at: most.length, size: 1 });
    expect(readTurns(`(R)${MOST_TURNS + 1}`)).toMatchObject({ ok: false, at: 3, size: 3 });
  });

  // Written out these would be 99^6 turns, and more than there are numbers: what counts is that the test ends.
  test.each(['((((((R)99)99)99)99)99)99', `(R U)${'9'.repeat(400)}`, `((R)400)${'1'.repeat(50)}`, '('.repeat(1e5)])(
    'refused at once: %#',
    (text) => expect(readTurns(text).ok).toBe(false),
  );

  test('a group is refused where its number stands', () => {
    expect(readTurns('((R)99)99')).toMatchObject({
      ok: false,
      at: 7,
      size: 2,
      message: `more than ${MOST_TURNS} turns`,
    });
  });
});

describe('any text', () => {
  const pieces = [
    ...'UDRLFBudrlfbMESxyzXYZmesTw0123459()[]\'’′`´"″-+,;.:*×² \tВхÚ🎲',
    'Rw',
    '2Rw',
    '\u0301',
    '\u200b',
    '\ud83c',
  ];
  const nearlyTurns = fc.string({ unit: fc.constantFrom(...pieces), maxLength: 14 });
  const anything = fc.string({ unit: 'binary', maxLength: 14 });
  const seed = 20240103;

  test.each([
    ['of the characters of turns', nearlyTurns, 20_000],
    ['of any characters', anything, 3_000],
  ] as const)('%s is read or refused, never thrown at', (_, texts, numRuns) => {
    fc.assert(
      fc.property(texts, (text) => {
        const reading = readTurns(text);
        if (reading.ok) {
          expect(reading.turns.length).toBeLessThanOrEqual(MOST_TURNS);
          const written = writeTurns(reading.turns);
          expect(readOf(written)).toEqual(reading.turns);
          return;
        }
        expect(reading.at).toBeGreaterThanOrEqual(0);
        expect(reading.at + reading.size).toBeLessThanOrEqual(text.length);
        if (reading.size === 0) expect(reading.at).toBe(text.length);
        expect(reading.message).toMatch(/\S/);
        expect(reading.hint).toMatch(/\S/);
        // Half a character would spoil the terminal and JSON.
        expect(reading.message + reading.hint).not.toMatch(/\p{Cs}/u);
      }),
      { seed, numRuns },
    );
  });
});

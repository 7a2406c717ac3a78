/** The parse of turns: against all parses of short ones, planted forms, and the second checker's stickers. */
import { describe, expect, it } from 'vitest';
import { explain, MOST_TURNS_EXPLAINED, type Parts } from '../../src/cube/explain/explain.ts';
import { notationOf } from '../../src/cube/explain/notation.ts';
import { TURNS, writeTurns } from '../../src/cube/turns.ts';
import { randomFrom } from '../random.ts';
import { expectTheSame } from './explained.ts';
import { fewestWords } from './fewest-words.ts';
import { plantedTurns, randomTurns } from './random-words.ts';
import { turnsIn } from './read.ts';

const hasForm = (parts: Parts): boolean =>
  parts.some((part) => part.kind !== 'turns' && (part.kind !== 'trigger' || part.turns.length > 2));

describe('the parse of turns', () => {
  // Worked by hand.
  it.each([
    ["R U R'", '[R: U]', 2],
    ["R U2 R' F", '[R: U2] F', 3],
    ["U R U' R'", "(U R U' R')", 1],
    ["F R U R' U' F'", "[F: (R U R' U')]", 2],
    ["R' D' R U R' D R U'", "[[R': D'], U]", 3],
    ["R U R' U' R' F R F'", "(R U R' U') (R' F R F')", 2],
    ["B U2 D' B' F", "[B: U2 D'] F", 4],
    ['M E2 S', 'M E2 S', 3],
    ["M U M' U'", '[M, U]', 2],
    ["y R U R' y'", '[y R: U]', 3],
    ['', '', 0],
  ])('%s is %s', (turns, notation, words) => {
    const { parts, words: found, shared } = explain(turnsIn(turns));
    expect([notationOf(parts), found, shared]).toEqual([notation, words, []]);
  });

  it('parts a turn that ends one part and begins the next, where that saves a word', () => {
    const { parts, words, shared } = explain(turnsIn("R U R2 F R F'"));
    expect([notationOf(parts), words]).toEqual(["[R: U] (R' F R F')", 3]);
    expect(shared.map(({ turn, of, as }) => [turn, of.text, ...as.map(({ text }) => text)])).toEqual([
      [3, 'R2', "R'", "R'"],
    ]);
    // Nothing is saved: R2 stays as it is.
    expect(explain(turnsIn('F R2 U')).shared).toEqual([]);
  });

  it("knows a club's triggers by their names, from any side, in a mirror, and undone", () => {
    const triggers = { hop: turnsIn("R U2 R' U'") };
    for (const [turns, undone] of [
      ["R U2 R' U'", false],
      ["B U2 B' U'", false],
      ["L' U2 L U", false],
      ["U R U2 R'", true],
    ] as const) {
      expect(explain(turnsIn(turns), triggers).parts).toMatchObject([{ kind: 'trigger', name: 'hop', undone }]);
    }
    expect(explain(turnsIn("R U R' U'"), triggers).parts).toMatchObject([{ kind: 'commutator' }]);
  });

  it('has the fewest words there are: 60 words of up to 7 turns against all parses (seed 1311)', () => {
    const random = randomFrom(1311);
    const some = TURNS.filter(({ kind, letter }) => kind === 'face' && 'RUF'.includes(letter));
    let fewer = 0;
    for (let i = 0; i < 60; i++) {
      const turns = i % 3 === 0 ? randomTurns(random, 6, some) : plantedTurns(random, some, 2).turns.slice(0, 7);
      const { words } = explain(turns, {});
      expect(words, writeTurns(turns)).toBe(fewestWords(writeTurns(turns)));
      if (words < turns.length) fewer++;
    }
    expect(fewer).toBeGreaterThan(30);
  });

  it("finds A B A' or A B A' B' where one was planted: 500 of 500 (seed 1312)", () => {
    const random = randomFrom(1312);
    let shares = 0;
    for (let i = 0; i < 500; i++) {
      const { turns, words } = plantedTurns(random);
      const found = explain(turns);
      expect(hasForm(found.parts), writeTurns(turns)).toBe(true);
      expect(found.words, writeTurns(turns)).toBeLessThanOrEqual(words);
      if (found.shared.length > 0) shares++;
    }
    expect(shares).toBeGreaterThan(50);
  });

  it('stands for the turns it was made of: 300 random words of every kind of turn (seed 1313)', () => {
    const random = randomFrom(1313);
    for (let i = 0; i < 300; i++) expectTheSame(randomTurns(random, 1 + random.below(20), TURNS));
  });

  it('is not looked for in more turns than anyone does', () => {
    const many = Array.from({ length: MOST_TURNS_EXPLAINED + 1 }, (_, i) => TURNS[i % 18]!);
    expect(() => explain(many)).toThrow(RangeError);
  });
});

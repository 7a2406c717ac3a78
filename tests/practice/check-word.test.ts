import { describe, expect, it } from 'vitest';
import { alsoSpelt, CHECK_WORDS, drawWords, lettersFor, partsFor } from '../../src/practice/check-word.ts';
import { randomFor } from '../../src/practice/random.ts';

describe('check words', () => {
  it('come out for every number of choices from three on', () => {
    for (let n = 3; n <= 120; n++) {
      const parts = partsFor(n, CHECK_WORDS)!;
      expect(parts.reduce((a, b) => a + b, 0)).toBe(n);
      expect(Math.max(...parts)).toBeLessThanOrEqual(9);
    }
  });

  it('do not come out where no lengths add up', () => {
    expect(partsFor(5, ['SLOT', 'FRONT'])).toEqual([5]);
    expect(partsFor(7, ['SLOT', 'FRONT'])).toBeUndefined();
    expect(partsFor(9, ['SLOT', 'FRONT'])).toEqual([5, 4]);
  });

  it('are others than those of the neighbour, where the list has others', () => {
    const random = randomFor('words');
    const used = new Map<string, number>();
    let before: string[] = [];
    for (let paper = 0; paper < 50; paper++) {
      const next = drawWords([6, 4], CHECK_WORDS, used, random);
      expect(next.some((word) => before.includes(word))).toBe(false);
      for (const word of next) used.set(word, paper);
      before = next;
    }
    expect(drawWords([4], ['SLOT'], new Map([['SLOT', 0]]), random)).toEqual(['SLOT']);
  });

  it('come back only when all others of their length have been used', () => {
    const used = new Map<string, number>();
    const six = CHECK_WORDS.filter((word) => word.length === 6);
    const drawn = six.map((_, paper) => {
      const [word] = drawWords([6], CHECK_WORDS, used, randomFor(paper));
      used.set(word!, paper);
      return word;
    });
    expect(new Set(drawn)).toEqual(new Set(six));
  });

  it('are the only words that the letters can spell', () => {
    for (let seed = 0; seed < 400; seed++) {
      const random = randomFor(seed, 'letters');
      const word = random.pick(CHECK_WORDS);
      const counts = [...word].map(() => random.pick([2, 4]));
      const right = counts.map((count) => random.below(count));
      const items = lettersFor(word, counts, right, CHECK_WORDS, random)!;
      expect(items.map((letters) => letters.length)).toEqual(counts);
      expect(items.map((letters, i) => letters[right[i]!]).join('')).toBe(word);
      for (const letters of items) expect(new Set(letters).size).toBe(letters.length);
      expect(alsoSpelt(word, items, CHECK_WORDS), `seed ${seed}`).toEqual([]);
    }
  });

  it('leave out no letter that a word could need: none stands out', () => {
    const random = randomFor('none stands out');
    const drawn = new Set<string>();
    for (let i = 0; i < 300; i++) {
      const items = lettersFor('SLOT', [4, 4, 4, 4], [0, 0, 0, 0], ['SLOT', 'QUIZ'], random)!;
      for (const letter of items.flatMap((letters) => letters.slice(1))) drawn.add(letter);
    }
    for (const letter of 'QUIZ') expect(drawn.has(letter)).toBe(true);
  });

  it('are given up where a list leaves no letters', () => {
    const every = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].flatMap((a) => [...'AB'].map((b) => `${a}${b}X`));
    expect(lettersFor('ABX', [26, 2, 2], [0, 0, 0], every, randomFor('full'))).toBeUndefined();
  });
});

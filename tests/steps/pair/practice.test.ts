/** What is read off a pair, against a second way with the second checker's stickers. */
import { describe, expect, it } from 'vitest';
import { USUAL_SCHEME } from '../../../src/cube/colours.ts';
import { cornerOf, faceOfCornerSpot } from '../../../src/cube/spots.ts';
import { wordsIn } from '../../../src/steps/languages.ts';
import { seenFrom } from '../../../src/steps/pair/address.ts';
import { ADDRESSES } from '../../../src/steps/pair/cases.ts';
import { pairPractice } from '../../../src/steps/pair/practice.ts';
import { SLOTS } from '../../../src/steps/pair/slots.ts';
import { type PairSubject, pairSubject } from '../../../src/steps/pair/subject.ts';
import { drawCase } from '../../../src/svg/draw.ts';
import * as answers from '../../practice/answers.ts';

const look = { colours: USUAL_SCHEME, ink: 'colour', words: wordsIn('en') } as const;
const all = SLOTS.flatMap((slot) => ADDRESSES.map((at) => pairSubject(at, { slot, open: [] })));
const unsolved = all.filter(({ isSolved }) => !isSolved);
const pictureOf = (pair: PairSubject) => answers.readPicture(drawCase(pair.cube, pair, 'open', look).description);
const [likeness, edge] = ['likeness', 'edge'].map((n) => pairPractice.questions.find(({ name }) => name === n)!);

describe('reading a pair', () => {
  it('likeness: as the stickers show it, wherever it has a meaning', () => {
    let defined = 0;
    for (const pair of unsolved) {
      const found = likeness!.right(pair);
      const { corner } = seenFrom(pair.at, pair.side);
      const hasMeaning = cornerOf(corner).startsWith('U') && faceOfCornerSpot(corner) !== 'U';
      expect(found !== undefined, pair.address).toBe(hasMeaning);
      if (found === undefined) continue;
      defined++;
      expect(found, `${pair.address} ${pair.side}`).toBe(answers.likeness(pictureOf(pair)));
    }
    // Four places on top, two ways up; 16 spots of the edge; four slots.
    expect(defined).toBe(4 * 2 * 16 * 4);
  });

  it('good and bad edges: found by turning; none that is home is asked for', () => {
    const asked = all.filter((pair) => edge!.right(pair) !== undefined);
    for (const pair of asked) {
      expect(edge!.right(pair), `${pair.address} ${pair.side}`).toBe(answers.edgeWord(pictureOf(pair)));
    }
    // 24 spots of the corner, 14 of 16 of the edge, four slots.
    expect(asked).toHaveLength(24 * 14 * 4);
    // Each place can be entered two ways, and turns that keep edges good reach all places: one way of each is good.
    expect(asked.filter((pair) => edge!.right(pair) === 'good')).toHaveLength(asked.length / 2);
  });
});

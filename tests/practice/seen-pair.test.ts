/** What is read off a pair, against a second way with the second checker's stickers. */
import { describe, expect, it } from 'vitest';
import { USUAL_SCHEME } from '../../src/cube/colours.ts';
import { cubeOf } from '../../src/practice/material.ts';
import { seenPair } from '../../src/practice/seen-pair.ts';
import { wordsIn } from '../../src/steps/languages.ts';
import { writeAddress } from '../../src/steps/pair/address.ts';
import { ADDRESSES } from '../../src/steps/pair/cases.ts';
import { featuresOf, topsLike } from '../../src/steps/pair/features.ts';
import { SLOTS } from '../../src/steps/pair/slots.ts';
import { drawnFor } from '../../src/steps/pair/subject.ts';
import { drawCase } from '../../src/svg/draw-case.ts';
import * as answers from './answers.ts';

const english = wordsIn('en');

const look = { colours: USUAL_SCHEME, ink: 'colour', words: english } as const;
const all = SLOTS.flatMap((slot) => ADDRESSES.map((address) => ({ address, slot, ...cubeOf(address, slot) })));
const unsolved = all.filter(
  ({ cube, goal }) => !drawCase(cube, drawnFor(goal), 'open', look).description.includes('It is solved'),
);

describe('reading a pair', () => {
  it('likeness: as the stickers show it, wherever it has a meaning', () => {
    let defined = 0;
    for (const { address, slot, cube, goal } of unsolved) {
      const found = topsLike({ address, seen: slot });
      const { corner } = seenPair(address, slot);
      const hasMeaning = corner.place.startsWith('U') && corner.cross !== 'U';
      expect(found !== undefined, writeAddress(address)).toBe(hasMeaning);
      if (found === undefined) continue;
      defined++;
      const picture = answers.readPicture(drawCase(cube, drawnFor(goal), 'open', look).description);
      expect(found, `${writeAddress(address)} ${slot}`).toBe(answers.likeness(picture));
    }
    // Four places on top, two ways up; 16 spots of the edge; four slots.
    expect(defined).toBe(4 * 2 * 16 * 4);
  });

  it('good and bad edges: found by turning', () => {
    for (const { address, slot, cube, goal } of unsolved) {
      const picture = answers.readPicture(drawCase(cube, drawnFor(goal), 'open', look).description);
      expect(featuresOf({ address, seen: slot }).edge, `${writeAddress(address)} ${slot}`).toBe(
        answers.edgeWord(picture),
      );
    }
  });

  it('half of all edge spots are good', () => {
    // Each place can be entered two ways, and turns that keep edges good reach all places: one way of each is good.
    expect(all.filter(({ address, slot }) => featuresOf({ address, seen: slot }).edge === 'good')).toHaveLength(
      all.length / 2,
    );
  });
});

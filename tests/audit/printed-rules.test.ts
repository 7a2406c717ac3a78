/** Printed statements about a pair, taken at their word on the stickers: rows read off a cube by hand, and every word that rules print. */
import { describe, expect, it } from 'vitest';
import { isTrue, seenOf } from '../../src/audit/printed-rules.ts';
import { readTurns } from '../../src/audit/read-turns.ts';
import { ruleChoiceFaults } from '../../src/audit/rule-choice.ts';
import { afterTurns } from '../../src/audit/stickers.ts';
import { writeTurns } from '../../src/cube/turns.ts';
import { conditionSaid, statementText, wordsOfLesson } from '../../src/lesson/rule-words.ts';
import { simpleConditions } from '../../src/rules/narrow.ts';
import { meets } from '../../src/rules/rules.ts';
import { FAMILIES } from '../../src/steps/pair/cases.ts';
import { pairRuleWorld } from '../../src/steps/pair/rule-world.ts';
import type { Slot } from '../../src/steps/pair/slots.ts';
import { USUAL_STEP } from '../../src/steps/steps.ts';
import { randomFrom } from '../random.ts';

const seenAfter = (turns: string, slot: Slot = 'FR') => {
  const read = readTurns(turns);
  if (!read.ok) throw new Error(turns);
  return seenOf(afterTurns(read.turns), slot, 'white');
};

describe('printed statements', () => {
  it.each<[string, boolean, string]>([
    // R brings the corner to UFR with white on the right, U' and R' take the edge to the back with its front colour up.
    ["R U' R'", true, 'White on the corner faces to the right'],
    ["R U' R'", true, 'White on the corner faces to the side and the edge is on top at the back'],
    ["R U' R'", true, 'White on the corner faces up, down or to the right'],
    ["R U' R'", false, 'White on the corner faces up or to the left'],
    ["R U' R'", true, 'The edge is good, the corner is on top and the corner is front right'],
    ["R U' R'", true, 'The edge’s top colour is unlike the corner’s top colour'],
    ["R U' R'", true, 'The edge’s top colour is like the corner’s colour beside white'],
    // Nothing is in a slot to be above.
    ["R U' R'", false, 'The sides match when the corner is above the edge'],
    ["R U' R'", false, 'The sides do not match when the corner is above the edge'],
    // The pair lifted out whole.
    ["R U R'", true, 'White on the corner faces to the left'],
    // The corner at the front left with white down: two colours stand beside white, and either may be meant.
    ["R U L' R' U' L", true, 'White on the corner faces down and the corner is front left'],
    ["R U L' R' U' L", true, 'The edge’s top colour is like the corner’s colour beside white'],
    ["R U L' R' U' L", true, 'The edge’s top colour is unlike the corner’s colour beside white'],
  ])('after %s it is %s: %s', (turns, is, words) => {
    expect(isTrue(words, seenAfter(turns))).toBe(is);
  });

  it('tells from where on it cannot read', () => {
    expect(isTrue('White on the corner faces up and the edge is green', seenAfter("R U' R'"))).toEqual({
      unread: 'the edge is green',
    });
    expect(isTrue('The edge is bad.', seenAfter("R U' R'"))).toEqual({ unread: '.' });
    // White is no colour of the cross here.
    expect(isTrue('White on the corner faces up', { ...seenAfter("R U' R'"), cross: 'red' })).toBe(false);
  });

  it('are what rules mean by them, wherever the words have a meaning: every word, in every family', () => {
    const r = randomFrom(1_312);
    let compared = 0;
    for (const family of FAMILIES) {
      const lesson = { step: USUAL_STEP, families: [family], language: 'en' as const, clubWords: {} };
      const words = wordsOfLesson(lesson);
      const all = pairRuleWorld.sightings([family]);
      const some = Array.from({ length: 6 }, () => r.pick(all)).map((sighting) => {
        const setup = writeTurns(pairRuleWorld.setUp(sighting, []));
        return { sighting, seen: seenAfter(setup, sighting.side as Slot) };
      });
      for (const condition of simpleConditions(pairRuleWorld)) {
        const { feature, values } = condition;
        const text = statementText(condition, lesson, words);
        // A statement of all values says nothing.
        if (values.length < pairRuleWorld.features[feature]!.values.length)
          expect(conditionSaid(text, lesson)).toEqual(condition);
        const printed = text.replaceAll('{cross}', 'white');
        for (const { sighting, seen } of some.filter(({ sighting: s }) => s.features[feature] !== undefined)) {
          const { address, side } = sighting;
          const read = isTrue(printed, seen);
          expect([address, side, printed, read]).toEqual([address, side, printed, meets(sighting, condition)]);
          compared++;
        }
      }
    }
    expect(compared).toBeGreaterThan(2_000);
  });
});

describe('a question which rule is so', () => {
  const claim = {
    id: 'K4T.3',
    kind: 'choice' as const,
    asks: 'rule' as const,
    setup: "R U' R'",
    cross: 'white',
    pair: 'FR' as const,
    options: ['White on the corner faces up', 'The edge is good'],
    letters: ['K', 'T'],
    answer: 'T',
  };
  it.each([
    ['all is well', {}, []],
    ['another answer is right', { answer: 'K' }, ["answer: the claim says 'K', it is 'T'"]],
    [
      'two are so',
      { options: ['The corner is on top', 'The edge is good'] },
      ['options K and T are both true as they are printed'],
    ],
    ['none is', { options: ['The edge is bad', 'The corner is behind'] }, ["answer: the claim says 'T', it is 'none'"]],
    ['the cube is turned', { setup: "R U' R' y" }, ['set-up ends in another hold']],
    ['the set-up is no turns', { setup: 'R U! R' }, ["set-up cannot be read at character 4: '!' is no turn"]],
    ['words are unknown', { options: ['It is nice', 'The edge is good'] }, ["option K: 'it is nice' cannot be read"]],
    [
      'a club has words of its own',
      {
        options: ['White on the edge faces up', 'The side is good'],
        words: { edge: 'side', corner: 'edge' },
      },
      [],
    ],
  ])('where %s', (_, changed, faults) => {
    expect(ruleChoiceFaults({ ...claim, ...changed })).toEqual(faults);
  });
});

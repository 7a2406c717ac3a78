/** What marked sentences say: counts, counter-examples, and the samples' facts again by brute force on the second checker's stickers. */
import { describe, expect, it } from 'vitest';
import { isTrue, seenOf } from '../../src/audit/printed-rules.ts';
import { turnsOrFaults } from '../../src/audit/reprove.ts';
import { afterTurns, againstCentres } from '../../src/audit/stickers.ts';
import { writeTurns } from '../../src/cube/turns.ts';
import type { FactClaim } from '../../src/lesson/claim.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import { statementText, wordsOfLesson } from '../../src/lesson/rule-words.ts';
import { readCondition } from '../../src/rules/conditions.ts';
import { type Condition, fits } from '../../src/rules/rules.ts';
import { pairRuleWorld } from '../../src/steps/pair/rule-world.ts';
import type { Slot } from '../../src/steps/pair/slots.ts';
import { randomFrom } from '../random.ts';
import { loadedSample, SAMPLES, sampleText } from '../samples.ts';
import { type NaiveAdvice, naiveLengths } from '../steps/pair/naive-advice.ts';
import { bytesOf, withFacts } from './small-lesson.ts';

const conditionsOf = (texts: readonly string[] = []): Condition[] =>
  texts.map((text) => {
    const [, feature, values] = /^(.*?): (.*)$/.exec(text)!;
    return readCondition(pairRuleWorld, feature!, values!) as Condition;
  });
const stateAfter = (setup: string) => againstCentres(afterTurns(turnsOrFaults('set-up', setup).turns));

const loaded = (text: string) => loadLesson('a.yaml', bytesOf(text));

describe('facts of the samples', () => {
  const r = randomFrom(1_311);
  const all = SAMPLES.flatMap((name) => {
    const { lesson } = loadedSample(name).proved!;
    return loadedSample(name).factClaims.map((claim) => [claim.id, name, claim, lesson] as const);
  });

  it('are there in every sample, each said by a sentence', () => {
    expect(new Set(all.map(([, name]) => name))).toEqual(new Set(SAMPLES));
    for (const [, , { says }] of all) expect(says.length).toBeGreaterThan(0);
  });

  it.each(all.filter(([, , { in: share }]) => share === 'all' || share === 'none'))(
    '%s of %s is so by brute force, where it is tried',
    (_, __, claim, lesson) => {
      const when = conditionsOf(claim.see);
      const sightings = pairRuleWorld.sightings(claim.families).filter((s) => fits(s, when));
      expect(sightings.length).toBe(claim.sightings);
      for (let i = 0; i < 3; i++) {
        const sighting = r.pick(sightings);
        const turned = claim.most === undefined ? undefined : r.pick([1, 3] as const);
        const at = turned && claim.is ? pairRuleWorld.turned(sighting, turned) : sighting;
        const state = stateAfter(writeTurns(pairRuleWorld.setUp(at, [])));
        const seen = at.side as Slot;
        const isSo = claim.is
          ? conditionsOf(claim.is).every((condition) => {
              const words = statementText(condition, lesson, wordsOfLesson(lesson)).replaceAll('{cross}', 'white');
              return isTrue(words, seenOf(state, seen, 'white')) === true;
            })
          : naiveLengths(state, seen, claim as unknown as NaiveAdvice) !== undefined;
        expect([at.address, seen, isSo]).toEqual([at.address, seen, claim.in === 'all']);
      }
    },
  );

  it('are the same for the left hand, mirrored', () => {
    const { factClaims } = loadedSample('edge-away').again({ hand: 'left' });
    const count = ({ id, sightings, holds }: FactClaim) => [id, sightings, holds];
    expect(factClaims.map(count)).toEqual(loadedSample('edge-away').factClaims.map(count));
  });
});

describe('a sentence that is not so', () => {
  const UNLIKE = ['  unlike:', '    see: { edge front and corner top: unlike }', '    with: R or L', '    aim: split'];

  it('is told where it stands, with a case that shows it: the one that edge-away.yaml once had wrong', () => {
    const text = withFacts('Look. [If they are unlike, there is a split.](unlike)', ...UNLIKE);
    const { problems, proved } = loaded(text);
    expect(proved).toBeUndefined();
    const [problem] = problems.filter(({ code }) => code === 'fact-false');
    expect(text.slice(problem!.span.start, problem!.span.end)).toBe('If they are unlike, there is a split.');
    // With the cross colour up the corner's top colour is unlike any of the edge's; where the two match, they come out joined.
    expect(problem!.message).toMatch(/^this is so in (\d+) of the 192 sightings that the fact "unlike" speaks of/);
    const [, setup, slot] = /^set up (.+) \(pair of slot (..)\): there it is not so$/.exec(problem!.hint)!;
    const state = stateAfter(setup!);
    expect(isTrue('White on the corner faces up', seenOf(state, slot as Slot, 'white'))).toBe(true);
    expect(naiveLengths(state, slot as Slot, { aim: 'split', lift: ['R', 'L'], most: 30 })).toBeUndefined();
  });

  it.each([
    ['none', 'never', /it says none$/, /there it is so$/],
    ['half', 'half', /it says half of them$/, /there it is not so$/],
    ['all', 'always', /it says all$/, /there it is not so$/],
  ])('is told of %s too', (share, word, message, hint) => {
    const { problems } = loaded(withFacts(`[It is ${word} so.](unlike)`, ...UNLIKE, `    in: ${share}`));
    expect(problems.find(({ code }) => code === 'fact-false')).toMatchObject({
      message: expect.stringMatching(message),
      hint: expect.stringMatching(hint),
    });
  });

  it('may be so in some', () => {
    const some = loaded(withFacts('[Some are.](unlike)', ...UNLIKE, '    in: some'));
    expect(some.problems.filter(({ code }) => code.startsWith('fact'))).toEqual([]);
    const sideways = [...UNLIKE, '    in: some'];
    sideways[1] = '    see: { cross colour: sideways, edge front and corner top: unlike }';
    const all = loaded(withFacts('[Some are.](unlike)', ...sideways));
    expect(all.problems.find(({ code }) => code === 'fact-false')!.message).toMatch(/96 of the 96.*some and not all$/);
  });
});

describe('a sentence that says a fact', () => {
  it('is printed, and makes the edition, like any other', () => {
    const FACT = ['  up:', '    see: { cross colour: up }', '    is: { edge front and corner top: unlike }'];
    const [plain, marked] = ['It is *unlike*.', '[It is *unlike*.](up)'].map((sentence) =>
      loaded(withFacts(sentence, ...(sentence.startsWith('[') ? FACT : []))),
    );
    expect(marked!.proved!.edition).toBe(plain!.proved!.edition);
    expect(marked!.factClaims).toMatchObject([{ id: 'fact.up', says: ['It is unlike.'], sightings: 96, holds: 96 }]);
  });

  it('is that of the sample: an unlike colour leaves a split only with the cross colour to the side', () => {
    expect(sampleText('edge-away')).toContain('(unlike)');
    const claim = loadedSample('edge-away').factClaims.find(({ id }) => id === 'fact.unlike');
    expect(claim).toMatchObject({ see: ['cross colour: sideways', 'edge front and corner top: unlike'], holds: 96 });
  });
});

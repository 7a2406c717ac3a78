import { describe, expect, it } from 'vitest';
import { compare } from '../../src/audit/compare.ts';
import { COLOURS, coloursHeld, USUAL_SCHEME } from '../../src/cube/colours.ts';
import type { SolutionClaim } from '../../src/lesson/claim.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import { mirroredWords, plainWords } from '../../src/lesson/mirrored-words.ts';
import type { Variation } from '../../src/lesson/vary.ts';
import { printedOnPage } from '../audit/claims.ts';
import { bytesOf, SMALL_LESSON } from './small-lesson.ts';

const load = (variation: Variation, text = SMALL_LESSON) => loadLesson('a.yaml', bytesOf(text), variation);
const faultsOf = (claim: SolutionClaim): string[] => compare(printedOnPage(claim));

/** The phrases of the small lesson's text and first watch, in words. */
function saidIn(variation: Variation, text = SMALL_LESSON): string {
  const { proved } = load(variation, text);
  const { lesson } = proved!;
  return [...lesson.text, ...lesson.parts.flatMap((p) => p.cases.flatMap((c) => c.watch))]
    .flatMap((p) => p.phrases)
    .map((p) =>
      p.kind === 'colour' ? `{${p.colour}}` : p.kind === 'turns' ? p.turns.map((t) => t.text).join(' ') : p.text,
    )
    .join('');
}

describe('a lesson for other students', () => {
  it('is the lesson itself without a variation', () => {
    expect(load({}).proved!.edition).toBe(load({ hand: 'right', wide: 'Rw' }).proved!.edition);
  });

  it('builds for every cross colour and front, all claims proved again', () => {
    for (const cross of COLOURS) {
      for (const front of COLOURS) {
        const { proved, problems, claims } = load({ cross, front });
        const possible = coloursHeld(USUAL_SCHEME, { up: cross, front }) !== undefined;
        expect(proved !== undefined).toBe(possible);
        if (!possible) expect(problems).toMatchObject([{ code: 'variation-impossible' }]);
        for (const claim of claims) {
          expect(claim).toMatchObject({ cross, hold: { front }, verdict: 'solves' });
          expect(faultsOf(claim)).toEqual([]);
        }
      }
    }
  });

  it('changes the colours named in texts with the cube', () => {
    // White down, green in front; held with blue down and red in front, the front is red.
    expect(saidIn({})).toContain("Lift {green} with L' U L");
    expect(saidIn({ cross: 'blue', front: 'red' })).toContain("Lift {red} with L' U L");
  });

  it('mirrors turns, slots, colours and words', () => {
    const text = SMALL_LESSON.replace('A wall behind.', 'On the left, {orange}, not {red}.');
    const { claims } = load({ hand: 'left' }, text);
    expect(claims[0]).toMatchObject({
      setup: "L' U' L R U' R'",
      solution: "R U' R' L' U' L",
      pair: 'FL',
      verdict: 'solves',
    });
    for (const claim of claims) expect(faultsOf(claim)).toEqual([]);
    expect(saidIn({ hand: 'left' }, text)).toContain("Lift {green} with R U' R'");
    // White down, green in front: orange at the right, red at the left.
    expect(saidIn({ hand: 'left' }, text)).toContain('On the right, {red}, not {orange}.');
  });

  it('mirrors a hold of its own to the other side', () => {
    // Orange is at the right of the lesson's hold, so the mirrored case is held with red, at the left, in front.
    const text = SMALL_LESSON.replace('- name: The first', '- hold: { front: orange }');
    expect(load({ hand: 'left' }, text).claims[0]).toMatchObject({ hold: { up: 'yellow', front: 'red' } });
  });

  it('takes the hand from the lesson unless told otherwise', () => {
    const text = `hand: left\n${SMALL_LESSON}`;
    expect(load({}, text).claims[0]).toMatchObject({ pair: 'FL' });
    expect(load({ hand: 'right' }, text).claims[0]).toMatchObject({ pair: 'FR' });
  });

  it('takes cubes of other colours', () => {
    const scheme = { U: 'blue', F: 'orange', R: 'white', D: 'green', B: 'red', L: 'yellow' } as const;
    const { claims } = load({ scheme });
    // The white cross of the usual cube was on its up face, and green in front: blue and orange there now.
    expect(claims[0]).toMatchObject({ cross: 'blue', hold: { up: 'green', front: 'orange' } });
    expect(saidIn({ scheme })).toContain('Lift {orange}');
  });

  it('warns where a colour is a plain word', () => {
    const text = SMALL_LESSON.replace('A wall behind.', 'White looks at you.');
    expect(load({}, text).problems).toEqual([]);
    const { problems, proved } = load({ cross: 'red' }, text);
    expect(problems).toMatchObject([{ code: 'colour-in-words', hint: 'write {White}, which changes with the cube' }]);
    expect(text.slice(problems[0]!.span.start)).toMatch(/^White looks/);
    expect(proved).toBeDefined();
  });
});

describe('words in a mirror', () => {
  it.each([
    ['the front left slot', 'the front right slot'],
    ['Right hand, left face.', 'Left hand, right face.'],
    ['lift with R or L', 'lift with L or R'],
    ['right away, and that is right', 'right away, and that is right'],
    ['all right, turned right', 'all right, turned right'],
    ['the slot is right behind', 'the slot is right behind'],
    ['it is on the right', 'it is on the left'],
    ['a \\right answer', 'a right answer'],
    ['bright Rush, leftover', 'bright Rush, leftover'],
  ])('%s', (text, mirrored) => {
    expect(mirroredWords(text)).toBe(mirrored);
  });

  it('twice is once more the same', () => {
    const text = 'Left R right L, a left four';
    expect(mirroredWords(mirroredWords(text))).toBe(text);
  });

  it('prints a word kept from the mirror without its mark', () => {
    expect(plainWords('a \\right answer')).toBe('a right answer');
  });
});

/**
 * What keys recommend, over everything that the sample lessons can ask: as a teacher would show it (common practice, no
 * source), done on the second checker's stickers where it can be wrong.
 */
import { describe, expect, it } from 'vitest';
import { heldForHands } from '../../src/cube/search/hands.ts';
import { lengthOf, type Turn, writeTurns } from '../../src/cube/turns.ts';
import { byTheRules } from '../../src/lesson/complete.ts';
import { ruleAt } from '../../src/lesson/prove-rules.ts';
import { kindNamed } from '../../src/practice/kinds/kinds.ts';
import { materialOf, shortestFor } from '../../src/practice/material.ts';
import { randomFor } from '../../src/practice/random.ts';
import { readAddress } from '../../src/steps/pair/address.ts';
import { familyOf } from '../../src/steps/pair/cases.ts';
import { stepOf } from '../../src/steps/steps.ts';
import type { Subject } from '../../src/steps/subject.ts';
import { provedSample, SAMPLES } from '../samples.ts';

const MODEL = provedSample(SAMPLES[0]!).lesson.hands;
const LEADING = { hand: 'right', model: MODEL } as const;
const materials = SAMPLES.map((name) => ({ name, material: materialOf(provedSample(name), LEADING) }));

const turnsBack = (turns: readonly Turn[]): boolean => /B/.test(writeTurns(turns));

/** A solution of up to a turn more that has no turn of B from any side. */
const wayWithoutBack = (subject: Subject): readonly Turn[] | undefined =>
  stepOf(subject)
    .solutions(subject, 1)
    .solutions.map(({ turns }) => heldForHands(turns).turns)
    .find((turns) => !turnsBack(turns));

describe.each(materials)('what keys recommend for $name', ({ name, material }) => {
  const keys = material.taught.map(({ subject, recommended }) => ({
    subject,
    recommended,
    shortest: shortestFor(subject, LEADING),
  }));

  it('leaves the cross at the bottom, and turns B in one of twenty at most, where nothing else will do', () => {
    const behind = keys.filter(({ recommended, shortest }) => turnsBack(recommended) || turnsBack(shortest));
    expect(behind.length).toBeLessThanOrEqual(keys.length / 20);
    for (const { subject, recommended, shortest } of keys) {
      for (const turns of [recommended, shortest]) expect(writeTurns(turns)).not.toMatch(/[xzwMES]/);
      if (turnsBack(recommended)) expect(wayWithoutBack(subject), subject.address).toBeUndefined();
    }
  });

  it('follows the rules of the lesson where they reach', () => {
    const { rules } = provedSample(name);
    let followed = 0;
    for (const { subject, recommended } of keys) {
      const turns = rules && byTheRules(subject, material.lesson);
      if (!turns || writeTurns(turns) !== writeTurns(recommended)) continue;
      // Turned first, it is another case that the rules speak of.
      const [first] = turns;
      const seen = first?.kind === 'rotation' ? stepOf(subject).turned(subject, first.quarters) : subject;
      const { aim } = ruleAt(rules, seen)!.claim as { aim?: string };
      if (!aim || aim.startsWith('insert')) continue;
      const { phases } = stepOf(subject).phases!.of(subject, recommended, material.lesson.triggers);
      const passes = phases.some(({ stands, address }) => stands === aim || familyOf(readAddress(address)!) === aim);
      expect(passes, `${subject.address} ${writeTurns(turns)}`).toBe(true);
      followed++;
    }
    if (rules) expect(followed).toBeGreaterThan(keys.length / 8);
  });

  it('stands beside set-ups to choose among that are made of turns which students meet', () => {
    const { candidates, make } = kindNamed('picture');
    const all = candidates(material);
    const taught = new Set(material.taught.flatMap(({ recommended }) => recommended.map(({ letter }) => letter)));
    let made = 0;
    for (let i = 0; i < all.length; i += 12) {
      const exercise = make(all[i]!, material, randomFor(i));
      if (exercise?.form !== 'choice') continue;
      made++;
      for (const option of exercise.options) {
        const letters = option.says === 'turns' ? option.turns.map(({ letter }) => letter) : [];
        expect(letters.filter((letter) => 'BD'.includes(letter) && !taught.has(letter))).toEqual([]);
      }
    }
    expect(made).toBeGreaterThan(all.length / 24);
  });

  it('is no longer than the set-up taken back', () => {
    const { candidates, make, unsound } = kindNamed('solve');
    const all = candidates(material);
    let made = 0;
    for (let i = 0; i < all.length; i += 8) {
      const exercise = make(all[i]!, material, randomFor(i))!;
      if (exercise.form !== 'solve' || unsound(exercise) !== undefined) continue;
      expect(exercise.setup.length).toBeGreaterThanOrEqual(lengthOf(exercise.recommended));
      made++;
    }
    expect(made).toBeGreaterThan(all.length / 10);
  });
});

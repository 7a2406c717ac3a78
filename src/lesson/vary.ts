/**
 * A lesson for other students: with another cross colour or hold, on cubes of another scheme, or mirrored for those who
 * lead with the left hand. Turns, slots, holds, colours and words change alike; the result is proved like any lesson.
 */
import { type Colour, coloursHeld, type FaceColours, type Hold, oppositeColour } from '../cube/colours.ts';
import { FACES, type Face, MIRRORED_FACE } from '../cube/faces.ts';
import { mirror, type WideSpelling } from '../cube/turns.ts';
import { mirroredCondition, mirroredRule } from '../rules/conditions.ts';
import type { Step } from '../steps/step.ts';
import type { LeadingHand } from './leading-hand.ts';
import {
  type CaseRead,
  type Lesson,
  type LessonClaim,
  type LessonFact,
  type LessonRule,
  type Part,
  type Phrase,
  type Prose,
  type Solution,
  type TextLine,
  textsOf,
} from './lesson.ts';
import { mirroredWords } from './mirrored-words.ts';
import type { PracticeRequest } from './practice.ts';
import type { Problem } from './problem.ts';

/** How a lesson is to be printed otherwise than it is written. */
export interface Variation {
  readonly cross?: Colour;
  readonly front?: Colour;
  readonly scheme?: FaceColours;
  readonly hand?: LeadingHand;
  readonly wide?: WideSpelling;
}

/**
 * What files for other students are called after the lesson's name, by what is other, so that they stand beside those for
 * all: `-yellow-down-left`; nothing for a lesson as it is written.
 */
export function editionSuffix({ cross, front, scheme, hand, wide }: Variation): string {
  const cubes = scheme && `cube-${FACES.map((face) => scheme[face][0]).join('')}`;
  const others = [cross && `${cross}-down`, front && `${front}-front`, cubes, hand, wide && `wide-${wide}`];
  return others.flatMap((other) => (other === undefined ? [] : [`-${other}`])).join('');
}

const OTHER_HAND = { right: 'left', left: 'right' } as const;
const SAME_FACE = Object.fromEntries(FACES.map((f) => [f, f])) as Record<Face, Face>;

/** How one context (the lesson, a case with a hold of its own) changes. */
interface Change {
  readonly from: FaceColours;
  readonly to: FaceColours;
  readonly mirrored: boolean;
}

const faceOf = (colours: FaceColours, colour: Colour): Face => FACES.find((f) => colours[f] === colour)!;

const changedColour = ({ from, to, mirrored }: Change, colour: Colour): Colour =>
  to[(mirrored ? MIRRORED_FACE : SAME_FACE)[faceOf(from, colour)]];

function changedPhrase(change: Change, phrase: Phrase): Phrase {
  switch (phrase.kind) {
    case 'colour':
      return { ...phrase, colour: changedColour(change, phrase.colour) };
    case 'turns':
      return change.mirrored ? { ...phrase, turns: mirror(phrase.turns) } : phrase;
    default:
      return change.mirrored ? { ...phrase, text: mirroredWords(phrase.text) } : phrase;
  }
}

const changedPhrases = <T extends { readonly phrases: readonly Phrase[] }>(change: Change, line: T): T => ({
  ...line,
  phrases: line.phrases.map((phrase) => changedPhrase(change, phrase)),
});

const changedLine = (change: Change, line: TextLine | undefined): TextLine | undefined =>
  line && changedPhrases(change, line);

const changedProse = (change: Change, prose: Prose): Prose => prose.map((p) => changedPhrases(change, p));

/** What is the same for all cases of a lesson. */
interface Varying {
  /** As it becomes. */
  readonly scheme: FaceColours;
  readonly step: Step;
}

function changedSolution(change: Change, solution: Solution): Solution {
  const turns = change.mirrored ? mirror(solution.turns) : solution.turns;
  return { ...solution, turns, remark: changedProse(change, solution.remark) };
}

function changedCase(lesson: Change, { scheme, step }: Varying, c: CaseRead): CaseRead {
  const hold: Hold = { up: changedColour(lesson, c.hold.up), front: changedColour(lesson, c.hold.front) };
  const colours = coloursHeld(scheme, hold)!;
  const change: Change = { from: c.colours, to: colours, mirrored: lesson.mirrored };
  return {
    ...c,
    hold,
    colours,
    name: changedLine(change, c.name),
    where: change.mirrored ? step.lesson.mirroredWhere(c.where) : c.where,
    from: change.mirrored && 'setup' in c.from ? { setup: mirror(c.from.setup) } : c.from,
    solutions: c.solutions.map((s) => changedSolution(change, s)),
    watch: changedProse(change, c.watch),
  };
}

const changedPart = (change: Change, varying: Varying, part: Part): Part => ({
  ...part,
  heading: changedLine(change, part.heading),
  text: changedProse(change, part.text),
  cases: part.cases.map((c) => changedCase(change, varying, c)),
});

const changedClaim = ({ mirrored }: Change, { lesson }: Step, claim: LessonClaim): LessonClaim =>
  mirrored && claim.claim === 'own' ? { ...claim, promise: lesson.mirroredPromise(claim.promise) } : claim;

const changedRule = (change: Change, { rules }: Step, { rule, say, ...rest }: LessonRule): LessonRule => ({
  ...rest,
  rule: change.mirrored && rules ? mirroredRule(rules, rule) : rule,
  say: changedProse(change, say),
});

function changedFact({ mirrored }: Change, { rules }: Step, fact: LessonFact): LessonFact {
  if (!mirrored || !rules) return fact;
  const { when, counsel, is } = fact;
  return {
    ...fact,
    when: when.map((condition) => mirroredCondition(rules, condition)),
    counsel: counsel && mirroredRule(rules, { when: [], counsel }).counsel,
    is: is.map((condition) => mirroredCondition(rules, condition)),
  };
}

const changedPractice = (
  change: Change,
  { practice: asked, rules }: Step,
  practice: PracticeRequest,
): PracticeRequest => ({
  ...practice,
  only: {
    ...practice.only,
    own: change.mirrored ? asked.mirroredFilter(practice.only.own) : practice.only.own,
    see: change.mirrored && rules ? practice.only.see.map((c) => mirroredCondition(rules, c)) : practice.only.see,
    hand: change.mirrored ? practice.only.hand && OTHER_HAND[practice.only.hand] : practice.only.hand,
  },
});

/** Where a text names a colour as a plain word, which stays when the colours change. */
function colourWords(lesson: Lesson, change: Change): Problem[] {
  if (FACES.every((f) => change.from[f] === change.to[f])) return [];
  const names = Object.values(lesson.scheme).join('|');
  const said = new RegExp(`\\b(?:${names})\\b`, 'i');
  return textsOf(lesson).flatMap(({ phrases, span }) => {
    const words = phrases.map((p) => ('text' in p ? said.exec(p.text)?.[0] : undefined));
    const word = words.find((w) => w !== undefined);
    if (word === undefined) return [];
    const message = `"${word}" is a plain word: it stays as it is when the lesson is built for other colours`;
    return [{ code: 'colour-in-words' as const, span, message, hint: `write {${word}}, which changes with the cube` }];
  });
}

/**
 * The lesson as it is for a variation; its own `hand` and `wide` hold unless the variation says otherwise. If the hold asked
 * for is impossible: why, in words.
 */
export function vary(
  lesson: Lesson,
  variation: Variation,
): { lesson: Lesson; problems: Problem[] } | { impossible: string } {
  const scheme = variation.scheme ?? lesson.scheme;
  const fixed = (colour: Colour): Colour => scheme[faceOf(lesson.scheme, colour)];
  const cross = variation.cross ?? fixed(lesson.colours.D);
  const fronts = FACES.map((f) => scheme[f]).filter((c) => c !== cross && c !== oppositeColour(scheme, cross));
  const kept = fixed(lesson.hold.front);
  // With another cross colour the front of old may be impossible: then the first that is not.
  const front = variation.front ?? (fronts.includes(kept) ? kept : fronts[0]!);
  const hold: Hold = { up: oppositeColour(scheme, cross), front };
  const colours = coloursHeld(scheme, hold);
  if (!colours) return { impossible: `with ${cross} down the front is ${fronts.join(', ')}, not ${front}` };
  const mirrored = (variation.hand ?? lesson.hand) === 'left';
  const change: Change = { from: lesson.colours, to: colours, mirrored };
  const varied: Lesson = {
    ...lesson,
    scheme,
    hold,
    colours,
    // Whoever makes more of it has to know whose hand it is for.
    hand: mirrored ? 'left' : 'right',
    wide: variation.wide ?? lesson.wide,
    title: changedLine(change, lesson.title),
    course: changedLine(change, lesson.course),
    audience: changedLine(change, lesson.audience),
    rules: lesson.rules.map((rule) => changedRule(change, lesson.step, rule)),
    facts: lesson.facts.map((fact) => changedFact(change, lesson.step, fact)),
    text: changedProse(change, lesson.text),
    watch: changedProse(change, lesson.watch),
    claims: lesson.claims.map((claim) => changedClaim(change, lesson.step, claim)),
    parts: lesson.parts.map((part) => changedPart(change, { scheme, step: lesson.step }, part)),
    practice: lesson.practice && changedPractice(change, lesson.step, lesson.practice),
  };
  return { lesson: varied, problems: colourWords(lesson, change) };
}

/** The facts that sentences of a lesson say, proved on every sighting of its families that they speak of. */
import { writeTurns } from '../cube/turns.ts';
import { writeCondition } from '../rules/conditions.ts';
import { fits, turnsTheCube } from '../rules/rules.ts';
import type { RuleWorld, Sighting } from '../rules/world.ts';
import type { FactClaim } from './claim.ts';
import { type FactMark, type FactShare, type Lesson, type LessonFact, type Phrase, textsOf } from './lesson.ts';
import type { Problem } from './problem.ts';
import { positionAt } from './source.ts';

/** The id of a fact's claim: `fact.unlike`. */
export const factId = (name: string): string => `fact.${name}`;

/** A sentence as it is printed, and where it stands. */
interface Sentence {
  readonly mark: FactMark;
  readonly text: string;
}

const wordOf = (phrase: Phrase): string => {
  if (phrase.kind === 'turns') return writeTurns(phrase.turns);
  return phrase.kind === 'colour' ? phrase.colour : phrase.text;
};

/** Every marked sentence, in the order of the texts. */
function sentencesOf(lesson: Lesson): Sentence[] {
  const found = new Map<FactMark, string>();
  for (const phrase of textsOf(lesson).flatMap(({ phrases }) => phrases)) {
    if (phrase.says) found.set(phrase.says, (found.get(phrase.says) ?? '') + wordOf(phrase));
  }
  return [...found].map(([mark, text]) => ({ mark, text }));
}

/** Whether it is so: what is done works, or what is seen then is seen; after a turn of the cube from either side. */
function isSo(world: RuleWorld, { counsel, is }: LessonFact, sighting: Sighting): boolean {
  if (!counsel) return fits(sighting, is);
  if (turnsTheCube(counsel)) return ([1, 3] as const).every((quarters) => fits(world.turned(sighting, quarters), is));
  return world.tries(sighting, counsel).followed !== undefined;
}

/** Whether so many of all are the share. */
const SHARES: Readonly<Record<FactShare, (holds: number, all: number) => boolean>> = {
  all: (holds, all) => holds === all,
  none: (holds) => holds === 0,
  half: (holds, all) => 2 * holds === all,
  some: (holds, all) => holds > 0 && holds < all,
};
const SHARE_SAID: Readonly<Record<FactShare, string>> = {
  all: 'all',
  none: 'none',
  half: 'half of them',
  some: 'some and not all',
};

interface Counted {
  readonly sightings: readonly Sighting[];
  readonly holding: readonly Sighting[];
}

function countedOf(lesson: Lesson, fact: LessonFact): Counted {
  const world = lesson.step.rules!;
  const sightings = world.sightings(lesson.families).filter((s) => fits(s, fact.when));
  return { sightings, holding: sightings.filter((s) => isSo(world, fact, s)) };
}

/** What is wrong with it, at the first sentence that says it. */
function problemOf(lesson: Lesson, fact: LessonFact, said: Sentence | undefined, counted: Counted): Problem[] {
  const { name, share, span: own } = fact;
  const world = lesson.step.rules!;
  if (!said) {
    const message = `no sentence says the fact "${name}"`;
    const hint = `mark the one that does: [It is so.](${name})`;
    return [{ code: 'fact-unsaid', span: own, message, hint }];
  }
  const { span } = said.mark;
  const [{ length: all }, { length: holds }] = [counted.sightings, counted.holding];
  if (all === 0) {
    const message = `the fact "${name}" speaks of no case of the families`;
    return [{ code: 'fact-false', span, message, hint: 'mend what it sees' }];
  }
  if (SHARES[share](holds, all)) return [];
  const message = `this is so in ${holds} of the ${all} sightings that the fact "${name}" speaks of, and it says ${SHARE_SAID[share]}`;
  const against = counted.sightings.find((s) => counted.holding.includes(s) === (share === 'none'));
  const setup = against && writeTurns(world.setUp(against, []));
  const hint = against
    ? `set up ${setup} (${world.seenSaid(against)}): there it is ${share === 'none' ? '' : 'not '}so`
    : 'say all, or speak of fewer cases';
  return [{ code: 'fact-false', span, message, hint }];
}

function claimOf(lesson: Lesson, fact: LessonFact, sentences: readonly Sentence[], counted: Counted): FactClaim {
  const { name, when, counsel, is, share, span } = fact;
  const part = lesson.step.rules!;
  const written = (conditions: LessonFact['when']): string[] => conditions.map((c) => writeCondition(part, c));
  return {
    id: factId(name),
    kind: 'fact',
    file: lesson.source.file,
    line: positionAt(lesson.source, span.start).line,
    step: lesson.step.name,
    families: lesson.families,
    says: sentences.filter(({ mark }) => mark.names.includes(name)).map(({ text }) => text),
    see: written(when),
    ...(counsel && { ...part.claim(turnsTheCube(counsel) ? undefined : counsel), most: counsel.most }),
    ...(is.length > 0 && { is: written(is) }),
    in: share,
    sightings: counted.sightings.length,
    holds: counted.holding.length,
  };
}

/** Claims of all facts, and what there is to tell. `isWhole`: all of the lesson could be read. */
export function proveFacts(
  lesson: Lesson,
  isWhole: boolean,
): { readonly claims: readonly FactClaim[]; readonly problems: readonly Problem[] } {
  const sentences = sentencesOf(lesson);
  if (lesson.facts.length === 0) return { claims: [], problems: [] };
  if (lesson.families.length === 0) {
    if (!isWhole) return { claims: [], problems: [] };
    const message = 'facts speak of families of cases, and the lesson names none';
    const hint = `add family: ${lesson.step.lesson.about.family[1]}, or whichever they are of`;
    return { claims: [], problems: [{ code: 'rule-without-family', span: lesson.facts[0]!.span, message, hint }] };
  }
  const problems: Problem[] = [];
  const claims = lesson.facts.map((fact) => {
    const counted = countedOf(lesson, fact);
    const said = sentences.filter(({ mark }) => mark.names.includes(fact.name));
    if (isWhole || said.length > 0) problems.push(...problemOf(lesson, fact, said[0], counted));
    return claimOf(lesson, fact, sentences, counted);
  });
  return { claims, problems };
}

/** Reading the facts of a lesson: what sentences of its texts say of the cases. */
import type { TriggerList } from '../cube/triggers.ts';
import { likelyWord, listed } from '../text/likely.ts';
import { formatProblems, tablesOf } from './format-problems.ts';
import { type Lesson, type LessonFact, textsOf } from './lesson.ts';
import type { Problem } from './problem.ts';
import { conditionsAt, counselAt, ownOf, type RuleReading } from './read-rules.ts';
import { type Reader, tell } from './reader.ts';
import { type Path, spanAt } from './yaml-text.ts';

/** The most turns that a rule or a fact may allow (schema.ts). */
const MOST_TURNS = 30;

function factAt(r: Reader, name: string, one: unknown, reading: RuleReading): LessonFact | undefined {
  const path: Path = ['facts', name];
  const parsed = r.format.fact!.safeParse(one);
  if (!parsed.success) {
    r.problems.push(...formatProblems(r.yaml, parsed.error, path, tablesOf(r.format)));
    return undefined;
  }
  const { see, turn, most = MOST_TURNS, is: seen, in: share = 'all' } = parsed.data;
  const own = ownOf(parsed.data, reading);
  const isDone = turn !== undefined || Object.values(own).some((value) => value !== undefined);
  const unclear = (message: string, hint: string) => tell(r, path, { code: 'rule-unclear', message, hint });
  if (!isDone && !seen) return unclear('this fact says nothing', 'add an aim, or "is": what is seen');
  if (turn && !seen) return unclear('nothing is said of what is seen once the cube is turned', 'add "is"');
  if (isDone && !turn && seen) {
    return unclear(
      'what is seen after a lift cannot be proved',
      'leave "is" out, or what is done; an aim says what stands',
    );
  }
  const when = conditionsAt(r, [...path, 'see'], see);
  const is = conditionsAt(r, [...path, 'is'], seen);
  const counsel = isDone ? counselAt(r, path, { ...parsed.data, most }, reading) : undefined;
  if (!when || !is || (isDone && !counsel)) return undefined;
  return { name, when, counsel, is, share, span: spanAt(r.yaml, path) };
}

/** Marks on sentences that name no fact of the lesson; `names`: of all that it has, those that could not be read too. */
export function unknownFacts(lesson: Lesson, names: readonly string[]): Problem[] {
  const marks = new Set(textsOf(lesson).flatMap(({ phrases }) => phrases.flatMap(({ says }) => says ?? [])));
  return [...marks].flatMap(({ names: said, span }) =>
    said
      .filter((name) => !names.includes(name))
      .map((name) => {
        const likely = likelyWord(name, names);
        const known = names.length > 0 ? `the facts are ${listed(names)}` : 'add it under the key "facts"';
        const hint = likely ? `"${likely}" was likely meant` : known;
        return { code: 'fact-unknown', span, message: `"${name}" is no fact of this lesson`, hint };
      }),
  );
}

/** In the order of the file; those that could not be understood are told and left out. */
export function factsAt(r: Reader, written: Readonly<Record<string, unknown>>, triggers: TriggerList): LessonFact[] {
  const { rules } = r.format.step;
  if (!rules) return [];
  return Object.entries(written)
    .map(([name, one]) => factAt(r, name, one, { rules, triggers }))
    .filter((fact) => fact !== undefined);
}

/** What papers of one variation of a lesson are made from: candidates by kind, shelves for a level, exercises made so far. */
import type { ExerciseKind, Level, PracticeRequest } from '../lesson/practice.ts';
import type { Span } from '../lesson/problem.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import type { Candidate } from './kinds/kind.ts';
import { kindNamed } from './kinds/kinds.ts';
import { type Material, materialOf } from './material.ts';
import { randomFor } from './random.ts';
import { distancesOf, type Shelf, shelvesOf } from './selection.ts';
import { ProvedExercise } from './soundness.ts';

/** A line of the lesson and the shelves for what it asks. */
export interface Group {
  readonly kind: ExerciseKind;
  readonly span: Span;
  readonly candidates: readonly Candidate[];
  readonly shelves: readonly Shelf[];
}

/** The stuff of one variation of a lesson, with what was worked out for earlier papers. */
export interface Stock {
  readonly material: Material;
  readonly request: PracticeRequest;
  /** By kind: what there is. */
  readonly candidates: ReadonlyMap<ExerciseKind, readonly Candidate[]>;
  /** For items to solve, one after the other: what an earlier lesson has. */
  readonly returning: readonly (readonly Candidate[])[];
  /** By kind and key; a text says why there is none. */
  readonly made: Map<string, ProvedExercise | string>;
}

/** `earlier`: lessons of the evenings before, the latest first. */
export function stockOf(proved: ProvedLesson, earlier: readonly ProvedLesson[], request: PracticeRequest): Stock {
  const leading = { hand: proved.lesson.hand, model: proved.lesson.hands };
  const material = materialOf(proved, leading);
  const candidates = new Map(request.asked.map(({ kind }) => [kind, kindNamed(kind).candidates(material)]));
  const own = new Set(material.taught.map((one) => one.key));
  const returning = distancesOf(earlier.length).map((distance) =>
    kindNamed('solve')
      .candidates(materialOf(earlier[distance - 1]!, leading))
      .filter((one) => !one.isOpened && !own.has(one.key)),
  );
  return { material, request, candidates, returning: returning.filter((of) => of.length > 0), made: new Map() };
}

/** Made and proved once for all papers; a text says why it is refused. */
export function exerciseOf(kind: ExerciseKind, candidate: Candidate, stock: Stock): ProvedExercise | string {
  const id = `${kind} ${candidate.key}`;
  const known = stock.made.get(id);
  if (known) return known;
  const exercise = kindNamed(kind).make(candidate, stock.material, randomFor(stock.request.seed, id));
  const soundness = exercise ? ProvedExercise.prove(exercise) : { unsound: 'there are no plausible wrong answers' };
  const made = 'sound' in soundness ? soundness.sound : soundness.unsound;
  stock.made.set(id, made);
  return made;
}

/** One item to solve in so many may be of an earlier lesson. */
const MOST_RETURNING = 3;

/** What a paper of this level takes its exercises from, in its order. */
export function groupsOf(stock: Stock, level: Level): Group[] {
  const { request, candidates } = stock;
  return request.asked.flatMap(({ kind, count, span }) => {
    const all = candidates.get(kind)!;
    const back = kind === 'solve' ? stock.returning.slice(0, Math.floor(count / MOST_RETURNING)) : [];
    const open = kind === 'solve' ? Math.min(request.open, count - back.length) : 0;
    const group = (of: readonly Candidate[], n: number): Group[] =>
      n === 0 ? [] : [{ kind, span, candidates: of, shelves: shelvesOf(of, level, n) }];
    return [
      ...group(
        all.filter((one) => !one.isOpened),
        count - open - back.length,
      ),
      ...group(
        all.filter((one) => one.isOpened),
        open,
      ),
      ...back.flatMap((of) => group(of, 1)),
    ];
  });
}

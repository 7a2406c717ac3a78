/** The exercises of one paper: one from each shelf, then single ones changed until the whole is as hard as it should be. */
import { prove } from '../cube/solves.ts';
import type { Turn } from '../cube/turns.ts';
import type { ExerciseKind } from '../lesson/practice.ts';
import type { Problem } from '../lesson/problem.ts';
import { isSameToStudents } from '../steps/subject.ts';
import type { Exercise, SolveExercise } from './exercise.ts';
import type { Candidate } from './kinds/kind.ts';
import type { Random } from './random.ts';
import { middleOf, ranked, type Shelf, type Uses } from './selection.ts';
import type { ProvedExercise } from './soundness.ts';
import { exerciseOf, type Group, type Stock } from './stock.ts';

export interface Chosen {
  readonly group: Group;
  readonly shelf: Shelf;
  candidate: Candidate;
  proved: ProvedExercise;
}

function tooFew({ kind, span, shelves, candidates }: Group, { request }: Stock, reason: string | undefined): Problem {
  const { onlyAt } = request;
  return {
    code: 'practice-too-few',
    span: onlyAt ?? span,
    message:
      `there are not enough different exercises: ${shelves.length} of the kind ${kind} are asked for, ` +
      `${candidates.length} can be made${onlyAt ? ' of what only leaves' : ''}` +
      `${reason ? ` and some are refused (${reason})` : ''}`,
    hint: onlyAt ? 'widen only, or ask for fewer' : 'ask for fewer, or teach more cases',
  };
}

/** What chooses for one paper. */
export interface Choosing {
  readonly stock: Stock;
  readonly uses: { readonly paper: Uses; readonly all: Uses };
  /** By place on the paper, what the paper before has there. */
  readonly before: readonly Candidate[];
  readonly random: Random;
}

/** Exercises that print turns: what brings a case about or solves it in one is seen in another of the same case. */
const WITH_TURNS: ReadonlySet<ExerciseKind> = new Set(['rule', 'picture', 'order', 'slip', 'solve', 'drill']);

const isSameCase = (a: Candidate, b: Candidate): boolean => isSameToStudents(a.subject, b.subject);

type One = Pick<Chosen, 'candidate' | 'proved'> & { readonly group: Pick<Group, 'kind'> };

const areAlike = (a: Pick<One, 'group' | 'candidate'>, b: Pick<One, 'group' | 'candidate'>): boolean =>
  WITH_TURNS.has(a.group.kind) && WITH_TURNS.has(b.group.kind) && isSameCase(a.candidate, b.candidate);

/** Solutions, and parts of some, among the choices. */
const linesOf = (e: Exercise): (readonly Turn[])[] =>
  e.form === 'choice' && (e.kind === 'slip' || e.kind === 'order')
    ? e.options.flatMap((o) => (o.says === 'turns' ? [o.turns] : []))
    : [];

const isAnswered = ({ subject: { cube, goal } }: SolveExercise, by: Exercise): boolean =>
  linesOf(by).some((turns) => prove(cube, turns, goal).verdict === 'solves');

/** Whether one prints what solves the other as it stands. */
const showsAnswer = (a: Exercise, b: Exercise): boolean =>
  (a.form === 'solve' && isAnswered(a, b)) || (b.form === 'solve' && isAnswered(b, a));

/** Whether an exercise may stand beside others of its paper: none is of its case, none shows its answer. */
const isApart = (one: One, others: readonly One[]): boolean =>
  others.every((other) => !showsAnswer(one.proved.exercise, other.proved.exercise));
const isOfNoOther = (one: Pick<One, 'group' | 'candidate'>, others: readonly One[]): boolean =>
  others.every((other) => !areAlike(one, other));

const idOf = (kind: ExerciseKind, { key }: Candidate): string => `${kind} ${key}`;

/** Where a shelf has none that goes with the rest of the paper, so many of the others are tried, the nearest first. */
const NEAREST = 16;

/** One for each shelf; a problem where there are not enough. */
export function chooseAll(groups: readonly Group[], { stock, uses, before, random }: Choosing): Chosen[] | Problem {
  const chosen: Chosen[] = [];
  for (const group of groups) {
    const used = new Set<string>();
    for (const shelf of group.shelves) {
      const neighbour = before[chosen.length];
      const not = new Set([...used, ...(neighbour ? [neighbour.key] : [])]);
      let reason: string | undefined;
      const first = (candidates: readonly Candidate[], isStrict: boolean): Chosen | undefined => {
        for (const candidate of candidates) {
          if (isStrict && neighbour && isSameCase(candidate, neighbour)) continue;
          if (isStrict && !isOfNoOther({ group, candidate }, chosen)) continue;
          const proved = exerciseOf(group.kind, candidate, stock);
          if (typeof proved === 'string') reason = proved;
          else if (!isStrict || isApart({ group, candidate, proved }, chosen))
            return { group, shelf, candidate, proved };
        }
        return undefined;
      };
      const onShelf = ranked(shelf, uses, not, random);
      const one =
        first(onShelf, true) ??
        first(nearest(group.candidates, shelf, not), true) ??
        first(onShelf, false) ??
        first(ranked(group.candidates, uses, not, random), false);
      if (!one) return tooFew(group, stock, reason);
      used.add(one.candidate.key);
      uses.paper.add(one.candidate);
      uses.all.add(one.candidate);
      chosen.push(one);
    }
  }
  return chosen;
}

/** Of all candidates those nearly as hard as a shelf's. */
function nearest(candidates: readonly Candidate[], shelf: Shelf, not: ReadonlySet<string>): Candidate[] {
  const off = ({ difficulty }: Candidate): number => Math.abs(difficulty - middleOf(shelf));
  return candidates
    .filter((one) => !not.has(one.key) && !shelf.includes(one))
    .sort((a, b) => off(a) - off(b) || (a.key < b.key ? -1 : 1))
    .slice(0, NEAREST);
}

/** In points. */
export const total = (chosen: readonly Chosen[]): number =>
  chosen.reduce((sum, { candidate }) => sum + candidate.difficulty, 0);

/** Items that show an answer to another, by their places on the paper. */
export const givenAway = (chosen: readonly Chosen[]): [by: number, of: number][] =>
  chosen.flatMap(({ proved: { exercise: one } }, i) =>
    chosen.slice(i + 1).flatMap(({ proved: { exercise: two } }, n): [number, number][] => {
      if (!showsAnswer(one, two)) return [];
      return one.form === 'solve' ? [[i + n + 1, i]] : [[i, i + n + 1]];
    }),
  );

/** Near enough not to be bettered. */
const isNear = (off: number, target: number): boolean => 100 * Math.abs(off) <= target;
const MOST_SWAPS = 60;

/** Changes single items for others of their shelf, as long as that brings the whole nearer to the target. */
export function balance(chosen: Chosen[], target: number, { stock, before }: Choosing): void {
  for (let swaps = 0; swaps < MOST_SWAPS; swaps++) {
    const off = total(chosen) - target;
    if (isNear(off, target)) return;
    const used = new Set(chosen.map((one) => idOf(one.group.kind, one.candidate)));
    let best: { at: number; candidate: Candidate; proved: ProvedExercise } | undefined;
    let least = Math.abs(off);
    chosen.forEach(({ group, shelf, candidate: old }, at) => {
      const others = chosen.filter((_, i) => i !== at);
      for (const candidate of shelf) {
        const left = Math.abs(off + candidate.difficulty - old.difficulty);
        if (left >= least || used.has(idOf(group.kind, candidate))) continue;
        if (before[at] && isSameCase(before[at], candidate)) continue;
        if (!isOfNoOther({ group, candidate }, others)) continue;
        const proved = exerciseOf(group.kind, candidate, stock);
        if (typeof proved === 'string' || !isApart({ group, candidate, proved }, others)) continue;
        least = left;
        best = { at, candidate, proved };
      }
    });
    if (!best) return;
    Object.assign(chosen[best.at]!, { candidate: best.candidate, proved: best.proved });
  }
}

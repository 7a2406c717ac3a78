/** The exercises of one paper: one from each shelf, then single ones changed until the whole is as hard as it should be. */
import type { ExerciseKind } from '../lesson/practice.ts';
import type { Problem } from '../lesson/problem.ts';
import { areAlike, isSameCase, showsAnswer } from './clash.ts';
import { type Desk, exerciseOf, type Group } from './desk.ts';
import type { Candidate } from './kinds/kind.ts';
import type { Random } from './random.ts';
import { type Coverage, middleOf, ranked, type Shelf } from './selection.ts';
import type { ProvedExercise } from './soundness.ts';

export interface Chosen {
  readonly group: Group;
  readonly shelf: Shelf;
  candidate: Candidate;
  proved: ProvedExercise;
}

function tooFew({ kind, span, shelves, candidates }: Group, { request }: Desk, reason: string | undefined): Problem {
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
  readonly desk: Desk;
  readonly coverage: { readonly paper: Coverage; readonly all: Coverage };
  /** By place on the paper, what the paper before has there. */
  readonly before: readonly Candidate[];
  readonly random: Random;
}

type One = Pick<Chosen, 'candidate' | 'proved'> & { readonly group: Pick<Group, 'kind'> };

const itemOf = ({ group: { kind }, candidate }: Pick<One, 'group' | 'candidate'>) => ({ kind, candidate });

/** Whether an exercise may stand beside others of its paper: none is of its case, none shows its answer. */
const isApart = (one: One, others: readonly One[]): boolean =>
  others.every((other) => !showsAnswer(one.proved.exercise, other.proved.exercise));
const isOfNoOther = (one: Pick<One, 'group' | 'candidate'>, others: readonly One[]): boolean =>
  others.every((other) => !areAlike(itemOf(one), itemOf(other)));

const idOf = (kind: ExerciseKind, { key }: Candidate): string => `${kind} ${key}`;

/** Where a shelf has none that goes with the rest of the paper, so many of the others are tried, the nearest first. */
const NEAREST = 16;

export function chooseAll(groups: readonly Group[], { desk, coverage, before, random }: Choosing): Chosen[] | Problem {
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
          const proved = exerciseOf(group.kind, candidate, desk);
          if (typeof proved === 'string') reason = proved;
          else if (!isStrict || isApart({ group, candidate, proved }, chosen))
            return { group, shelf, candidate, proved };
        }
        return undefined;
      };
      const onShelf = ranked(shelf, coverage, not, random);
      const one =
        first(onShelf, true) ??
        first(nearest(group.candidates, shelf, not), true) ??
        first(onShelf, false) ??
        first(ranked(group.candidates, coverage, not, random), false);
      if (!one) return tooFew(group, desk, reason);
      used.add(one.candidate.key);
      coverage.paper.add(one.candidate);
      coverage.all.add(one.candidate);
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
export function balance(chosen: Chosen[], target: number, { desk, before }: Choosing): void {
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
        const proved = exerciseOf(group.kind, candidate, desk);
        if (typeof proved === 'string' || !isApart({ group, candidate, proved }, others)) continue;
        least = left;
        best = { at, candidate, proved };
      }
    });
    if (!best) return;
    Object.assign(chosen[best.at]!, { candidate: best.candidate, proved: best.proved });
  }
}

/** The exercises of one paper: one from each shelf, then single ones changed until the whole is as hard as it should be. */
import type { ExerciseKind } from '../lesson/practice.ts';
import type { Problem } from '../lesson/problem.ts';
import { type Desk, exerciseOf, type Group } from './desk.ts';
import type { Candidate } from './kinds/kind.ts';
import type { Random } from './random.ts';
import { type Coverage, ranked, type Shelf } from './selection.ts';
import type { ProvedExercise } from './soundness.ts';

export interface Chosen {
  readonly group: Group;
  readonly shelf: Shelf;
  candidate: Candidate;
  proved: ProvedExercise;
}

const tooFew = ({ kind, span, shelves, candidates }: Group, reason: string | undefined): Problem => ({
  code: 'practice-too-few',
  span,
  message:
    `there are not enough different exercises: ${shelves.length} of the kind ${kind} are asked for, ` +
    `${candidates.length} can be made${reason ? ` and some are refused (${reason})` : ''}`,
  hint: 'ask for fewer, or teach more cases',
});

/** What chooses for one paper. */
export interface Choosing {
  readonly desk: Desk;
  readonly coverage: { readonly paper: Coverage; readonly all: Coverage };
  /** By place on the paper, what the paper before has there. */
  readonly before: readonly Candidate[];
  readonly random: Random;
}

const idOf = (kind: ExerciseKind, { key }: Candidate): string => `${kind} ${key}`;

export function chooseAll(groups: readonly Group[], { desk, coverage, before, random }: Choosing): Chosen[] | Problem {
  const chosen: Chosen[] = [];
  for (const group of groups) {
    const used = new Set<string>();
    for (const shelf of group.shelves) {
      const neighbour = before[chosen.length];
      const not = new Set([...used, ...(neighbour ? [neighbour.key] : [])]);
      let reason: string | undefined;
      const first = (candidates: readonly Candidate[]): Chosen | undefined => {
        for (const candidate of ranked(candidates, coverage, not, random)) {
          const proved = exerciseOf(group.kind, candidate, desk);
          if (typeof proved !== 'string') return { group, shelf, candidate, proved };
          reason = proved;
        }
        return undefined;
      };
      const one = first(shelf) ?? first(group.candidates);
      if (!one) return tooFew(group, reason);
      used.add(one.candidate.key);
      coverage.paper.add(one.candidate);
      coverage.all.add(one.candidate);
      chosen.push(one);
    }
  }
  return chosen;
}

/** In points. */
export const total = (chosen: readonly Chosen[]): number =>
  chosen.reduce((sum, { candidate }) => sum + candidate.difficulty, 0);

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
    chosen.forEach(({ group: { kind }, shelf, candidate: old }, at) => {
      for (const candidate of shelf) {
        const left = Math.abs(off + candidate.difficulty - old.difficulty);
        if (left >= least || used.has(idOf(kind, candidate)) || before[at]?.key === candidate.key) continue;
        const proved = exerciseOf(kind, candidate, desk);
        if (typeof proved === 'string') continue;
        least = left;
        best = { at, candidate, proved };
      }
    });
    if (!best) return;
    Object.assign(chosen[best.at]!, { candidate: best.candidate, proved: best.proved });
  }
}

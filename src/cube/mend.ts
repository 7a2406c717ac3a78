/**
 * The smallest slips of a hand: one turn changed, dropped, added, or two neighbours swapped. Tried one after the other,
 * they find what was likely meant; in the order of how likely people make them (common practice, no source).
 */
import type { Cube } from './cube.ts';
import { FACES } from './faces.ts';
import type { Goal } from './goal.ts';
import { solvedWith } from './solved-with.ts';
import { isTurnOfTop, TURNS, type Turn } from './turns.ts';

export type ChangeKind = 'quarters' | 'swapped' | 'top' | 'dropped' | 'added' | 'letter' | 'other';

/** A change of one turn, not yet made: `cut` turns from `at` on give way to those of `put`. */
interface Edit {
  readonly kind: ChangeKind;
  /** Index of the turn in the turns given: the one changed or dropped, the first of two swapped, the one added before. */
  readonly at: number;
  readonly cut: 0 | 1 | 2;
  readonly put: readonly Turn[];
  /** What was there, and what is there now; none where one is dropped or added. */
  readonly was: Turn | undefined;
  readonly now: Turn | undefined;
}

/** One turn changed, and the whole sequence as it then is. */
export interface Change extends Pick<Edit, 'kind' | 'at' | 'was' | 'now'> {
  readonly turns: readonly Turn[];
}

const KIND_ORDER: readonly ChangeKind[] = ['quarters', 'top', 'dropped', 'swapped', 'letter', 'added', 'other'];

/** The likeliest kind first, then from the first turn to the last. */
const byLikelihood = (a: Edit, b: Edit): number =>
  KIND_ORDER.indexOf(a.kind) - KIND_ORDER.indexOf(b.kind) || a.at - b.at;

const isOpposite = (a: Turn, b: Turn): boolean =>
  FACES.indexOf(a.letter as 'U') >> 1 === FACES.indexOf(b.letter as 'U') >> 1;

const made = (turns: readonly Turn[], { kind, at, cut, put, was, now }: Edit): Change => {
  return { kind, at, was, now, turns: [...turns.slice(0, at), ...put, ...turns.slice(at + cut)] };
};

/** What is forgotten: faces and rotations. A wide turn or a slice is not left out without notice. */
const FORGETTABLE: readonly Turn[] = TURNS.filter((t) => t.kind === 'face' || t.kind === 'rotation');

function changesAt(turns: readonly Turn[], at: number): Edit[] {
  const was = turns[at]!;
  const edits: Edit[] = [];
  for (const now of TURNS) {
    if (now === was) continue;
    const sameLetter = now.letter === was.letter && now.kind === was.kind;
    const kind = sameLetter ? 'quarters' : now.kind === was.kind && now.quarters === was.quarters ? 'letter' : 'other';
    edits.push({ kind, at, cut: 1, put: [now], was, now });
  }
  edits.push({ kind: 'dropped', at, cut: 1, put: [], was, now: undefined });
  const next = turns[at + 1];
  if (next && next !== was && !(next.kind === 'face' && was.kind === 'face' && isOpposite(next, was))) {
    edits.push({ kind: 'swapped', at, cut: 2, put: [next, was], was, now: next });
  }
  return edits;
}

/** Beside a turn of the same face another would only change that one's amount. */
function additionsAt(turns: readonly Turn[], at: number, addable: readonly Turn[]): Edit[] {
  const beside = [turns[at - 1], turns[at]];
  const fitting = addable.filter((now) => !beside.some((t) => t?.letter === now.letter && t.kind === now.kind));
  return fitting.map((now): Edit => {
    const atAnEnd = at === 0 || at === turns.length;
    const kind = isTurnOfTop(now) && atAnEnd ? 'top' : 'added';
    return { kind, at, cut: 0, put: [now], was: undefined, now };
  });
}

function editsOf(turns: readonly Turn[], addable: readonly Turn[]): Edit[] {
  const edits = turns.flatMap((_, at) => changesAt(turns, at));
  for (let at = 0; at <= turns.length; at++) edits.push(...additionsAt(turns, at, addable));
  return edits;
}

/** All changes of one turn, the likeliest kind first, then from the first turn to the last. */
export const oneTurnAway = (turns: readonly Turn[]): Change[] =>
  editsOf(turns, FORGETTABLE)
    .sort(byLikelihood)
    .map((edit) => made(turns, edit));

const textOf = (turns: readonly Turn[]): string => turns.map((t) => t.text).join(' ');

/** The changes that a test holds good, likeliest first, each sequence once; at most `most` of them, far-fetched ones only if no other is. */
export function mendsOf(turns: readonly Turn[], isRight: (turns: readonly Turn[]) => boolean, most: number): Change[] {
  const found: Change[] = [];
  const seen = new Set<string>();
  for (const change of oneTurnAway(turns)) {
    const text = textOf(change.turns);
    if (seen.has(text) || (change.kind === 'other' && found.length > 0)) continue;
    seen.add(text);
    if (isRight(change.turns)) found.push(change);
    if (found.length === most) break;
  }
  return found;
}

/** Every change of one turn, any of the 54 added, with which the turns solve; likeliest first, each sequence once. */
export function mendsThatSolve(cube: Cube, turns: readonly Turn[], goal: Goal): Change[] {
  const solves = solvedWith(cube, turns, goal);
  const seen = new Set<string>();
  return editsOf(turns, TURNS)
    .filter(({ at, cut, put }) => solves(at, cut, put))
    .sort(byLikelihood)
    .map((edit) => made(turns, edit))
    .filter((change) => {
      const text = textOf(change.turns);
      return !seen.has(text) && seen.add(text);
    });
}

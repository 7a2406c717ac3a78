/**
 * The smallest slips of a hand: one turn changed, dropped, added, or two neighbours swapped. Tried one after the other,
 * they find what was likely meant; in the order of how likely people make them (common practice, no source).
 */
import { FACES } from '../faces.ts';
import { TURNS, type Turn } from '../turns.ts';

export type ChangeKind = 'quarters' | 'swapped' | 'top' | 'dropped' | 'added' | 'letter' | 'other';

export interface Change {
  readonly kind: ChangeKind;
  /** Index of the turn in the turns given: the one changed or dropped, the first of two swapped, the one added before. */
  readonly at: number;
  readonly turns: readonly Turn[];
  /** What was there, and what is there now; none where one is dropped or added. */
  readonly was: Turn | undefined;
  readonly now: Turn | undefined;
}

const KIND_ORDER: readonly ChangeKind[] = ['quarters', 'top', 'dropped', 'swapped', 'letter', 'added', 'other'];

const isOpposite = (a: Turn, b: Turn): boolean =>
  FACES.indexOf(a.letter as 'U') >> 1 === FACES.indexOf(b.letter as 'U') >> 1;

/** `turns` with `count` turns at `at` replaced. */
const spliced = (turns: readonly Turn[], at: number, count: number, ...now: Turn[]): Turn[] => [
  ...turns.slice(0, at),
  ...now,
  ...turns.slice(at + count),
];

/** What is forgotten: faces and rotations. A wide turn or a slice is not left out without notice. */
const FORGETTABLE: readonly Turn[] = TURNS.filter((t) => t.kind === 'face' || t.kind === 'rotation');

function changesAt(turns: readonly Turn[], at: number): Change[] {
  const was = turns[at]!;
  const changes: Change[] = [];
  for (const now of TURNS) {
    if (now === was) continue;
    const sameLetter = now.letter === was.letter && now.kind === was.kind;
    const kind = sameLetter ? 'quarters' : now.kind === was.kind && now.quarters === was.quarters ? 'letter' : 'other';
    changes.push({ kind, at, was, now, turns: spliced(turns, at, 1, now) });
  }
  changes.push({ kind: 'dropped', at, was, now: undefined, turns: spliced(turns, at, 1) });
  const next = turns[at + 1];
  if (next && next !== was && !(next.kind === 'face' && was.kind === 'face' && isOpposite(next, was))) {
    changes.push({ kind: 'swapped', at, was, now: next, turns: spliced(turns, at, 2, next, was) });
  }
  return changes;
}

/** Beside a turn of the same face another would only change that one's amount. */
function additionsAt(turns: readonly Turn[], at: number): Change[] {
  const beside = [turns[at - 1], turns[at]];
  const fitting = FORGETTABLE.filter((now) => !beside.some((t) => t?.letter === now.letter && t.kind === now.kind));
  return fitting.map((now): Change => {
    const atAnEnd = at === 0 || at === turns.length;
    const kind = now.letter === 'U' && atAnEnd ? 'top' : 'added';
    return { kind, at, was: undefined, now, turns: spliced(turns, at, 0, now) };
  });
}

/** All changes of one turn, the likeliest kind first, then from the first turn to the last. */
export function oneTurnAway(turns: readonly Turn[]): Change[] {
  const changes = turns.flatMap((_, at) => changesAt(turns, at));
  for (let at = 0; at <= turns.length; at++) changes.push(...additionsAt(turns, at));
  return changes.sort((a, b) => KIND_ORDER.indexOf(a.kind) - KIND_ORDER.indexOf(b.kind) || a.at - b.at);
}

/** The changes that a test holds good, likeliest first, each sequence once; at most `most` of them, far-fetched ones only if no other is. */
export function mendsOf(turns: readonly Turn[], isRight: (turns: readonly Turn[]) => boolean, most: number): Change[] {
  const found: Change[] = [];
  const seen = new Set<string>();
  for (const change of oneTurnAway(turns)) {
    const text = change.turns.map((t) => t.text).join(' ');
    if (seen.has(text) || (change.kind === 'other' && found.length > 0)) continue;
    seen.add(text);
    if (isRight(change.turns)) found.push(change);
    if (found.length === most) break;
  }
  return found;
}

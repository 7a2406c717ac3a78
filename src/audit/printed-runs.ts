/** Runs of turns among the texts of a page, as a reader sees them. */
import type { TextItem } from './pdf-text.ts';
import { PLACES } from './places.ts';
import { PRINTED_TURN, readTurns } from './read-turns.ts';

/**
 * turn: stands alone and can belong to a claim's text.
 * blot: shows turns, but not as a claim writes them (`(R`, `U')3`, `RUR'`); it spoils the run that it touches, so that
 *   the turns beside it are not mistaken for a whole sequence.
 * blot-end: the same with punctuation that closes a run, as in a sentence: `R'.`
 * word: anything else: labels, lengths, prose.
 */
type TokenKind = 'turn' | 'blot' | 'blot-end' | 'word';

const PLACE_NAMES: ReadonlySet<string> = new Set(PLACES);

function kindOf(token: string): TokenKind {
  if (PRINTED_TURN.test(token)) return 'turn';
  const core = token.replace(/^[([{<]+/, '').replace(/(?<![\])}>.,;:!?…])[\])}>.,;:!?…]+$/, '');
  // `U')3` and `U')'`: the end of a group
  const bare = core.replace(/(?<![\])])[\])]+(?:\d+|['’])?$/, '');
  if (PLACE_NAMES.has(bare)) return 'word';
  // `Full` and `bud` read as wide turns without spaces; what has the shape of a word is taken for one.
  const wordShaped = /^[A-Za-z]?[a-z]{2,}$|^[A-Z][a-z]$/.test(bare) && !PRINTED_TURN.test(bare);
  const read = readTurns(bare);
  if (bare === '' || wordShaped || !read.ok) return 'word';
  return /[.,;:!?…]$/.test(token) ? 'blot-end' : 'blot';
}

// In widths of the type size. Phases of one solution stand further apart than its turns; the next column much further.
const WIDEST_GAP = 3;
// Room for a line of small words under each phase before a solution goes on below.
const DEEPEST_LINE = 3.5;
const SAME_BASELINE = 0.2;

function onBaselineOf(a: TextItem, b: TextItem): boolean {
  return a.angle === b.angle && Math.abs(a.across - b.across) <= SAME_BASELINE * Math.max(a.size, b.size);
}

/**
 * Whether a run that reached the end of `last` goes on with `next`. `interrupted`: words on other baselines were drawn
 * between them. A label under a phase is no end of the solution, but a label between two lines is.
 */
function goesOn(last: TextItem, next: TextItem, interrupted: boolean): boolean {
  if (last.font !== next.font || last.angle !== next.angle || Math.abs(last.size - next.size) > 0.1) return false;
  const end = last.along + last.width;
  if (onBaselineOf(last, next)) {
    const gap = (next.along - end) / last.size;
    return gap > -SAME_BASELINE && gap <= WIDEST_GAP;
  }
  const drop = (last.across - next.across) / last.size;
  return !interrupted && drop > 0 && drop <= DEEPEST_LINE && next.along < end;
}

interface Run {
  readonly tokens: string[];
  last: TextItem;
  spoilt: boolean;
  interrupted: boolean;
}

/**
 * The sequences of turns on a page, each as long as it goes, wrapped lines joined, single spaces between turns.
 * Runs that touch a bracket, a comma or turns run together are left out: no claim is written so.
 */
export function printedRuns(items: readonly TextItem[]): string[] {
  const runs: string[] = [];
  let run: Run | undefined;
  const close = (): void => {
    if (run && !run.spoilt) runs.push(run.tokens.join(' '));
    run = undefined;
  };
  for (const item of items) {
    for (const token of item.text.split(/\s+/).filter((part) => part !== '')) {
      const kind = kindOf(token);
      if (kind === 'word') {
        if (run && (run.last === item || onBaselineOf(run.last, item))) close();
        if (run) run.interrupted = true;
        continue;
      }
      if (run && run.last !== item && !goesOn(run.last, item, run.interrupted)) close();
      run ??= { tokens: [], last: item, spoilt: false, interrupted: false };
      run.tokens.push(token);
      run.last = item;
      run.interrupted = false;
      if (kind !== 'turn') run.spoilt = true;
      if (kind === 'blot-end') close();
    }
  }
  close();
  return runs;
}

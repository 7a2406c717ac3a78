/**
 * Why turns work, from the turns alone: the parse with the fewest words. A word is a turn that is done for itself, or the
 * name of a trigger. What is set up, done and taken back (A B A'), and what is done, done and taken back in that order
 * (A B A' B'), costs the words of A and B: taking back is no word. Parts stand in parts.
 *
 * The parse is found over all spans, from short ones to long ones: the best of a span is the best of two parts of it, or of
 * what each form that fits it is made of. A turn may end one part and begin the next, done in two turns of its kind, where
 * that saves a word. Of parses with as few words the one with the fewest such turns is taken, then with the fewest forms,
 * then the one that goes on rather than in. Turns of opposite faces are not exchanged, and what cancels is not put in.
 */
import { TRIGGERS, type TriggerList, triggerForms } from '../triggers.ts';
import { inverse, type Quarters, type Turn, turnOf } from '../turns.ts';
import { type Border, isInside, isOneTurn, partedAt, type Spans, spansOf, turnAt, turnsBetween } from './borders.ts';

/** Some of the turns, and what they are. */
export type Part =
  | { readonly kind: 'turns'; readonly turns: readonly Turn[] }
  | { readonly kind: 'trigger'; readonly turns: readonly Turn[]; readonly name: string; readonly undone: boolean }
  /** `first`, `second`, `first` taken back. */
  | { readonly kind: 'set-up'; readonly turns: readonly Turn[]; readonly first: Stretch; readonly second: Stretch }
  /** `first`, `second`, `first` taken back, `second` taken back. */
  | { readonly kind: 'commutator'; readonly turns: readonly Turn[]; readonly first: Stretch; readonly second: Stretch };
export type Parts = readonly Part[];

/** Parts in their order, and the turns that they are, a turn that two of them share once. */
export interface Stretch {
  readonly turns: readonly Turn[];
  readonly parts: Parts;
}

/** A turn that ends one part and begins the next. */
export interface SharedTurn {
  /** From 1. */
  readonly turn: number;
  readonly of: Turn;
  readonly as: readonly [Turn, Turn];
}

export interface Explanation {
  readonly parts: Parts;
  /** Turns done for themselves, and names. */
  readonly words: number;
  readonly shared: readonly SharedTurn[];
}

/** Turns; twice as many take ten times as long, and nobody has a solution as long. */
export const MOST_TURNS_EXPLAINED = 100;

/** What a parse costs, as one number: fewer words win, then fewer shared turns, then fewer forms. */
const FORM = 1;
const SHARED = 1000 * FORM;
const WORD = 1000 * SHARED;

/** How the best parse of a span is made; borders in their order. */
type Made =
  | { readonly as: 'turn' }
  | { readonly as: 'trigger'; readonly name: string; readonly undone: boolean }
  | { readonly as: 'two'; readonly at: Border }
  | Form;

interface Form {
  readonly as: 'set-up' | 'commutator';
  readonly at: readonly [Border, Border, Border?];
}

interface Best {
  readonly cost: number;
  readonly made: Made;
}

/** Spans that have a form, by border before and border after. */
function formsIn(turns: readonly Turn[], { borders, isSpan, endOfBack }: Spans): Map<number, Form[]> {
  /** The same for turns of one kind and letter. */
  const layers = turns.map(({ index }) => Math.floor(index / 3));
  const forms = new Map<number, Form[]>();
  const add = (from: Border, to: Border, made: Form): void => {
    const key = from * borders + to;
    const known = forms.get(key);
    if (known) known.push(made);
    else forms.set(key, [made]);
  };
  for (let from = 0; from < borders; from++) {
    for (let one = from + 1; one < borders; one++) {
      if (!isSpan(from, one)) continue;
      for (let two = one + 1; two < borders; two++) {
        // What takes back begins with the layer that was turned last.
        if (layers[turnAt(two)] !== layers[turnAt(one - 1)] || !isSpan(one, two)) continue;
        const three = endOfBack(two, [from, one]);
        if (three === undefined) continue;
        add(from, three, { as: 'set-up', at: [one, two] });
        const four = endOfBack(three, [one, two]);
        if (four !== undefined) add(from, four, { as: 'commutator', at: [one, two, three] });
      }
    }
  }
  return forms;
}

function triggersIn({ borders, endOf }: Spans, triggers: TriggerList): Map<number, Made> {
  const found = new Map<number, Made>();
  for (const { name, undone, turns } of triggerForms(triggers)) {
    for (let from = 0; from < borders; from++) {
      const to = endOf(from, turns);
      const key = from * borders + (to ?? 0);
      if (to !== undefined && !found.has(key)) found.set(key, { as: 'trigger', name, undone });
    }
  }
  return found;
}

const isShared = (border: Border | undefined): border is Border => border !== undefined && isInside(border);

/** The best parse of every span. */
function bestOfSpans(turns: readonly Turn[], spans: Spans, triggers: TriggerList): readonly (Best | undefined)[] {
  const { borders, isSpan } = spans;
  const best: (Best | undefined)[] = new Array(borders * borders);
  const named = triggersIn(spans, triggers);
  const forms = formsIn(turns, spans);
  const costOf = (from: Border, to: Border): number => best[from * borders + to]!.cost;
  const sharedAt = (...at: readonly (Border | undefined)[]): number => SHARED * at.filter(isShared).length;
  for (let size = 1; size < borders; size++) {
    for (let from = 0; from + size < borders; from++) {
      const to = from + size;
      if (!isSpan(from, to)) continue;
      const key = from * borders + to;
      let found: Best = { cost: Number.POSITIVE_INFINITY, made: { as: 'turn' } };
      const offer = (cost: number, made: Made): void => {
        if (cost < found.cost) found = { cost, made };
      };
      const trigger = named.get(key);
      if (isOneTurn(from, to)) offer(WORD, { as: 'turn' });
      if (trigger) offer(WORD, trigger);
      for (let at = to - 1; at > from; at--) {
        if (!isSpan(from, at) || !isSpan(at, to)) continue;
        const cost = costOf(from, at) + costOf(at, to) + (isInside(at) ? SHARED : 0);
        if (cost < found.cost) offer(cost, { as: 'two', at });
      }
      for (const made of forms.get(key) ?? []) {
        const [one, two, three] = made.at;
        offer(costOf(from, one) + costOf(one, two) + FORM + sharedAt(one, two, three), made);
      }
      best[key] = found;
    }
  }
  return best;
}

/** Turns on their own, beside each other, are one part. */
function joined(parts: Parts): Part[] {
  const all: Part[] = [];
  for (const part of parts) {
    const last = all.at(-1);
    if (last?.kind !== 'turns' || part.kind !== 'turns') all.push(part);
    else all[all.length - 1] = { kind: 'turns', turns: [...last.turns, ...part.turns] };
  }
  return all;
}

/** The turns that parts stand for, what is taken back made anew; a turn that two parts share is there twice. */
export const turnsOfParts = (parts: Parts): Turn[] =>
  parts.flatMap((part) => {
    if (part.kind === 'turns' || part.kind === 'trigger') return part.turns;
    const [first, second] = [turnsOfParts(part.first.parts), turnsOfParts(part.second.parts)];
    return [...first, ...second, ...inverse(first), ...(part.kind === 'commutator' ? inverse(second) : [])];
  });

/** Turns of one kind and letter that follow each other as one, or none where they cancel. */
export function merged(turns: readonly Turn[]): Turn[] {
  const all: Turn[] = [];
  for (const turn of turns) {
    const last = all.at(-1);
    if (last?.kind !== turn.kind || last.letter !== turn.letter) {
      all.push(turn);
      continue;
    }
    all.pop();
    const quarters = (last.quarters + turn.quarters) % 4;
    if (quarters !== 0) all.push(turnOf(turn.kind, turn.letter, quarters as Quarters));
  }
  return all;
}

const isSame = (some: readonly Turn[], others: readonly Turn[]): boolean =>
  some.length === others.length && some.every((turn, i) => turn === others[i]);

/**
 * At most MOST_TURNS_EXPLAINED turns, or it is an error of ours; so is a parse that does not stand for the turns it was
 * made of.
 */
export function explain(turns: readonly Turn[], triggers: TriggerList = TRIGGERS): Explanation {
  if (turns.length > MOST_TURNS_EXPLAINED) throw new RangeError(`${turns.length} turns are too many to explain`);
  if (turns.length === 0) return { parts: [], words: 0, shared: [] };
  const spans = spansOf(turns);
  const { borders } = spans;
  const best = bestOfSpans(turns, spans, triggers);
  const shared: SharedTurn[] = [];
  const share = (...at: readonly (Border | undefined)[]): void => {
    for (const border of at.filter(isShared)) {
      shared.push({ turn: turnAt(border) + 1, of: turns[turnAt(border)]!, as: partedAt(border, turns) });
    }
  };
  const stretchOf = (from: Border, to: Border): Stretch => ({
    turns: turnsBetween(from, to, turns),
    parts: partsOf(from, to),
  });
  const partsOf = (from: Border, to: Border): Parts => {
    const { made } = best[from * borders + to]!;
    const these = turnsBetween(from, to, turns);
    switch (made.as) {
      case 'turn':
        return [{ kind: 'turns', turns: these }];
      case 'trigger':
        return [{ kind: 'trigger', turns: these, name: made.name, undone: made.undone }];
      case 'two':
        share(made.at);
        return joined([...partsOf(from, made.at), ...partsOf(made.at, to)]);
      default: {
        const [one, two] = made.at;
        share(...made.at);
        return [{ kind: made.as, turns: these, first: stretchOf(from, one), second: stretchOf(one, two) }];
      }
    }
  };
  const parts = partsOf(0, borders - 1);
  if (!isSame(merged(turnsOfParts(parts)), merged(turns))) throw new RangeError('the parse stands for other turns');
  const words = Math.floor(best[borders - 1]!.cost / WORD);
  return { parts, words, shared: shared.sort((a, b) => a.turn - b.turn) };
}

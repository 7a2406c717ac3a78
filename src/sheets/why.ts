/** Why turns work, in a line: what is begun, done and taken back. */
import { explain, MOST_TURNS_EXPLAINED, type Part, type Stretch } from '../cube/explain/explain.ts';
import type { TriggerList } from '../cube/triggers.ts';
import type { Turn } from '../cube/turns.ts';
import type { Span, TextBlock } from '../layout/blocks.ts';
import type { Making } from './making.ts';
import { printedTurns } from './phrases.ts';
import { note, plain, strong } from './texts.ts';

/** Turns stand between these: no word has them, and names of triggers have letters, digits and dashes only. */
const MARK = '`';

/** None where nothing is taken back and nothing has a name. */
export function whyLine(turns: readonly Turn[], triggers: TriggerList, making: Making): TextBlock[] {
  if (turns.length > MOST_TURNS_EXPLAINED) return [];
  const words = making.words.explain;
  const { parts, words: toRemember, shared } = explain(turns, triggers);
  if (toRemember >= turns.length) return [];
  const shown = (some: readonly Turn[]): string => `${MARK}${printedTurns(some, making).join(' ')}${MARK}`;
  const said = (part: Part): string => {
    if (part.kind === 'turns') return shown(part.turns);
    if (part.kind === 'trigger') return words.trigger(part.name, part.undone);
    const [first, second] = [inside(part.first), inside(part.second)];
    return part.kind === 'set-up' ? words.setUp(first, second) : words.commutator(first, second);
  };
  const inside = ({ parts: some }: Stretch): string => {
    const [only, ...others] = some;
    if (only && others.length === 0 && (only.kind === 'turns' || only.kind === 'trigger')) return said(only);
    return words.inside(words.sequence(some.map(said)));
  };
  const sharedSaid = shared.map(({ turn, of, as: [one, two] }) =>
    words.shared(turn, shown([of]), [shown([one]), shown([two])]),
  );
  const text = [words.sequence(parts.map(said)), ...sharedSaid].map((sentence) => `${sentence}.`).join(' ');
  const spans = text.split(MARK).map((some, i): Span => {
    return i % 2 === 1 ? { kind: 'turns', turns: some.split(' ') } : plain(some);
  });
  return [note(strong(`${words.why}: `), ...spans.filter((span) => span.kind !== 'plain' || span.text !== ''))];
}

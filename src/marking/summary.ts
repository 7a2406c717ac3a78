/** The figures of a class: what the report says, as values. */
import { readTurns } from '../cube/notation.ts';
import type { Failed } from '../steps/marking-part.ts';
import { groupedBy } from '../text/grouped.ts';
import type { SlipName } from '../words/said.ts';
import { byCode, byStudent, type StudentRows } from './by-student.ts';
import { type ChoiceItem, type Item, type NamedRule, nameKey, type SolutionItem } from './items.ts';
import { lettersGiven } from './mark-choice.ts';
import { isRight, isTimed, type MarkedRow } from './submission.ts';

/** One that answers to all steps may show, or a verdict that a step gives besides. */
export type Slip = SlipName | Failed['verdict'];

/** Some answers, and what they are worth together. */
export interface Score {
  readonly answered: number;
  readonly points: number;
}

/** How a class did with one item. */
export interface ItemFigures extends Score {
  readonly item: Item;
  /** The commonest first. */
  readonly slips: readonly (readonly [Slip, number])[];
}

/** How a class did with one case, wherever it was asked: to be solved, whichever turn of the top and side it was seen from. */
export interface CaseFigures extends Score {
  /** `UFR:R UB:U` */
  readonly case: string;
  /** One of the items, to be shown. */
  readonly item: SolutionItem;
  /** The commonest first. */
  readonly slips: readonly (readonly [Slip, number])[];
  /** A row of each student who did not solve it once. */
  readonly missedBy: readonly MarkedRow[];
}

/** How the items that one rule speaks of were answered. */
export interface RuleAnswered extends Score {
  readonly lesson: string;
  readonly rule: NamedRule;
  /** Items, the hardest first. */
  readonly items: readonly string[];
}

export interface ChoiceFigures {
  readonly item: ChoiceItem;
  /** Wrong letters with how many chose them, the commonest first. */
  readonly chosen: readonly { readonly letter: string; readonly option: string; readonly count: number }[];
}

/** How a class did; points are those of the coach where there are any. */
export interface Summary extends Score {
  readonly students: readonly StudentRows[];
  /** The hardest first. */
  readonly items: readonly ItemFigures[];
  /** The hardest first. */
  readonly cases: readonly CaseFigures[];
  readonly slips: readonly {
    readonly slip: Slip;
    /** That of the first example: whose own the slip is, if it is one step's. */
    readonly step: string;
    readonly count: number;
    readonly examples: readonly MarkedRow[];
  }[];
  /** Asked about in choices, the worst first: all answers to questions about rules, say. */
  readonly asked: readonly (Score & { readonly asks: string })[];
  readonly choices: readonly ChoiceFigures[];
  /** The one missed most first; none where the lesson has no rules. */
  readonly rules: readonly RuleAnswered[];
  /** Students who got fewer than half of a lesson's items right. */
  readonly again: readonly {
    readonly lesson: string;
    /** `row`: of their first answer. */
    readonly students: readonly (Score & { readonly student: string; readonly row: number })[];
  }[];
  /** Answers that solve with fewer turns than the sheet recommends. */
  readonly shorter: readonly { readonly row: MarkedRow; readonly key: number }[];
  readonly notMarked: readonly MarkedRow[];
}

/** Which slip a row shows; none where it is right. */
function slipName(row: MarkedRow, item: Item): Slip | undefined {
  if (isRight(row.verdict) || row.verdict === 'empty' || row.verdict === 'unmatched') return undefined;
  if (item.kind === 'choice') return 'choice';
  const [miss] = row.nearMisses;
  if (row.verdict === 'unreadable') return miss?.kind === 'spelling' ? 'spelling' : 'unreadable';
  if (miss?.kind === 'changed') {
    const [was, now] = [readTurns(row.answer), readTurns(miss.answer)];
    const [a, b] = [was.ok && was.turns[miss.turn - 1], now.ok && now.turns[miss.turn - 1]];
    return a && b && a.letter === b.letter && a.kind === b.kind ? 'amount' : 'letter';
  }
  if (miss) return miss.kind;
  return row.verdict === 'fails' ? 'unknown' : row.verdict;
}

function counted<T>(things: readonly T[]): [T, number][] {
  const counts = new Map<T, number>();
  for (const thing of things) counts.set(thing, (counts.get(thing) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1]);
}

const scoreOf = (rows: readonly MarkedRow[]): Score => ({
  answered: rows.length,
  points: rows.reduce((n, row) => n + row.points, 0),
});
const share = ({ points, answered }: Score): number => points / answered;
const byShare = (a: Score, b: Score): number => share(a) - share(b);

/** What went wrong: rows that the coach marked right are no slips. */
const isWrong = (row: MarkedRow): boolean => !isRight(row.verdict) && row.points < 1;

/** Marked rows -> the figures of the class. Times and rows of no item count in none. */
export function summaryOf(rows: readonly MarkedRow[], items: readonly Item[]): Summary {
  const itemById = new Map(items.map((item) => [item.id, item]));
  const students = byStudent(rows);
  const counting = students.flatMap((s) => s.rows).filter((row) => row.matched !== '' && !isTimed(row));
  const itemOf = (row: MarkedRow): Item => itemById.get(row.matched)!;
  const wrong = counting.filter(isWrong).map((row) => ({ row, slip: slipName(row, itemOf(row)) }));
  const slips = wrong.flatMap(({ row, slip }) =>
    slip === undefined || slip === 'choice' ? [] : [{ row, slip, step: itemOf(row).step }],
  );
  /** Slips of one name are one, but verdicts of two steps. */
  const slipKey = ({ row, slip, step }: (typeof slips)[number]): string =>
    row.verdict === slip ? `${slip} ${step}` : slip;
  const byItem = groupedBy(counting, (row) => row.matched);

  const figures = [...byItem].map(([id, own]): ItemFigures => {
    const slips = wrong.filter(({ row }) => row.matched === id).map(({ slip }) => slip);
    return { item: itemById.get(id)!, ...scoreOf(own), slips: counted(slips.filter((slip) => slip !== undefined)) };
  });
  const slipOf = new Map(wrong.map(({ row, slip }) => [row, slip] as const));
  const ofCases = counting.flatMap((row) => {
    const item = itemOf(row);
    return item.kind === 'solution' ? [{ row, item }] : [];
  });
  const cases = [...groupedBy(ofCases, ({ item }) => `${item.step} ${item.subject.caseAddress}`).values()].map(
    (own): CaseFigures => {
      const rows = own.map(({ row }) => row);
      const slips = rows.flatMap((row) => slipOf.get(row) ?? []);
      const byWhom = [...groupedBy(rows, ({ student }) => nameKey(student)).values()];
      return {
        case: own[0]!.item.subject.caseAddress,
        item: own[0]!.item,
        ...scoreOf(rows),
        slips: counted(slips),
        missedBy: byWhom.flatMap((theirs) => (theirs.some(({ points }) => points >= 1) ? [] : [theirs[0]!])),
      };
    },
  );
  const places = new Map(items.map((item, i) => [item, i]));
  const place = ({ item }: ItemFigures): number => places.get(item)!;

  const ruled = figures.filter(({ item }) => item.rule);
  const rules = [...groupedBy(ruled, ({ item }) => `${item.lesson} ${item.rule!.number}`).values()].map(
    (own): RuleAnswered => ({
      lesson: own[0]!.item.lesson,
      rule: own[0]!.item.rule!,
      answered: own.reduce((n, { answered }) => n + answered, 0),
      points: own.reduce((n, { points }) => n + points, 0),
      items: own.toSorted(byShare).map(({ item }) => item.id),
    }),
  );
  const choiceRows = counting.filter((row) => itemOf(row).kind === 'choice');
  // Who has solved it and cannot spell it does not need the lesson again.
  const spelt = counting.filter((row) => !(isWrong(row) && slipName(row, itemOf(row)) === 'spelling'));
  return {
    students,
    ...scoreOf(counting),
    cases: cases.sort((a, b) => byShare(a, b) || b.answered - a.answered || (a.case < b.case ? -1 : 1)),
    items: figures.sort((a, b) => byShare(a, b) || place(a) - place(b)),
    slips: [...groupedBy(slips, slipKey).values()]
      .map((own) => ({
        slip: own[0]!.slip,
        step: own[0]!.step,
        count: own.length,
        examples: own.map(({ row }) => row),
      }))
      .sort((a, b) => b.count - a.count),
    asked: [...groupedBy(choiceRows, (row) => (itemOf(row) as ChoiceItem).asks)]
      .map(([asks, own]) => ({ asks, ...scoreOf(own) }))
      .sort((a, b) => byShare(a, b) || (a.asks < b.asks ? -1 : 1)),
    rules: rules.sort((a, b) => byShare(a, b) || a.rule.number - b.rule.number),
    choices: figures.flatMap(({ item }): ChoiceFigures[] => {
      if (item.kind !== 'choice' || item.asks === 'order' || item.asks === 'place') return [];
      const missed = byItem.get(item.id)!.filter((row) => row.verdict === 'fails');
      const given = missed.map((row) => lettersGiven(item, row.answer)!).filter((letter) => letter !== item.answer);
      const optionOf = (letter: string): string => item.options[item.letters.indexOf(letter)]!;
      const chosen = counted(given).map(([letter, count]) => ({ letter, count, option: optionOf(letter) }));
      return chosen.length > 0 ? [{ item, chosen }] : [];
    }),
    again: [...groupedBy(spelt, (row) => itemOf(row).lesson)].map(([lesson, own]) => ({
      lesson,
      students: [...groupedBy(own, (row) => nameKey(row.student)).values()]
        .map((theirs) => ({ student: theirs[0]!.student, row: theirs[0]!.row, ...scoreOf(theirs) }))
        .filter((one) => share(one) < 0.5)
        .sort((a, b) => byShare(a, b) || byCode(a.student, b.student)),
    })),
    shorter: counting.flatMap((row) => {
      const item = itemOf(row);
      if (item.kind !== 'solution' || !isRight(row.verdict) || row.length === null) return [];
      return row.length < item.key.length ? [{ row, key: item.key.length }] : [];
    }),
    notMarked: rows.filter((row) => row.verdict === 'unmatched'),
  };
}

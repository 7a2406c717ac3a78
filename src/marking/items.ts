/** What can be answered: the items of a claims file, each proved again by the engine. */
import type { Colour, Hold } from '../cube/colours.ts';
import type { Turn } from '../cube/turns.ts';
import type { Subject } from '../steps/subject.ts';

/** A rule of a lesson, as its claims file has it. */
export interface NamedRule {
  readonly number: number;
  /** Conditions in the words of a lesson. */
  readonly see: readonly string[];
}

interface CommonItem {
  /** As a student names it, with its paper before a point: `3` is the third case of a handout, `K4T.7` an item of a paper. */
  readonly id: string;
  /** The code of the paper, or of a handout the name of its file where several have the item; else empty. */
  readonly paper: string;
  /** Whether it is of a practice paper; else of a handout. */
  readonly onPaper: boolean;
  /** What the item is called on its paper or handout. */
  readonly number: string;
  /** The lesson's title, and the file that it was read from. */
  readonly lesson: string;
  readonly lessonFile: string;
  /** Where the item stands among those of the same sheet. */
  readonly position: number;
  /** The name of the step of the solve. */
  readonly step: string;
  /** The lesson's rule that applies to it; undefined if none does, or the file names none. */
  readonly rule: NamedRule | undefined;
}

/** A case to be solved: marked on the cube after its set-up. */
export interface SolutionItem extends CommonItem {
  readonly kind: 'solution';
  readonly hold: Hold;
  readonly cross: Colour;
  readonly setup: readonly Turn[];
  readonly subject: Subject;
  /** The shortest that the sheet recommends. */
  readonly key: { readonly turns: string; readonly length: number };
  /** The fewest face turns; undefined where no exhaustive search found it. */
  readonly shortest: number | undefined;
}

/** Options to choose from, marked by letter. */
export interface ChoiceItem extends CommonItem {
  readonly kind: 'choice';
  /** What it asks about: `rule`, `slip` and so on. */
  readonly asks: string;
  readonly options: readonly string[];
  /** The letter printed before each option; none where `asks` is `place`. */
  readonly letters: readonly string[];
  /** A letter; all letters in order where `asks` is `order`; for `place` where a piece is, as in an address: `UBR:B`. */
  readonly answer: string;
  /** Of a slip, as far as the file says it: which turn of the right option is wrong, from 1, and what it should be. */
  readonly mend: { readonly turn: number; readonly now: string } | undefined;
}

/** Something that students answer. */
export type Item = SolutionItem | ChoiceItem;

/** A claim that does not hold, and why: its item is not marked. */
export interface FalseClaim {
  readonly file: string;
  readonly claim: string;
  readonly item: string;
  readonly why: string;
}

/** What a name stands for in one claims file, named by its sheets: an item, a claim that does not hold, or one that nobody answers. */
export type Named = { readonly sheet: string } & (
  | { readonly item: Item }
  | { readonly refused: FalseClaim }
  | { readonly other: string }
);

/** All that can be answered, by every name that it goes by. */
export interface Items {
  readonly items: readonly Item[];
  /** By the ids of claims and items, alone and after the name of their sheets; see nameKey. */
  readonly byName: ReadonlyMap<string, readonly Named[]>;
  /** Codes of the papers, as printed. */
  readonly papers: readonly string[];
  /** Items of papers by their number alone, in the order of the papers; see nameKey. */
  readonly onPapers: ReadonlyMap<string, readonly Item[]>;
}

/** How names are compared: capitals and spaces do not matter. */
export const nameKey = (name: string): string => name.replaceAll(/\s/g, '').toUpperCase();

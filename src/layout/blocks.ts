/**
 * What a sheet is made of. Blocks say what there is and what belongs together; they know neither paper nor position.
 * measure.ts turns them into boxes, flow.ts places boxes on pages as frames, pdf.ts writes frames.
 *
 * All lengths are PostScript points (1/72 inch), made by mm() or written as plain numbers of points.
 */
import type { Scene } from '../svg/scene.ts';

/** One point: 1/72 inch. */
export type Pt = number;

/** Millimetres to points. */
export const mm = (n: number): Pt => (n * 72) / 25.4;

/** The faces of the type scale; sizes and leading live with them in type.ts. */
export type TextStyle = 'title' | 'heading' | 'panel' | 'body' | 'note' | 'label' | 'foot';

export type Ink = 'black' | 'grey';

/** A stretch of text set one way. Spaces inside `text` may become line ends, except in turns. */
export type Span =
  | { readonly kind: 'plain'; readonly text: string; readonly ink?: Ink }
  /** Black even where the style is grey, unless the block names an ink. */
  | { readonly kind: 'strong'; readonly text: string }
  /** A colour's name with a small swatch before it that never parts from it; `letter` is set inside in mono ink. */
  | {
      readonly kind: 'swatch';
      readonly text: string;
      readonly fill: string;
      readonly letter?: string;
      readonly letterInk?: string;
      readonly strong?: boolean;
    }
  /** Turns in the face with even widths; a line may end only between two turns. */
  | { readonly kind: 'turns'; readonly turns: readonly string[] };

/** What a reader of the tagged file is told this is. */
export type TextRole = 'H1' | 'H2' | 'H3' | 'P' | 'Caption';

/** Fields that every block may have. */
interface Common {
  /** Claims that are printed by this block: flow.ts reports the page they came to stand on. */
  readonly claims?: readonly string[];
  /** Where this comes from, handed back unread in a layout fault. */
  readonly origin?: Origin;
}

/** A stretch of a source, by offsets: of no meaning to the layout. */
export interface Origin {
  readonly start: number;
  readonly end: number;
}

/** Running text. Flows over pages by lines, never leaving one line alone on either side. */
export interface TextBlock extends Common {
  readonly kind: 'text';
  readonly role: TextRole;
  readonly style: TextStyle;
  readonly spans: readonly Span[];
  readonly ink?: Ink;
  /** Set a bullet before it and indent the rest. */
  readonly bullet?: boolean;
  /** An entry of the file's outline that leads here. */
  readonly bookmark?: string;
  /** Not parted from the first line or row of the block that follows; true for headings when left out. */
  readonly keepWithNext?: boolean;
}

/** A line of turns as the product of the page: large, even, with an optional ring at its right end. */
export interface TurnsBlock extends Common {
  readonly kind: 'turns';
  /** Large is read at arm's length, cube in hand; small unless given. */
  readonly size?: 'small' | 'large';
  /** A small word above; the ring then stands at the end of its line, and the turns have the full width. */
  readonly label?: string;
  /** The turns in order, in groups; a group with words has them under it in small type. One group without words: a plain line. */
  readonly groups: readonly { readonly turns: readonly string[]; readonly words?: string }[];
  /** Set in a ring at the right: the length. `spoken` is what a screen reader says for it. */
  readonly ring?: { readonly text: string; readonly spoken: string };
}

/** A drawing at a width, no wider than the room; its description becomes the alternative text. */
export interface FigureBlock extends Common {
  readonly kind: 'figure';
  readonly scene: Scene;
  readonly width: Pt;
}

/** Children below each other. May be parted between children, unless `keep`; `where-it-fits`: on one page unless it is taller. */
export interface StackBlock extends Common {
  readonly kind: 'stack';
  readonly children: readonly Block[];
  readonly gap: Pt;
  readonly keep?: boolean | 'where-it-fits';
  /** A thin line on this side, the gap away from the children. */
  readonly line?: 'above' | 'left';
}

/** Children beside each other. Never parted: what may grow without bound names a block to be set instead. */
export interface ColumnsBlock extends Common {
  readonly kind: 'columns';
  /** Set in place of the columns if they came out taller (Infinity: not asked), or one that shares the room came out narrower. */
  readonly fallback?: { readonly tallerThan: Pt; readonly narrowerThan: Pt; readonly instead: Block };
  /** Widths: points, or a share of what is left after the points (`{ share: 1 }`). */
  readonly columns: readonly { readonly width: Pt | { readonly share: number }; readonly child: Block }[];
  readonly gap: Pt;
}

/** Cells in rows of equal columns; the cells of a row are given one height. Parted only between rows. */
export interface GridBlock extends Common {
  readonly kind: 'grid';
  /** At most so many; fewer where a cell would come out narrower than `least`. */
  readonly columns: number;
  readonly least?: Pt;
  readonly gap: Pt;
  readonly rowGap: Pt;
  readonly cells: readonly Block[];
}

/** A thin line over the full width. */
export interface RuleBlock extends Common {
  readonly kind: 'rule';
  readonly weight: 'thin' | 'heavy';
}

/** A label and a line to write on. */
export interface WriteLineBlock extends Common {
  readonly kind: 'write-line';
  readonly label: string;
}

/** Empty boxes in a row to write in, a label before them and a small head over each where there are any. */
export interface BoxesBlock extends Common {
  readonly kind: 'boxes';
  readonly count: number;
  /** Of one box. */
  readonly width: Pt;
  readonly height: Pt;
  readonly label?: string;
  readonly heads?: readonly string[];
}

/** White. Dropped at the top of a page. */
export interface SpaceBlock extends Common {
  readonly kind: 'space';
  readonly height: Pt;
}

/** What pages are made of, before it is known where it stands. */
export type Block =
  | TextBlock
  | TurnsBlock
  | FigureBlock
  | StackBlock
  | ColumnsBlock
  | GridBlock
  | RuleBlock
  | WriteLineBlock
  | BoxesBlock
  | SpaceBlock;

/** Sizes of paper: ISO 216 and US letter. */
export type Paper = 'a4' | 'letter' | 'a5';

/**
 * Cards for a printer that prints both sides: a page of fronts, a page of their backs, and so on. They fill a grid around
 * the middle of the page, so that each back falls on its front when the paper is turned over that edge.
 */
export interface Cards {
  readonly cards: readonly { readonly front: Block; readonly back: Block }[];
  readonly turnedOver: 'long' | 'short';
  /** No card is smaller; as many stand on a page as fit. */
  readonly least: { readonly width: Pt; readonly height: Pt };
}

/** A sheet: everything that one PDF file says. */
export interface Sheet {
  /** The document's title. */
  readonly title: string;
  /** BCP 47, such as `en`. */
  readonly language: string;
  readonly body: readonly Block[];
  /** In place of a body: cards to cut out. */
  readonly cards?: Cards;
  /** The line at the foot of each page. */
  readonly foot: {
    /** From the longest to the shortest: the first that fits is set. */
    readonly left: readonly string[];
    readonly right: (page: number, pages: number) => string;
  };
}

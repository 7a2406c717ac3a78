/**
 * Finished PDFs of papers and keys, read as a student would: by their headings, numbers and letters, from the text that
 * pdfjs-dist finds and the descriptions of the pictures. Knows the printed words and nothing of the engine.
 */
import { type PdfText, readPdf, type TextItem } from '../../src/audit/pdf-text.ts';

export const HEADINGS = {
  'Like or unlike?': 'likeness',
  'Good or bad edge?': 'edge',
  'Name the rule': 'rule',
  'Read the picture': 'picture',
  'Find the slip': 'slip',
  'Put it in order': 'order',
  'Where does it go?': 'place',
  'Solve it': 'solve',
  Drill: 'drill',
} as const;
type Heading = keyof typeof HEADINGS;
export type KindName = (typeof HEADINGS)[Heading];

export interface ReadItem {
  readonly number: number;
  readonly kind: KindName;
  readonly page: number;
  /** Set-up, or the turns to be followed. */
  readonly turns: string;
  readonly options: readonly { readonly letter: string; readonly text: string }[];
  readonly open: string | undefined;
  readonly picture: string;
  /** Of a place: which piece is to be marked. */
  readonly asked: string | undefined;
}

export interface ReadPaper {
  readonly code: string;
  readonly student: string | undefined;
  readonly items: readonly ReadItem[];
  /** Items whose letters go into each check word. */
  readonly boxes: readonly number[];
}

interface Piece {
  readonly text: string;
  readonly font: string;
  readonly page: number;
  readonly size: number;
}

/** Text without the foot, which is set smallest and stands lowest. */
function piecesOf({ pages }: PdfText): Piece[] {
  return pages.flatMap(({ items }, i) => {
    const lowest = Math.min(...items.map((item) => item.across));
    return items
      .filter((item) => item.across > lowest + 1)
      .map(({ text, font, size }: TextItem) => ({ text: text.trim(), font, size, page: i + 1 }));
  });
}

const WHOSE = /^Paper ([A-Z0-9]{3})(?: · For (.+))?$/;

/** Cut where a paper begins. The three fonts are told apart by what is always set in them. */
function volumesOf(pdf: PdfText): { pieces: Piece[]; strong: string; mono: string; from: number; to: number }[] {
  const all = piecesOf(pdf);
  const { size, font: strong } = all.find(({ text }) => WHOSE.test(text))!;
  // In mono ink the stickers of pictures bear letters too, of other sizes.
  const pieces = all.filter((p) => !(p.font === strong && p.size !== size && /^[A-Z]$/.test(p.text)));
  const starts = pieces.flatMap(({ text }, i) => (WHOSE.test(text) ? [i] : []));
  const mono = pieces.find(({ text }) => /^[UDRLFB]['2]? [UDRLFB]['2]?( |$)/.test(text))?.font ?? '';
  return starts.map((start, n) => {
    const end = starts[n + 1] ?? pieces.length;
    const own = pieces.slice(start, end);
    // The title of the next paper stands before its code.
    const last = n + 1 < starts.length ? pieces[starts[n + 1]!]!.page - 1 : pdf.pages.length;
    return { pieces: own.filter(({ page }) => page <= last), strong, mono, from: own[0]!.page, to: last };
  });
}

const isHeading = (text: string): text is Heading => text in HEADINGS;
const joined = (pieces: readonly Piece[]): string => pieces.map(({ text }) => text).join(' ');

export async function readPapers(bytes: Uint8Array): Promise<ReadPaper[]> {
  const pdf = await readPdf(bytes);
  return volumesOf(pdf).map((volume) => {
    const { pieces, strong, mono, from, to } = volume;
    const figures = pdf.figures.filter(({ page }) => page >= from && page <= to).map(({ alt }) => alt);
    // The hold and the legend stand first.
    const pictures = figures.slice(2);
    const [, code, student] = WHOSE.exec(pieces[0]!.text)!;
    const items: ReadItem[] = [];
    const boxes: number[] = [];
    let kind: KindName | 'check' | undefined;
    let own: Piece[] = [];
    let number = 0;
    const close = (): void => {
      if (number > 0 && own.length > 0 && kind && kind !== 'check')
        items.push(itemOf(number, kind, own, strong, mono, pictures));
      own = [];
    };
    for (const piece of pieces.slice(1)) {
      const isStrong = piece.font === strong;
      if (isStrong && isHeading(piece.text)) {
        close();
        kind = HEADINGS[piece.text];
      } else if (isStrong && /^Check words?$/.test(piece.text)) {
        close();
        kind = 'check';
      } else if (kind === 'check') {
        if (/^\d+$/.test(piece.text)) boxes.push(Number(piece.text));
      } else if (kind && isStrong && piece.text === String(items.length + (own.length > 0 ? 2 : 1))) {
        close();
        number = Number(piece.text);
        own = [piece];
      } else if (own.length > 0) own.push(piece);
    }
    close();
    if (pictures.length > 0) throw new Error(`${code}: ${pictures.length} pictures belong to no item`);
    return { code: code!, student, items, boxes };
  });
}

function itemOf(
  number: number,
  kind: KindName,
  own: readonly Piece[],
  strong: string,
  mono: string,
  pictures: string[],
): ReadItem {
  const options: { letter: string; own: Piece[] }[] = [];
  const before: Piece[] = [];
  for (const piece of own.slice(1)) {
    const isLetter = piece.font === strong && /^[A-Z]$/.test(piece.text);
    if (isLetter) options.push({ letter: piece.text, own: [] });
    else (options.at(-1)?.own ?? before).push(piece);
  }
  const picture = pictures.shift()!;
  // The empty one to mark on.
  if (kind === 'place') pictures.shift();
  const words = joined(before);
  return {
    number,
    kind,
    page: own[0]!.page,
    turns: joined(before.filter(({ font }) => font === mono)),
    options: options.map(({ letter, own: text }) => ({ letter, text: joined(text).replaceAll(/ +,/g, ',') })),
    open: /Also open: ((?:(?:front|back) (?:right|left)(?:, | and )?)+)/.exec(words)?.[1],
    picture,
    asked: /Mark the (corner|edge)/.exec(words)?.[1],
  };
}

export interface ReadAnswer {
  readonly number: number;
  readonly kind: KindName;
  readonly page: number;
  /** The letter of a choice; the letters of parts in their order. */
  readonly letter: string | undefined;
  /** Solutions in their order, each with the length in its ring. */
  readonly solutions: readonly { readonly turns: string; readonly length: number }[];
  readonly noneShorter: boolean;
  readonly setup: string;
  /** Of a slip: the number of the turn, what it should be, what it is. */
  readonly slip: { readonly turn: number; readonly now: string; readonly was: string } | undefined;
  readonly picture: string | undefined;
  readonly words: string;
}

export interface ReadKey {
  readonly code: string;
  readonly checkWords: readonly string[];
  readonly answers: readonly ReadAnswer[];
}

export async function readKeys(bytes: Uint8Array): Promise<ReadKey[]> {
  const pdf = await readPdf(bytes);
  return volumesOf(pdf).map(({ pieces, strong, mono, from, to }) => {
    const pictures = pdf.figures.filter(({ page }) => page >= from && page <= to).map(({ alt }) => alt);
    const [, code] = WHOSE.exec(pieces[0]!.text)!;
    const answers: ReadAnswer[] = [];
    const check = pieces.findIndex(({ text }) => /^Check words?:$/.test(text));
    let kind: KindName | undefined;
    let own: Piece[] = [];
    let number = 0;
    const close = (): void => {
      if (own.length > 0 && kind) answers.push(answerOf(number, kind, own, { strong, mono }, pictures));
      own = [];
    };
    for (const piece of pieces.slice(1)) {
      const next = String(answers.length + (own.length > 0 ? 2 : 1));
      if (piece.font === strong && isHeading(piece.text)) {
        close();
        kind = HEADINGS[piece.text];
      } else if (kind && piece.font !== strong && piece.font !== mono && piece.text.split(' ')[0] === next) {
        close();
        number = Number(next);
        own = [piece];
      } else if (own.length > 0) own.push(piece);
    }
    close();
    if (pictures.length > 0) throw new Error(`key ${code}: ${pictures.length} pictures belong to no item`);
    return { code: code!, checkWords: check < 0 ? [] : pieces[check + 1]!.text.split(' '), answers };
  });
}

function answerOf(
  number: number,
  kind: KindName,
  own: readonly Piece[],
  { strong, mono }: { strong: string; mono: string },
  pictures: string[],
): ReadAnswer {
  const letter = own.find(({ font, text }) => font === strong && /^[A-Z]{1,5}$/.test(text))?.text;
  const words = joined(own);
  const labels = ['Recommended', 'Shortest'];
  // Under a label stand the turns; the ring is set after them.
  const solutions = labels.flatMap((label) => {
    const at = own.findIndex(({ text }) => text === label);
    if (at < 0) return [];
    const rest = own.slice(at + 1);
    const end = rest.findIndex(({ font, text }) => font === strong && /^\d+$/.test(text));
    const turns = joined(rest.slice(0, end).filter(({ font }) => font === mono));
    return [{ turns, length: Number(rest[end]!.text) }];
  });
  const setUpAt = own.findIndex(({ text }) => /^set-up$/i.test(text) || text === 'Set up');
  const afterSetUp = own.slice(setUpAt + 1);
  const setUpEnd = afterSetUp.findIndex(({ font }) => font !== mono);
  const setup = setUpAt < 0 ? '' : joined(afterSetUp.slice(0, setUpEnd < 0 ? undefined : setUpEnd));
  const slip = /turn (\d+) should be (\S+) ?, and not (\S+)/.exec(words);
  return {
    number,
    kind,
    page: own[0]!.page,
    letter,
    solutions,
    noneShorter: words.includes('none is shorter'),
    setup,
    slip: slip ? { turn: Number(slip[1]), now: slip[2]!, was: slip[3]! } : undefined,
    picture: kind === 'place' || kind === 'solve' ? pictures.shift() : undefined,
    words,
  };
}

/** Spans -> lines. A line ends at a space or between two turns, never inside a word, a turn, or a swatch's word. */
import type { Ink, Pt, Span } from './blocks.ts';
import { missingGlyphs, widthOf } from './fonts.ts';
import type { Face, LayoutFault } from './frames.ts';
import { slack } from './pieces.ts';
import { inks, monoInText, type TypeStyle } from './type.ts';

/** A stretch of a line in one face and colour; x from the line's start. */
export interface Run extends Face {
  readonly x: Pt;
  readonly text: string;
}

/** A colour's square before its name. */
export interface Swatch extends Pick<Span & { kind: 'swatch' }, 'fill' | 'letter' | 'letterInk'> {
  readonly x: Pt;
}

export interface Line {
  readonly width: Pt;
  readonly runs: readonly Run[];
  readonly swatches: readonly Swatch[];
}

/** A fault before it is known where its block comes from. */
export type Finding = Pick<LayoutFault, 'code' | 'what'>;

export interface Lines {
  readonly lines: readonly Line[];
  readonly findings: readonly Finding[];
}

/** Side of a swatch, white after it, and white before it inside a line, as shares of the size of the text. */
export const swatchSide = 0.78;
const swatchGap = 0.26;
const swatchLead = 0.12;
/** Size of a swatch's letter, as a share of the size of the text. */
export const swatchLetter = 0.62;

interface Fragment extends Face {
  readonly text: string;
  /** Of the text and the swatch before it. */
  readonly width: Pt;
  readonly textWidth: Pt;
  readonly swatch?: Omit<Swatch, 'x'>;
}

/** Fragments with no space between them, such as a turn and the comma after it. */
interface Word {
  readonly fragments: Fragment[];
  width: Pt;
}

/** Turns as printed: the prime sign in place of the apostrophe that files are written with. */
export const printed = (turn: string): string => turn.replaceAll("'", '\u2032');

const lineSpace = /[ \t\r\n]+/;

const sameFace = (a: Face, b: Face): boolean => a.font === b.font && a.size === b.size && a.colour === b.colour;

const measureFragment = (text: string, face: Face, swatch: Fragment['swatch']): Fragment => {
  const textWidth = widthOf(face.font, text, face.size);
  if (!swatch) return { ...face, text, textWidth, width: textWidth };
  return { ...face, text, textWidth, width: textWidth + (swatchLead + swatchSide + swatchGap) * face.size, swatch };
};

/** Collects fragments into words; a space between two fragments starts a new word. */
const splitWords = (spans: readonly Span[], style: TypeStyle, ink: Ink | undefined): Word[] => {
  const words: Word[] = [];
  let joins = false;
  const put = (text: string, face: Face, swatch?: Fragment['swatch']): void => {
    if (!joins || words.length === 0) words.push({ fragments: [], width: 0 });
    joins = true;
    const word = words.at(-1)!;
    const last = word.fragments.at(-1);
    // Measured anew as one: letters are kerned across the border of two spans that look alike.
    const whole = last && !swatch && sameFace(last, face) ? word.fragments.pop() : undefined;
    const fragment = measureFragment((whole?.text ?? '') + text, face, swatch ?? whole?.swatch);
    word.width += fragment.width - (whole?.width ?? 0);
    word.fragments.push(fragment);
  };
  const putText = (text: string, face: Face, swatch?: Fragment['swatch']): void => {
    const [before, ...rest] = text.split(lineSpace);
    const isSpaced = before === '' && rest.length > 0;
    if (isSpaced) joins = false;
    const parts = isSpaced ? rest : [before!, ...rest];
    for (const [i, word] of parts.entries()) {
      if (i > 0) joins = false;
      // A colour without a name is still shown.
      if (word !== '' || (i === 0 && swatch)) put(word, face, i === 0 ? swatch : undefined);
    }
  };
  const size = style.size;
  const colour = inks[ink ?? style.ink];
  // Stress stands out of a grey label by its ink too, unless the whole block was asked to be grey.
  const strong: Face = { size, font: 'sans-strong', colour: inks[ink ?? 'black'] };
  let lastKind: Span['kind'] | undefined;
  for (const span of spans) {
    switch (span.kind) {
      case 'plain':
        putText(span.text, { size, font: style.font, colour: span.ink ? inks[span.ink] : colour });
        break;
      case 'strong':
        putText(span.text, strong);
        break;
      case 'swatch':
        putText(span.text, span.strong ? strong : { size, colour, font: style.font }, span);
        break;
      case 'turns': {
        const face = { colour, font: 'mono', size: Math.round(size * monoInText * 10) / 10 } as const;
        if (lastKind === 'turns') joins = false;
        for (const [i, turn] of span.turns.entries()) {
          if (i > 0) joins = false;
          if (turn !== '') put(printed(turn), face);
        }
        break;
      }
    }
    lastKind = span.kind;
  }
  return words;
};

/** Between two faces the narrower space stands: that of the even-width face would tear a hole into running text. */
const spaceBetween = (before: Word, after: Word): Pt => {
  const [a, b] = [before.fragments.at(-1)!, after.fragments[0]!];
  return Math.min(widthOf(a.font, ' ', a.size), widthOf(b.font, ' ', b.size));
};

const widthOfWords = (words: readonly Word[]): Pt =>
  words.reduce((sum, word, i) => sum + word.width + (i > 0 ? spaceBetween(words[i - 1]!, word) : 0), 0);

const fillGreedily = (words: readonly Word[], width: Pt): Word[][] => {
  const lines: Word[][] = [];
  let used = 0;
  for (const word of words) {
    const line = lines.at(-1);
    const before = line ? used + spaceBetween(line.at(-1)!, word) : 0;
    if (line && before + word.width <= width + slack) {
      line.push(word);
      used = before + word.width;
    } else {
      lines.push([word]);
      used = word.width;
    }
  }
  return lines;
};

/** A last line shorter than this share of the width looks left over, if it is a single word. */
const lonely = 0.2;
/** The line above is not emptied below this share of the width to keep the last word company. */
const full = 0.6;

const keepLastWordCompany = (lines: Word[][], width: Pt): void => {
  const last = lines.at(-1);
  const above = lines.at(-2);
  if (!last || !above || last.length > 1 || above.length < 3 || last[0]!.width > lonely * width) return;
  if (widthOfWords(above.slice(0, -1)) < full * width) return;
  const moved = above.at(-1)!;
  if (moved.width + spaceBetween(moved, last[0]!) + last[0]!.width > width + slack) return;
  last.unshift(above.pop()!);
};

/**
 * As few runs as faces allow. The space between two runs belongs to one of them, so that copied text has it once: to the
 * first, or to the second where a space in the first one's face would reach into it.
 */
const setLine = (words: readonly Word[]): Line => {
  const runs: Run[] = [];
  const swatches: Swatch[] = [];
  let x = 0;
  let current: { x: Pt; text: string; face: Face } | undefined;
  const close = (): void => {
    if (current && current.text !== '') runs.push({ ...current.face, x: current.x, text: current.text });
    current = undefined;
  };
  for (const [i, word] of words.entries()) {
    if (i > 0) {
      const gap = spaceBetween(words[i - 1]!, word);
      const first = word.fragments[0]!;
      const reaches = current && !first.swatch && widthOf(current.face.font, ' ', current.face.size) > gap;
      if (reaches) {
        close();
        const { font, size, colour } = first;
        current = { x, text: '', face: { font, size, colour } };
      }
      if (current) current.text += ' ';
      x += gap;
    }
    for (const { text, textWidth, swatch, font, size, colour } of word.fragments) {
      const face = { font, size, colour };
      if (swatch) {
        close();
        // The first of a line stands at its edge: the line comes out a little shorter than it was counted.
        if (x > 0) x += swatchLead * size;
        swatches.push({ ...swatch, x });
        x += (swatchSide + swatchGap) * size;
      }
      if (current && !sameFace(current.face, face)) close();
      current ??= { x, text: '', face };
      current.text += text;
      x += textWidth;
    }
  }
  close();
  return { width: x, runs, swatches };
};

const findingsOf = (words: readonly Word[], width: Pt): Finding[] => {
  const findings: Finding[] = [];
  for (const word of words) {
    for (const { font, text, swatch } of word.fragments) {
      for (const what of missingGlyphs(font, text)) findings.push({ code: 'missing-glyph', what });
      for (const what of missingGlyphs('sans-strong', swatch?.letter ?? '')) {
        findings.push({ code: 'missing-glyph', what });
      }
    }
    if (word.width > width + slack) {
      findings.push({ code: 'word-too-wide', what: word.fragments.map((fragment) => fragment.text).join('') });
    }
  }
  return findings;
};

/** Papers of a class say most things alike: each is broken once. */
const known = new Map<string, Lines>();
const MOST_KNOWN = 20_000;

/**
 * Lines no wider than `width`, filled greedily: at these measures an optimal breaking gains little and makes the
 * break of one line depend on words far below. A word wider than `width` stands on a line of its own and is a finding.
 */
export const breakLines = (spans: readonly Span[], style: TypeStyle, width: Pt, ink?: Ink): Lines => {
  const key = JSON.stringify([spans, style, width, ink]);
  const found = known.get(key);
  if (found) return found;
  const words = splitWords(spans, style, ink);
  const lines = fillGreedily(words, width);
  keepLastWordCompany(lines, width);
  const broken = { lines: lines.map(setLine), findings: findingsOf(words, width) };
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(key, broken);
  return broken;
};

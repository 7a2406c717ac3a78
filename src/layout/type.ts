/**
 * The one type scale. Every leading is a multiple of 3 points, so that columns of different styles meet again after
 * a few lines: five lines of notes are as tall as four of body.
 */
import type { Ink, Pt, TextStyle } from './blocks.ts';
import type { FontName } from './frames.ts';

export interface TypeStyle {
  readonly font: FontName;
  readonly size: Pt;
  readonly leading: Pt;
  readonly ink: Ink;
}

/** `turns`, `words` and `ring` are the parts of a turns block: the turns, the words under a group, the length. */
export type StyleName = TextStyle | 'turns' | 'words' | 'large-turns' | 'large-words' | 'ring';

export const typeScale: Readonly<Record<StyleName, TypeStyle>> = {
  title: { font: 'sans-strong', size: 21, leading: 27, ink: 'black' },
  heading: { font: 'sans-strong', size: 12, leading: 18, ink: 'black' },
  panel: { font: 'sans-strong', size: 10.8, leading: 15, ink: 'black' },
  body: { font: 'sans', size: 10.8, leading: 15, ink: 'black' },
  note: { font: 'sans', size: 9, leading: 12, ink: 'black' },
  label: { font: 'sans', size: 8, leading: 12, ink: 'grey' },
  foot: { font: 'sans', size: 8, leading: 12, ink: 'grey' },
  turns: { font: 'mono', size: 10, leading: 15, ink: 'black' },
  words: { font: 'sans', size: 7.5, leading: 9, ink: 'grey' },
  'large-turns': { font: 'mono', size: 14, leading: 21, ink: 'black' },
  'large-words': { font: 'sans', size: 9, leading: 12, ink: 'grey' },
  ring: { font: 'sans-strong', size: 8.5, leading: 15, ink: 'black' },
};

/**
 * Pure black for text: a laser printer or copier sets it solid, where a near-black is screened into dots.
 * The grey is 6.6:1 against white, above the 4.5:1 that WCAG 2.2 asks of text (1.4.3).
 */
export const inks: Readonly<Record<Ink, string>> = { black: '#000000', grey: '#5f5d57' };

/** Thin lines that part panels and columns: decoration, so lighter than text may be. */
export const hairline = { colour: '#a19e94', width: 0.6 } as const;
export const heavyLine = { colour: '#000000', width: 0.9 } as const;

/** The even-width face looks larger than the sans at one size: its small letters are a ninth taller. */
export const monoInText = 0.92;

/** Height of capitals as a share of the size: what is centred in a line. */
const capitals: Readonly<Record<FontName, number>> = { sans: 0.66, 'sans-strong': 0.66, mono: 0.714 };

/** From the middle of a line of capitals down to the baseline. */
export const belowMiddle = (font: FontName, size: Pt): Pt => (capitals[font] * size) / 2;

/** From the top of a line to its baseline: capitals stand in the middle of the leading. */
export const baseline = (style: TypeStyle): Pt => style.leading / 2 + belowMiddle(style.font, style.size);

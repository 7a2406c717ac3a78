/** Spans and lines that every sheet is made of. */
import type { Span, TextBlock, TextStyle } from '../layout/blocks.ts';

export const plain = (text: string): Span => ({ kind: 'plain', text });
export const grey = (text: string): Span => ({ kind: 'plain', text, ink: 'grey' });
export const strong = (text: string): Span => ({ kind: 'strong', text });

export const line = (style: TextStyle, ...spans: readonly Span[]): TextBlock => ({
  kind: 'text',
  role: 'P',
  style,
  spans,
});
export const note = (...spans: readonly Span[]): TextBlock => line('note', ...spans);

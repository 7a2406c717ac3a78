/** Blocks that every sheet is made of, said in few words; fields that few blocks have are added where they are used. */
import type {
  Block,
  ColumnsBlock,
  FigureBlock,
  Pt,
  SpaceBlock,
  Span,
  StackBlock,
  TextBlock,
} from '../layout/blocks.ts';
import type { Scene } from '../svg/scene.ts';

export const space = (height: Pt): SpaceBlock => ({ kind: 'space', height });

export const figure = (scene: Scene, width: Pt): FigureBlock => ({ kind: 'figure', scene, width });

/** Below each other; may be parted between two. */
export const stack = (gap: Pt, ...children: readonly Block[]): StackBlock => ({ kind: 'stack', gap, children });
/** Below each other on one page. */
export const whole = (gap: Pt, ...children: readonly Block[]): StackBlock => ({
  ...stack(gap, ...children),
  keep: true,
});

/** A width, and what stands there. */
export type Cell = readonly [Pt | 'rest', Block];
/** Beside each other, each with its width; those of the rest share what is left evenly. */
export const columns = (gap: Pt, ...cells: readonly Cell[]): ColumnsBlock => ({
  kind: 'columns',
  gap,
  columns: cells.map(([width, child]) => ({ width: width === 'rest' ? { share: 1 } : width, child })),
});

/** `rest`: an entry of the outline, or where it comes from. */
export const h1 = (spans: readonly Span[], rest: Partial<TextBlock>): TextBlock => ({
  kind: 'text',
  role: 'H1',
  style: 'title',
  spans,
  ...rest,
});
/** Over a part of the sheet, on one page with what follows. */
export const h2 = (spans: readonly Span[], rest: Partial<TextBlock> = {}): TextBlock => ({
  kind: 'text',
  role: 'H2',
  style: 'heading',
  spans,
  keepWithNext: true,
  ...rest,
});
/** Over an item. */
export const h3 = (spans: readonly Span[], rest: Partial<TextBlock> = {}): TextBlock => ({
  kind: 'text',
  role: 'H3',
  style: 'panel',
  spans,
  ...rest,
});

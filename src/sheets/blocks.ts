/** Blocks that every sheet is made of, said in few words; fields that few blocks have are added where they are used. */
import type {
  Block,
  ColumnsBlock,
  FigureBlock,
  GridBlock,
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

/** A picture of a width, and what is said at its right. */
export const beside = (gap: Pt, scene: Scene, width: Pt, right: Block): ColumnsBlock =>
  columns(gap, [width, figure(scene, width)], ['rest', right]);

/** Cells in rows; without `least` as many beside each other as are given. */
export const grid = (cells: readonly Block[], shape: Omit<GridBlock, 'kind' | 'cells'>): GridBlock => ({
  kind: 'grid',
  ...shape,
  cells,
});

type Heading = (spans: readonly Span[], rest?: Partial<TextBlock>) => TextBlock;
const heading =
  (role: TextBlock['role'], style: TextBlock['style']): Heading =>
  (spans, rest) => ({ kind: 'text', role, style, spans, ...rest });
/** `rest`: an entry of the outline, or where it comes from. On one page with what follows, as all headings are. */
export const h1 = heading('H1', 'title');
/** Over a part of the sheet. */
export const h2 = heading('H2', 'heading');
/** Over an item. */
export const h3 = heading('H3', 'panel');

/**
 * Pieces -> pages. Fills each page from the top, as far as it goes, and never looks back.
 *
 * Why it ends, and why nothing is lost: pieces are first cut into chunks at every place where a page may end. A chunk
 * is one strip, or several that are glued in a chain. A chain taller than a page cannot be kept together by any means,
 * so it is cut into single strips beforehand. Then each chunk is met once: it goes on this page, or on a new one if
 * this page already holds something, or, if it is taller than a whole page, it is a fault and left out. Every step
 * uses up one chunk, so there are as many steps as chunks and at most as many pages.
 */
import type { Pt } from './blocks.ts';
import type { PageShape } from './paper.ts';
import { emptySink, type Piece, type Sink, type Strip, slack, solid } from './pieces.ts';
import { nameOf, type Report } from './report.ts';

interface Chunk {
  /** White between this and what came before; vanishes at the top of a page. */
  readonly before: readonly Piece[];
  readonly pieces: readonly Piece[];
}

const cutIntoChunks = (pieces: readonly Piece[], isBreak: (strip: Strip) => boolean): Chunk[] => {
  const chunks: Chunk[] = [];
  let before: Piece[] = [];
  let chain: Piece[] = [];
  for (const piece of pieces) {
    if (piece.kind === 'glue' && chain.length === 0) {
      before.push(piece);
      continue;
    }
    chain.push(piece);
    if (piece.kind === 'strip' && isBreak(piece)) {
      chunks.push({ before, pieces: chain });
      before = [];
      chain = [];
    }
  }
  // The last strip of all may be glued to what never comes; white after it is nobody's.
  const end = chain.findLastIndex((piece) => piece.kind === 'strip');
  if (end >= 0) chunks.push({ before, pieces: chain.slice(0, end + 1) });
  return chunks;
};

/** Chunks of which only single strips may be taller than a page. */
const chunksWithin = (pieces: readonly Piece[], room: Pt): readonly Chunk[] =>
  cutIntoChunks(pieces, (strip) => !strip.glued).flatMap((chunk) => {
    if (solid(chunk.pieces).height <= room + slack) return [chunk];
    return cutIntoChunks([...chunk.before, ...chunk.pieces], () => true);
  });

/** At least one page, however little there is. */
export const flow = (pieces: readonly Piece[], shape: PageShape, report: Report): readonly Sink[] => {
  const room = shape.bottom - shape.top;
  const pages: Sink[] = [emptySink()];
  let y = shape.top;
  let isFresh = true;

  const put = (placed: readonly Piece[]): void => {
    for (const piece of placed) {
      piece.place?.(pages.at(-1)!, shape.left, y, piece.height);
      y += piece.height;
    }
    isFresh = false;
  };

  for (const { before, pieces: chunk } of chunksWithin(pieces, room)) {
    const { height } = solid(chunk);
    if (height > room + slack) {
      const block = chunk.find((piece) => piece.kind === 'strip')?.block;
      if (block) report.addFaults([{ code: 'block-too-tall', what: nameOf(block) }], block.origin);
      continue;
    }
    if (!isFresh && y + solid(before).height + height <= shape.bottom + slack) {
      put([...before, ...chunk]);
      continue;
    }
    if (!isFresh) {
      pages.push(emptySink());
      y = shape.top;
    }
    put(chunk);
  }
  return pages;
};

/** The open view with nothing on it but the centres, to mark a piece on; and the same with the piece, for a key. */
import { type Cube, type Piece, solvedCube } from '../cube/cube.ts';
import { cubeEdges, ground, type Look, letters, pieceMarks, type SeenSticker, seenStickers } from './marks.ts';
import { OPEN_VIEW } from './open-view.ts';
import type { Scene } from './scene.ts';

function scene(stickers: readonly SeenSticker[], look: Look, description: string): Scene {
  const { width, height } = OPEN_VIEW;
  const main = stickers.filter((s) => s.role === 'main');
  return {
    width,
    height,
    marks: [
      ...stickers.map((s) => ground(s, look)),
      ...cubeEdges(OPEN_VIEW, look.ink),
      ...pieceMarks(main, look),
      ...letters([...stickers.filter((s) => s.role === 'centre'), ...main], look),
    ],
    description,
  };
}

/** `description` says what is to be marked. */
export const drawBlank = (look: Look, description: string): Scene =>
  scene(
    seenStickers(solvedCube(), OPEN_VIEW, ({ piece }) => (piece === undefined ? 'centre' : 'other')),
    look,
    description,
  );

/** One piece on an otherwise grey cube: an answer to "where is it?". */
export const drawPlace = (cube: Cube, piece: Piece, look: Look, description: string): Scene =>
  scene(
    seenStickers(cube, OPEN_VIEW, (s) => (s.piece === undefined ? 'centre' : s.piece === piece ? 'main' : 'other')),
    look,
    description,
  );

/** Papers: their sizes, margins and the line of the foot. */
import { mm, type Paper, type Pt } from './blocks.ts';

/** ISO 216 A4 and ANSI letter. */
const sizes: Readonly<Record<Paper, readonly [Pt, Pt]>> = {
  a4: [595.28, 841.89],
  letter: [612, 792],
  a5: [419.53, 595.28],
};

const sides: Readonly<Record<Paper, Pt>> = { a4: mm(16), letter: mm(16), a5: mm(12) };
const head = mm(15);
/** From the paper's lower edge to the lower edge of the foot's text: outside what office printers leave white. */
const footEdge = mm(11);
const footLeading = 12;
const footPadding = 6;
/** White between the last block and the rule over the foot. */
const aboveFoot = 9;

/** A page's edges and the area that blocks may fill, in points from the top left corner. */
export const pageShape = (paper: Paper) => {
  const [width, height] = sizes[paper];
  const side = sides[paper];
  const footTop = height - footEdge - footLeading;
  const footRule = footTop - footPadding;
  return {
    width,
    height,
    left: side,
    right: width - side,
    top: head,
    bottom: footRule - aboveFoot,
    /** The rule over the foot. */
    footRule,
    /** Top of the foot's line of text. */
    footTop,
  };
};

export type PageShape = Readonly<ReturnType<typeof pageShape>>;

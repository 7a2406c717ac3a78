/** What texts about pairs are told: where pieces are, what a phase does, what is left unsolved. */
import type { Colour, PlaceName, Side } from '../../words/said.ts';
import type { Slot } from './slots.ts';

/** Where one piece of a pair is, as far as a description says it. */
export type PieceWhere =
  | { readonly at: 'own-slot'; readonly solved: boolean }
  | { readonly at: 'top' | 'slot' | 'elsewhere'; readonly place: PlaceName };

/** A piece with one sticker of it: `colour` looks towards `side`. */
export interface PieceSaid {
  readonly where: PieceWhere;
  readonly colour: Colour;
  readonly side: Side;
}

/**
 * What a stretch does, from where the pair is before and after it.
 *
 *   turn-cube                        the whole cube, nothing else
 *   turn-top                         turns of the top with nothing after them that they prepare
 *   edge-out corner-out both-out     these come from slots to the top
 *   edge-in corner-in both-in        these go from the top into slots, the pair unsolved
 *   join split                       both on top before and after, now joined or split
 *   regroup                          both on top before and after, now neither
 *   insert                           both on top before, the pair solved after
 *   solve                            the pair solved after, a piece in a slot before: lift and insert in one
 *   shift                            anything else: pieces change slots
 */
export const DEEDS = [
  'turn-cube',
  'turn-top',
  'edge-out',
  'corner-out',
  'both-out',
  'edge-in',
  'corner-in',
  'both-in',
  'join',
  'split',
  'regroup',
  'insert',
  'solve',
  'shift',
] as const;
export type Deed = (typeof DEEDS)[number];

/** What is not home, as the viewer of the set-up sees it. */
export interface Unsolved {
  readonly corner: boolean;
  readonly edge: boolean;
  /** Kept slots. */
  readonly slots: readonly Slot[];
  /** Cross edges, by the side they belong to: `F`. */
  readonly cross: readonly string[];
}

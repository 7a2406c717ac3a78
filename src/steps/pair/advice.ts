/** Advice for pairs: what a rule can say to do. */
import type { Face } from '../../cube/faces.ts';
import type { Turn } from '../../cube/turns.ts';
import type { Advice } from '../../rules/world.ts';
import type { Address } from './address.ts';
import type { Family } from './cases.ts';
import { COLOURS_NAMED, type ColourNamed } from './features.ts';

/**
 * Where the piece that is not lifted goes while the other one is. hidden: the lifting face takes it out of the top;
 * together: that face carries it along on top, or both come up at once; direct: the face does not touch it.
 */
export const WAYS = ['hidden', 'direct', 'together'] as const;
export type Way = (typeof WAYS)[number];
/**
 * Where the piece on top stands when the face first turns that lifts the other one out of its slot; the side is the
 * slot's other face. An edge across from the face or the side stands above the face opposite to it, a corner is across
 * from the slot. cross along: the cross colour of the corner looks neither to the face that lifts, nor away from it, nor up.
 */
export const STANDINGS = [
  'over the slot',
  'in the face',
  'at the side',
  'across',
  'across the side',
  'cross along',
] as const;
export type Standing = (typeof STANDINGS)[number];
/**
 * How the top turns while the face is up. clear: so that nothing of the pair on top is in the face when it goes back. Or
 * what was lifted goes a quarter turn to the slot's other face, a quarter turn away from it, a half turn.
 */
export const BETWEENS = ['clear', 'to the side', 'from the side', 'half'] as const;
export type Between = (typeof BETWEENS)[number];
/** What the lifting face's first turn brings up: a colour of the lifted piece. */
export type Raising = 'cross' | 'not cross' | `${'like' | 'unlike'} ${ColourNamed}`;
export const RAISINGS: readonly Raising[] = [
  'cross',
  'not cross',
  ...COLOURS_NAMED.flatMap((name): Raising[] => [`like ${name}`, `unlike ${name}`]),
];
export const LIFTED_PIECES = ['corner', 'edge', 'both'] as const;
export type LiftedPiece = (typeof LIFTED_PIECES)[number];

export type Aim =
  | { readonly kind: 'joined' | 'split' }
  | { readonly kind: 'family'; readonly family: Family }
  | { readonly kind: 'case'; readonly case: Address }
  /** Solved by a turn of U at most and these turns, seen from any side or in a mirror. */
  | { readonly kind: 'insert'; readonly turns: readonly Turn[] };

/** It says where to get to, and leaves the way on from there to what students know. */
export const leadsOn = ({ kind }: Aim): boolean => kind === 'family' || kind === 'case';

export interface PairAdvice extends Advice {
  readonly aim: Aim;
  /** The viewer's faces of which one does the lifting; with neither them nor `by` nothing is taken out first. */
  readonly lift: readonly Face[];
  /** Undefined: any piece that is away; where none is, one that is home; where none is, none need come up. */
  readonly piece?: LiftedPiece | undefined;
  readonly way?: Way | undefined;
  readonly stands?: Standing | undefined;
  readonly between?: Between | undefined;
  /** Of the faces the one that brings this up. */
  readonly up?: Raising | undefined;
  /** In place of lifting with one turn. */
  readonly by?: readonly Turn[] | undefined;
}

/** The words of this step, out of a table that has those of every step. */
import type { Words } from '../../words/words.ts';
import type { english } from './english.ts';

export type PairWords = typeof english;

export const pairWords = ({ steps }: Pick<Words, 'steps'>): PairWords => steps.pairs as PairWords;

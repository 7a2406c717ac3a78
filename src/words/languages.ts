/** The tables of fixed words there are. */
import { english } from './english.ts';
import type { Words } from './words.ts';

export const LANGUAGES: Readonly<Record<'en', Words>> = { en: english };

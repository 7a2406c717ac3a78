/** The tables of fixed words that every step shares; src/steps/languages.ts adds those of each step. */
import { english } from './english.ts';
import type { CommonWords } from './words.ts';

export type Language = 'en';

export const LANGUAGES: Readonly<Record<Language, CommonWords>> = { en: english };

/** All words that are printed in a language: those that every step shares, and each step's own. */
import { LANGUAGES, type Language } from '../words/languages.ts';
import type { Words } from '../words/words.ts';
import { steps } from './steps.ts';

/** All words of a language, each step's own among them. */
export const wordsIn = (language: Language): Words => ({
  ...LANGUAGES[language],
  steps: Object.fromEntries(steps().map(({ name, words }) => [name, words[language]])),
});

/** How all sheets of a lesson are made: its language, its club's words, its way to write wide turns, and the ink. */
import type { ProvedLesson } from '../lesson/prove.ts';
import type { Ink } from '../svg/palette.ts';
import { LANGUAGES } from '../words/languages.ts';
import { withClubWords } from '../words/rename.ts';
import type { Making } from './phrases.ts';

export const makingOf = ({ lesson }: ProvedLesson, ink: Ink): Making => ({
  words: withClubWords(LANGUAGES[lesson.language], lesson.clubWords),
  ink,
  wide: lesson.wide,
});

/** How all sheets of a lesson are made: its language, its club's words, its way to write wide turns, and the ink. */
import type { WideSpelling } from '../cube/turns.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import { wordsOfLesson } from '../lesson/rule-words.ts';
import type { Ink } from '../svg/palette.ts';
import type { Words } from '../words/words.ts';

/** How the parts of a sheet are made: the same for all of one sheet. */
export interface Making {
  readonly words: Words;
  readonly ink: Ink;
  /** How the club writes wide turns. */
  readonly wide: WideSpelling;
}

/** As the lesson has it: its language, its club's words, its spelling of wide turns. */
export const makingOf = ({ lesson }: ProvedLesson, ink: Ink): Making => ({
  words: wordsOfLesson(lesson),
  ink,
  wide: lesson.wide,
});

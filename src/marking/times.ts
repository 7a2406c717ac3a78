/** Times in place of turns, as the boxes of a drill ask for: they are not marked, and no figure counts them. */
import { pointsOf } from './points.ts';
import type { MarkedRow } from './submission.ts';

const TIME = /^(?:\d{1,2}:)?\d{1,3}(?:[.,]\d{1,3})?(?:s|sec|seconds)?[.,]?$/i;
const LONGEST = 200;

/** `12.4`, `12,4 s`, `1:02.3`; also several of them, with spaces or strokes between. */
export function isTimes(answer: string): boolean {
  if (answer.length > LONGEST) return false;
  const parts = answer
    .trim()
    .replaceAll(/\s+(?=s(?:ec(?:onds)?)?\b)/gi, '')
    .split(/[\s;/|]+/);
  return parts.every((part) => TIME.test(part));
}

/** A row that is not marked since its answer is a time; the coach's own mark counts all the same. */
export const isTimed = ({ verdict, answer, mark }: MarkedRow): boolean =>
  verdict === 'empty' && isTimes(answer) && pointsOf(mark) === undefined;

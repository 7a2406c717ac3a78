/** The bytes of a lesson file -> what can be said of it: the way from a file to a ProvedLesson, in one call. */

import type { Problem } from './problem.ts';
import { type Outcome, ProvedLesson } from './prove.ts';
import { type ReadLesson, readLesson } from './read.ts';
import { type Source, sourceOf } from './source.ts';
import { type Variation, vary } from './vary.ts';

/** Varied before it is proved: whatever is printed was proved as it is printed. */
function outcomeOf(read: ReadLesson, variation: Variation): Outcome {
  const { lesson, problems } = read;
  if (!lesson) return { proved: undefined, claims: [], ruleClaims: [], problems };
  const varied = vary(lesson, variation);
  if ('impossible' in varied) {
    const span = { start: 0, end: 0 };
    const hint = 'choose another front colour';
    const impossible: Problem = { code: 'variation-impossible', span, message: varied.impossible, hint };
    return { proved: undefined, claims: [], ruleClaims: [], problems: [...problems, impossible] };
  }
  return ProvedLesson.prove({ lesson: varied.lesson, problems: [...problems, ...varied.problems] });
}

export interface Loaded extends Outcome {
  readonly source: Source;
}

/** Undefined if the bytes are not UTF-8. The decoder drops a byte-order mark. */
export function sourceOfBytes(file: string, bytes: Uint8Array): Source | undefined {
  try {
    return sourceOf(file, new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return undefined;
  }
}

/** `file` is the name by which messages and claims call it. Line ends may be those of any system. */
export function loadLesson(file: string, bytes: Uint8Array, variation: Variation = {}): Loaded {
  const source = sourceOfBytes(file, bytes);
  if (!source) {
    const message = 'the file is not UTF-8 text';
    const hint = 'save it as UTF-8 in your editor';
    const span = { start: 0, end: 0 };
    return {
      source: sourceOf(file, ''),
      proved: undefined,
      claims: [],
      ruleClaims: [],
      problems: [{ code: 'file-not-utf8', span, message, hint }],
    };
  }
  const outcome = outcomeOf(readLesson(source), variation);
  return { source, ...outcome, problems: [...outcome.problems].sort((a, b) => a.span.start - b.span.start) };
}

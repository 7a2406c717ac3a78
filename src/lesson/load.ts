/** The bytes of a lesson file -> what can be said of it: the way from a file to a ProvedLesson, in one call. */
import { type Outcome, ProvedLesson } from './prove.ts';
import { readLesson } from './read.ts';
import type { Source } from './source.ts';

export interface Loaded extends Outcome {
  readonly source: Source;
}

/** `file` is the name by which messages and claims call it. Line ends may be those of any system. */
export function loadLesson(file: string, bytes: Uint8Array): Loaded {
  let text: string;
  try {
    // The decoder drops a byte-order mark.
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    const message = 'the file is not UTF-8 text';
    const hint = 'save it as UTF-8 in your editor';
    const span = { start: 0, end: 0 };
    return {
      source: { file, text: '' },
      proved: undefined,
      claims: [],
      problems: [{ code: 'file-not-utf8', span, message, hint }],
    };
  }
  const source = { file, text };
  const { lesson, problems } = readLesson(source);
  const outcome = lesson ? ProvedLesson.prove(lesson, problems) : { proved: undefined, claims: [], problems };
  return { source, ...outcome, problems: [...outcome.problems].sort((a, b) => a.span.start - b.span.start) };
}

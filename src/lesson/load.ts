/** The bytes of a lesson file -> what can be said of it: the way from a file to a ProvedLesson, in one call. */

import { NOWHERE, type Problem } from './problem.ts';
import { type Outcome, ProvedLesson } from './prove.ts';
import { type ReadLesson, readLesson } from './read.ts';
import { type Source, sourceOf } from './source.ts';
import { type Variation, vary } from './vary.ts';

const nothing = (problems: readonly Problem[]): Outcome => ({
  proved: undefined,
  claims: [],
  ruleClaims: [],
  factClaims: [],
  problems,
});

/** Varied before it is proved: whatever is printed was proved as it is printed. */
function outcomeOf(read: ReadLesson, variation: Variation, of: 'all' | 'cases'): Outcome {
  const { lesson, problems } = read;
  if (!lesson) return nothing(problems);
  const varied = vary(lesson, variation);
  if ('impossible' in varied) {
    const hint = 'choose another front colour';
    return nothing([...problems, { code: 'variation-impossible', span: NOWHERE, message: varied.impossible, hint }]);
  }
  const whole = varied.lesson;
  const wanted = of === 'all' ? whole : { ...whole, rules: [], facts: [], plan: undefined };
  return ProvedLesson.prove({ lesson: wanted, problems: [...problems, ...varied.problems] });
}

/** A lesson read and proved, and all that was found. */
export interface Loaded extends Outcome {
  readonly source: Source;
  /** The same lesson for other students; as it was read, not as it was varied before. One object a variation. */
  readonly again: (variation: Variation) => Outcome;
}

/** Undefined if the bytes are not UTF-8. The decoder drops a byte-order mark. */
export function sourceOfBytes(file: string, bytes: Uint8Array): Source | undefined {
  try {
    return sourceOf(file, new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return undefined;
  }
}

/**
 * `file` is the name by which messages and claims call it. Line ends may be those of any system. `of`: cases, without the
 * rules, is enough for a lesson of which only cases are wanted.
 */
export function loadLesson(file: string, bytes: Uint8Array, variation?: Variation, of?: 'all' | 'cases'): Loaded {
  const source = sourceOfBytes(file, bytes);
  if (source) return loadSource(source, variation, of);
  const message = 'the file is not UTF-8 text';
  const hint = 'save it as UTF-8 in your editor';
  const outcome = nothing([{ code: 'file-not-utf8', span: NOWHERE, message, hint }]);
  return { source: sourceOf(file, ''), ...outcome, again: () => outcome };
}

/** The same for a text that is read already. */
export function loadSource(source: Source, variation: Variation = {}, of: 'all' | 'cases' = 'all'): Loaded {
  const read = readLesson(source);
  const known = new Map<string, Outcome>();
  const again = (other: Variation): Outcome => {
    const key = JSON.stringify(other);
    const outcome = known.get(key) ?? outcomeOf(read, other, of);
    known.set(key, outcome);
    return outcome;
  };
  const outcome = again(variation);
  return { source, ...outcome, problems: [...outcome.problems].sort((a, b) => a.span.start - b.span.start), again };
}

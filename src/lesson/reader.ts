/** Reading single values of a lesson: texts, turns, addresses, holds. What is wrong is told, and nothing given back. */
import { isScalar } from 'yaml';
import {
  type Colour,
  coloursHeld,
  type FaceColours,
  type Hold,
  oppositeColour,
  USUAL_SCHEME,
} from '../cube/colours.ts';
import { readTurns } from '../cube/notation.ts';
import type { Turn } from '../cube/turns.ts';
import type { Subject, Where } from '../steps/subject.ts';
import { listed } from '../text/likely.ts';
import type { Prose, TextLine } from './lesson.ts';
import type { Problem } from './problem.ts';
import { readProse, readTextLine } from './prose.ts';
import type { Format } from './schema.ts';
import { unprintable } from './unprintable.ts';
import { isTightDash, TIGHT_DASH } from './yaml-errors.ts';
import { nodeAt, type Path, spanAt, valueOffsets, type YamlText } from './yaml-text.ts';

export interface Reader {
  readonly format: Format;
  readonly yaml: YamlText;
  readonly problems: Problem[];
}

/** What is wrong with the value at a path; nothing is given back in its place. */
export function tell(r: Reader, path: Path, said: Omit<Problem, 'span'>): undefined {
  r.problems.push({ ...said, span: spanAt(r.yaml, path) });
}

/** A `#` after a space begins a comment in YAML: what was meant to be printed may stand behind it. */
function tellComment(r: Reader, path: Path): void {
  const node = nodeAt(r.yaml, path);
  if (!node?.comment || !isScalar(node) || node.type !== 'PLAIN' || !node.range) return;
  const hash = r.yaml.text.indexOf('#', node.range[1]);
  if (hash < 0 || r.yaml.text.slice(node.range[1], hash).includes('\n')) return;
  const start = r.yaml.toSource(hash);
  r.problems.push({
    code: 'text-cut-off',
    span: { start, end: start + 1 + node.comment.split('\n')[0]!.length },
    message: 'everything from # on is a comment and is not printed',
    hint: 'put the whole text in double quotes, if it was meant to be',
  });
}

/** What of the text at a path no page can show. */
export function tellUnprintable(r: Reader, path: Path, text: string): void {
  const offsetOf = valueOffsets(r.yaml, path);
  for (const { at, size, ...said } of unprintable(text)) {
    const start = offsetOf(at);
    r.problems.push({ ...said, span: { start, end: start + size } });
  }
}

export function proseAt(r: Reader, path: Path, text: string | undefined): Prose {
  if (text === undefined) return [];
  tellComment(r, path);
  tellUnprintable(r, path, text);
  const { prose, problems } = readProse(text, valueOffsets(r.yaml, path));
  r.problems.push(...problems);
  return prose;
}

export function textLineAt(r: Reader, path: Path, text: string | undefined): TextLine | undefined {
  if (text === undefined) return undefined;
  tellComment(r, path);
  tellUnprintable(r, path, text);
  const { phrases, problems } = readTextLine(text, valueOffsets(r.yaml, path));
  r.problems.push(...problems);
  return { phrases, span: spanAt(r.yaml, path) };
}

export function turnsAt(r: Reader, path: Path, text: string): Turn[] | undefined {
  const reading = readTurns(text);
  if (!reading.ok) {
    const start = valueOffsets(r.yaml, path)(reading.at);
    const span = { start, end: start + Math.max(1, reading.size) };
    const { message, hint } = reading;
    const isTight = isTightDash(r.yaml.source.text, start);
    r.problems.push({ ...(isTight ? TIGHT_DASH : { code: 'turns-unreadable', message, hint }), span });
    return undefined;
  }
  if (reading.turns.length === 0) {
    const message = 'no turns are written here';
    return tell(r, path, { code: 'turns-missing', message, hint: "write them, as in R U' R'" });
  }
  return isCutOff(r, path) ? undefined : reading.turns;
}

/** A `#` after a space begins a comment in YAML, and turns behind it are lost without a word. */
function isCutOff(r: Reader, path: Path): boolean {
  const comment = nodeAt(r.yaml, path)?.comment;
  const lost = comment ? readTurns(comment) : undefined;
  if (!comment || !lost?.ok || lost.turns.length === 0) return false;
  const start = valueOffsets(r.yaml, path)(0);
  const hash = r.yaml.source.text.indexOf('#', start);
  r.problems.push({
    code: 'turns-cut-off',
    span: { start: hash, end: hash + 1 + comment.length },
    message: 'everything from # on is a comment, these turns too',
    hint: 'take the # out',
  });
  return true;
}

/** The case at an address. */
export function addressAt(r: Reader, path: Path, text: string, where: Where): Subject | undefined {
  const { step } = r.format;
  return step.at(text, where) ?? tell(r, path, { code: 'address-unreadable', ...step.lesson.wrongAddress(text) });
}

export interface Held {
  readonly hold: Hold;
  readonly colours: FaceColours;
}

/** Any hold at all: cases are read in it when the lesson's own cannot be. */
export const SOME_HOLD: Held = { hold: { up: USUAL_SCHEME.U, front: USUAL_SCHEME.F }, colours: USUAL_SCHEME };

/** The hold given by cross and front colour. */
export function holdAt(
  r: Reader,
  path: Path,
  scheme: FaceColours,
  { cross, front }: { readonly cross: Colour; readonly front: Colour },
): Held | undefined {
  const hold = { up: oppositeColour(scheme, cross), front };
  const colours = coloursHeld(scheme, hold);
  if (colours) return { hold, colours };
  const fronts = Object.values(scheme).filter((c) => c !== cross && c !== hold.up);
  const message =
    front === cross
      ? `${front} cannot be down and in front at once`
      : `${front} is opposite to ${cross}: with ${cross} down it is up, not in front`;
  const at = nodeAt(r.yaml, [...path, 'front']) ? [...path, 'front'] : path;
  return tell(r, at, { code: 'hold-impossible', message, hint: `front is ${listed(fronts)}` });
}

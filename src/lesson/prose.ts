/**
 * The texts of a lesson. Paragraphs are parted by an empty line; `# ` begins a heading, `- ` an item of a list. Inside:
 * *emphasis*, {green} for a colour, `R U R'` for turns, [a sentence](name) that says a fact of the lesson, and a backslash
 * before a sign that is meant as itself.
 */
import { COLOURS } from '../cube/colours.ts';
import { readTurns } from '../cube/notation.ts';
import { likelyWord, listed } from '../text/likely.ts';
import type { Paragraph, Phrase, Prose } from './lesson.ts';
import type { Problem } from './problem.ts';

/** From an offset in the text to one in the source. */
type OffsetOf = (offset: number) => number;

/** A text in which to look for marks, and where each of its characters stands in the source. */
interface Stretch {
  readonly text: string;
  readonly offsets: readonly number[];
}

const part = ({ text, offsets }: Stretch, from: number, to: number): Stretch => ({
  text: text.slice(from, to),
  offsets: offsets.slice(from, to),
});

type Said = Pick<Problem, 'code' | 'message' | 'hint'>;

function complain(problems: Problem[], { offsets }: Stretch, at: number, size: number, said: Said): void {
  const start = offsets[at] ?? (offsets.at(-1) ?? -1) + 1;
  problems.push({ ...said, span: { start, end: start + Math.max(1, size) } });
}

const CLOSES: Readonly<Record<string, string>> = { '*': '*', '{': '}', '`': '`' };
const ESCAPABLE = /[*{}[\]`\\#-]/;

/**
 * Where a mark is closed, past signs that are meant as themselves; -1 if nowhere. A star after a space opens another
 * emphasis: the one before it was never closed.
 */
function closeOf(text: string, close: string, from: number): number {
  for (let i = from; i < text.length; i++) {
    if (text[i] === '\\' && ESCAPABLE.test(text[i + 1] ?? '')) i++;
    else if (text[i] === close) return close === '*' && i > from && /\s/.test(text[i - 1]!) ? -1 : i;
  }
  return -1;
}

function readColour(problems: Problem[], inside: string, whole: Stretch, at: number): Phrase {
  const word = inside.trim();
  const colour = COLOURS.find((c) => c === word.toLowerCase());
  if (colour) return { kind: 'colour', colour, capital: word[0] !== colour[0] };
  const likely = likelyWord(word, COLOURS);
  const hint = likely ? `write {${likely}}` : `colours are ${listed(COLOURS)}`;
  complain(problems, whole, at, inside.length + 2, { code: 'text-mark', message: `{${inside}} is not a colour`, hint });
  return { kind: 'plain', text: inside };
}

function readInlineTurns(problems: Problem[], inside: string, whole: Stretch, at: number): Phrase {
  const reading = readTurns(inside);
  if (reading.ok && reading.turns.length > 0) return { kind: 'turns', turns: reading.turns };
  if (reading.ok) {
    const message = 'no turns between the ` signs';
    complain(problems, whole, at, 2, {
      code: 'turns-missing',
      message,
      hint: "write turns between them, as in `R U R'`",
    });
  } else {
    const { message, hint, size } = reading;
    complain(problems, whole, at + 1 + reading.at, size, { code: 'turns-unreadable', message, hint });
  }
  return { kind: 'plain', text: inside };
}

function readEmphasis(problems: Problem[], inside: Stretch, whole: Stretch, at: number): Phrase[] {
  if (inside.text === '') {
    const message = 'nothing between the two stars';
    complain(problems, whole, at, 2, { code: 'text-mark', message, hint: 'write *one star* on either side' });
  }
  return readPhrases(problems, inside).map((p) => {
    if (p.kind === 'plain') return { ...p, kind: 'strong' };
    return p.kind === 'colour' ? { ...p, strong: true } : p;
  });
}

/** Behind a sentence: names of facts in round brackets. */
const FACTS = /^\]\(([^()]*)\)/;

/** Where the sentence that begins at a bracket ends, and which facts it says; undefined where the bracket is a plain sign. */
function sentenceAt(
  text: string,
  from: number,
): { readonly end: number; readonly names: string[]; readonly size: number } | undefined {
  const end = closeOf(text, ']', from + 1);
  const mark = end < 0 ? undefined : FACTS.exec(text.slice(end));
  if (!mark) return undefined;
  return { end, names: mark[1]!.split(',').map((name) => name.trim()), size: mark[0].length };
}

function readSentence(problems: Problem[], inside: Stretch, names: readonly string[]): Phrase[] {
  const start = inside.offsets[0] ?? 0;
  const says = { names, span: { start, end: (inside.offsets.at(-1) ?? start) + 1 } };
  return readPhrases(problems, inside).map((phrase) => ({ ...phrase, says }));
}

/** `whole.text` holds line ends as spaces. */
function readPhrases(problems: Problem[], whole: Stretch): Phrase[] {
  const { text } = whole;
  const phrases: Phrase[] = [];
  let plain = '';
  const endPlain = () => {
    if (plain !== '') phrases.push({ kind: 'plain', text: plain });
    plain = '';
  };
  for (let i = 0; i < text.length; i++) {
    const c = text[i]!;
    const close = CLOSES[c];
    const alone = c === '*' && /^\s?$/.test(text[i + 1] ?? '');
    const sentence = c === '[' ? sentenceAt(text, i) : undefined;
    if (c === '\\' && ESCAPABLE.test(text[i + 1] ?? '')) {
      plain += text[++i];
    } else if (sentence) {
      endPlain();
      phrases.push(...readSentence(problems, part(whole, i + 1, sentence.end), sentence.names));
      i = sentence.end + sentence.size - 1;
    } else if (close === undefined || alone) {
      plain += c;
    } else {
      const end = closeOf(text, close, i + 1);
      if (end < 0) {
        const hint = `close it with ${close}, or write \\${c} for the plain sign`;
        const message = `the ${c} is never closed in this paragraph`;
        complain(problems, whole, i, 1, { code: 'text-mark', message, hint });
        plain += c;
      } else {
        endPlain();
        const inside = part(whole, i + 1, end);
        if (c === '*') phrases.push(...readEmphasis(problems, inside, whole, i));
        else if (c === '{') phrases.push(readColour(problems, inside.text, whole, i));
        else phrases.push(readInlineTurns(problems, inside.text, whole, i));
        i = end;
      }
    }
  }
  endPlain();
  return phrases;
}

const stretchOf = (text: string, from: number, offsetOf: OffsetOf): Stretch => ({
  text,
  // By UTF-16 units, as offsets count.
  offsets: text.split('').map((_, i) => offsetOf(from + i)),
});

/** A text of one line: its line ends count as spaces, and it has no paragraphs. */
export function readTextLine(text: string, offsetOf: OffsetOf): { phrases: Phrase[]; problems: Problem[] } {
  const problems: Problem[] = [];
  const line = text.trimEnd().replaceAll('\n', ' ');
  return { phrases: readPhrases(problems, stretchOf(line, 0, offsetOf)), problems };
}

/** Paragraphs in order; whatever is wrong is told and read on past. */
export function readProse(text: string, offsetOf: OffsetOf): { prose: Prose; problems: Problem[] } {
  const problems: Problem[] = [];
  const prose: Paragraph[] = [];
  let open: { kind: Paragraph['kind']; text: string; offsets: number[] } | undefined;
  const endParagraph = () => {
    if (!open) return;
    const start = open.offsets[0]!;
    prose.push({ kind: open.kind, phrases: readPhrases(problems, open), span: { start, end: start + 1 } });
    open = undefined;
  };
  let at = 0;
  for (const line of text.split('\n')) {
    const mark = /^\s*(#+ |- )?/.exec(line)!;
    const rest = line.slice(mark[0].length).trimEnd();
    const begins = mark[1] !== undefined;
    if (begins || rest === '') endParagraph();
    if (rest !== '') {
      const { offsets } = stretchOf(rest, at + mark[0].length, offsetOf);
      if (open) {
        open.text += ` ${rest}`;
        for (const offset of [offsets[0]!, ...offsets]) open.offsets.push(offset);
      } else {
        const kind = !begins ? 'paragraph' : mark[1]!.startsWith('#') ? 'heading' : 'item';
        open = { kind, text: rest, offsets: [...offsets] };
        if (kind === 'heading') endParagraph();
      }
    }
    at += line.length + 1;
  }
  endParagraph();
  return { prose, problems };
}

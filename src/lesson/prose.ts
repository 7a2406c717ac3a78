/**
 * The texts of a lesson. Paragraphs are parted by an empty line; `# ` begins a heading, `- ` an item of a list. Inside:
 * *emphasis*, {green} for a colour, `R U R'` for turns, and a backslash before a sign that is meant as itself.
 */
import { COLOURS } from '../cube/colours.ts';
import { readTurns } from '../cube/notation.ts';
import type { Paragraph, Phrase, Prose } from './lesson.ts';
import { likelyWord, listed } from './likely.ts';
import type { Problem, ProblemCode } from './problem.ts';

/** From an offset in the text to one in the source. */
type OffsetOf = (offset: number) => number;

interface ProseReader {
  readonly offsetOf: OffsetOf;
  readonly problems: Problem[];
}

function complain(r: ProseReader, code: ProblemCode, at: number, size: number, message: string, hint: string): void {
  const start = r.offsetOf(at);
  r.problems.push({ code, span: { start, end: start + Math.max(1, size) }, message, hint });
}

const CLOSES: Readonly<Record<string, string>> = { '*': '*', '{': '}', '`': '`' };

function readMarked(r: ProseReader, mark: string, inside: string, at: number): Phrase {
  if (mark === '*') return { kind: 'strong', text: inside };
  if (mark === '{') {
    const colour = COLOURS.find((c) => c === inside.trim());
    if (colour) return { kind: 'colour', colour };
    const likely = likelyWord(inside, COLOURS);
    const hint = likely ? `write {${likely}}` : `colours are ${listed(COLOURS)}`;
    complain(r, 'text-mark', at, inside.length + 2, `{${inside}} is not a colour`, hint);
    return { kind: 'plain', text: inside };
  }
  const reading = readTurns(inside);
  if (reading.ok && reading.turns.length > 0) return { kind: 'turns', turns: reading.turns };
  if (!reading.ok) complain(r, 'turns-unreadable', at + 1 + reading.at, reading.size, reading.message, reading.hint);
  else complain(r, 'turns-missing', at, 2, 'no turns between the ` signs', "write turns between them, as in `R U R'`");
  return { kind: 'plain', text: inside };
}

/** `text` holds line ends as spaces; `from` is its offset in the whole. */
function readPhrases(r: ProseReader, text: string, from: number): Phrase[] {
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
    if (c === '\\' && /[*{}`\\#-]/.test(text[i + 1] ?? '')) {
      plain += text[++i];
    } else if (close === undefined || alone) {
      plain += c;
    } else {
      const end = text.indexOf(close, i + 1);
      if (end < 0) {
        const hint = `close it with ${close}, or write \\${c} for the plain sign`;
        complain(r, 'text-mark', from + i, 1, `the ${c} is never closed in this paragraph`, hint);
        plain += c;
      } else {
        endPlain();
        phrases.push(readMarked(r, c, text.slice(i + 1, end), from + i));
        i = end;
      }
    }
  }
  endPlain();
  return phrases;
}

/** Paragraphs in order; whatever is wrong is told and read on past. */
export function readProse(text: string, offsetOf: OffsetOf): { prose: Prose; problems: Problem[] } {
  const r: ProseReader = { offsetOf, problems: [] };
  const prose: Paragraph[] = [];
  let open: { kind: Paragraph['kind']; text: string; from: number } | undefined;
  const endParagraph = () => {
    if (!open) return;
    const span = { start: offsetOf(open.from), end: offsetOf(open.from) + 1 };
    prose.push({ kind: open.kind, phrases: readPhrases(r, open.text, open.from), span });
    open = undefined;
  };
  let at = 0;
  for (const line of text.split('\n')) {
    const mark = /^\s*(#+ |- )?/.exec(line)!;
    const rest = line.slice(mark[0].length).trimEnd();
    const begins = mark[1] !== undefined;
    if (begins || rest === '') endParagraph();
    if (rest !== '') {
      // Only one white space stands between the lines of a paragraph here, so offsets inside it stay true on literal
      // blocks: the line end itself. Deeper indents of continuation lines would shift the columns told, not the lines.
      if (open) open.text += ` ${rest}`;
      else {
        const kind = !begins ? 'paragraph' : mark[1]!.startsWith('#') ? 'heading' : 'item';
        open = { kind, text: rest, from: at + mark[0].length };
        if (kind === 'heading') endParagraph();
      }
    }
    at += line.length + 1;
  }
  endParagraph();
  return { prose, problems: r.problems };
}

/** `turnsheet explain`: why turns work, as a parse of them and, after a set-up, by what they do to the pieces. */
import {
  type Explanation,
  explain,
  MOST_TURNS_EXPLAINED,
  merged,
  type Part,
  type Stretch,
} from '../cube/explain/explain.ts';
import { notationOf } from '../cube/explain/notation.ts';
import { prove } from '../cube/solves.ts';
import { TRIGGERS } from '../cube/triggers.ts';
import { inverse, type Turn, writeTurns } from '../cube/turns.ts';
import { wordsIn } from '../steps/languages.ts';
import type { Phase } from '../steps/phases-part.ts';
import { isFault } from '../steps/step.ts';
import { USUAL_STEP } from '../steps/steps.ts';
import type { Subject } from '../steps/subject.ts';
import type { Words } from '../words/words.ts';
import { documentOf, type ExitCode, type Io } from './io.ts';
import { type ExplainOptions, isUsageError, type UsageError } from './options.ts';
import { turnsOf } from './typed-turns.ts';

/** A part and, further in, what it is made of. */
interface Line {
  readonly depth: number;
  readonly said: string;
  readonly turns: readonly Turn[];
}

const isPlain = ({ parts }: Stretch): boolean => parts.length === 1 && parts[0]!.kind === 'turns';

function linesOf(part: Part, depth: number, words: Words['explain']): Line[] {
  const { line } = words;
  if (part.kind === 'turns') return [{ depth, said: line.turns, turns: part.turns }];
  if (part.kind === 'trigger') return [{ depth, said: words.trigger(part.name, part.undone), turns: part.turns }];
  const { first, second } = part;
  const within = ({ parts }: Stretch): Line[] => parts.flatMap((one) => linesOf(one, depth + 1, words));
  const begun = (said: string, one: Stretch): Line[] => [
    { depth, said, turns: one.turns },
    ...(isPlain(one) ? [] : within(one)),
  ];
  const back = ({ turns }: Stretch): Line => ({ depth, said: line.back, turns: inverse(turns) });
  return part.kind === 'set-up'
    ? [...begun(line.setUp, first), ...(isPlain(first) ? within(second) : begun(line.first, second)), back(first)]
    : [...begun(line.first, first), ...begun(line.first, second), back(first), back(second)];
}

/** Words to the left, turns beside them. */
function tableOf(rows: readonly (readonly [said: string, turns: readonly Turn[]])[]): string[] {
  const width = Math.max(...rows.map(([said]) => said.length));
  return rows.map(([said, turns]) => `  ${said.padEnd(width)}  ${writeTurns(turns)}`);
}

function asText(
  turns: readonly Turn[],
  { parts, words, shared }: Explanation,
  phases: readonly Phase[] | undefined,
): string {
  const all = wordsIn('en');
  const rows = parts.flatMap((part) => linesOf(part, 0, all.explain));
  const isRead = words < turns.length;
  return [
    writeTurns(turns),
    `${all.explain.toRemember(words, turns.length)}${isRead ? ':' : ''}`,
    ...(isRead ? tableOf(rows.map(({ depth, said, turns: some }) => [`${'  '.repeat(depth)}${said}`, some])) : []),
    ...shared.map(({ turn, of, as: [one, two] }) => `  ${all.explain.shared(turn, of.text, [one.text, two.text])}`),
    ...(phases ? ['what they do to the pieces:', ...phasesText(phases, all)] : []),
    '',
  ].join('\n');
}

const phasesText = (phases: readonly Phase[], words: Words): string[] =>
  tableOf(phases.map((phase) => [USUAL_STEP.phases!.said(phase, words), phase.turns]));

const partJson = (part: Part): object => {
  const turns = writeTurns(part.turns);
  if (part.kind === 'turns') return { kind: part.kind, turns };
  if (part.kind === 'trigger') return { kind: part.kind, turns, name: part.name, undone: part.undone };
  return { kind: part.kind, turns, first: stretchJson(part.first), second: stretchJson(part.second) };
};
const stretchJson = ({ turns, parts }: Stretch): object => ({ turns: writeTurns(turns), parts: parts.map(partJson) });

function asJson(
  turns: readonly Turn[],
  { parts, words, shared }: Explanation,
  phases: readonly Phase[] | undefined,
): string {
  return documentOf({
    turns: writeTurns(turns),
    words,
    notation: notationOf(parts),
    parts: parts.map(partJson),
    shared: shared.map(({ turn, of, as }) => ({ turn, of: of.text, as: as.map(({ text }) => text) })),
    ...(phases && {
      phases: phases.map(({ turns: some, does, address }) => ({ turns: writeTurns(some), does, address })),
    }),
  });
}

/** The case after a set-up, or why there is none that can be spoken of. */
function caseAfter(
  setup: readonly Turn[],
  own: ExplainOptions['own'],
): Subject | UsageError | { readonly note: string } {
  const { find, lesson, after } = USUAL_STEP;
  // What "find" refuses is refused here in its words.
  const sought = find.sought(setup, own);
  if ('usage' in sought) return sought;
  const subject = after(
    setup,
    lesson.whereOf(own, () => undefined),
  );
  return isFault(subject) ? { note: `after this set-up ${lesson.baseSaid} are not whole` } : subject;
}

export function explainTurns({ turns: text, setup: setupText, own, json }: ExplainOptions, io: Io): ExitCode {
  const refuse = ({ usage }: UsageError): ExitCode => {
    io.err(`turnsheet: ${usage}\nTry: npx turnsheet help explain\n`);
    return 2;
  };
  const turns = turnsOf('the turns', text);
  if (isUsageError(turns)) return refuse(turns);
  if (turns.length === 0) return refuse({ usage: 'there are no turns to explain' });
  if (turns.length > MOST_TURNS_EXPLAINED) {
    return refuse({ usage: `these are ${turns.length} turns; at most ${MOST_TURNS_EXPLAINED} are explained` });
  }
  let phases: readonly Phase[] | undefined;
  if (setupText !== undefined) {
    const setup = turnsOf('--setup', setupText);
    if (isUsageError(setup)) return refuse(setup);
    const subject = caseAfter(setup, own);
    if (isUsageError(subject)) return refuse(subject);
    if ('note' in subject) io.err(`turnsheet: note: ${subject.note}: what the turns do to the pieces is not told\n`);
    else if (prove(subject.cube, turns, subject.goal).verdict === 'fails') {
      io.err('turnsheet: note: these turns do not solve this case: what they do to the pieces is not told\n');
    } else phases = USUAL_STEP.phases?.of(subject, turns, TRIGGERS).phases;
  }
  // Turns of one face in a row are one turn to whoever does them.
  const plain = merged(turns);
  if (plain.length === 0) return refuse({ usage: 'these turns undo each other: nothing is left to explain' });
  if (plain.length < turns.length) io.err(`turnsheet: note: the same as ${writeTurns(plain)}\n`);
  const explained = explain(plain);
  io.out(json ? asJson(plain, explained, phases) : asText(plain, explained, phases));
  return 0;
}

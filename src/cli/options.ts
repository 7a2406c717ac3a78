/** Arguments in: which command, with which options. */
import { parseArgs } from 'node:util';
import type { Paper } from '../layout/blocks.ts';
import { likelyWord, listed } from '../lesson/likely.ts';
import type { Ink } from '../svg/palette.ts';

const PAPERS: readonly Paper[] = ['a4', 'letter'];
const INKS: readonly Ink[] = ['colour', 'mono'];

export interface CheckOptions {
  readonly command: 'check';
  readonly json: boolean;
  readonly files: readonly string[];
}

export interface BuildOptions {
  readonly command: 'build';
  readonly json: boolean;
  readonly files: readonly string[];
  readonly out: string;
  readonly paper: Paper;
  readonly ink: Ink;
  /** Write each case's picture as an SVG file too. */
  readonly pictures: boolean;
}

export interface HelpOptions {
  readonly command: 'help';
  readonly about: CommandName | undefined;
}

export interface VersionOptions {
  readonly command: 'version';
}

export type Options = CheckOptions | BuildOptions | HelpOptions | VersionOptions;

/** What cannot be understood of the arguments, for the one who typed them. */
export interface UsageError {
  readonly usage: string;
}

/** Every command and the options that it takes; `json` and `help` go with all. */
const COMMANDS = {
  check: [],
  build: ['out', 'paper', 'ink', 'pictures'],
} as const satisfies Record<string, readonly string[]>;
export type CommandName = keyof typeof COMMANDS;
export const COMMAND_NAMES = Object.keys(COMMANDS) as CommandName[];

const isCommand = (word: string | undefined): word is CommandName => COMMAND_NAMES.includes(word as CommandName);

function oneOf<T extends string>(
  option: string,
  value: string | undefined,
  known: readonly T[],
  usual: T,
): T | UsageError {
  if (value === undefined) return usual;
  return known.find((k) => k === value) ?? { usage: `--${option} is ${listed(known)}, not "${value}"` };
}

const isUsageError = (value: unknown): value is UsageError =>
  typeof value === 'object' && value !== null && 'usage' in value;

/** parseArgs tells errors by throwing; its words for an unknown option are replaced by ours. */
function parse(args: readonly string[]) {
  return parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      json: { type: 'boolean' },
      help: { type: 'boolean', short: 'h' },
      version: { type: 'boolean' },
      out: { type: 'string' },
      paper: { type: 'string' },
      ink: { type: 'string' },
      pictures: { type: 'boolean' },
    },
  });
}
type Parsed = ReturnType<typeof parse>;

function parsed(args: readonly string[]): Parsed | UsageError {
  try {
    return parse(args);
  } catch (e) {
    const unknown = /Unknown option '(-+)([^']*)'/.exec(String(e));
    if (!unknown) return { usage: e instanceof Error ? e.message : String(e) };
    const likely = likelyWord(unknown[2]!, ['json', 'help', 'version', ...Object.values(COMMANDS).flat()]);
    return { usage: `there is no option ${unknown[1]}${unknown[2]}${likely ? `; --${likely} was likely meant` : ''}` };
  }
}

export function readOptions(args: readonly string[]): Options | UsageError {
  const read = parsed(args);
  if (isUsageError(read)) return read;
  const { values, positionals } = read;
  const [word, ...files] = positionals;
  if (values.version) return { command: 'version' };
  if (word === 'help') {
    const about = files[0];
    if (about !== undefined && !isCommand(about)) return unknownCommand(about);
    return { command: 'help', about };
  }
  if (values.help || word === undefined) return { command: 'help', about: isCommand(word) ? word : undefined };
  if (!isCommand(word)) return unknownCommand(word);
  const takes: readonly string[] = ['json', 'help', ...COMMANDS[word]];
  const foreign = Object.keys(values).find((option) => !takes.includes(option));
  if (foreign) return { usage: `"${word}" takes no option --${foreign}` };
  if (files.length === 0) return { usage: `"${word}" needs the name of a lesson file` };
  const json = values.json ?? false;
  if (word === 'check') return { command: 'check', json, files };
  const paper = oneOf('paper', values.paper, PAPERS, 'a4');
  const ink = oneOf('ink', values.ink, INKS, 'colour');
  if (isUsageError(paper)) return paper;
  if (isUsageError(ink)) return ink;
  const pictures = values.pictures ?? false;
  return { command: 'build', json, files, out: values.out ?? 'out', paper, ink, pictures };
}

function unknownCommand(word: string): UsageError {
  const likely = likelyWord(word, COMMAND_NAMES);
  const file = /\.ya?ml$/i.test(word) ? `; to build it: turnsheet build ${word}` : '';
  return { usage: `there is no command "${word}"${likely ? `; "${likely}" was likely meant` : file}` };
}

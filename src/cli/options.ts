/** Arguments in: which command, with which options. */
import { parseArgs } from 'node:util';
import {
  COLOURS,
  type FaceColours,
  isWrongScheme,
  readScheme,
  SCHEME_HINT,
  schemeWords,
  USUAL_SCHEME,
} from '../cube/colours.ts';
import { ALLOWED, type Allowed } from '../cube/search/allowed.ts';
import type { Paper } from '../layout/blocks.ts';
import { LEADING_HANDS } from '../lesson/leading-hand.ts';
import type { Variation } from '../lesson/vary.ts';
import { SMALL_LETTERS, type SmallLetters } from '../marking/submission.ts';
import type { OwnOptions } from '../steps/find-part.ts';
import { USUAL_STEP } from '../steps/steps.ts';
import { INKS, type Ink } from '../svg/palette.ts';
import { likelyWord, listed } from '../text/likely.ts';

const PAPERS: readonly Paper[] = ['a4', 'letter', 'a5'];
const WIDES = ['Rw', 'r'] as const;

/** What every command has. */
interface OptionsOf<C extends CommandName> {
  readonly command: C;
  readonly json: boolean;
}

interface Printing {
  readonly paper: Paper;
  readonly ink: Ink;
}

export interface CheckOptions extends OptionsOf<'check'> {
  readonly files: readonly string[];
}

export interface BuildOptions extends OptionsOf<'build'>, Printing {
  readonly files: readonly string[];
  readonly out: string;
  /** Write each case's picture as an SVG file too. */
  readonly pictures: boolean;
  /** Go on, and build again what is saved. */
  readonly watch: boolean;
  /** For which students. */
  readonly variation: Variation;
  /** A table of students: each gets a practice paper. */
  readonly roster: string | undefined;
}

export interface NewOptions extends OptionsOf<'new'> {
  readonly file: string;
}

export interface FindOptions extends OptionsOf<'find'> {
  readonly start: { readonly address: string } | { readonly setup: string };
  /** Of the step alone. */
  readonly own: OwnOptions;
  readonly longer: number;
  readonly faces: string | undefined;
  readonly begins: string | undefined;
  readonly ends: string | undefined;
  /** Also tell which solutions are easiest for hands, with this besides turns of faces; undefined: not asked. */
  readonly hands: readonly Allowed[] | undefined;
}

export interface CasesOptions extends OptionsOf<'cases'> {
  readonly family: string | undefined;
  readonly longer: number;
  /** Of the step alone. */
  readonly own: OwnOptions;
  /** The catalogue as a PDF. */
  readonly print: PrintOptions | undefined;
}

export interface PrintOptions extends Printing {
  readonly out: string;
  /** Lesson files: where each case is shown is printed with it. */
  readonly lessons: readonly string[];
}

export interface ExplainOptions extends OptionsOf<'explain'> {
  readonly turns: string;
  /** Undefined: nothing is said of pieces. */
  readonly setup: string | undefined;
  /** Of the step alone: which case the set-up makes. */
  readonly own: OwnOptions;
}

export interface RulesOptions extends OptionsOf<'rules'> {
  /** Undefined: what rules can speak of is listed. */
  readonly family: string | undefined;
  /** Turns over the shortest that rules may cost; the least that can be if left out. */
  readonly over: number | undefined;
  /** By name; undefined: those that are seen at a glance. */
  readonly features: string | undefined;
  /** Also those that are not seen at a glance. */
  readonly allFeatures: boolean;
  /** Also rules of which not every way works that their words allow. */
  readonly someWay: boolean;
}

export interface MarkOptions extends OptionsOf<'mark'>, Printing {
  /** Claims files: what was asked. */
  readonly claims: readonly string[];
  /** Files and folders; with `type` the one CSV file to write to, if it is named. */
  readonly submissions: readonly string[];
  /** Ask for answers instead of reading them. */
  readonly type: boolean;
  /** The roster that the papers were printed for. */
  readonly roster: string | undefined;
  /** Where to write slips, tables and the report; nothing is written without it. */
  readonly out: string | undefined;
  readonly smallLetters: SmallLetters;
  /** The colours of the class's cubes, for pictures. */
  readonly scheme: FaceColours;
}

export interface VerifyOptions extends OptionsOf<'verify'> {
  /** Claims files. */
  readonly files: readonly string[];
}

export interface HelpOptions {
  readonly command: 'help';
  readonly about: CommandName | undefined;
}

export interface VersionOptions {
  readonly command: 'version';
}

export type Options =
  | CheckOptions
  | BuildOptions
  | NewOptions
  | FindOptions
  | CasesOptions
  | ExplainOptions
  | RulesOptions
  | MarkOptions
  | VerifyOptions
  | HelpOptions
  | VersionOptions;

/** What cannot be understood of the arguments, for the one who typed them. */
export interface UsageError {
  readonly usage: string;
}

export const COMMAND_NAMES = ['check', 'build', 'new', 'find', 'explain', 'cases', 'rules', 'mark', 'verify'] as const;
export type CommandName = (typeof COMMAND_NAMES)[number];

/** What each option is followed by, and the commands that take it besides those of a step's own. */
const OPTIONS = {
  json: ['boolean', ...COMMAND_NAMES],
  help: ['boolean', ...COMMAND_NAMES],
  version: ['boolean'],
  out: ['string', 'build', 'cases', 'mark'],
  paper: ['string', 'build', 'cases', 'mark'],
  ink: ['string', 'build', 'cases', 'mark'],
  pictures: ['boolean', 'build'],
  cross: ['string', 'build'],
  front: ['string', 'build'],
  scheme: ['string', 'build', 'mark'],
  hand: ['string', 'build'],
  wide: ['string', 'build'],
  watch: ['boolean', 'build'],
  roster: ['string', 'build', 'mark'],
  setup: ['string', 'find', 'explain'],
  longer: ['string', 'find', 'cases'],
  faces: ['string', 'find'],
  begins: ['string', 'find'],
  ends: ['string', 'find'],
  hands: ['boolean', 'find'],
  allow: ['string', 'find'],
  print: ['boolean', 'cases'],
  over: ['string', 'rules'],
  features: ['string', 'rules'],
  'all-features': ['boolean', 'rules'],
  'some-way': ['boolean', 'rules'],
  type: ['boolean', 'mark'],
  'small-letters': ['string', 'mark'],
} as const satisfies Record<string, readonly ['string' | 'boolean', ...CommandName[]]>;
type Option = keyof typeof OPTIONS;
const OWN = USUAL_STEP.find.options;

/** Of the step's own, those that a command takes: explain has what a lesson says of a set-up. */
function ownOf(command: CommandName): readonly string[] {
  if (command === 'find' || command === 'cases') return Object.keys(OWN[command]);
  const { fields } = USUAL_STEP.lesson;
  return command === 'explain' ? Object.keys(OWN.find).filter((option) => option in fields.case) : [];
}

/** Those that a command takes. */
const optionsOf = (command: CommandName): readonly string[] => [
  ...(Object.keys(OPTIONS) as Option[]).filter((option) => (OPTIONS[option] as readonly string[]).includes(command)),
  ...ownOf(command),
];

const isCommand = (word: string | undefined): word is CommandName => COMMAND_NAMES.includes(word as CommandName);

/** Capitals do not matter where no two of the known words differ by them only. */
function oneOf<T extends string>(option: string, value: string, known: readonly T[]): T | UsageError {
  const found = known.find((k) => k === value) ?? known.find((k) => k.toLowerCase() === value.toLowerCase());
  return found ?? { usage: `--${option} is ${listed(known)}, not "${value}"` };
}

function schemeOf(value: string): FaceColours | UsageError {
  const read = readScheme(schemeWords(value));
  return isWrongScheme(read) ? { usage: `--scheme: ${read.wrong}; ${SCHEME_HINT}, with commas between them` } : read;
}

/** The options that name one of a few words; each is left out if it was not given. */
function wordOptions(values: Values) {
  const known = { paper: PAPERS, ink: INKS, cross: COLOURS, front: COLOURS, hand: LEADING_HANDS, wide: WIDES } as const;
  type Known = typeof known;
  const found: { [K in keyof Known]?: Known[K][number] } = {};
  for (const option of Object.keys(known) as (keyof Known)[]) {
    const value = values[option];
    if (value === undefined) continue;
    // The regulations' spelling and the small letter differ by more than a capital.
    const word = oneOf<string>(option, value, known[option]);
    if (isUsageError(word)) return word;
    Object.assign(found, { [option]: word });
  }
  return found;
}

export const isUsageError = (value: unknown): value is UsageError =>
  typeof value === 'object' && value !== null && 'usage' in value;

/** As they were given: those of all steps by their types, a step's own beside them. */
type Values = { readonly [K in Option]?: (typeof OPTIONS)[K][0] extends 'boolean' ? boolean : string };
interface Parsed {
  readonly values: Values;
  readonly own: OwnOptions;
  readonly positionals: readonly string[];
}

/** parseArgs tells errors by throwing; its words for an unknown option are replaced by ours. */
function parse(args: readonly string[]): Parsed {
  const shared = Object.entries(OPTIONS).map(([name, [type]]) => [name, { type }] as const);
  const own = Object.entries({ ...OWN.find, ...OWN.cases }).map(([name, type]) => [name, { type }] as const);
  const options = { ...Object.fromEntries([...shared, ...own]), help: { type: 'boolean', short: 'h' } } as const;
  const { values, positionals } = parseArgs({ args: [...args], allowPositionals: true, options });
  return { values: values as Values, own: values as OwnOptions, positionals };
}

function parsed(args: readonly string[]): Parsed | UsageError {
  try {
    return parse(args);
  } catch (e) {
    const unknown = /Unknown option '(-+)([^']*)'/.exec(String(e));
    if (!unknown) return { usage: e instanceof Error ? e.message : String(e) };
    const likely = likelyWord(unknown[2]!, [...Object.keys(OPTIONS), ...COMMAND_NAMES.flatMap(optionsOf)]);
    return { usage: `there is no option ${unknown[1]}${unknown[2]}${likely ? `; --${likely} was likely meant` : ''}` };
  }
}

export function readOptions(args: readonly string[]): Options | UsageError {
  const read = parsed(args);
  if (isUsageError(read)) return read;
  const { values, own, positionals } = read;
  const [word, ...files] = positionals;
  if (values.version) return { command: 'version' };
  if (word === 'help') {
    const about = files[0];
    if (about === undefined || about === 'help') return { command: 'help', about: undefined };
    return isCommand(about) ? { command: 'help', about } : unknownCommand(about);
  }
  if (values.help || word === undefined) return { command: 'help', about: isCommand(word) ? word : undefined };
  if (!isCommand(word)) return unknownCommand(word);
  const takes = optionsOf(word);
  const foreign = Object.keys(own).find((option) => !takes.includes(option));
  if (foreign) return { usage: `"${word}" takes no option --${foreign}` };
  if (word === 'find') return findOptions(read, files);
  if (word === 'cases') return casesOptions(read, files);
  if (word === 'explain') return explainOptions(read, files);
  if (word === 'rules') return rulesOptions(values, files);
  if (word === 'mark') return markOptions(values, files);
  const what = word === 'verify' ? 'claims' : 'lesson';
  if (files.length === 0) return { usage: `"${word}" needs the name of a ${what} file` };
  const json = values.json ?? false;
  if (word === 'verify' || word === 'check') return { command: word, json, files };
  if (word === 'new') {
    if (files.length > 1) return { usage: '"new" writes one lesson: name one file' };
    return { command: 'new', json, file: files[0]! };
  }
  return buildOptions(values, json, files);
}

function buildOptions(values: Values, json: boolean, files: readonly string[]): BuildOptions | UsageError {
  const words = wordOptions(values);
  if (isUsageError(words)) return words;
  const scheme = values.scheme === undefined ? undefined : schemeOf(values.scheme);
  if (isUsageError(scheme)) return scheme;
  if (values.out === '') return { usage: '--out needs the name of a folder; "." is this one' };
  if (values.roster !== undefined && files.length > 1) {
    return { usage: '--roster goes with one lesson: build the others by themselves' };
  }
  const { paper = 'a4', ink = 'colour', ...variation } = words;
  return {
    command: 'build',
    json,
    files,
    out: values.out ?? 'out',
    paper,
    ink,
    pictures: values.pictures ?? false,
    watch: values.watch ?? false,
    roster: values.roster,
    variation: scheme ? { ...variation, scheme } : variation,
  };
}

/** Ten is more than anyone wants: each turn longer gives ten times as many solutions. */
function longerOf(value = '0'): number | UsageError {
  const longer = /^\d+$/.test(value) ? Number(value) : Number.NaN;
  return longer <= 10 ? longer : { usage: `--longer is a number of turns, as in --longer 1, not "${value}"` };
}

/** What hands may use besides turns of faces; undefined if hands are not asked for. */
function allowedOf(asked: boolean, value = ''): readonly Allowed[] | undefined | UsageError {
  const named = value.split(/[\s,]+/).filter((word) => word !== '');
  const stranger = named.find((word) => !(ALLOWED as readonly string[]).includes(word));
  if (stranger) return { usage: `--allow is some of ${ALLOWED.join(', ')}, with commas, not "${stranger}"` };
  return asked ? (named as Allowed[]) : undefined;
}

function findOptions({ values, own }: Parsed, rest: readonly string[]): FindOptions | UsageError {
  const { setup, faces, begins, ends } = values;
  const [named, example] = USUAL_STEP.find.address;
  const address = own[named] as string | undefined;
  if (rest.length > 0) return { usage: `"find" takes no "${rest[0]}": a case is named by --${named} or by --setup` };
  if ((address === undefined) === (setup === undefined)) {
    return { usage: `"find" needs either --${named} "${example}" or --setup "R U' R'"` };
  }
  const longer = longerOf(values.longer);
  if (isUsageError(longer)) return longer;
  const start = setup === undefined ? { address: address! } : { setup };
  const hands = allowedOf(values.hands || values.allow !== undefined, values.allow);
  if (isUsageError(hands)) return hands;
  return { command: 'find', json: values.json ?? false, start, own, longer, faces, begins, ends, hands };
}

/** Turns without quotes come in one by one. */
function explainOptions({ values, own }: Parsed, turns: readonly string[]): ExplainOptions | UsageError {
  const { setup, json = false } = values;
  if (turns.length === 0) return { usage: `"explain" needs turns, as in "F R U R' U' F'"` };
  const stray = ownOf('explain').find((option) => own[option] !== undefined);
  if (setup === undefined && stray !== undefined) return { usage: `--${stray} goes with --setup` };
  return { command: 'explain', json, turns: turns.join(' '), setup, own };
}

const isFile = (word: string): boolean => /[./\\]/.test(word);

function casesOptions(parsed: Parsed, rest: readonly string[]): CasesOptions | UsageError {
  const { values, own } = parsed;
  const lessons = rest.filter(isFile);
  const [family, more] = rest.filter((word) => !isFile(word));
  if (more !== undefined) return { usage: `"cases" takes one family, not "${family} ${more}"` };
  const longer = longerOf(values.longer);
  if (isUsageError(longer)) return longer;
  if (longer > 2) return { usage: '--longer is at most 2 for the catalogue; "find" goes further for one case' };
  const print = printOptions(parsed, lessons);
  if (isUsageError(print)) return print;
  return { command: 'cases', json: values.json ?? false, family, longer, own, print };
}

function printOptions({ values, own }: Parsed, lessons: readonly string[]): PrintOptions | undefined | UsageError {
  if (values.print) {
    const stray = [...Object.keys(OWN.cases), 'longer'].find((option) => own[option] !== undefined);
    if (stray) return { usage: `--print prints each case once, as it is usually set up; leave --${stray} out` };
    const words = wordOptions(values);
    if (isUsageError(words)) return words;
    if (values.out === '') return { usage: '--out needs the name of a folder; "." is this one' };
    return { out: values.out ?? 'out', paper: words.paper ?? 'a4', ink: words.ink ?? 'colour', lessons };
  }
  const stray = (['out', 'paper', 'ink'] as const).find((option) => values[option] !== undefined);
  if (stray) return { usage: `--${stray} goes with --print` };
  if (lessons.length > 0) return { usage: `"${lessons[0]}" is no family; lessons are named with --print` };
  return undefined;
}

function rulesOptions(values: Values, rest: readonly string[]): RulesOptions | UsageError {
  const [family, more] = rest;
  if (more !== undefined) return { usage: `"rules" takes one family, not "${family} ${more}"` };
  const over = values.over === undefined ? undefined : Number(values.over);
  if (over !== undefined && !(Number.isInteger(over) && over >= 0 && over <= 20)) {
    return { usage: `--over is a number of turns, as in --over 2, not "${values.over}"` };
  }
  const { features, 'all-features': allFeatures = false, 'some-way': someWay = false } = values;
  if (features !== undefined && allFeatures) {
    return { usage: '--features names those that rules may speak of, and --all-features takes all: say one of them' };
  }
  return { command: 'rules', json: values.json ?? false, family, over, features, allFeatures, someWay };
}

function markOptions(values: Values, names: readonly string[]): MarkOptions | UsageError {
  const words = wordOptions(values);
  if (isUsageError(words)) return words;
  const smallLetters = oneOf('small-letters', values['small-letters'] ?? 'wide', SMALL_LETTERS);
  if (isUsageError(smallLetters)) return smallLetters;
  const scheme = values.scheme === undefined ? USUAL_SCHEME : schemeOf(values.scheme);
  if (isUsageError(scheme)) return scheme;
  if (values.out === '') return { usage: '--out needs the name of a folder; "." is this one' };
  const isClaims = (name: string): boolean => /\.claims\.json$/i.test(name);
  // Claims come first, whatever they are called; submissions before them are as good where the claims can be told.
  const isSwapped = names.some(isClaims) && !/\.(?:json|pdf)$/i.test(names[0]!);
  const [first, ...rest] = isSwapped ? [...names.filter(isClaims), ...names.filter((name) => !isClaims(name))] : names;
  if (first === undefined)
    return { usage: '"mark" needs the claims file that "build" writes for each lesson, and submissions' };
  const type = values.type ?? false;
  const submissions = rest.filter((name) => !isClaims(name));
  if (!type && submissions.length === 0) {
    return { usage: `"mark" needs submissions after ${first}: CSV, YAML or text files, or a folder; or --type` };
  }
  if (type && submissions.length > 1) return { usage: '"mark --type" keeps one CSV file: name one' };
  const { json = false, out, roster } = values;
  const { paper = 'a4', ink = 'colour' } = words;
  const claims = [first, ...rest.filter(isClaims)];
  return { command: 'mark', json, claims, submissions, type, roster, out, paper, ink, smallLetters, scheme };
}

function unknownCommand(word: string): UsageError {
  const likely = likelyWord(word, COMMAND_NAMES);
  const file = /\.ya?ml$/i.test(word) ? `; to build it: npx turnsheet build ${word}` : '';
  return { usage: `there is no command "${word}"${likely ? `; "${likely}" was likely meant` : file}` };
}

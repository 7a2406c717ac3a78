/** Single faults, planted in a lesson that has none: what is written, where, and what should be said of it. */
import type { ProblemCode } from '../../src/lesson/problem.ts';
import type { Random } from '../random.ts';

export interface Planted {
  readonly kind: string;
  readonly text: string;
  /** One of these codes, on this line (from 1). */
  readonly codes: readonly ProblemCode[];
  readonly line: number;
}

type Plant = (lines: readonly string[], random: Random) => Omit<Planted, 'kind'> | undefined;

/** The numbers, from 0, of the lines that match. */
const linesWith = (lines: readonly string[], pattern: RegExp): number[] =>
  lines.flatMap((line, i) => (pattern.test(line) ? [i] : []));

const replaced = (lines: readonly string[], at: number, ...now: string[]): string =>
  [...lines.slice(0, at), ...now, ...lines.slice(at + 1)].join('\n');

/** Changes one line that matches. */
const changing =
  (pattern: RegExp, change: (line: string, random: Random) => string, ...codes: ProblemCode[]): Plant =>
  (lines, random) => {
    const places = linesWith(lines, pattern).filter((at) => change(lines[at]!, random) !== lines[at]);
    if (places.length === 0) return undefined;
    const at = random.pick(places);
    return { text: replaced(lines, at, change(lines[at]!, random)), codes, line: at + 1 };
  };

const SETUP = /^ +setup: [URLFBDMESxyz]/;
const SOLUTION = /^ +- (?:turns: )?[URLFBDy]['2]? [URLFBD]/;

export const PLANTS: Readonly<Record<string, Plant>> = {
  'a misspelt key of the lesson': changing(/^family:/, (l) => l.replace('family', 'famly'), 'key-unknown'),
  'a misspelt key of a case': changing(/^ {4}watch:/, (l) => l.replace('watch', 'wacth'), 'key-unknown'),
  'a misspelt key of the hold': changing(/^ {2}front:/, (l) => l.replace('front', 'forn'), 'key-unknown'),
  'a key of another tongue': changing(/^course:/, (l) => l.replace('course', 'lektion'), 'key-unknown'),
  'a colour that is none': changing(/^ {2}cross:/, (l) => l.replace(/: \w+/, ': purple'), 'value-unknown'),
  'a family that is none': changing(/^family:/, () => 'family: top-aways', 'value-unknown'),
  'a slot that is none': changing(/^ {4}slot:/, (l) => l.replace(/: \w+/, ': RF'), 'value-unknown'),
  'a number for a title': changing(/^title:/, () => 'title: 12', 'value-kind'),
  'turns as a list': changing(
    SETUP,
    (l) => l.replace(/: (.*)/, (_, t: string) => `: [${t.split(' ').join(', ')}]`),
    'value-kind',
  ),
  'turns as a number': changing(SETUP, (l) => l.replace(/: .*/, ': 2'), 'value-kind'),
  'three quarter turns': changing(SOLUTION, (l) => l.replace(/([RLF])(?=[' ])'? /, '$13 '), 'turns-unreadable'),
  'a turn by an i': changing(SOLUTION, (l) => l.replace("' ", 'i '), 'turns-unreadable'),
  'a letter that is no turn': changing(SETUP, (l) => l.replace(/ U'? /, ' Q '), 'turns-unreadable'),
  'a bracket in the turns': changing(SETUP, (l) => l.replace(/ U/, ' (U'), 'turns-unreadable'),
  'a look-alike letter': changing(SOLUTION, (l) => l.replace(/ U(?= |'|2)/, ' \u0412'), 'turns-unreadable'),
  'a wrong prime sign': changing(SOLUTION, (l) => l.replace("' ", '\u00b4 '), 'turns-unreadable'),
  'turns behind a comment sign': changing(SOLUTION, (l) => l.replace(/ ([URLF]'?)$/, ' #$1'), 'turns-cut-off'),
  'a single quote that a prime closes': changing(
    SOLUTION,
    (l) => l.replace(/(- |turns: )(.*)$/, "$1'$2'"),
    'yaml-quote',
  ),
  'a quote never closed': changing(/^ {4}watch: \w/, (l) => l.replace(': ', ': "'), 'yaml-quote'),
  'a tab': changing(/^ {4}setup:/, (l) => l.replace(/^ {4}/, '\t'), 'yaml-tab'),
  'a line out of line': changing(/^ {2}front:/, (l) => ` ${l}`, 'yaml-indent', 'yaml-syntax'),
  'a second colon': changing(/^title:/, (l) => `${l}: part two`, 'yaml-syntax'),
  'a star before a text': changing(/^ {4}watch: \w/, (l) => l.replace(': ', ': *'), 'yaml-alias'),
  'an anchor': changing(/^ {4}watch: \w/, (l) => l.replace(': ', ': &note '), 'yaml-alias'),
  'a type': changing(/^ {4}watch: \w/, (l) => l.replace(': ', ': !note '), 'yaml-tag'),
  'a bracket never closed': changing(/^ {4}slot:/, (l) => l.replace(/slot: (\w+)/, 'open: [BL'), 'yaml-syntax'),
  'emphasis never closed': changing(/^ {2}[\w[].*\*\w+\*/, (l) => l.replace(/\*(\w+)\*/, '*$1'), 'text-mark'),
  'a colour in braces that is none': changing(
    /\{(?:green|white|orange|blue)\}/,
    (l) => l.replace(/\{(\w)\w/, '{$1'),
    'text-mark',
  ),
  'unreadable turns in a text': changing(/`[A-Za-z]/, (l) => l.replace(/`([A-Za-z])/, '`$13 '), 'turns-unreadable'),
  'a set-up upside down': changing(SETUP, (l) => `${l} x`, 'setup-rotates'),
  'a set-up with the wrong last turn': changing(
    SETUP,
    (l) => l.replace(/([RLF])'$/, '$1'),
    'setup-breaks-base',
    'setup-hides-pair',
  ),
  'a claim of fewer turns': changing(/^ {2}turns: \d/, (l) => l.replace(/\d+/, '3'), 'claim-turns'),
  'an impossible hold': (lines) => {
    const at = linesWith(lines, /^ {2}front:/)[0];
    if (at === undefined) return undefined;
    const cross = /^ {2}cross: (\w+)/.exec(lines[at - 1]!)?.[1];
    if (!cross) return undefined;
    const codes = ['hold-impossible', 'setup-breaks-base'] as const;
    return { text: replaced(lines, at, `  front: ${cross}`), codes, line: at + 1 };
  },
  'a set-up of another family': (lines, random) => {
    // R U R' leaves both pieces on top.
    if (lines.some((line) => /^family:.*top-top/.test(line))) return undefined;
    const places = linesWith(lines, /^ {4}setup: R U/).filter(
      (at) =>
        !lines
          .slice(at - 3, at)
          .join()
          .includes('slot:'),
    );
    if (places.length === 0) return undefined;
    const at = random.pick(places);
    return { text: replaced(lines, at, "    setup: R U R'"), codes: ['setup-other-family'], line: at + 1 };
  },
  // What is missing is told at the first key of its table.
  'no title': (lines) => {
    const at = linesWith(lines, /^title:/)[0]!;
    return { text: replaced(lines, at, '# no title'), codes: ['key-missing'], line: at + 2 };
  },
  'a set-up left out': (lines, random) => {
    const at = random.pick(linesWith(lines, SETUP));
    const item = linesWith(lines.slice(0, at), /^ {2}- /).at(-1)!;
    return { text: replaced(lines, at, '    open: [BR]'), codes: ['key-missing'], line: item + 1 };
  },
  'the same solution twice': (lines, random) => {
    const places = linesWith(lines, /^ {6}- [URLFy]['2]? /);
    if (places.length === 0) return undefined;
    const at = random.pick(places);
    return { text: replaced(lines, at, lines[at]!, lines[at]!), codes: ['solution-twice'], line: at + 2 };
  },
  'a key twice': (lines, random) => {
    const at = random.pick(linesWith(lines, SETUP));
    return { text: replaced(lines, at, lines[at]!, lines[at]!), codes: ['yaml-duplicate-key'], line: at + 2 };
  },
};

export function plant(text: string, kind: string, random: Random): Planted | undefined {
  const planted = PLANTS[kind]!(text.split('\n'), random);
  return planted && { kind, ...planted };
}

/** What does not fit the lesson format (schema.ts), told with places and what would be right. */
import { isAlias, isMap, isScalar, isSeq, type Scalar } from 'yaml';
import { z } from 'zod';
import type { Step } from '../steps/step.ts';
import { likelyWord, listed } from '../text/likely.ts';
import type { Problem } from './problem.ts';
import { type Format, handsSchema, holdSchema, partSchema, schemeSchema, solutionSchema } from './schema.ts';
import { isOnMendedLine, keySpan, nodeAt, type Path, spanAt, type YamlText } from './yaml-text.ts';

type Issue = z.core.$ZodIssue;

/** What a table is called, and the keys it may have. */
interface Table {
  readonly name: string;
  readonly keys: readonly string[];
}

/** The tables of a file format, and the step whose words stand in it. */
export interface Tables {
  readonly at: (yaml: YamlText, path: Path) => Table;
  readonly step: Step;
}

const keysOf = ({ shape }: z.ZodObject): readonly string[] => Object.keys(shape);

/** Of a key that may hold a table or a text. */
function keysWithin({ shape }: z.ZodObject, key: string): readonly string[] {
  const { options = [] } = (shape[key] as z.ZodOptional<z.ZodUnion<z.ZodType[]>>).unwrap();
  return options.flatMap((option) => (option instanceof z.ZodObject ? keysOf(option) : []));
}

function makeTables({ step, lesson, case: ofCase, every, claims, practice, words, rule, fact }: Format): Tables {
  const table = (name: string, schema: z.ZodObject): Table => ({ name, keys: keysOf(schema) });
  /** Those that stand under a key of the lesson and are called by it. */
  const named: Readonly<Record<string, z.ZodObject>> = {
    words,
    claims,
    scheme: schemeSchema,
    hands: handsSchema,
    plan: lesson.shape.plan.unwrap(),
    cards: lesson.shape.cards.unwrap(),
  };
  const { items, only } = practice.shape;
  const ofPractice: Readonly<Record<string, Table>> = {
    items: table('"items"', items),
    only: table('"only"', only.unwrap()),
  };
  const at = (yaml: YamlText, path: Path): Table => {
    if (path.length === 0) return table('a lesson', lesson);
    if (rule && /^(see|is)$/.test(`${path.at(-1)}`)) return table('what is seen', rule.shape.see.unwrap());
    const [key] = path;
    if (key === 'practice') return ofPractice[String(path[1])] ?? table('a practice', practice);
    if (path.length === 1 && typeof key === 'string' && Object.hasOwn(named, key))
      return table(`"${key}"`, named[key]!);
    if (path.at(-1) === 'hold') return table('a hold', holdSchema);
    if (rule && path.at(-2) === 'rules') return table('a rule', rule);
    if (rule && path.at(-3) === 'rules') return { name: `"${path.at(-1)}"`, keys: keysWithin(rule, `${path.at(-1)}`) };
    if (fact && key === 'facts') {
      if (path.length === 2) return table('a fact', fact);
      return { name: `"${path.at(-1)}"`, keys: path.length === 3 ? keysWithin(fact, `${path.at(-1)}`) : [] };
    }
    if (path.at(-2) === 'solutions') return table('a solution', solutionSchema.options[1]);
    if (keySpan(yaml, path, 'part')) return table('a heading of a part', partSchema);
    if (keySpan(yaml, path, 'every')) return table('"every"', every);
    return table('a case', ofCase);
  };
  return { at, step };
}

const known = new WeakMap<Format, Tables>();

export function tablesOf(format: Format): Tables {
  const tables = known.get(format) ?? makeTables(format);
  known.set(format, tables);
  return tables;
}

const EXAMPLES_OF_PRACTICE = {
  items: 'items: { solve: 6, likeness: 4 }, numbers from 0 to 60',
  seed: 'seed: 7, a whole number',
  open: 'open: 2, a number from 0 to 60',
  only: 'only: { family: top-away, turns: 8 }',
  earlier: 'earlier: [first.yaml], names of lesson files',
  words: 'words: [SLOT, FRONT], words of three to nine letters',
};

const EXAMPLES = new Map<string | undefined, string>([
  ...Object.entries({ ...schemeSchema.shape, ...holdSchema.shape }).map(([key, colour]): [string, string] => [
    key,
    `${key}: ${colour.meta()!['examples']}`,
  ]),
  ['hold', 'hold: { cross: white, front: green }'],
  ['minutes', 'minutes: 60'],
  ['duplex', 'duplex: long'],
  ...['setup', 'turns', 'insert'].map((key): [string, string] => [key, `${key}: R U' R'`]),
  ['solutions', 'a list: a line "- R U\' R\'" for each solution'],
  ['cases', 'a list: a line that begins with "- " for each case'],
  ['lessons', 'a list: a line "- lesson: edge-away.yaml" for each evening'],
  ['lesson', 'lesson: edge-away.yaml'],
  ['rules', 'a list: a line that begins with "- " for each rule'],
  ['see', 'see: { cross colour: sideways }'],
  ['most', 'most: 8'],
  ['open', 'open: BL, or a list in brackets: [BL, BR]'],
]);

/** The key that a path leads to, past places in lists. */
const lastKey = (path: Path): string | undefined => path.filter((step) => typeof step === 'string').at(-1);

/** What belongs at a path, as one would write it. */
function example(path: Path): string {
  const [table, below] = path;
  if (table === 'practice') {
    return Object.entries(EXAMPLES_OF_PRACTICE).find(([key]) => key === below)?.[1] ?? EXAMPLES_OF_PRACTICE.items;
  }
  const key = lastKey(path);
  if (table === 'claims' && key === 'turns') return 'turns: 8, a whole number';
  return EXAMPLES.get(key) ?? `${key}: one text; in double quotes if it begins or ends with a sign`;
}

function kindOfValue(yaml: YamlText, path: Path): string {
  const node = nodeAt(yaml, path);
  if (isSeq(node)) return 'a list';
  if (isMap(node)) return 'a table';
  if (!isScalar(node) || node.value === null) return 'nothing';
  if (typeof node.value === 'number') return 'a number';
  return typeof node.value === 'boolean' ? 'a yes-or-no value' : 'a text';
}

/** More keys that are none are no slips: of the rest nothing is told. */
const MOST_KEYS = 100;

function unknownKeys(yaml: YamlText, path: Path, keys: readonly string[], tables: Tables): Problem[] {
  const table = tables.at(yaml, path);
  const lesson = tables.at(yaml, []);
  const free = table.keys.filter((key) => !keySpan(yaml, path, key));
  return keys.slice(0, MOST_KEYS).map((key) => {
    const likely = isMap(nodeAt(yaml, path)) ? likelyWord(key, free) : undefined;
    // Under a table of the lesson, a key of the lesson was put one step too far in.
    const isIndented = path.length === 1 && lesson.keys.includes(key);
    const otherwise = isIndented
      ? `"${key}" is a key of ${lesson.name}: write it at the start of the line`
      : `its keys are ${listed(table.keys)}`;
    return {
      code: 'key-unknown',
      span: keySpan(yaml, path, key) ?? spanAt(yaml, path),
      message: `${table.name} has no key "${key}"`,
      hint: likely ? `"${likely}" was likely meant` : otherwise,
    };
  });
}

/** None where it stands on a line that YAML could not read, nor where it was misspelt: both have been told. */
function missingKey(yaml: YamlText, path: Path, tables: Tables): Problem[] {
  const key = String(path.at(-1));
  const node = nodeAt(yaml, path.slice(0, -1));
  const { name, keys } = tables.at(yaml, path.slice(0, -1));
  const written = isMap(node) ? node.items.map((pair) => String((pair.key as Scalar | null)?.value ?? '')) : [];
  const isMisspelt = written.some((word) => !keys.includes(word) && likelyWord(word, [key]) === key);
  if (isOnMendedLine(yaml, key) || isMisspelt) return [];
  const message = `${name} needs the key "${key}"`;
  return [{ code: 'key-missing', span: spanAt(yaml, path), message, hint: `add ${example(path)}` }];
}

/** The branch of a union that the writer was on: a text comes first in each, a table or list second. */
function problemsOfUnion(
  yaml: YamlText,
  issue: Extract<Issue, { code: 'invalid_union' }>,
  path: Path,
  tables: Tables,
): Problem[] {
  const [ofText, ofRest] = issue.errors;
  const node = nodeAt(yaml, path);
  const branch = isMap(node) || isSeq(node) ? ofRest : ofText;
  return (branch ?? []).flatMap((inner) => problemsOf(yaml, inner as Issue, path, tables));
}

function problemsOf(yaml: YamlText, issue: Issue, base: Path, tables: Tables): Problem[] {
  const path = [...base, ...issue.path] as (string | number)[];
  const node = nodeAt(yaml, path);
  const key = String(path.at(-1));
  const ofKind = (message: string, hint = `write ${example(path)}`, span = spanAt(yaml, path)): Problem[] => [
    { code: 'value-kind', span, message, hint },
  ];
  const unknown = (message: string, hint: string): Problem[] => [
    { code: 'value-unknown', span: spanAt(yaml, path), message, hint },
  ];
  switch (issue.code) {
    case 'unrecognized_keys':
      return unknownKeys(yaml, path, issue.keys, tables);
    case 'invalid_union':
      return problemsOfUnion(yaml, issue, path, tables);
    case 'invalid_value': {
      if (!node) return missingKey(yaml, path, tables);
      const words = issue.values.map(String);
      const written = isScalar(node) ? String(node.value) : kindOfValue(yaml, path);
      const { families, lesson } = tables.step;
      if (words.includes(families[0]!)) {
        const hint = lesson.likelyFamily(written) ?? `the families are ${lesson.familiesSaid}`;
        return unknown(`"${written}" is no family of cases`, hint);
      }
      const likely = lesson.likelyWord(written, words) ?? likelyWord(written, words);
      return unknown(
        `"${written}" is not known here`,
        likely ? `"${likely}" was likely meant` : `one of ${listed(words)}`,
      );
    }
    case 'too_small':
    case 'too_big': {
      const isNumber = issue.origin === 'number' || issue.origin === 'int';
      return ofKind(isNumber ? `"${key}" cannot be ${(node as Scalar).value}` : `"${key}" is empty`);
    }
    case 'invalid_format':
      return ofKind(path[0] === 'practice' ? `"${(node as Scalar).value}" is no check word` : `"${key}" is empty`);
    case 'invalid_key': {
      const message = `"${key}" cannot be a name: names have letters, digits, spaces and -`;
      const hint = "write a name such as sledge: R' F R F'";
      return ofKind(message, hint, keySpan(yaml, path.slice(0, -1), path.at(-1)));
    }
    default: {
      if (!node) return missingKey(yaml, path, tables);
      const found = kindOfValue(yaml, path);
      if (found === 'nothing' && path[0] === 'cases' && path.length === 2) {
        // A dash with nothing behind it.
        const start = yaml.toSource(yaml.text.lastIndexOf('-', node.range?.[0] ?? 0));
        return ofKind('this case is empty', "write - setup: R U' R', or take the dash out", { start, end: start + 1 });
      }
      return ofKind(`${found} stands where "${lastKey(path)}" wants something else`);
    }
  }
}

/** Problems of a value at `base`, from the issues that its schema raised. None of a reference, which has been told. */
export const formatProblems = (yaml: YamlText, error: z.ZodError, base: Path, tables: Tables): Problem[] =>
  error.issues
    .filter((issue) => !isAlias(nodeAt(yaml, [...base, ...issue.path] as Path)))
    .flatMap((issue) => problemsOf(yaml, issue, base, tables));

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

function makeTables({ step, lesson, case: ofCase, every, claims, practice, words, rule }: Format): Tables {
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
  const ofPractice = (key: string | number | undefined): Table => {
    if (key === 'items') return table('"items"', items);
    return key === 'only' ? table('"only"', only.unwrap()) : table('a practice', practice);
  };
  const at = (yaml: YamlText, path: Path): Table => {
    if (path.length === 0) return table('a lesson', lesson);
    if (rule && path.at(-1) === 'see') return table('what is seen', rule.shape.see.unwrap());
    const [key] = path;
    if (key === 'practice') return ofPractice(path[1]);
    if (path.length === 1 && typeof key === 'string' && Object.hasOwn(named, key))
      return table(`"${key}"`, named[key]!);
    if (path.at(-1) === 'hold') return table('a hold', holdSchema);
    if (rule && path.at(-2) === 'rules') return table('a rule', rule);
    if (rule && path.at(-3) === 'rules') return { name: `"${path.at(-1)}"`, keys: keysWithin(rule, `${path.at(-1)}`) };
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

const EXAMPLES: Readonly<Record<string, string>> = {
  items: 'items: { solve: 6, likeness: 4 }, numbers from 0 to 60',
  seed: 'seed: 7, a whole number',
  open: 'open: 2, a number from 0 to 60',
  only: 'only: { family: top-away, turns: 8 }',
  earlier: 'earlier: [first.yaml], names of lesson files',
  words: 'words: [SLOT, FRONT], words of three to nine letters',
};

/** What belongs at a path, as one would write it. */
function example(path: Path): string {
  if (path[0] === 'practice') return EXAMPLES[String(path[1])] ?? EXAMPLES['items']!;
  const key = path.filter((step) => typeof step === 'string').at(-1);
  if (path[0] === 'claims' && key === 'turns') return 'turns: 8, a whole number';
  switch (key) {
    case 'hold':
      return 'hold: { cross: white, front: green }';
    case 'cross':
    case 'up':
      return `${key}: white`;
    case 'front':
      return 'front: green';
    case 'right':
      return 'right: red';
    case 'down':
      return 'down: yellow';
    case 'back':
      return 'back: blue';
    case 'left':
      return 'left: orange';
    case 'minutes':
      return 'minutes: 60';
    case 'duplex':
      return 'duplex: long';
    case 'setup':
    case 'turns':
    case 'insert':
      return `${key}: R U' R'`;
    case 'solutions':
      return 'a list: a line "- R U\' R\'" for each solution';
    case 'cases':
      return 'a list: a line that begins with "- " for each case';
    case 'lessons':
      return 'a list: a line "- lesson: edge-away.yaml" for each evening';
    case 'lesson':
      return 'lesson: edge-away.yaml';
    case 'rules':
      return 'a list: a line that begins with "- " for each rule';
    case 'see':
      return 'see: { cross colour: sideways }';
    case 'most':
      return 'most: 8';
    case 'open':
      return 'open: BL, or a list in brackets: [BL, BR]';
    default:
      return `${key}: one text; in double quotes if it begins or ends with a sign`;
  }
}

function kindOfValue(yaml: YamlText, path: Path): string {
  const node = nodeAt(yaml, path);
  if (isSeq(node)) return 'a list';
  if (isMap(node)) return 'a table';
  if (isScalar(node)) {
    if (node.value === null) return 'nothing';
    if (typeof node.value === 'number') return 'a number';
    if (typeof node.value === 'boolean') return 'a yes-or-no value';
    return 'a text';
  }
  return 'nothing';
}

function unknownKeys(yaml: YamlText, path: Path, keys: readonly string[], tables: Tables): Problem[] {
  const table = tables.at(yaml, path);
  const present = isMap(nodeAt(yaml, path)) ? nodeAt(yaml, path) : undefined;
  const free = table.keys.filter((key) => !keySpan(yaml, path, key));
  // Under a table of the lesson, a key of the lesson was put one step too far in.
  const isIndented = (key: string): boolean => path.length === 1 && tables.at(yaml, []).keys.includes(key);
  return keys.map((key) => {
    const likely = present ? likelyWord(key, free) : undefined;
    if (!likely && isIndented(key)) {
      return {
        code: 'key-unknown',
        span: keySpan(yaml, path, key) ?? spanAt(yaml, path),
        message: `${table.name} has no key "${key}"`,
        hint: `"${key}" is a key of ${tables.at(yaml, []).name}: write it at the start of the line`,
      };
    }
    return {
      code: 'key-unknown',
      span: keySpan(yaml, path, key) ?? spanAt(yaml, path),
      message: `${table.name} has no key "${key}"`,
      hint: likely ? `"${likely}" was likely meant` : `its keys are ${listed(table.keys)}`,
    };
  });
}

/** None where it stands on a line that YAML could not read, nor where it was misspelt: both have been told. */
function missingKey(yaml: YamlText, path: Path, tables: Tables): Problem[] {
  const key = String(path.at(-1));
  const node = nodeAt(yaml, path.slice(0, -1));
  const { keys } = tables.at(yaml, path.slice(0, -1));
  const written = isMap(node) ? node.items.map((pair) => String((pair.key as Scalar | null)?.value ?? '')) : [];
  const foreign = written.filter((word) => !keys.includes(word));
  if (isOnMendedLine(yaml, key) || foreign.some((word) => likelyWord(word, [key]) === key)) return [];
  const table = tables.at(yaml, path.slice(0, -1));
  const message = `${table.name} needs the key "${String(path.at(-1))}"`;
  return [{ code: 'key-missing', span: spanAt(yaml, path), message, hint: `add ${example(path)}` }];
}

/** A dash with nothing behind it. */
function emptyItem(yaml: YamlText, path: Path): Problem[] {
  const node = nodeAt(yaml, path);
  const start = yaml.toSource(yaml.text.lastIndexOf('-', node?.range?.[0] ?? 0));
  const message = 'this case is empty';
  const hint = "write - setup: R U' R', or take the dash out";
  return [{ code: 'value-kind', span: { start, end: start + 1 }, message, hint }];
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

const emptyText = (path: Path, span: Problem['span']): Problem => ({
  code: 'value-kind',
  span,
  message: `"${String(path.at(-1))}" is empty`,
  hint: `write ${example(path)}`,
});

function problemsOf(yaml: YamlText, issue: Issue, base: Path, tables: Tables): Problem[] {
  const path = [...base, ...issue.path] as (string | number)[];
  const span = spanAt(yaml, path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return unknownKeys(yaml, path, issue.keys, tables);
    case 'invalid_union':
      return problemsOfUnion(yaml, issue, path, tables);
    case 'invalid_value': {
      const words = issue.values.map(String);
      const node = nodeAt(yaml, path);
      if (!node) return missingKey(yaml, path, tables);
      const written = isScalar(node) ? String(node.value) : kindOfValue(yaml, path);
      const { families, lesson } = tables.step;
      if (words.includes(families[0]!)) {
        const hint = lesson.likelyFamily(written) ?? `the families are ${lesson.familiesSaid}`;
        return [{ code: 'value-unknown', span, message: `"${written}" is no family of cases`, hint }];
      }
      const likely = lesson.likelyWord(written, words) ?? likelyWord(written, words);
      const hint = likely ? `"${likely}" was likely meant` : `one of ${listed(words)}`;
      return [{ code: 'value-unknown', span, message: `"${written}" is not known here`, hint }];
    }
    case 'too_small':
    case 'too_big':
      if (issue.origin === 'number' || issue.origin === 'int') {
        const message = `"${String(path.at(-1))}" cannot be ${String((nodeAt(yaml, path) as Scalar).value)}`;
        return [{ code: 'value-kind', span, message, hint: `write ${example(path)}` }];
      }
      return [emptyText(path, span)];
    case 'invalid_format':
      if (path[0] === 'practice') {
        const message = `"${String((nodeAt(yaml, path) as Scalar).value)}" is no check word`;
        return [{ code: 'value-kind', span, message, hint: `write ${example(path)}` }];
      }
      return [emptyText(path, span)];
    case 'invalid_key': {
      const message = `"${String(path.at(-1))}" cannot be a name: names have letters, digits, spaces and -`;
      const at = keySpan(yaml, path.slice(0, -1), path.at(-1)) ?? span;
      return [{ code: 'value-kind', span: at, message, hint: "write a name such as sledge: R' F R F'" }];
    }
    default: {
      if (!nodeAt(yaml, path)) return missingKey(yaml, path, tables);
      const found = kindOfValue(yaml, path);
      if (found === 'nothing' && path[0] === 'cases' && path.length === 2) return emptyItem(yaml, path);
      const message = `${found} stands where "${String(path.filter((s) => typeof s === 'string').at(-1))}" wants something else`;
      return [{ code: 'value-kind', span, message, hint: `write ${example(path)}` }];
    }
  }
}

/** Problems of a value at `base`, from the issues that its schema raised. None of a reference, which has been told. */
export const formatProblems = (yaml: YamlText, error: z.ZodError, base: Path, tables: Tables): Problem[] =>
  error.issues
    .filter((issue) => !isAlias(nodeAt(yaml, [...base, ...issue.path] as Path)))
    .flatMap((issue) => problemsOf(yaml, issue, base, tables));
